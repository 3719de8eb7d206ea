import { describe, expect, test } from 'vitest';
import type { Estimate } from '../../../core/gauge/estimate.js';
import { UNPAIRED } from '../../../core/gauge/factors.js';
import type { State } from '../../../core/gauge/measurement.js';
import { checkpoint, expectedChance, latestSafeRow, nextStep } from '../../../core/work/checkpoint.js';
import { spreadAfter, type Work } from '../../../core/work/pitch.js';
import { FOLDED_RING, ONE_SWATCH, THREE_SWATCHES, WINDOW } from '../samples.js';

const workOf = (row: Estimate, rowsInPiece = 107): Work => ({
  row,
  rowsInPiece,
  target: { state: 'rested', form: 'tube' },
  factors: UNPAIRED,
});
const WORK = workOf(ONE_SWATCH);
/** Work whose hanging readings are known this well: the spread of the state factor of one piece. */
const known = (spread: number): Work => ({
  ...WORK,
  factors: {
    ...UNPAIRED,
    pieceVariance: spread ** 2,
    covariance: [
      [0, 0, 0],
      [0, 0, 0],
      [0, 0, 0],
    ],
  },
});
const chanceAt = (row: number, work = WORK, state: State = 'rested') =>
  expectedChance(WINDOW, FOLDED_RING, 107, spreadAfter(work, [], row, state));

// Worked independently by quadrature and by simulation of makers.
const proposed = (state: State, rowsInPiece = 107) =>
  checkpoint(WINDOW, FOLDED_RING, workOf(ONE_SWATCH, rowsInPiece), state);

describe('the row to measure at', () => {
  test('in the state the size is meant in is 60 of 107, where the chance comes to .9917', () => {
    expect(proposed('rested')).toEqual({ row: 60, chance: expect.closeTo(0.9917, 4) });
    expect(chanceAt(90)).toBeCloseTo(0.9992, 4);
  });

  test('hanging, with no pair of readings known, is 50 of 107, where the chance comes to .576', () => {
    expect(proposed('hanging')).toEqual({ row: 50, chance: expect.closeTo(0.576, 3) });
    expect(chanceAt(90, WORK, 'hanging')).toBeCloseTo(0.585, 2);
  });

  test('hanging, with two pairs known, would be 75: .884 there against .892 at the latest', () => {
    const twoPairs = known(0.0131);
    expect(chanceAt(75, twoPairs, 'hanging')).toBeCloseTo(0.884, 3);
    expect(chanceAt(90, twoPairs, 'hanging')).toBeCloseTo(0.892, 3);
    expect(checkpoint(WINDOW, FOLDED_RING, twoPairs, 'hanging')?.row).toBe(75);
  });

  test('is never behind the rows that are knitted', () => {
    expect(checkpoint(WINDOW, FOLDED_RING, WORK, 'rested', [], 72)?.row).toBe(75);
    expect(checkpoint(WINDOW, FOLDED_RING, WORK, 'rested', [], 95)).toBeUndefined();
  });

  test('is none in a piece too short to change', () => {
    expect(proposed('rested', 15)).toBeUndefined();
    expect(proposed('rested', 16)?.row).toBe(10);
  });
});

describe('the latest safe row', () => {
  // 107·e^(−3.747·.042523) − 1 = 90.2; 107·e^(−3.143·.029944) − 1 = 96.4.
  test('is 90 of 107 on one swatch and 95 on three', () => {
    expect(latestSafeRow(WORK)).toBe(90);
    expect(latestSafeRow(workOf(THREE_SWATCHES))).toBe(95);
  });

  // 107·e^(−3.747·.0447) = 90.5, and the row being knitted is one more.
  test('counts the row that is on the needles', () => {
    expect(latestSafeRow(workOf({ ...ONE_SWATCH, sd: 0.0447 }))).toBe(85);
  });

  test('leaves six rows to change and is never before row 10', () => {
    expect(latestSafeRow(workOf({ ...ONE_SWATCH, sd: 0.0001 }))).toBe(100);
    expect(latestSafeRow(workOf({ ...ONE_SWATCH, sd: 0.3 }, 17))).toBe(10);
  });
});

describe('what is left unknown after a reading', () => {
  // V0 = .0425229²·4/2 = .0036164; v = (1.6/304.8)² + .005² + .005²·47/60 = 7.2139e-5; 1/(1/V0 + 1/v) = 7.0728e-5.
  test('at rest at row 60 is a spread of .84 %', () => {
    expect(spreadAfter(WORK, [], 60, 'rested') ** 2).toBeCloseTo(7.0728e-5, 9);
  });

  test('shrinks the later the reading and grows with the doubt about the state', () => {
    expect(spreadAfter(WORK, [], 80, 'rested')).toBeLessThan(spreadAfter(WORK, [], 60, 'rested'));
    expect(spreadAfter(WORK, [], 60, 'hanging')).toBeGreaterThan(spreadAfter(WORK, [], 60, 'rested'));
  });
});

describe('after a reading', () => {
  const read = (row: number, lengthMm: number, state: State) => [{ row, lengthMm, state }];

  test('that is clear nothing more needs measuring', () => {
    expect(nextStep(WINDOW, FOLDED_RING, WORK, read(60, 320, 'rested'), 0.99)).toEqual({ is: 'none' });
  });

  test('hanging with no pair known, what helps is one piece read hanging and again at rest', () => {
    expect(nextStep(WINDOW, FOLDED_RING, WORK, read(60, 320, 'hanging'), 0.58)).toEqual({ is: 'pair' });
  });

  test('taken early at rest, a second further on pays', () => {
    const next = nextStep(WINDOW, FOLDED_RING, WORK, read(15, 78, 'rested'), 0.7);
    expect(next).toMatchObject({ is: 'measure_again' });
    expect(next.is === 'measure_again' ? next.at.row : 0).toBeGreaterThanOrEqual(25);
  });
});

// Worked independently: 90 % needs a total spread of .0139, 95 % one of .0116.
test('the spread that a chance of 90 or 95 % takes', () => {
  const chance = (spread: number) => expectedChance(WINDOW, FOLDED_RING, 107, spread);
  expect(chance(0.0139)).toBeCloseTo(0.9, 2);
  expect(chance(0.0116)).toBeCloseTo(0.95, 2);
});
