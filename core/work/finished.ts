import type { Count } from '../gauge/measurement.js';
import type { Measure } from '../sizing/rows.js';
import { type Reading, rowsToCome } from './reading.js';

/**
 * What a finished size measures of the fabric: D = k·(count + extra)·spacing + fixed, turned round. The ruler read the
 * folded size, so that is the length that weighs.
 * @param count rows cranked, or needles
 * @param finishedMm the size as it came out, above the fixed part
 * @source common practice, no source: a finished piece is the best swatch
 */
export const finishedCount = ({ share, extra, fixedMm }: Measure, count: number, finishedMm: number): Count => ({
  count: share * (count + extra),
  overMm: finishedMm - fixedMm,
  how: 'read',
});

/**
 * What a reading on the way measures of the whole piece once it is done: its rows over their length, as far as they
 * stand for the rows knitted after them.
 */
export const readingCount = ({ row, lengthMm }: Reading, rowsInPiece: number): Count => ({
  count: row,
  overMm: lengthMm,
  how: 'read',
  spreadMm: lengthMm * Math.sqrt(rowsToCome(row, rowsInPiece)),
});
