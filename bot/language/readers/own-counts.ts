import type { Request } from '../../request.js';
import type { Context } from '../context.js';

const ROWS = '(?: (?:rows|rnds|rounds))';
const FORM = new RegExp(
  `^(?:no,? |but |well,? )*(?:(?:i|we) (?:always|usually|normally|mostly|generally) (?:do|knit|make|use|crank|need|get)(?: it at)? (?<habit>\\d{1,5})${ROWS}?|my (?:row )?count (?:is|was|says) (?:always )?(?<count>\\d{1,5})${ROWS}?|(?:i want|i need|id do|id knit|i would do|i would knit|id rather (?:do|knit|have)|i do|i knit|mine (?:is|are|was|has|takes)|it should be|it takes|its always|i think its|i count|i get) (?<wish>\\d{1,5})${ROWS})(?: (?:for (?:it|this|that|these))| though| instead)?$`,
);

const SMALL = 'one two three four five six seven eight nine ten'.split(' ');
const NEXT = '(?:(?:the )?(?:next|another) one|(?:the )?same(?: again| one)?)(?:,| is| the| same| but| with| and)*';
const TIMES = '(?:this time|next time|(?:for|on) the next(?: one)?|than (?:that|yours|you say)|instead)';
/** `next one same but 2 rows more`, `2 rows more this time`; without such words it is of a count of rows in hand. */
const BESIDE = new RegExp(
  `^(?:but )?(?<next>${NEXT} )?(?:with |but |do |make it |knit )?(?<much>\\d{1,3}|${SMALL.join('|')}) (?:rows? (?<behind>more|less|fewer)|(?<ahead>more|less|fewer) rows?)(?<times>,? ${TIMES})?$`,
);

/** Rows beside those of the plan; undefined where they may be counted on. */
function besideIn(bare: string): number | undefined {
  const { next, much = '', behind, ahead, times } = BESIDE.exec(bare)?.groups ?? {};
  const way = behind ?? ahead;
  if (way === undefined || (next ?? times) === undefined) return undefined;
  const rows = SMALL.includes(much) ? SMALL.indexOf(much) + 1 : Number(much);
  return way === 'more' ? rows : -rows;
}

/**
 * A count held against that of the plan in hand: `I always do 125`, `my count is 125`, `I want 125 rows`, `2 rows more this time`. With work on the
 * machine `my count is` tells where that stands, up to its stop row.
 */
export function ownCount(text: string, { subjectPiece, inHand, holes }: Context): Request | undefined {
  if (subjectPiece === undefined && inHand === undefined) return undefined;
  const bare = text
    .toLowerCase()
    .replace(/['\u2019]/g, '')
    .trim()
    .replace(/[.!]+$/, '');
  const by = besideIn(bare);
  if (by !== undefined) return { kind: 'own_count', by };
  if (holes.length > 0) return undefined;
  const { habit, count, wish } = FORM.exec(bare)?.groups ?? {};
  const rows = Number(habit ?? wish ?? count);
  if (Number.isNaN(rows)) return undefined;
  const isTally = count !== undefined && inHand !== undefined && rows <= inHand.stopAt;
  return isTally ? { kind: 'tally', to: rows } : { kind: 'own_count', rows };
}
