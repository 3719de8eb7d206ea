import type { State } from '../gauge/measurement.js';
import type { Measure, Window } from '../sizing/rows.js';
import { normalBelow, normalDensity } from '../stats/normal.js';
import { tQuantile } from '../stats/student-t.js';
import { factorOf, pitchAfter, spreadAfter, type Work } from './pitch.js';
import { evidenceOf, type Reading } from './reading.js';

/** A row to measure the work at, and the chance that a reading there is expected to give. */
export type Checkpoint = { row: number; chance: number };

/** A proposal gives up at most this much of the chance the latest safe row would give. */
const GIVEN_UP = 0.01;
const STEP_ROWS = 5;
const EARLIEST_ROW = 10;
/** Rows that must still lie ahead, so that the stop row can move. */
const ROWS_AHEAD = 6;

/**
 * The row to measure at: the first multiple of five whose expected chance is within a point of the latest safe row's.
 * @param state the state the work will be read in: hanging, on the machine
 * @param readings those taken already; the row lies after them
 * @param knitted rows on the machine; the row is not behind them
 * @returns undefined when the piece is too short to measure, or measure again, on the way
 */
export function checkpoint(
  window: Window,
  measure: Measure,
  work: Work,
  state: State,
  readings: readonly Reading[] = [],
  knitted = 0,
): Checkpoint | undefined {
  const latest = latestSafeRow(work, readings);
  const reached = Math.ceil(knitted / STEP_ROWS) * STEP_ROWS;
  const first = Math.max(EARLIEST_ROW, reached, next(Math.max(0, ...readings.map((r) => r.row))));
  if (latest === undefined || first > latest) return undefined;
  const chanceAt = (row: number): number =>
    expectedChance(window, measure, work.rowsInPiece, spreadAfter(work, readings, row, state));
  const enough = chanceAt(latest) - GIVEN_UP;
  // The chance rises from row to row, so that halving the rows left finds the first.
  let [from, row] = [first, latest];
  while (from < row) {
    const middle = from + Math.floor((row - from) / (2 * STEP_ROWS)) * STEP_ROWS;
    if (chanceAt(middle) < enough) from = middle + STEP_ROWS;
    else row = middle;
  }
  return { row, chance: chanceAt(row) };
}

const next = (row: number): number => (Math.floor(row / STEP_ROWS) + 1) * STEP_ROWS;

/** The last multiple of five at which a piece is too long already at most once in a hundred. */
export function latestSafeRow(work: Work, readings: readonly Reading[] = []): number | undefined {
  const { mu, sd, nu } = pitchAfter(work, readings);
  const rows = work.rowsInPiece * Math.exp(work.row.mu - mu);
  if (rows - ROWS_AHEAD < EARLIEST_ROW) return undefined;
  const safe = rows * Math.exp(-tQuantile(0.99, nu) * sd) - 1;
  return Math.max(EARLIEST_ROW, Math.floor(Math.min(safe, rows - ROWS_AHEAD) / STEP_ROWS) * STEP_ROWS);
}

/** The chance expected of a normal with this spread, averaged over where the whole-row grid may fall. */
export function expectedChance(window: Window, measure: Measure, rowsInPiece: number, spread: number): number {
  const half = Math.log((window.hiMm - measure.fixedMm) / (window.loMm - measure.fixedMm)) / 2;
  const grid = 1 / (2 * rowsInPiece);
  const g = (x: number): number => x * normalBelow(x) + normalDensity(x);
  return Math.min(1, (spread / grid) * (g((half + grid) / spread) - g((half - grid) / spread)) - 1);
}

/** A second reading is worth its row only below this chance, for this gain, and this many rows on. */
const SECOND = { below: 0.95, gain: 0.03, rowsOn: 10 };

/** What to do after a reading: measure again at a row, teach the change off the machine, or nothing more. */
export type NextStep = { is: 'measure_again'; at: Checkpoint } | { is: 'pair' } | { is: 'none' };

/**
 * Whether a second reading pays, once one is in.
 * @param chance what the stop row has now
 */
export function nextStep(
  window: Window,
  measure: Measure,
  work: Work,
  readings: readonly Reading[],
  chance: number,
  knitted = 0,
): NextStep {
  const last = readings.at(-1);
  if (last === undefined || chance >= SECOND.below) return { is: 'none' };
  const again = checkpoint(window, measure, work, last.state, readings, knitted);
  if (again && again.chance - chance >= SECOND.gain && again.row - last.row >= SECOND.rowsOn) {
    return { is: 'measure_again', at: again };
  }
  const [seen] = evidenceOf([last], work.rowsInPiece, (state) => factorOf(work, state));
  return seen !== undefined && seen.factor.variance > seen.variance / 2 ? { is: 'pair' } : { is: 'none' };
}
