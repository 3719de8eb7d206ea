import { RULER_MM } from '../gauge/swatches.js';
import { tQuantile } from '../stats/student-t.js';
import { factorOf, pitchAfter, type Work } from './pitch.js';
import { evidenceOf, type Reading, ROW_TENSION } from './reading.js';

/** How a piece runs against the profile: long rows are loose, short ones tight. */
export type Standing = {
  /** How much longer than expected each row is, as a share; below 0 shorter. */
  longer: number;
  word: 'usual' | 'a_little_loose' | 'a_little_tight' | 'loose' | 'tight';
};

/** Why a reading cannot stand as it is, as data. `likelyMm` and `likelyRow` are what the slip may have hidden. */
export type Doubt =
  | { is: 'shorter_than_before'; before: Reading }
  | { is: 'twice_expected' | 'unusual'; expectedMm: number; likelyRow: number };

/** The t quantiles of one piece in ten, twenty and a hundred, either side. */
const LITTLE = 0.9;
const CLEAR = 0.975;
const QUESTIONED = 0.995;

/** How the piece runs by the reading that is in. */
export function standingOf(work: Work, reading: Reading): Standing {
  const z = surprise(work, reading);
  const beyond = (p: number): boolean => Math.abs(z) > tQuantile(p, work.row.nu);
  const side = z > 0 ? 'loose' : 'tight';
  const word = beyond(CLEAR) ? side : beyond(LITTLE) ? (`a_little_${side}` as const) : 'usual';
  return { longer: Math.expm1(excess(work, reading)), word };
}

/**
 * Why a reading should be asked about before it is kept: shorter than an earlier one of the same state by more than
 * rulers err, more than twice what is expected or less than half, or beyond what one sound piece in a hundred shows.
 * @param earlier readings already kept
 */
export function doubtOf(work: Work, reading: Reading, earlier: readonly Reading[]): Doubt | undefined {
  const before = earlier.find(
    (r) =>
      r.state === reading.state &&
      (r.row - reading.row) * (r.lengthMm - reading.lengthMm) < 0 &&
      Math.abs(r.lengthMm - reading.lengthMm) > 3 * RULER_MM * Math.SQRT2,
  );
  if (before !== undefined) return { is: 'shorter_than_before', before };

  const known = earlier.length > 0 ? pitchAfter(work, earlier) : work.row;
  const pitchMm = Math.exp(known.mu - factorOf(work, reading.state).delta);
  const expectedMm = reading.row * pitchMm;
  const likelyRow = Math.max(1, Math.round(reading.lengthMm / pitchMm));
  if (reading.lengthMm > 2 * expectedMm || reading.lengthMm < expectedMm / 2) {
    return { is: 'twice_expected', expectedMm, likelyRow };
  }
  const unusual = Math.abs(surprise({ ...work, row: known }, reading)) > tQuantile(QUESTIONED, work.row.nu);
  return unusual ? { is: 'unusual', expectedMm, likelyRow } : undefined;
}

/** ln of the reading's pitch, converted to the target state, over the expected one. */
const excess = (work: Work, { row, lengthMm, state }: Reading): number =>
  Math.log(lengthMm / row) + factorOf(work, state).delta - work.row.mu;

/** z = (y − mu)/√(s²(1 + 1/Σw) + v). */
function surprise(work: Work, reading: Reading): number {
  const [seen] = evidenceOf([reading], work.rowsInPiece, (state) => factorOf(work, state));
  return excess(work, reading) / Math.sqrt(work.row.sd ** 2 + (seen?.variance ?? 0));
}

/**
 * How much longer the rows between two readings of one state are than those before, in logs, when that is more than
 * rulers and rows explain (three deviations); undefined otherwise.
 */
export function pitchChange(first: Reading, second: Reading, rowsInPiece: number): number | undefined {
  const [rows, lengthMm] = [second.row - first.row, second.lengthMm - first.lengthMm];
  if (first.state !== second.state || rows <= 0 || lengthMm <= 0) return undefined;
  const change = Math.log(lengthMm / rows / (first.lengthMm / first.row));
  const variance =
    (2 * RULER_MM ** 2) / lengthMm ** 2 +
    (RULER_MM / first.lengthMm) ** 2 +
    ROW_TENSION ** 2 * rowsInPiece * (1 / first.row + 1 / rows);
  return Math.abs(change) > 3 * Math.sqrt(variance) ? change : undefined;
}
