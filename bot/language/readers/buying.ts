import { gPer } from '../../../core/index.js';
import type { BuyAsk, WayAsk } from '../../request.js';
import { bareAt, endsClause, wordsWithin } from '../clauses.js';
import type { Context } from '../context.js';
import { priceAt } from '../money.js';
import {
  claim,
  freeQuantities,
  indexesBetween,
  isFree,
  quantityAtIndex,
  type Sheet,
  saidBetween,
  wordAt,
} from '../sheet.js';
import { isKnownWord } from '../vocabulary.js';
import { isSideOfAny } from './fields.js';
import { piecePlaces } from './pieces.js';
import { claimBall, type Span } from './stock-amounts.js';
import { claimDyeLot, claimName, tellsYarn } from './stock-words.js';
import { isBall, isThing } from './things.js';

const SURE = ['sure', 'certain'];
const REPAIRS = ['reserve', 'repair', 'repairs', 'mending'];
/** Kept for repairs where no share was said. From memory. */
const USUAL_RESERVE = 0.05;
/** Asked so, it is of what is on the shelf. */
const OF_SHELF = ['have', 'left', 'got', 'shelf', 'stash', 'used', 'remain', 'remaining', 'there'];
/** Words that ask, and name no yarn. */
const ASKING =
  `how many much do does would will should can shall i we you need needs want wanted wants buy to get for it this that these
them those all the a an of be at with in and or and price each what is are me my please pieces take takes make making if so then enough
only just still keep some kept put aside extra now`.split(/\s+/);
const MOST_COPIES = 500;
const USE = 'what to buy';

/**
 * What is asked to be bought: `how many balls at 6.50 for 50 g / 100 m`, `balls for 20`, `be 90% sure`, `with a reserve
 * for repairs`. Claims its words; those of a piece wanted with it stay, to be planned first.
 */
export function readBuying(sheet: Sheet, span: Span, context: Context): BuyAsk | undefined {
  const draft: Sheet = { ...sheet, uses: [...sheet.uses] };
  const isOfBalls = claimBalls(draft, span, context);
  const sure = claimShare(draft, span, SURE);
  const reserve = claimReserve(draft, span);
  const isMeant = isOfBalls || (context.subjectPiece !== undefined && (sure ?? reserve) !== undefined);
  if (!isMeant) return undefined;
  const dyeLot = claimDyeLot(draft, span);
  const ways = claimWays(draft, span);
  const all = indexesBetween(span.from, span.to - 1);
  const isPlan = hasPlan(draft, span, context);
  if (isPlan && !isOfBalls) return undefined;
  const copies = isPlan ? undefined : claimCopies(draft, span, context);
  claim(draft, USE, ...(isPlan ? [] : wordsWithin(draft, ASKING, span.from, span.to)));
  const yarn = isPlan ? undefined : claimName(draft, span, context);
  const isRead =
    (yarn === undefined || tellsYarn(yarn, context)) &&
    (isPlan || all.every((i) => !isFree(draft, i) || isKnownWord(wordAt(draft, i) ?? (isNumber(draft, i) ? '' : 'a'))));
  if (!isRead) return undefined;
  if (!isPlan) claim(draft, USE, ...all);
  sheet.uses.splice(0, sheet.uses.length, ...draft.uses);
  return {
    ...(copies !== undefined && { copies }),
    ...(sure !== undefined && { sure }),
    ...(reserve !== undefined && { reserve }),
    ...(yarn !== undefined && { yarn }),
    ...(dyeLot !== undefined && { dyeLot }),
    ways,
    said: saidBetween(sheet, span.from, span.to - 1).replace(/[\s,.;!?]+$/, ''),
  };
}

const isMass = (sheet: Sheet, i: number): boolean => gPer(quantityAtIndex(sheet, i)?.unit) !== undefined;

const isNumber = (sheet: Sheet, i: number): boolean => sheet.tokens[i]?.is === 'quantity';

/** `how many balls`, `how many 50 g balls`; with a plan in hand `balls` alone or `balls for` at the start. */
function claimBalls(sheet: Sheet, { from, to }: Span, { subjectPiece }: Context): boolean {
  const isMany = (i: number): boolean =>
    wordAt(sheet, i - 1) === 'many' ||
    (wordAt(sheet, i - 1) === 'more' && wordAt(sheet, i - 2) === 'many') ||
    (isMass(sheet, i - 1) && wordAt(sheet, i - 2) === 'many');
  const isBegun = (i: number): boolean =>
    subjectPiece !== undefined &&
    i === from &&
    (wordAt(sheet, i + 1) === 'for' || i + 1 === to || endsClause(sheet, i + 1));
  const at = indexesBetween(from, to - 1).find(
    (i) => isFree(sheet, i) && isBall(wordAt(sheet, i)) && (isMany(i) || isBegun(i)),
  );
  const isOfShelf =
    wordsWithin(sheet, OF_SHELF, from, to).length > 0 && wordsWithin(sheet, ['buy'], from, to).length === 0;
  if (at === undefined || isOfShelf) return false;
  claim(sheet, USE, ...wordsWithin(sheet, ['how', 'many', 'more'], from, at), at);
  return true;
}

