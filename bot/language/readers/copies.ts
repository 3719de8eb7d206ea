import type { Piece } from '../../../core/index.js';
import { endsClause } from '../clauses.js';
import {
  claim,
  freeQuantities,
  indexesBetween,
  isFree,
  LEFT_OUT,
  leftOutFor,
  markAt,
  quantityAtIndex,
  type Sheet,
  said,
  wordAt,
} from '../sheet.js';
import { COUNT_NOUNS, isKnownWord, isLabelWord } from '../vocabulary.js';
import { fieldOf, isSideOfAny } from './fields.js';
import { focusOf } from './focus.js';
import { FOR, PERSON } from './people.js';

const MOST_COPIES = 500;
/** What a number of pieces wanted is used as. */
export const COPIES = 'how many';
const PAIRS = ['pair', 'pairs', 'prs', 'couple'];
const THEM = ['them', 'these', 'those', 'each'];
const ORDERS = ['make', 'need', 'want', 'knit'];
const ONE = ['a', 'an', 'one', 'the', 'this', 'my'];

/** What a count counts: pieces by their name, parts of a pair, or those that want one piece each. */
type Counted = { count: number; words: number[]; isOfParts?: boolean };

/** `two of each`: so many of every size. */
export const isOfEach = (sheet: Sheet): boolean =>
  sheet.uses.some((use, i) => use === COPIES && wordAt(sheet, i) === 'each');

/**
 * How many are wanted: `two of them`, `12 pouches`, `3 blue pouches`, `two 11 in pouches`, `x3`, `hats for 3 women`.
 * Undefined when not said. A number right before one piece (`an 11 pouch`) is its size, unless another number is there
 * to be that. Of a piece that is a pair by itself two are one.
 * @param piece the piece named, else the one in hand
 */
export function readCopies(sheet: Sheet, named: Piece | undefined, piece: Piece | undefined): number | undefined {
  const found = [
    ...pairsIn(sheet, named, piece),
    ...freeQuantities(sheet).flatMap((i) => countAt(sheet, i, named, piece)),
  ];
  const [first, ...others] = found;
  if (first === undefined) return undefined;
  const copies = first.isOfParts ? first.count / 2 : first.count;
  const why = Number.isInteger(copies) ? LEFT_OUT : leftOutFor('two are knitted as a pair, so say how many pairs');
  const isMeant = Number.isInteger(copies) && copies <= MOST_COPIES;
  claim(sheet, isMeant ? COPIES : why, ...first.words);
  for (const { count, words } of others) claim(sheet, count === first.count ? COPIES : LEFT_OUT, ...words);
  return isMeant ? copies : undefined;
}

function countAt(sheet: Sheet, index: number, named: Piece | undefined, piece: Piece | undefined): Counted[] {
  const count = wholeAt(sheet, index);
  if (count === undefined) return [];
  const isOf = wordAt(sheet, index + 1) === 'of';
  if (isOf && THEM.includes(wordAt(sheet, index + 2) ?? '')) return [{ count, words: [index, index + 1, index + 2] }];
  if (isOf && sheet.tokens[index + 2] === undefined) return [{ count, words: [index, index + 1] }];
  if (named === undefined && isForSoMany(sheet, index)) return [{ count, words: [index] }];
  if (named === undefined && isByDay(sheet, index)) return [{ count, words: [index] }];
  if (named === undefined && isOrdered(sheet, index, count)) return [{ count, words: [index] }];
  const described = named === undefined ? undefined : piecesAfter(sheet, index, count, named);
  if (described !== undefined) return [{ count, words: [index, ...described], isOfParts: named?.isPair === true }];
  const isOfTakers = piece !== undefined && areTakers(sheet, index, count, piece);
  if (isOfTakers && isOneNamed(sheet)) claim(sheet, LEFT_OUT, index);
  else if (isOfTakers || isTimes(sheet, index, named)) return [{ count, words: [index] }];
  return [];
}

const NEEDED = ['make', 'need', 'want', 'about', undefined];

/** `20 by 5 december`: the day has been taken out of the tokens, but stands in the text. */
const isByDay = (sheet: Sheet, index: number): boolean =>
  sheet.tokens[index + 1] === undefined &&
  NEEDED.includes(wordAt(sheet, index - 1)) &&
  /^\s*(?:by|until|before|due)\b/i.test(sheet.text.slice(sheet.tokens[index]?.end));

/** `make 4`, but `make it 4` is a size. */
const isOrdered = (sheet: Sheet, index: number, count: number): boolean =>
  count > 1 &&
  (ORDERS.includes(wordAt(sheet, index - 1) ?? '') || phraseEnds(sheet, index, ['we', 'do'])) &&
  endsClause(sheet, index + 1);

/** True for words right before an index: `could we do 60?` is of pieces, since several make them. */
const phraseEnds = (sheet: Sheet, index: number, words: readonly string[]): boolean =>
  words.every((word, k) => wordAt(sheet, index - words.length + k) === word);

