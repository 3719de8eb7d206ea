import type { Spacing } from '../gauge/estimate.js';
import { type Factor, pieceFactor, type StateFactors } from '../gauge/factors.js';
import type { Setting, State } from '../gauge/measurement.js';
import { evidenceOf, type Reading } from './reading.js';

/** A piece on the machine: what the profile expects of it, its rows, and the setting its size is meant in. */
export type Work = {
  /** The log pitch of the next piece by the profile. */
  row: Spacing;
  /** R + j of the plan. */
  rowsInPiece: number;
  target: Setting;
  factors: StateFactors;
};

/** The change from a state to the one the size is meant in, for this piece. */
export const factorOf = ({ target, factors }: Work, state: State): Factor =>
  pieceFactor(factors, { state, form: target.form }, target);

/** Variance of a t: wider than its scale squared, since its own scatter is not known for sure. */
export const varianceOf = ({ sd, nu }: Spacing): number =>
  nu === Number.POSITIVE_INFINITY ? sd ** 2 : (sd ** 2 * nu) / (nu - 2);

/**
 * The log pitch of this piece once it was read: the profile's expectation and the readings, each by its precision.
 * @param readings any number; with none, what the profile expects
 * @returns a normal spacing: `nu` is infinite
 */
export function pitchAfter(work: Work, readings: readonly Reading[]): Spacing {
  if (readings.length === 0) return work.row;
  const before = varianceOf(work.row);
  const seen = evidenceOf(readings, work.rowsInPiece, (state) => factorOf(work, state));
  const precision = seen.reduce((sum, { variance }) => sum + 1 / variance, 1 / before);
  const mu = seen.reduce((sum, { y, variance }) => sum + y / variance, work.row.mu / before) / precision;
  return { mu, sd: Math.sqrt(1 / precision), nu: Number.POSITIVE_INFINITY };
}

/** The spread of the piece's log pitch that one more reading at this row will leave, known before it is read. */
export function spreadAfter(work: Work, readings: readonly Reading[], row: number, state: State): number {
  const { mu } = pitchAfter(work, readings);
  const hung = factorOf(work, state).delta;
  return pitchAfter(work, [...readings, { row, lengthMm: row * Math.exp(mu - hung), state }]).sd;
}
