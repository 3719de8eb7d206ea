import type { Estimate } from '../../../core/gauge/estimate.js';
import { factorsFrom, pairsIn, type StateFactors, UNPAIRED } from '../../../core/gauge/factors.js';
import type { Work } from '../../../core/work/pitch.js';
import type { Reading } from '../../../core/work/reading.js';
import { ONE_SWATCH, rowsIn, tube } from '../samples.js';

/** A pouch of 107 rows on the machine, its size meant at rest. */
export const workOf = (row: Estimate = ONE_SWATCH, factors: StateFactors = UNPAIRED, rowsInPiece = 107): Work => ({
  row,
  rowsInPiece,
  target: { state: 'rested', form: 'tube' },
  factors,
});

export const hanging = (row: number, lengthMm: number): Reading => ({ row, lengthMm, state: 'hanging' });
export const rested = (row: number, lengthMm: number): Reading => ({ row, lengthMm, state: 'rested' });

/** 320 mm drew in to 306, and 302 to 291. */
export const TWO_PAIRS = factorsFrom(
  pairsIn(
    rowsIn([
      tube('p', 60, 320, { state: 'hanging' }),
      tube('p', 60, 306),
      tube('q', 60, 302, { state: 'hanging' }),
      tube('q', 60, 291),
    ]),
  ),
);
