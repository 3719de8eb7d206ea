import type { Estimate } from '../gauge/estimate.js';
import { RULER_MM } from '../gauge/observations.js';
import { PIECE_FACTOR_VARIANCE, type Setting, unpairedFactor } from '../gauge/states.js';
import { normalBelow, normalDensity } from '../stats/normal.js';
import { tQuantile } from '../stats/student-t.js';
import type { Measure, Window } from './rows.js';

/** A row to measure the work at, and the chance that a reading there is expected to give. */
export type Checkpoint = { row: number; chance: number };

/** Laying out the same piece twice. From memory. */
const LAY_OUT = 0.005;
/** Spread of a whole piece's mean pitch from tension between rows. From memory. */
const ROW_TENSION = 0.005;
/** A proposal gives up at most this much of the chance the latest safe row would give. */
const GIVEN_UP = 0.01;
const STEP_ROWS = 5;
const EARLIEST_ROW = 10;
/** Rows that must still lie ahead, so that the stop row can move. */
const ROWS_AHEAD = 6;

/**
 * The row to measure at: the first multiple of five whose expected chance is within a point of the latest safe row's.
 * @param rowsInPiece R + j of the plan
 * @param reading the setting the work will be read in: hanging, on the machine
 * @returns undefined when the piece is too short to measure on the way
 */
export function checkpoint(
  window: Window,
  measure: Measure,
  rowsInPiece: number,
  row: Estimate,
  reading: Setting,
  target: Setting,
): Checkpoint | undefined {
  const latest = latestSafeRow(rowsInPiece, row);
  if (latest === undefined) return undefined;
  const state = reading.state === target.state ? 0 : unpairedFactor(reading, target).variance + PIECE_FACTOR_VARIANCE;
  const chanceAt = (at: number): number =>
    expectedChance(window, measure, rowsInPiece, Math.sqrt(varianceAfter(at, rowsInPiece, row, state)));
  const best = chanceAt(latest);
  let at = EARLIEST_ROW;
  while (at < latest && chanceAt(at) < best - GIVEN_UP) at += STEP_ROWS;
  return { row: at, chance: chanceAt(at) };
}

/** The last multiple of five at which a piece is too long already at most once in a hundred. */
export function latestSafeRow(rowsInPiece: number, row: Estimate): number | undefined {
  const safe = rowsInPiece * Math.exp(-tQuantile(0.99, row.nu) * row.sd) - 1;
  const latest = Math.floor(Math.min(safe, rowsInPiece - ROWS_AHEAD) / STEP_ROWS) * STEP_ROWS;
  if (rowsInPiece - ROWS_AHEAD < EARLIEST_ROW) return undefined;
  return Math.max(EARLIEST_ROW, latest);
}

/**
 * Variance of the piece's log pitch once a reading at row `at` is in.
 * The piece before it is a t, so its variance is s²(1 + 1/Σw)·nu/(nu − 2); the state factor is one unknown of the piece.
 */
export function varianceAfter(at: number, rowsInPiece: number, row: Estimate, stateVariance: number): number {
  const before = (row.sd ** 2 * row.nu) / (row.nu - 2);
  const lengthMm = at * Math.exp(row.mu);
  const reading =
    (RULER_MM / lengthMm) ** 2 + LAY_OUT ** 2 + (ROW_TENSION ** 2 * (rowsInPiece - at)) / at + stateVariance;
  return 1 / (1 / before + 1 / reading);
}

/** The chance expected of a normal with this spread, averaged over where the whole-row grid may fall. */
export function expectedChance(window: Window, measure: Measure, rowsInPiece: number, spread: number): number {
  const half = Math.log((window.hiMm - measure.fixedMm) / (window.loMm - measure.fixedMm)) / 2;
  const grid = 1 / (2 * rowsInPiece);
  const g = (x: number): number => x * normalBelow(x) + normalDensity(x);
  return (spread / grid) * (g((half + grid) / spread) - g((half - grid) / spread)) - 1;
}
