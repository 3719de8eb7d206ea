import type { Piece } from '../../../core/index.js';
import { claim, freeQuantities, LEFT_OUT, markAt, quantityAtIndex, type Sheet, said, wordAt } from '../sheet.js';
import { COUNT_NOUNS, isKnownWord, isLabelWord } from '../vocabulary.js';
import { fieldOf, isPair } from './fields.js';
import { focusOf } from './focus.js';

const MOST_COPIES = 500;
/** What a number of pieces wanted is used as. */
export const COPIES = 'how many';
const THEM = ['them', 'these', 'those', 'each'];

/** `two of each`: so many of every size. */
export const isOfEach = (sheet: Sheet): boolean =>
  sheet.uses.some((use, i) => use === COPIES && wordAt(sheet, i) === 'each');

/**
 * How many are wanted: `two of them`, `12 pouches`, `3 blue pouches`, `two 11 in pouches`, `x3`. Undefined when not
 * said. A number right before one piece (`an 11 pouch`) is its size, unless another number is there to be that.
 */
export function readCopies(sheet: Sheet, piece: Piece | undefined): number | undefined {
  const pairs = piece === undefined ? undefined : pairsOf(sheet, piece);
  if (pairs !== undefined) return pairs;
  for (const index of freeQuantities(sheet)) {
    const count = copiesAt(sheet, index);
    if (count === undefined) continue;
    const ofThem = wordAt(sheet, index + 1) === 'of' && THEM.includes(wordAt(sheet, index + 2) ?? '');
    const named = piece === undefined ? undefined : piecesAfter(sheet, index, count, piece);
    const isNeeded = piece === undefined && isForSoMany(sheet, index);
    if (!ofThem && !isNeeded && named === undefined && !isTimes(sheet, index, piece)) continue;
    claim(sheet, COPIES, index, ...(ofThem ? [index + 1, index + 2] : []), ...(named ?? []));
    return count;
  }
  return undefined;
}

/** `a pair of tubes`, `two pairs of tubes`: two each, unless the piece is a pair by itself. */
function pairsOf(sheet: Sheet, piece: Piece): number | undefined {
  const at = sheet.tokens.findIndex((_, i) => ['pair', 'pairs'].includes(wordAt(sheet, i) ?? ''));
  const isNamed = wordAt(sheet, at + 1) === 'of' && [2, 3, 4].some((k) => isWordOf(sheet, at + k, piece));
  if (at < 0 || !isNamed) return undefined;
  const pairs = copiesAt(sheet, at - 1);
  const copies = (pairs ?? 1) * (isPair(piece) ? 1 : 2);
  const isTooMany = copies > MOST_COPIES;
  claim(sheet, isTooMany ? LEFT_OUT : COPIES, ...(pairs === undefined ? [] : [at - 1]), at, at + 1);
  return isTooMany ? undefined : copies;
}

const isWordOf = (sheet: Sheet, i: number, piece: Piece): boolean => piece.words.includes(wordAt(sheet, i) ?? '');

function copiesAt(sheet: Sheet, index: number): number | undefined {
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
    if (isWordOf(sheet, i, piece)) {
      const isOne = count === 1 || next === 'x' || (i === index + 1 && freeQuantities(sheet).length > 1);
      return isOne || /s$/i.test(said(sheet, i)) ? words : undefined;
    }
    const sized = quantityAtIndex(sheet, i)?.unit !== undefined || markAt(sheet, i) === 'by';
    if (word === undefined && !sized) return undefined;
    if (word !== undefined && !isKnownWord(word)) words.push(i);
  }
  return undefined;
}

/** `notions for 12`, `what do I need for 12`: what is had at hand is asked for by how many. */
const isForSoMany = (sheet: Sheet, index: number): boolean =>
  wordAt(sheet, index - 1) === 'for' &&
  !isLabelWord(wordAt(sheet, index + 1) ?? '') &&
  focusOf(sheet).includes('notions');

/** `x3` behind words, not between two sizes. */
function isTimes(sheet: Sheet, index: number, piece: Piece | undefined): boolean {
  const [before, times, number] = [index - 2, index - 1, index].map((i) => sheet.tokens[i]);
  const attached = times?.is === 'mark' && times.mark === 'by' && times.end === number?.start;
  const next = wordAt(sheet, index + 1);
  return (
    attached &&
    (before === undefined || before.is === 'word') &&
    !(next !== undefined && piece && fieldOf(piece, next) !== undefined)
  );
}