/** A percentage beside one of these words, as a share. */
function claimShare(sheet: Sheet, { from, to }: Span, words: readonly string[]): number | undefined {
  for (const at of wordsWithin(sheet, words, from, to)) {
    const near = [at - 1, at - 2, at + 1, at + 2].find(
      (i) => i >= from && quantityAtIndex(sheet, i)?.unit === 'percent',
    );
    const quantity = near === undefined ? undefined : quantityAtIndex(sheet, near);
    if (near === undefined || quantity === undefined || quantity.lo !== quantity.hi) continue;
    claim(sheet, USE, at, near);
    return quantity.lo / 100;
  }
  return undefined;
}

/** A share kept for repairs: `with a reserve`, `keep 10% for repairs`. */
function claimReserve(sheet: Sheet, span: Span): number | undefined {
  const share = claimShare(sheet, span, REPAIRS);
  const words = wordsWithin(sheet, REPAIRS, span.from, span.to);
  claim(sheet, USE, ...words);
  return share ?? (words.length > 0 ? USUAL_RESERVE : undefined);
}

/** The balls on sale with the prices beside each. */
function claimWays(sheet: Sheet, span: Span): WayAsk[] {
  const prices = indexesBetween(span.from, span.to - 1).flatMap((i) => {
    const found = priceAt(sheet, i, isThing);
    if (found === undefined) return [];
    claim(sheet, 'price', ...indexesBetween(found.from, found.to));
    return [found];
  });
  const parts = partsOf(sheet, span);
  return parts.flatMap((part): WayAsk[] => {
    const ball = claimBall(sheet, part, prices.length > 0);
    const own = prices.filter(({ from }) => from >= part.from && from < part.to).map(({ price }) => price);
    return ball === undefined && own.length === 0 ? [] : [{ ...(ball && { ball }), prices: own }];
  });
}

/** A span cut at each `or`, and before each ball told behind another. */
function partsOf(sheet: Sheet, { from, to }: Span): Span[] {
  const masses = indexesBetween(from, to - 1).filter((i) => isMass(sheet, i));
  const ors = wordsWithin(sheet, ['or'], from, to);
  const apart = masses.filter((mass, k) => {
    const before = masses[k - 1];
    return before !== undefined && ors.every((or) => or < before || or > mass);
  });
  const cuts = [...ors, ...apart].sort((a, b) => a - b);
  return [from, ...cuts].map((start, k) => ({ from: start, to: cuts[k] ?? to }));
}

/** True where the words ask for a piece of their own: another than that in hand, or one with a size. */
function hasPlan(sheet: Sheet, { from, to }: Span, { pieces, subjectPiece }: Context): boolean {
  const named = piecePlaces(sheet, pieces).filter((place) => place.from >= from && place.to < to);
  const sizes = freeQuantities(sheet).filter((i) => i >= from && i < to);
  const isSized = sizes.some((i) => bareAt(sheet, i) === undefined);
  const inHand = pieces.find(({ id }) => id === subjectPiece);
  if (inHand !== undefined && sizes.some((i) => isSideOfAny(wordAt(sheet, i + 1) ?? ''))) return true;
  return named.some(({ piece }) => piece.id !== subjectPiece) || (named.length > 0 && isSized);
}

/** `for 20`, `for 20 pouches`, `to make 4`: how many of the piece in hand. */
function claimCopies(sheet: Sheet, { from, to }: Span, { pieces }: Context): number | undefined {
  const [at, ...others] = freeQuantities(sheet).filter((i) => i >= from && i < to);
  const count = at === undefined ? undefined : bareAt(sheet, at);
  const isCount = count !== undefined && Number.isInteger(count) && count >= 1 && count <= MOST_COPIES;
  const names = piecePlaces(sheet, pieces).filter((place) => place.from >= from && place.to < to);
  claim(sheet, USE, ...names.flatMap((place) => indexesBetween(place.from, place.to)));
  if (at === undefined || !isCount || others.length > 0) return undefined;
  claim(sheet, USE, at);
  return count;
}
