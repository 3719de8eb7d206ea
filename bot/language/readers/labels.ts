import type { Piece } from '../../../core/index.js';
import { freeQuantities, isFree, isLabelOfNext, markAt, type Sheet, wordAt } from '../sheet.js';
import { COMPARATIVES } from '../vocabulary.js';
import { fieldOf, isSideOfAny, NO_FIELD, type Side, sideOf, takesBeside } from './fields.js';
import { listsIn } from './lists.js';

/** A number and the words that say what it is, the one nearest its end of the phrase first. */
export type Label = Side & { index: number; words: readonly number[] };
type Candidate = Label & { cost: number };
/** True for a number that a field cannot have: out of its range, a length for a count. */
type IsOff = (index: number, side: Side) => boolean;

/**
 * Pairs quantities with the field words beside them. A word may stand after its number (`11 in wide`), before
 * (`width 11`) or on both sides (`hand 18.5 cm round`); of all pairings the one that leaves fewest numbers without a
 * word and jumps over least is taken.
 */
export function labelled(sheet: Sheet, piece: Piece, isOff: IsOff): Label[] {
  const inner = new Set(listsIn(sheet).flatMap((list) => list.slice(1, -1)));
  const quantities = freeQuantities(sheet).filter((i) => !inner.has(i));
  const led = quantities.filter((index) => isLedByPart(sheet, piece, index));
  const known = new Map<string, { cost: number; labels: Label[] }>();
  const best = (from: number, taken: readonly number[]): { cost: number; labels: Label[] } => {
    const index = quantities[from];
    if (index === undefined) return { cost: 0, labels: [] };
    const key = `${from} ${taken}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const open = candidates(sheet, piece, index, isOff).filter(
      ({ words }) => !words.some((word) => taken.includes(word)),
    );
    const unlabelled = UNLABELLED + (led.length > 1 && led.includes(index) ? PART_UNMET : 0);
    const found = [...open, undefined]
      .map((option) => {
        const rest = best(from + 1, option?.words.filter((word) => word > index) ?? []);
        return {
          cost: rest.cost + (option?.cost ?? unlabelled),
          labels: option === undefined ? rest.labels : [option, ...rest.labels],
        };
      })
      .reduce((a, b) => (b.cost < a.cost ? b : a));
    known.set(key, found);
    return found;
  };
  // Each number has a few words on either side at most; a text of many numbers is read in part.
  return best(Math.max(0, quantities.length - MOST_SIZES), []).labels;
}

const UNLABELLED = 5;
/** A side that the piece does not have explains a number, where nothing else does. */
const UNKNOWN_SIDE = 3;
/** Parts before their numbers, one after another, are of those: `calf 37 cm ankle 23`. */
const PART_UNMET = 2;
/** What the field cannot have is mostly of another. */
const OFF = 2.5;
/** Two words that agree on a number are better than one. */
const AGREED = -0.1;
const MOST_SIZES = 8;
const REACH = 3;
/** Words that part a number from a field word further on. */
const PARTING = ['and', 'with', 'for', 'plus', 'on', 'or'];
/** Before a number these mean `about`. */
const ABOUT = ['around', 'round'];
const ARTICLES = ['the', 'a', 'an', 'my', 'your', 'his', 'her', 'their', 'its', 'of'];

type Beside = { at: number; side: Side; cost: number };

function candidates(sheet: Sheet, piece: Piece, index: number, isOff: IsOff): Candidate[] {
  const [after, before] = [wordBeside(sheet, piece, index, 1), wordBeside(sheet, piece, index, -1)];
  const found: Candidate[] = [after, before].flatMap((one) =>
    one === undefined ? [] : [{ index, ...one.side, words: [one.at], cost: one.cost }],
  );
  const further = after && partBehind(sheet, piece, after);
  if (after !== undefined && further !== undefined)
    found.push({ index, id: further.id, words: [further.at, after.at], cost: after.cost + AGREED - known(after) });
  if (after !== undefined && before !== undefined && takesBeside(piece, before.side.id, wordAt(sheet, after.at) ?? ''))
    found.push({ index, ...before.side, words: [after.at, before.at], cost: after.cost + AGREED - known(after) });
  const isOfPair = markAt(sheet, index - 1) === 'by';
  return found
    .filter(({ id, words: [at = 0] }) => !(isOfPair && at > index && isPart(piece, id)))
    .map((one) => (one.id !== NO_FIELD && isOff(index, one) ? { ...one, cost: one.cost + OFF } : one));
}

/** True for an ask that is no side of the whole: behind `45 x 45` it has none of those numbers, `45 x 45 zip`. */
const isPart = (piece: Piece, id: string): boolean =>
  id !== NO_FIELD && !piece.pair.includes(id) && !(piece.asks[id]?.words ?? []).some(isSideOfAny);

function isLedByPart(sheet: Sheet, piece: Piece, index: number): boolean {
  const id = isFree(sheet, index - 1) ? fieldOf(piece, wordAt(sheet, index - 1) ?? '') : undefined;
  return id !== undefined && !isSideOfAny(wordAt(sheet, index - 1) ?? '');
}

const known = ({ side }: Beside): number => (side.id === NO_FIELD ? UNKNOWN_SIDE : 0);

/** The nearest word on one side of a number that says what it is. */
function wordBeside(sheet: Sheet, piece: Piece, index: number, way: 1 | -1): Beside | undefined {
  for (let step = 1; step <= REACH; step++) {
    const at = index + way * step;
    const isComma = markAt(sheet, at) === 'comma' && !(way < 0 && isComparative(sheet, at - 1));
    const isParted = isComma || ['by', 'stop'].includes(markAt(sheet, at) ?? '');
    if (sheet.tokens[at] === undefined || sheet.tokens[at]?.is === 'quantity' || isParted) return undefined;
    const word = wordAt(sheet, at);
    if (word === undefined) continue;
    if (PARTING.includes(word)) return undefined;
    const side = isFree(sheet, at) ? sideBeside(sheet, piece, at, way) : undefined;
    const cost = step - 1 + (way < 0 ? 0.4 : 0) + (side?.id === NO_FIELD ? UNKNOWN_SIDE : 0);
    if (side !== undefined) return { at, side, cost };
  }
  return undefined;
}

/** The part whose side it is: `37 cm round the calf`, `a 5 cm deep brim`. */
function partBehind(sheet: Sheet, piece: Piece, { at }: Beside): { id: string; at: number } | undefined {
  let behind = at + 1;
  while (ARTICLES.includes(wordAt(sheet, behind) ?? '')) behind++;
  const id = isFree(sheet, behind) ? fieldOf(piece, wordAt(sheet, behind) ?? '') : undefined;
  return id !== undefined && takesBeside(piece, id, wordAt(sheet, at) ?? '') ? { id, at: behind } : undefined;
}

const isComparative = (sheet: Sheet, at: number): boolean => COMPARATIVES[wordAt(sheet, at) ?? ''] !== undefined;

function sideBeside(sheet: Sheet, piece: Piece, at: number, way: number): Side | undefined {
  const word = wordAt(sheet, at) ?? '';
  if (way > 0) return isLabelOfNext(sheet, at) ? undefined : sideOf(piece, word);
  if ((ABOUT.includes(word) && markAt(sheet, at + 1) !== 'equals') || wordAt(sheet, at + 1) === 'than')
    return undefined;
  return sideOf(piece, COMPARATIVES[word] ?? word);
}
