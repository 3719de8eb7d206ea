import { describe, expect, test } from 'vitest';
import type { Setting } from '../../../core/gauge/states.js';
import { checkpoint, expectedChance, latestSafeRow, varianceAfter } from '../../../core/sizing/checkpoint.js';
import { FOLDED_RING, ONE_SWATCH, THREE_SWATCHES, WINDOW } from '../samples.js';

const RESTED: Setting = { state: 'rested', form: 'tube' };
const HANGING: Setting = { state: 'hanging', form: 'tube' };
const chanceAt = (row: number, stateSd = 0) =>
  expectedChance(WINDOW, FOLDED_RING, 107, Math.sqrt(varianceAfter(row, 107, ONE_SWATCH, stateSd ** 2)));
const proposed = (reading: Setting, rowsInPiece = 107) =>
  checkpoint(WINDOW, FOLDED_RING, rowsInPiece, ONE_SWATCH, reading, RESTED);

// Worked independently by quadrature and by simulation of makers.
describe('the row to measure at', () => {
  test('in the state the size is meant in is 60 of 107, where the chance comes to .9917', () => {
    expect(proposed(RESTED)).toEqual({ row: 60, chance: expect.closeTo(0.9917, 4) });
    expect(chanceAt(90)).toBeCloseTo(0.9992, 4);
  });

  test('hanging, with no pair of readings known, is 50 of 107, where the chance comes to .576', () => {
    expect(proposed(HANGING)).toEqual({ row: 50, chance: expect.closeTo(0.576, 3) });
    expect(chanceAt(90, Math.hypot(0.03, 0.01))).toBeCloseTo(0.585, 2);
  });

  test('hanging, with two pairs known, would be 75: .884 there against .892 at the latest', () => {
    expect(chanceAt(75, 0.0131)).toBeCloseTo(0.884, 3);
    expect(chanceAt(90, 0.0131)).toBeCloseTo(0.892, 3);
    expect(chanceAt(70, 0.0131)).toBeLessThan(chanceAt(90, 0.0131) - 0.01);
  });

  test('is none in a piece too short to change', () => {
    expect(proposed(RESTED, 15)).toBeUndefined();
    expect(proposed(RESTED, 16)?.row).toBe(10);
  });
});

describe('the latest safe row', () => {
  // 107·e^(−3.747·.042523) − 1 = 90.2; 107·e^(−3.143·.029944) − 1 = 96.4.
  test('is 90 of 107 on one swatch and 95 on three', () => {
    expect(latestSafeRow(107, ONE_SWATCH)).toBe(90);
    expect(latestSafeRow(107, THREE_SWATCHES)).toBe(95);
  });

  // 107·e^(−3.747·.0447) = 90.5, and the row being knitted is one more.
  test('counts the row that is on the needles', () => {
    expect(latestSafeRow(107, { ...ONE_SWATCH, sd: 0.0447 })).toBe(85);
  });

  test('leaves six rows to change and is never before row 10', () => {
    expect(latestSafeRow(107, { ...ONE_SWATCH, sd: 0.0001 })).toBe(100);
    expect(latestSafeRow(17, { ...ONE_SWATCH, sd: 0.3 })).toBe(10);
  });
});

describe('what is left unknown after a reading', () => {
  // V0 = .0425229²·4/2 = .0036164; v = (1.6/304.8)² + .005² + .005²·47/60 = 7.2139e-5; 1/(1/V0 + 1/v) = 7.0728e-5.
  test('at rest at row 60 is a spread of .84 %', () => {
    expect(varianceAfter(60, 107, ONE_SWATCH, 0)).toBeCloseTo(7.0728e-5, 9);
  });

  test('shrinks the later the reading and grows with the doubt about the state', () => {
    expect(varianceAfter(80, 107, ONE_SWATCH, 0)).toBeLessThan(varianceAfter(60, 107, ONE_SWATCH, 0));
    expect(varianceAfter(60, 107, ONE_SWATCH, 0.001)).toBeGreaterThan(varianceAfter(60, 107, ONE_SWATCH, 0));
  });
});
