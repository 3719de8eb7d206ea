import { z } from 'zod';
import { pieceById } from '../../../core/index.js';
import { type Desk, refusal } from '../desk.js';
import { tried } from './planning.js';
import { stripesOf } from './stripes.js';
import { whichSize } from './which-size.js';

const Numbers = z.object({ rows: z.number() });

/** The form of the steps that is not shown. */
const OTHER = {
  long: { button: 'Short Steps', say: 'short steps', spoken: 'Show these steps as a checklist', form: 'short' },
  short: { button: 'Long Steps', say: 'long steps', spoken: 'Show these steps in full', form: 'long' },
} as const;

/** The steps of a plan, made again from its ask and the gauge as it is now. */
export const stepsDesk: Desk<'steps'> = async (request, at) => {
  const which = request.planId === undefined ? whichSize(at) : undefined;
  if (which !== undefined) return which;
  const id = request.planId ?? at.talk.planId;
  const stored = id === undefined ? undefined : await at.store.plans.get(id, at.maker.id);
  const piece = stored && pieceById(stored.piece);
  if (stored === undefined || piece === undefined) return refusal(at, { code: 'no_plan_yet' });
  const { outcome, ask } = await tried(stored.ask, piece, at);
  if (!outcome.ok) return refusal(at, ...outcome.problems);
  const { rows } = Numbers.parse(stored.numbers);
  const rowsBefore = rows === outcome.value.rows ? undefined : rows;
  const talk = { ...at.talk, planId: stored.id, subject: stored.ask, rowsMake: outcome.value.landing.dimension };
  const { form } = request;
  const { form: other, ...button } = OTHER[form];
  const offers = [{ ...button, request: { kind: 'steps' as const, planId: stored.id, form: other } }];
  const stripes = stripesOf(ask, outcome.value);
  const shown = stripes?.ok ? stripes.value : undefined;
  return { reply: { kind: 'steps', plan: outcome.value, form, rowsBefore, stripes: shown, offers }, talk };
};
