import { say } from '../../core/index.js';
import { lackOf } from '../cards/forms/index.js';
import type { FormId } from '../request.js';
import { type Desk, refusal } from './desk.js';
import { formKnown, formMeant } from './form-known.js';
import { FORM_NAMES } from './offers.js';

/** What each form asks, as it is typed. */
const EXAMPLES: Readonly<Record<FormId, string>> = {
  gauge: '46 needles, 110 rows, 22 in long, 6 3/4 flat',
  plan: 'flat panel 8 in wide and 12 in long',
  reading: 'row 60, it hangs 12 1/4 in',
  lost_count: 'the machine says 64, my hand counter 62',
  rates: 'my time is 16 an hour',
  share: 'share this with Owen',
};

export const formDesk: Desk<'form'> = async ({ form: wanted }, at) => {
  const known = await formKnown(at.store, at.maker, at.talk);
  const form = wanted ?? formMeant(at.talk, known.works.length > 0);
  const code = lackOf(form, known);
  if (code !== undefined) return refusal(at, { code });
  return {
    reply: {
      kind: 'answer',
      lead: say`The ${FORM_NAMES[form]} form opens with a button, in Slack`,
      lines: [say`It holds what you have told me so far. All that it asks can be typed as well.`],
      examples: [EXAMPLES[form]],
      offers: [{ button: 'Open Form', request: { kind: 'form', form } }],
    },
    talk: at.talk,
  };
};
