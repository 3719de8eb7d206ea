import type { Request } from '../../request.js';

const LEADS =
  'so and now well then lets ill im i have has had to need must going gonna will want can we please it'.split(' ');
/** What happens to work that is begun once more. */
const LOST =
  'unravelled unraveled unravelling unraveling fell dropped came broke ruined jammed messed frogged ripped wrong mistake scrapped tore torn snapped slipped lost cat dog mess disaster'.split(
    ' ',
  );
const NOT = ['not', 'dont', 'no', 'never', 'if', 'should', 'why', 'how', 'what', 'when', 'without'];
const MOST_BEFORE = 10;
const OVER =
  /^(?<before>(?:\p{L}+ )*?)(?:re-?start(?:ing|ed)?(?: (?:it|this|that))?|(?:start|starting|started|begin|beginning|begun) (?:(?:it|this|that) )?(?:(?<again>again)|over(?: again)?|all over(?: again)?|afresh|anew|from scratch|from (?:the )?(?:beginning|start|top)))(?: (?:please|now|then))?$/u;

/**
 * `start over`, `it unravelled, start over`, `the cat got it, starting again`: the work is given up and begun once more.
 * `start again` alone is a start, and needs a word of what happened to be more.
 */
export function startOverAsked(bare: string): Request | undefined {
  const { before = '', again } = OVER.exec(bare)?.groups ?? {};
  const words = before.split(' ').filter((word) => word !== '');
  if (!OVER.test(bare) || words.length > MOST_BEFORE || words.some((word) => NOT.includes(word))) return undefined;
  const isLost = words.some((word) => LOST.includes(word));
  const isPlain = again === undefined && words.every((word) => LEADS.includes(word));
  return isLost || isPlain ? { kind: 'start_over' } : undefined;
}
