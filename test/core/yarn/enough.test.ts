import { describe, expect, test } from 'vitest';
import { chanceEnough, leastBalls, sureEnough, together, toHoldM, withReserve } from '../../../core/yarn/enough.js';
import { valueIn, yarnProblems } from './samples.js';

/** A pouch of 106 rows: 132.025 m of stitches, 1.190 m cut. */
const pouchAt = (loopCv: number) => ({
  lengthM: 133.215,
  cv: Math.hypot(132.025 * loopCv, 1.19 * 0.2) / 133.215,
});
const twelve = (loopCv: number) => ({ ...pouchAt(loopCv), lengthM: 12 * 133.215 });

// Figures of an independent program.
describe('balls of 100 m', () => {
  test('for one pouch by gauge alone are two, enough 99.65 times in 100', () => {
    const { balls, chance } = leastBalls(pouchAt(0.15), 100);
    expect(balls).toBe(2);
    expect(chance).toBeCloseTo(0.9965, 4);
  });

  test('for twelve are 17 with a weighed swatch, and 21 by gauge: weighing is worth four balls', () => {
    expect(leastBalls(twelve(0.03), 100).balls).toBe(17);
    expect(leastBalls(twelve(0.03), 100).chance).toBeCloseTo(0.9553, 4);
    expect(leastBalls(twelve(0.15), 100).balls).toBe(21);
    expect(leastBalls(twelve(0.15), 100).chance).toBeCloseTo(0.9654, 3);
  });

  test('are the fewest that are enough, at any sureness', () => {
    for (const sure of [0.5, 0.8, 0.95, 0.999]) {
      const { balls, chance } = leastBalls(twelve(0.15), 100, sure);
      expect(chance).toBeGreaterThanOrEqual(sure);
      expect(chanceEnough(twelve(0.15), [{ balls: balls - 1, lengthM: 100 }])).toBeLessThan(sure);
    }
  });

  test('are more where a reserve is asked for', () => {
    expect(withReserve(twelve(0.03), 0.1)).toMatchObject({ lengthM: 1.1 * 12 * 133.215 });
    expect(leastBalls(withReserve(twelve(0.03), 0.1), 100).balls).toBe(19);
  });
});

describe('the chance that yarn is enough', () => {
  test('is none of nothing, and a half where it is just what is expected', () => {
    expect(chanceEnough(pouchAt(0.03), [])).toBe(0);
    expect(chanceEnough(pouchAt(0.03), [{ balls: 1, lengthM: 133.215 }])).toBeCloseTo(0.5, 9);
  });

  test('is the same in balls of two sizes as the variance of each ball makes it', () => {
    const balls = [
      { balls: 1, lengthM: 100 },
      { balls: 2, lengthM: 50 },
    ];
    const sd = Math.sqrt(0.03 ** 2 + 0.02 ** 2 + (0.02 ** 2 * (100 ** 2 + 2 * 50 ** 2)) / 200 ** 2);
    const need = { lengthM: 190, cv: 0.03 };
    expect(chanceEnough(need, balls)).toBeCloseTo(
      chanceEnough({ lengthM: 190, cv: Math.sqrt(sd ** 2 - 0.0008) }, [{ balls: 1, lengthM: 200 }]),
      9,
    );
  });

  test('reaches what was asked at the length that must be held', () => {
    const lengthM = toHoldM(pouchAt(0.15), 0.95, 1);
    expect(chanceEnough(pouchAt(0.15), [{ balls: 1, lengthM }])).toBeCloseTo(0.95, 9);
  });
});

test('needs of different yarn sum, and err apart from each other', () => {
  const both = together([
    { lengthM: 300, cv: 0.03 },
    { lengthM: 100, cv: 0.15 },
  ]);
  expect(both.lengthM).toBe(400);
  expect(both.cv).toBeCloseTo(Math.hypot(9, 15) / 400, 12);
});

test('a maker may want to be sure from a half on, but never quite sure', () => {
  expect(valueIn(sureEnough(0.8))).toBe(0.8);
  const problem = { code: 'sureness_out_of_range', min: 0.5, max: 0.999 };
  expect(yarnProblems(sureEnough(1))).toEqual([{ ...problem, given: 1 }]);
  expect(yarnProblems(sureEnough(Number.NaN))).toEqual([{ ...problem, given: Number.NaN }]);
});
