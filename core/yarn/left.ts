import type { Spacing } from '../gauge/estimate.js';
import type { Step } from '../piece.js';
import { type Measure, type RowChoice, rowsGiven, type Window } from '../sizing/rows.js';
import { normalBelow, normalQuantile } from '../stats/normal.js';
import { ENOUGH } from './enough.js';
import { used } from './need.js';

/**
 * Yarn that is left for rows: all in grams, or all in metres. `toCome` is what must be kept back for tails, seams and
 * grafting; `perRow` what a row takes, known to `cv`.
 */
export type YarnLeft = { left: number; toCome: number; perRow: number; cv: number };

/** Rows that yarn left will make: half of the time fewer than expected, and this often at least as many as promised. */
export type RowsLeft = { expected: number; promised: number };

/** The rows that yarn left makes, none where it does not even make the tails. */
export function rowsLeft({ left, toCome, perRow, cv }: YarnLeft, sure = ENOUGH): RowsLeft {
  const rows = Math.max(0, left - toCome) / perRow;
  return { expected: Math.floor(rows), promised: Math.floor(rows * Math.exp(-normalQuantile(sure) * cv)) };
}

/** Whether yarn left lasts for the rows to go. `joinBy` is the row to join a new ball at the latest, where it may not. */
export type Lasting = RowsLeft & { chance: number; lasts: boolean; joinBy: number | undefined };

/**
 * Whether yarn left lasts to the stop row, with the chance that it does.
 * @param at the row the work stands at; @param stopAt the last row to crank
 */
export function lasting(yarn: YarnLeft, at: number, stopAt: number, sure = ENOUGH): Lasting {
  const rows = rowsLeft(yarn, sure);
  const toGo = Math.max(0, stopAt - at);
  const forRows = yarn.left - yarn.toCome;
  const chance = chanceOf(forRows, toGo * yarn.perRow, yarn.cv);
  const lasts = chance >= sure;
  return { ...rows, chance, lasts, joinBy: lasts ? undefined : at + Math.min(rows.promised, toGo) };
}

function chanceOf(have: number, need: number, cv: number): number {
  if (have < 0) return 0;
  if (need === 0) return 1;
  return have === 0 ? 0 : normalBelow(Math.log(have / need) / cv);
}

/**
 * The main yarn, in metres, that a piece takes beside the rows that yarn left is for: tails, seams, grafting, a fringe,
 * a flap.
 * @param rowStitches stitches of those rows: needles by rows, of all parts
 * @param isBegun the tail that is left at the first row is then cut already
 */
export function yarnToComeM(steps: readonly Step[], loopMm: number, rowStitches: number, isBegun: boolean): number {
  const knits = ({ yarn = [] }: Step): boolean =>
    yarn.some(({ role, stitches = 0 }) => role === 'main' && stitches > 0);
  const toCome = isBegun ? steps.slice(Math.max(0, steps.findIndex(knits))) : steps;
  const mm = used(toCome, 'main', (_, { stitches = 0, lengthMm = 0 }) => stitches * loopMm + lengthMm);
  return Math.max(0, mm - rowStitches * loopMm) / 1000;
}

/**
 * The largest window as wide as the one asked for that a number of rows still reaches: the one whose best rows they are.
 * @param most rows that can be cranked in all
 * @param repeat rows of a stripe repeat, as in `rowsFor`
 * @returns undefined where no row, or no whole repeat, can be made
 */
export function reachableWindow(
  asked: Window,
  measure: Measure,
  row: Spacing,
  most: number,
  repeat = 1,
): (Window & RowChoice) | undefined {
  const inPiece = repeat === 1 ? most + measure.extra : Math.floor((most + measure.extra) / repeat) * repeat;
  const rows = inPiece - measure.extra;
  if (rows < 1) return undefined;
  // √(lo·hi) = k·(R + j)·c, and hi − lo as it was.
  const middleMm = measure.share * inPiece * Math.exp(row.mu);
  const halfMm = (asked.hiMm - asked.loMm) / 2;
  const loMm = Math.sqrt(middleMm ** 2 + halfMm ** 2) - halfMm + measure.fixedMm;
  const window = { loMm, hiMm: loMm + 2 * halfMm };
  return { ...window, ...rowsGiven(rows, window, measure, row) };
}
