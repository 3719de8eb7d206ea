import { say } from '../../../core/index.js';
import { ORDINALS } from '../../language/readers/picks.js';
import type { Offered } from '../../reply.js';
import type { PlanAsk } from '../../request.js';
import { ofSize } from '../../sizes.js';
import { type At, type Desk, type DeskAnswer, refusal } from '../desk.js';
import { sizeName } from '../typed.js';

/** One button a size, numbered as they were asked: each makes it an ordinary plan. */
export const sizeOffers = (ask: PlanAsk): Offered[] =>
  (ask.sizes ?? []).map((size, i) => ({
    button: sizeName(size),
    say: `the ${ORDINALS[i]}`,
    spoken: `Plan ${sizeName(size)} alone`,
    request: { kind: 'plan', ask: ofSize(ask, size), follows: true },
  }));

/** The question which size is meant, while several are in hand and none has been chosen; else undefined. */
export function whichSize(at: At): DeskAnswer | undefined {
  const { subject, planId } = at.talk;
  if (subject?.sizes === undefined || planId !== undefined) return undefined;
  const names = subject.sizes.map(sizeName);
  return {
    reply: {
      kind: 'question',
      asks: say`Which of the sizes do you mean?`,
      because: say`Each has rows and steps of its own: ${names.join(', ')}.`,
      examples: [`start ${names[0]}`, `steps for ${names[1]}`, 'the first'],
      offers: sizeOffers(subject),
    },
    talk: at.talk,
  };
}

export const whichSizeDesk: Desk<'which_size'> = async (_request, at) =>
  whichSize(at) ?? refusal(at, { code: 'no_plan_yet' });
