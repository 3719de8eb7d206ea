import { describe, expect, test } from 'vitest';
import { pouch } from '../../../core/pieces/pouch.js';
import { rowsFor } from '../../../core/sizing/rows.js';
import { lasting, reachableWindow, rowsLeft, yarnToComeM } from '../../../core/yarn/left.js';
import { FOLDED_RING, mm, ONE_SWATCH, planOf, WINDOW } from '../samples.js';
import { LOOP_MM } from './samples.js';

/** 38 g of 500 tex; a row of 46 stitches takes 46·26.8234·500/1e6 g, graft and seam tail 1.212 g. */
const left = { left: 38, toCome: 1.212, perRow: 0.616938, cv: 0.03 };

describe('the rows that 38 g make', () => {
  test('are expected to be 59, and promised to be 56 weighed or 46 by gauge', () => {
    expect(rowsLeft(left)).toEqual({ expected: 59, promised: 56 });
    expect(rowsLeft({ ...left, cv: 0.15 })).toEqual({ expected: 59, promised: 46 });
  });

  test('would be 61 if nothing were kept back for the tails', () => {
    expect(rowsLeft({ ...left, toCome: 0 }).expected).toBe(61);
  });

  test('are none where they do not make the tails', () => {
    expect(rowsLeft({ ...left, left: 1 })).toEqual({ expected: 0, promised: 0 });
  });
});

describe('whether it lasts', () => {
  test('to row 106 from row 50: 56 rows are promised, and that is enough', () => {
    const { chance, ...said } = lasting(left, 50, 106);
    expect(said).toEqual({ expected: 59, promised: 56, lasts: true, joinBy: undefined });
    expect(chance).toBeGreaterThan(0.95);
  });

  // ln(59.63/57)/.03 = 1.504.
  test('one row more is likely but not sure, and a new ball must be joined by the last row promised', () => {
    const said = lasting(left, 50, 107);
    expect(said).toMatchObject({ lasts: false, joinBy: 106 });
    expect(said.chance).toBeCloseTo(0.9337, 3);
    expect(lasting(left, 50, 107, 0.8)).toMatchObject({ lasts: true, joinBy: undefined });
  });

  test('is certain with no row to go, if the tails can be made, and cannot be if not', () => {
    expect(lasting(left, 106, 106)).toMatchObject({ chance: 1, lasts: true });
    expect(lasting({ ...left, left: 1 }, 106, 106)).toMatchObject({ chance: 0, lasts: false, joinBy: 106 });
    expect(lasting({ ...left, left: 1.212 }, 50, 106)).toMatchObject({ chance: 0, joinBy: 50 });
  });
});

describe('the yarn to come beside the rows of a pouch', () => {
  const { steps, rows } = planOf(pouch, { closure: mm(203.2) });

  // 1.4456 m to graft with and .97945 m to sew with.
  test('is both its tails, and of work begun the seam tail alone, since the other hangs there already', () => {
    expect(yarnToComeM(steps, LOOP_MM, 46 * rows, false)).toBeCloseTo(2.425, 3);
    expect(yarnToComeM(steps, LOOP_MM, 46 * rows, true)).toBeCloseTo(0.979, 3);
  });

  test('counts other rows, such as those of another part', () => {
    expect(yarnToComeM(steps, LOOP_MM, 46 * (rows - 10), true)).toBeCloseTo(0.979 + (460 * LOOP_MM) / 1000, 3);
  });
});

describe('the largest window that is still within reach', () => {
  // Rj = 91: middle ½·91·5.08 = 231.14 mm; lo = √(231.14² + 6.35²) − 6.35 = 224.88.
  test('of 90 rows is as wide as the one asked for, and 90 rows are its best', () => {
    const reach = reachableWindow(WINDOW, FOLDED_RING, ONE_SWATCH, 90);
    expect(reach?.loMm).toBeCloseTo(224.877, 3);
    expect(reach?.hiMm).toBeCloseTo(224.877 + 12.7, 3);
    expect(reach && rowsFor(reach, FOLDED_RING, ONE_SWATCH)).toEqual({
      rows: reach?.rows,
      rowsInPiece: reach?.rowsInPiece,
      expectedMm: reach?.expectedMm,
      chance: reach?.chance,
      rowsAtLo: reach?.rowsAtLo,
      rowsAtHi: reach?.rowsAtHi,
    });
    expect(reach?.rows).toBe(90);
  });

  test('counts a hem, and ends at a whole repeat of stripes', () => {
    const hemmed = reachableWindow(WINDOW, { share: 1, extra: 0, fixedMm: -25 }, ONE_SWATCH, 60);
    expect(hemmed?.expectedMm).toBeCloseTo(60 * 5.08 - 25, 6);
    expect(reachableWindow(WINDOW, FOLDED_RING, ONE_SWATCH, 90, 6)).toMatchObject({ rows: 89, rowsInPiece: 90 });
  });

  test('is none of no rows, or of less than a repeat', () => {
    expect(reachableWindow(WINDOW, FOLDED_RING, ONE_SWATCH, 0)).toBeUndefined();
    expect(reachableWindow(WINDOW, FOLDED_RING, ONE_SWATCH, 90, 100)).toBeUndefined();
  });
});
