import type { Spacing } from '../gauge/estimate.js';
import { type Measure, type RowChoice, rowsFor, rowsGiven, type Window } from '../sizing/rows.js';
import { type NextStep, nextStep } from './checkpoint.js';
import { pitchAfter, type Work } from './pitch.js';
import type { Reading } from './reading.js';
import { pitchChange, type Standing, standingOf } from './standing.js';

/** Work in hand: what was read of it, where it was to stop, and how many rows are knitted. */
export type InHand = { readings: readonly Reading[]; stopAt: number; knitted: number };

/** Where to stop now. Chances are those of this piece, as read. */
export type Correction = {
  /** The log pitch of this piece; the profile's until it is read. */
  pitch: Spacing;
  /** The rows to stop at: moved only for a gain worth moving for. */
  stop: RowChoice;
  /** The rows it was to stop at before. */
  before: RowChoice;
  /** The rows that would be best when more than that are knitted already. */
  passed: RowChoice | undefined;
  /** The latest reading against the profile. */
  standing: Standing | undefined;
  /** How much longer the rows since the last reading are, in logs, when that is more than chance. */
  pitchChange: number | undefined;
  next: NextStep;
};

/** A stop row moves only for this gain of chance. */
const WORTH_MOVING = 0.02;

/**
 * Weighs the readings of a piece against its profile and says where to stop.
 * @param repeat rows of a stripe repeat to stop at a multiple of, as in {@link rowsFor}
 */
export function corrected(
  window: Window,
  measure: Measure,
  work: Work,
  { readings, stopAt, knitted }: InHand,
  repeat?: number,
): Correction {
  const pitch = pitchAfter(work, readings);
  const given = (rows: number): RowChoice => rowsGiven(rows, window, measure, pitch);
  const best = rowsFor(window, measure, pitch, repeat);
  const before = given(stopAt);
  const reached = given(knitted);
  const isPast = best.rows < knitted;
  const passed = isPast && best.chance - reached.chance >= WORTH_MOVING ? best : undefined;
  const moved = best.chance - before.chance >= WORTH_MOVING ? best : before;
  const stop = isPast && moved.rows < knitted ? reached : moved;
  const [last, earlier] = [readings.at(-1), readings.at(-2)];
  return {
    pitch,
    stop,
    before,
    passed,
    standing: last && standingOf(work, last),
    pitchChange: last && earlier && pitchChange(earlier, last, work.rowsInPiece),
    next: nextStep(window, measure, work, readings, stop.chance, knitted),
  };
}
