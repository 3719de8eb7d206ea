import type { Request } from '../../request.js';
import type { Context } from '../context.js';

const ROWS = '(?: (?:rows|rnds|rounds))';
const FORM = new RegExp(
  `^(?:no,? |but |well,? )*(?:(?:i|we) (?:always|usually|normally|mostly|generally) (?:do|knit|make|use|crank|need|get)(?: it at)? (?<habit>\\d{1,5})${ROWS}?|my (?:row )?count (?:is|was|says) (?:always )?(?<count>\\d{1,5})${ROWS}?|(?:i want|i need|id do|id knit|i would do|i would knit|id rather (?:do|knit|have)|i do|i knit|mine (?:is|are|was|has|takes)|it should be|it takes|its always|i think its|i count|i get) (?<wish>\\d{1,5})${ROWS})(?: (?:for (?:it|this|that|these))| though| instead)?$`,
);

/**
 * A count held against that of the plan in hand: `I always do 125`, `my count is 125`, `I want 125 rows`. With work on the
 * machine `my count is` tells where that stands, up to its stop row.
 */
export function ownCount(text: string, { subjectPiece, inHand, holes }: Context): Request | undefined {
  if ((subjectPiece === undefined && inHand === undefined) || holes.length > 0) return undefined;
  const bare = text
    .toLowerCase()
    .replace(/['\u2019]/g, '')
    .trim()
    .replace(/[.!]+$/, '');
  const { habit, count, wish } = FORM.exec(bare)?.groups ?? {};
  const rows = Number(habit ?? wish ?? count);
  if (Number.isNaN(rows)) return undefined;
  const isTally = count !== undefined && inHand !== undefined && rows <= inHand.stopAt;
  return isTally ? { kind: 'tally', to: rows } : { kind: 'own_count', rows };
}
