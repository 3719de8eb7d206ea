import type { Spacing } from '../gauge/estimate.js';
import { tBetween } from '../stats/student-t.js';

/** The range a finished dimension must end in, in mm; `lo` is below `hi`. */
export type Window = { loMm: number; hiMm: number };

/** How rows or needles make a dimension: D = share·(count + extra)·spacing + fixed. */
export type Measure = { share: number; extra: number; fixedMm: number };

export type RowChoice = {
  /** Rows to crank. */
  rows: number;
  /** Rows in the piece once grafting has added its own: R + j. */
  rowsInPiece: number;
  /** The median of the finished dimension, in mm. */
  expectedMm: number;
  /** The chance that the finished dimension ends inside the window. */
  chance: number;
  /** The rows that would most likely end on each edge of the window, to a fraction of a row. */
  rowsAtLo: number;
  rowsAtHi: number;
};

/** The dimension that a count makes at a spacing, in mm. */
export const dimensionMm = (measure: Measure, count: number, spacingMm: number): number =>
  measure.share * (count + measure.extra) * spacingMm + measure.fixedMm;

/** The fewest that come to at least a dimension at a spacing: a whole number. */
export const countFor = ({ share, extra, fixedMm }: Measure, leastMm: number, spacingMm: number): number =>
  Math.ceil((leastMm - fixedMm) / (share * spacingMm) - extra);

/**
 * The chance that the next piece ends inside a window.
 * @param rowsInPiece R + j, above 0
 * @returns between 0 and 1; 0 when the window lies wholly at or under the fixed part
 */
export function landingChance(window: Window, measure: Measure, rowsInPiece: number, row: Spacing): number {
  const { lo, hi } = stretchable(window, measure);
  if (hi <= 0) return 0;
  const centre = Math.log(measure.share * rowsInPiece) + row.mu;
  const z = (mm: number): number => (mm <= 0 ? Number.NEGATIVE_INFINITY : (Math.log(mm) - centre) / row.sd);
  return tBetween(z(lo), z(hi), row.nu);
}

/**
 * The rows that give the best chance of ending inside a window, in closed form.
 *
 * The t density is symmetric and unimodal in ln(R + j), so the best count is the allowed one nearest in logs to
 * X = √(lo'·hi')/(k·c): f, the largest allowed at or under X, if X² ≤ f·g, else g, the next allowed.
 * @param window with lo above the fixed part of the measure
 * @param row gauge of the next piece
 * @param repeat rows of a stripe repeat, which R + j must be a multiple of; 1 when plain
 */
export function rowsFor(window: Window, measure: Measure, row: Spacing, repeat = 1): RowChoice {
  const { lo, hi } = stretchable(window, measure);
  const x = Math.sqrt(lo * hi) / (measure.share * Math.exp(row.mu));
  const least = repeat === 1 ? measure.extra + 1 : Math.ceil((measure.extra + 1) / repeat) * repeat;
  const below = least + Math.floor((x - least) / repeat) * repeat;
  const f = Math.max(least, below);
  const g = f + repeat;
  const rowsInPiece = x * x <= f * g ? f : g;
  return rowsGiven(rowsInPiece - measure.extra, window, measure, row);
}

/**
 * What a given number of cranked rows comes to: the size to expect, in mm, and the chance of ending inside the window.
 * @param rows cranked, without those that grafting makes; 1 or more
 * @param row mean and spread of the logarithm of a row in mm
 */
export function rowsGiven(rows: number, window: Window, measure: Measure, row: Spacing): RowChoice {
  const rowsInPiece = rows + measure.extra;
  const { lo, hi } = stretchable(window, measure);
  const c = Math.exp(row.mu);
  return {
    rows,
    rowsInPiece,
    expectedMm: dimensionMm(measure, rows, c),
    chance: landingChance(window, measure, rowsInPiece, row),
    rowsAtLo: lo / (measure.share * c) - measure.extra,
    rowsAtHi: hi / (measure.share * c) - measure.extra,
  };
}

const stretchable = (window: Window, measure: Measure) => ({
  lo: window.loMm - measure.fixedMm,
  hi: window.hiMm - measure.fixedMm,
});
