import type { State } from '../gauge/measurement.js';

/**
 * Loop constants Ks of plain knitting, l² = Ks·w·c, by relaxation.
 * @source Munden, J. Text. Inst. 50 (1959) T448: dry relaxed 19.0, wet relaxed 21.6; from memory
 */
const LOOP_CONSTANT: Record<State, number> = { hanging: 19, rested: 19, washed: 21.6 };

/** How far a loop length worked out from gauge alone may be off, as a coefficient of variation. From memory. */
export const LOOP_FROM_GAUGE_CV = 0.2;

/** The yarn in one stitch, in mm, from stitch width and row height in mm: √(Ks·w·c). */
export const loopLengthMm = (stitchMm: number, rowMm: number, state: State): number =>
  Math.sqrt(LOOP_CONSTANT[state] * stitchMm * rowMm);
