import { describe, expect, test } from 'vitest';
import type { Spacing } from '../../../core/gauge/estimate.js';
import { landingChance, rowsFor } from '../../../core/sizing/rows.js';
import { corrected } from '../../../core/work/correction.js';
import { pitchAfter } from '../../../core/work/pitch.js';
import type { Reading } from '../../../core/work/reading.js';
import { FOLDED_RING, WINDOW } from '../samples.js';
import { hanging, rested, TWO_PAIRS, workOf } from './samples.js';

const WORK = workOf();
const PAIRED = workOf(undefined, TWO_PAIRS);
const stopAt = (pitch: Spacing) => {
  const { rowsInPiece, chance } = rowsFor(WINDOW, FOLDED_RING, pitch);
  return { pitchMm: Math.exp(pitch.mu), sd: pitch.sd, rowsInPiece, chance };
};
const correctedBy = (readings: readonly Reading[], more: { work?: typeof WORK; knitted?: number } = {}) =>
  corrected(WINDOW, FOLDED_RING, more.work ?? WORK, {
    readings,
    stopAt: 106,
    knitted: more.knitted ?? readings.at(-1)?.row ?? 0,
  });

// Worked independently.
describe('what readings say of the piece', () => {
  test('at rest, row 60 at 320.04 mm: stop with 102 rows in the piece, .9884, where 107 would have .0072', () => {
    const pitch = pitchAfter(WORK, [rested(60, 320.04)]);
    expect(stopAt(pitch)).toEqual({
      pitchMm: expect.closeTo(5.32909, 5),
      sd: expect.closeTo(0.0082622, 7),
      rowsInPiece: 102,
      chance: expect.closeTo(0.9884, 4),
    });
    expect(landingChance(WINDOW, FOLDED_RING, 107, pitch)).toBeCloseTo(0.0072, 4);
  });

  test('the same hanging, with no pair known: 104 rows, .5753', () => {
    expect(stopAt(pitchAfter(WORK, [hanging(60, 320.04)]))).toEqual({
      pitchMm: expect.closeTo(5.27493, 5),
      sd: expect.closeTo(0.0287306, 7),
      rowsInPiece: 104,
      chance: expect.closeTo(0.5753, 4),
    });
  });

  test('hanging at 332 mm with two pairs known: 103 rows, .8752', () => {
    expect(stopAt(pitchAfter(PAIRED, [hanging(60, 332)]))).toEqual({
      pitchMm: expect.closeTo(5.31264, 5),
      sd: expect.closeTo(0.0149809, 7),
      rowsInPiece: 103,
      chance: expect.closeTo(0.8752, 4),
    });
  });

  test('a second hanging reading, row 80 at 441.5 mm, tells little more: the change off the machine is the same', () => {
    const pitch = pitchAfter(PAIRED, [hanging(60, 332), hanging(80, 441.5)]);
    expect(Math.exp(pitch.mu)).toBeCloseTo(5.30581, 5);
    expect(pitch.sd).toBeCloseTo(0.0141921, 7);
  });

  test('no reading leaves what the profile expects', () => {
    expect(pitchAfter(WORK, [])).toBe(WORK.row);
  });
});

describe('a correction', () => {
  test('moves the stop row where that gains, and shows the chance of both', () => {
    const { stop, before, passed } = correctedBy([rested(60, 320.04)]);
    expect([stop.rows, before.rows]).toEqual([101, 106]);
    expect(stop.chance).toBeCloseTo(0.9884, 4);
    expect(before.chance).toBeCloseTo(0.0072, 4);
    expect(passed).toBeUndefined();
  });

  test('leaves the stop row where the gain is under two points', () => {
    const { stop, before } = correctedBy([rested(60, 60 * 5.12)]);
    expect(stop).toEqual(before);
    expect(stop.rows).toBe(106);
  });

  test('of a piece knitted past its best row stops it where it is, and names that row', () => {
    const { stop, passed } = correctedBy([rested(104, 104 * 5.5)]);
    expect(stop.rows).toBe(104);
    expect(passed?.rows).toBeLessThan(100);
    expect(passed?.chance).toBeGreaterThan(stop.chance);
  });

  test('says how the piece runs against the profile', () => {
    expect(correctedBy([rested(60, 320.04)]).standing).toEqual({ word: 'usual', longer: expect.closeTo(0.05, 6) });
    const loose = correctedBy([rested(60, 60 * 5.08 * 1.11)]);
    expect(loose.standing?.word).toBe('a_little_loose');
    expect(correctedBy([rested(60, 60 * 5.08 * 1.16)]).standing?.word).toBe('loose');
    expect(correctedBy([rested(60, (60 * 5.08) / 1.16)]).standing?.word).toBe('tight');
  });

  test('without a reading keeps the chance of the plan', () => {
    const { stop, standing, next } = correctedBy([], { knitted: 12 });
    expect(stop.chance).toBeCloseTo(0.3844, 4);
    expect(standing).toBeUndefined();
    expect(next).toEqual({ is: 'none' });
  });
});
