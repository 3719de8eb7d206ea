import type { Piece } from '../../../core/index.js';
import type { Size } from '../../request.js';
import { type BareUnit, typedValue } from '../lengths.js';
import {
  claim,
  freeQuantities,
  indexesBetween,
  markAt,
  quantityAtIndex,
  type Sheet,
  said,
  saidBetween,
  wordAt,
} from '../sheet.js';
import { rangeOf } from './lone.js';

const JOINTS = ['and', 'or'];

/**
 * Several sizes of two sides each, `11 x 6 and 12 x 7`: of the two that such a pair means for the piece, where the
 * message has no other number. Claims them.
 */
export function readSizePairs(sheet: Sheet, piece: Piece, bare: BareUnit): Size[] | undefined {
  const [first, second, ...more] = piece.pair;
  const numbers = freeQuantities(sheet);
  const pairs = numbers.flatMap((i, k) => (k % 2 === 0 ? [{ from: i, to: numbers[k + 1] ?? i }] : []));
  const isSeveral =
    pairs.length > 1 &&
    pairs.every(({ from, to }) => to === from + 2 && markAt(sheet, from + 1) === 'by') &&
    pairs.slice(1).every(({ from }, k) => isJoined(sheet, pairs[k]?.to ?? 0, from));
  if (first === undefined || second === undefined || more.length > 0 || !isSeveral) return undefined;
  const typedAt = (id: string, i: number) => {
    const quantity = quantityAtIndex(sheet, i);
    if (quantity === undefined) throw new Error('a number of a pair is a number');
    return typedValue(quantity, bare, said(sheet, i), rangeOf(piece.asks[id]));
  };
  const sizes = pairs.map(({ from, to }) => ({
    label: saidBetween(sheet, from, to),
    values: { [first]: typedAt(first, from), [second]: typedAt(second, to) },
  }));
  claim(sheet, 'one of several sizes', ...pairs.flatMap(({ from, to }) => indexesBetween(from, to)));
  return sizes;
}

/** True for numbers with nothing but a joint between them: `and`, `, or`, a comma. */
const isJoined = (sheet: Sheet, before: number, next: number): boolean =>
  next > before + 1 &&
  indexesBetween(before + 1, next - 1).every(
    (i) => markAt(sheet, i) === 'comma' || JOINTS.includes(wordAt(sheet, i) ?? ''),
  );
