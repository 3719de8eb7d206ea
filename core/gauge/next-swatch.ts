import type { Measure, Window } from '../sizing/rows.js';
import { tBetween } from '../stats/student-t.js';
import type { Estimate } from './estimate.js';

/**
 * The chance to expect of the best row count once more swatches are in, before they are knitted.
 *
 * Averaged over what they may turn out to be, neither nu nor s² changes, only the weight behind the mean grows:
 * 2·F(h/(s·√(1 + 1/(Σw + w)))) − 1, with h half the window in logs. Whole rows are passed over, worth about .002.
 * @param weight of the swatches to come together; 0 for the chance as it stands, infinite for the limit
 */
export function chanceAfterSwatches(window: Window, measure: Measure, row: Estimate, weight: number): number {
  const half = Math.log((window.hiMm - measure.fixedMm) / (window.loMm - measure.fixedMm)) / 2;
  const z = half / Math.sqrt(row.s2 * (1 + 1 / (row.weight + weight)));
  return tBetween(-z, z, row.nu);
}
