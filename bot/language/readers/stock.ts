import type { StockAsk } from '../../request.js';
import { wordsWithin } from '../clauses.js';
import type { Context } from '../context.js';
import { claim, indexesBetween, isFree, type Sheet, saidBetween, wordAt } from '../sheet.js';
import { type Count, claimBall, claimCount, claimMass, claimPrice, type Span } from './stock-amounts.js';
import { claimDyeLot, claimName, claimNotion, claimTeam, isStockWord, leadOf, tellsYarn } from './stock-words.js';
import { isBall, isNotion } from './things.js';

type Way = StockAsk['way'];

/** Counts of these are of the work. */
const OF_WORK = 'rows row stitches stitch needles needle rounds round rnds sts'.split(' ');
/** Of a notion a piece takes one or two: so many alone may be of the plan in hand. */
const MOST_OF_A_PIECE = 2;

/**
 * What is on hand, came or went: `I have 3 balls of grey, lot 12`, `bought 4 more at 6.50`, `38 g left of lot 12`,
 * `no grey left`, `24 rings`. Claims its words; undefined, and nothing claimed, where a span says no such thing.
 * @param joined how the statement that it is joined to was meant
 */
export function readStock(sheet: Sheet, span: Span, context: Context, joined: Way | undefined): StockAsk | undefined {
  const draft: Sheet = { ...sheet, uses: [...sheet.uses] };
  const { from, to } = span;
  if (wordsWithin(sheet, OF_WORK, from, to).length > 0) return undefined;
  const lead = leadOf(draft, span);
  const way = lead.way ?? joined;
  const dyeLot = claimDyeLot(draft, span);
  const team = claimTeam(draft, span);
  const count = claimCount(draft, span, way !== undefined);
  const price = claimPrice(draft, span, count?.value);
  const massG = count === undefined ? claimMass(draft, span) : undefined;
  const ball = claimBall(draft, span, count !== undefined);
  const thing = notionAt(draft, span, count, lead.isNone);
  const isMore = wordsWithin(sheet, ['more', 'another'], from, to).length > 0 && way !== 'take' && !lead.isNone;
  const isNotion = thing !== undefined && dyeLot === undefined;
  const name = isNotion ? claimNotion(draft, span, count?.at ?? from - 1, thing) : claimName(draft, span, context);
  const stock: StockAsk = {
    way: lead.isNone ? 'take' : isMore ? 'add' : (way ?? 'set'),
    kind: isNotion ? 'notion' : 'yarn',
    ...(name !== undefined && { name }),
    ...(dyeLot !== undefined && { dyeLot }),
    ...(count && { count: count.value }),
    ...(massG !== undefined && { massG }),
    ...((lead.isNone || (way === 'take' && count === undefined && massG === undefined)) && { all: true }),
    ...(ball && { ball }),
    ...(price && { price }),
    ...(team && { team }),
    said: saidBetween(sheet, from, to - 1).replace(/[\s,.;!]+$/, ''),
  };
  if (!isMeant(stock, { sheet: draft, span, isTold: way !== undefined, context })) return undefined;
  claim(draft, 'stock', ...indexesBetween(from, to - 1).filter((i) => isStockWord(wordAt(draft, i) ?? '')));
  sheet.uses.splice(0, sheet.uses.length, ...draft.uses);
  return stock;
}

/** Where the word for a notion stands that is counted, or of which none is left. */
function notionAt(sheet: Sheet, { from, to }: Span, count: Count | undefined, isNone: boolean): number | undefined {
  if (count !== undefined) return isNotion(wordAt(sheet, count.thing ?? -1)) ? count.thing : undefined;
  return isNone ? indexesBetween(from, to - 1).find((i) => isFree(sheet, i) && isNotion(wordAt(sheet, i))) : undefined;
}

type Told = { sheet: Sheet; span: Span; isTold: boolean; context: Context };

/**
 * True where enough is said: an amount of something named or in a lot, by a verb or alone; `I have a 9 in zip` tells of
 * a piece.
 */
function isMeant(stock: StockAsk, { sheet, span, isTold, context }: Told): boolean {
  const { kind, name, dyeLot, count, massG, all, price, team, way } = stock;
  const has = (...words: string[]): boolean => wordsWithin(sheet, words, span.from, span.to).length > 0;
  const isNamed = name !== undefined || dyeLot !== undefined;
  const isYarn = dyeLot !== undefined || (name !== undefined && tellsYarn(name, context));
  const isAlone = span.from === 0 && span.to === sheet.tokens.length && isAllUsed(sheet, span);
  if (all && way === 'take' && has('no', 'none', 'out')) return has('left', 'more', 'out') && isYarn;
  if (all) return dyeLot !== undefined || (has('all', 'rest', 'up', 'away', 'last') && isYarn);
  if (kind === 'notion') {
    if (!isTold && !isAlone) return false;
    // `add a 9 in zip` is of the plan in hand.
    if (has('add') && !has('shelf', 'stash') && price === undefined) return false;
    if (!isTold && (count ?? 0) <= MOST_OF_A_PIECE) return false;
    return way !== 'set' || count !== 1 || price !== undefined;
  }
  if (massG !== undefined) {
    if (!isTold && !isAllUsed(sheet, span)) return false;
    if (dyeLot !== undefined) return true;
    return isNamed ? (isTold || has('left')) && (isYarn || has('of')) : isTold && way === 'take' && isAlone;
  }
  if (count === undefined) return false;
  const isInBalls = sheet.tokens.some((_, i) => i >= span.from && i < span.to && isBall(wordAt(sheet, i)));
  if (isTold) return isInBalls || dyeLot !== undefined || (stock.ball !== undefined && isNamed);
  return isAllUsed(sheet, span) && (dyeLot !== undefined || (isInBalls && (isNamed || team === true)));
}

/** True where every word and number has a use. */
export const isAllUsed = (sheet: Sheet, { from, to }: Span): boolean =>
  indexesBetween(from, to - 1).every(
    (i) => sheet.tokens[i]?.is === 'mark' || !isFree(sheet, i) || isStockWord(wordAt(sheet, i) ?? ''),
  );