/** `a pair of tubes`, `two pairs of tubes`: two each, unless the piece is a pair by itself. */
function pairsIn(sheet: Sheet, named: Piece | undefined, piece: Piece | undefined): Counted[] {
  const at = sheet.tokens.findIndex((_, i) => PAIRS.includes(wordAt(sheet, i) ?? ''));
  const pairs = wholeAt(sheet, at - 1);
  const isNamed = named !== undefined && [1, 2, 3, 4].some((k) => sheet.uses[at + k] === 'piece');
  const isBehind = pairs !== undefined && (wordAt(sheet, at + 1) ?? 'of') !== 'of';
  const isLast = pairs !== undefined && sheet.tokens[at + 1] === undefined;
  if (at < 0 || piece === undefined || !(isNamed || isBehind || isLast)) return [];
  const words = [...(pairs === undefined ? [] : [at - 1]), at, ...(wordAt(sheet, at + 1) === 'of' ? [at + 1] : [])];
  return [{ count: (pairs ?? 1) * (piece.isPair ? 1 : 2), words }];
}

function wholeAt(sheet: Sheet, index: number): number | undefined {
  const quantity = quantityAtIndex(sheet, index);
  if (quantity === undefined || quantity.unit !== undefined || quantity.lo !== quantity.hi) return undefined;
  if (COUNT_NOUNS[wordAt(sheet, index - 1) ?? ''] === 'rows') return undefined;
  return Number.isInteger(quantity.lo) && quantity.lo >= 1 && quantity.lo <= MOST_COPIES ? quantity.lo : undefined;
}

/** Indexes of the words that describe the pieces counted at `index`; undefined when no pieces are counted there. */
function piecesAfter(sheet: Sheet, index: number, count: number, piece: Piece): number[] | undefined {
  const next = wordAt(sheet, index + 1);
  if (markAt(sheet, index - 1) === 'by' || (next !== undefined && fieldOf(piece, next) !== undefined)) return undefined;
  const words: number[] = [];
  for (let i = index + 1; i <= index + 5; i++) {
    const word = wordAt(sheet, i);
    if (sheet.uses[i] === 'piece') {
      const isOne = count === 1 || next === 'x' || (i === index + 1 && freeQuantities(sheet).length > 1);
      return isOne || /s$/i.test(said(sheet, endOfName(sheet, i))) ? words : undefined;
    }
    const sized = quantityAtIndex(sheet, i)?.unit !== undefined || markAt(sheet, i) === 'by';
    if (word === undefined && !sized) return undefined;
    if (word !== undefined && !isKnownWord(word)) words.push(i);
  }
  return undefined;
}

/** The last word of the name that begins at an index: `double hats`. */
function endOfName(sheet: Sheet, from: number): number {
  let end = from;
  while (sheet.uses[end + 1] === 'piece') end++;
  return end;
}

/** `notions for 12`, `what do I need for 12`, `yarn for 20`: what is had at hand is asked for by how many. */
const isForSoMany = (sheet: Sheet, index: number): boolean =>
  (wordAt(sheet, index - 1) === 'for' ||
    (wordAt(sheet, index - 2) === 'for' && ['the', 'all'].includes(wordAt(sheet, index - 1) ?? ''))) &&
  !isLabelWord(wordAt(sheet, index + 1) ?? '') &&
  focusOf(sheet).some((what) => what === 'notions' || what === 'yarn');

/** `x3` behind words, not between two sizes. */
function isTimes(sheet: Sheet, index: number, piece: Piece | undefined): boolean {
  const [before, times, number] = [index - 2, index - 1, index].map((i) => sheet.tokens[i]);
  const isBy = times?.is === 'mark' && times.mark === 'by';
  const attached = isBy && (times.end === number?.start || isBehindPart(sheet, index, piece));
  const next = wordAt(sheet, index + 1);
  return (
    attached &&
    (before === undefined || before.is === 'word' || (before.end < times.start && isBehindPair(sheet, index))) &&
    !(next !== undefined && piece && fieldOf(piece, next) !== undefined)
  );
}

/** `2 cm rings x 3`: behind a part it is no side, where nothing else says so. */
function isBehindPart(sheet: Sheet, index: number, piece: Piece | undefined): boolean {
  const word = wordAt(sheet, index - 2) ?? '';
  const isPart = piece !== undefined && fieldOf(piece, word) !== undefined && !isSideOfAny(word);
  return isPart && endsClause(sheet, index + 1);
}

/** `10 x 10 cm x6`. */
const isBehindPair = (sheet: Sheet, index: number): boolean =>
  markAt(sheet, index - 3) === 'by' && quantityAtIndex(sheet, index - 4) !== undefined;

const PLURAL = /(?:s|men|children)$/;
const MOST_BETWEEN = 2;

/** `for 4 mugs`, `for three tall women`: one piece each, unless one is asked for. */
function areTakers(sheet: Sheet, index: number, count: number, piece: Piece): boolean {
  if (count < 2 || !FOR.includes(wordAt(sheet, index - 1) ?? '')) return false;
  for (const i of indexesBetween(index + 1, index + 1 + MOST_BETWEEN)) {
    const word = wordAt(sheet, i);
    if (word === undefined || (isFree(sheet, i) && isSideOfAny(word))) return false;
    if (sheet.uses[i] === PERSON || piece.goesOn?.includes(word)) return PLURAL.test(word);
  }
  return false;
}

/** `a hat`, `the hat`. */
function isOneNamed(sheet: Sheet): boolean {
  const from = sheet.uses.indexOf('piece');
  return from > 0 && ONE.includes(said(sheet, from - 1).toLowerCase());
}
