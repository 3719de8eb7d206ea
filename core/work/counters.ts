import { LAY_OUT } from '../gauge/estimate.js';
import type { State } from '../gauge/measurement.js';
import { RULER_MM } from '../gauge/swatches.js';
import { tQuantile } from '../stats/student-t.js';
import { factorOf, pitchAfter, varianceOf, type Work } from './pitch.js';
import type { Reading } from './reading.js';

/** What a length says of two counters that disagree. */
export type Verdict = {
  /** The rows the length implies, with the range that holds 95 times in 100. */
  rows: { expected: number; lo: number; hi: number };
  /** How much likelier the first count is than the second. */
  odds: number;
  /** The count to trust: one is ten times likelier than the other. */
  trust: 'first' | 'second' | undefined;
  /** Whether any length read so could tell the two apart. */
  canTell: boolean;
};

const CLEAR_ODDS = 10;
/** Beyond this, odds are as good as certain. */
const MOST_LOG_ODDS = 30;
/** Odds of ten to one, for a length that falls on one of the counts, need them √(2·ln 10) = 2.146 deviations apart. */
const DEVIATIONS_APART = 2.146;

/**
 * Weighs two counts of the rows on the machine by the length they measure.
 *
 * Where a reading in the same state was taken while both agreed, its pitch is used as it hangs: the change of state is
 * the same in both and cancels.
 * @param counts two different counts of rows, above 0
 * @param agreed readings taken while both counters agreed, oldest first
 */
export function weighed(
  work: Work,
  counts: readonly [number, number],
  length: { lengthMm: number; state: State },
  agreed: readonly Reading[] = [],
): Verdict {
  const same = agreed.filter((r) => r.state === length.state);
  const cancels = same.length > 0;
  const upTo = { ...(cancels ? asItIs(work, length.state) : work), rowsInPiece: Math.max(...counts) };
  const pitch = pitchAfter(upTo, cancels ? same : agreed);
  const { delta, variance } = factorOf(upTo, length.state);

  const sigma = Math.sqrt(pitch.sd ** 2 + (RULER_MM / length.lengthMm) ** 2 + LAY_OUT ** 2 + variance);
  const implied = Math.log(length.lengthMm) + delta - pitch.mu;
  const range = Math.exp(tQuantile(0.975, pitch.nu) * sigma);
  const z = (count: number): number => (implied - Math.log(count)) / sigma;
  const odds = oddsOf(z(counts[0]) ** 2, z(counts[1]) ** 2, pitch.nu);
  const expected = Math.exp(implied);
  return {
    rows: { expected, lo: expected / range, hi: expected * range },
    odds,
    trust: odds >= CLEAR_ODDS ? 'first' : odds <= 1 / CLEAR_ODDS ? 'second' : undefined,
    canTell: sigma <= Math.abs(Math.log(counts[0] / counts[1])) / DEVIATIONS_APART,
  };
}

/** How much likelier the first of two squared deviations is than the second: a ratio of t densities, normal at infinity. */
function oddsOf(first: number, second: number, nu: number): number {
  const log =
    nu === Number.POSITIVE_INFINITY
      ? (second - first) / 2
      : ((nu + 1) / 2) * (Math.log1p(second / nu) - Math.log1p(first / nu));
  return Math.exp(Math.max(-MOST_LOG_ODDS, Math.min(MOST_LOG_ODDS, log)));
}

/** The same piece with its pitch as it is in this state, where no change of state stands between two readings. */
function asItIs(work: Work, state: State): Work {
  const { delta, variance } = factorOf(work, state);
  if (variance === 0) return work;
  const row = { mu: work.row.mu - delta, sd: Math.sqrt(varianceOf(work.row) + variance), nu: Number.POSITIVE_INFINITY };
  return { ...work, row, target: { ...work.target, state } };
}
