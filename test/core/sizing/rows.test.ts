import { describe, expect, test } from 'vitest';
import { dimensionMm, landingChance, type Measure, rowsFor } from '../../../core/sizing/rows.js';
import { FOLDED_RING, ONE_SWATCH, THREE_SWATCHES, WINDOW } from '../samples.js';

const chance = (rowsInPiece: number, row = ONE_SWATCH, window = WINDOW) =>
  landingChance(window, FOLDED_RING, rowsInPiece, row);

// Worked independently by two-dimensional quadrature of the posterior.
describe('the landing chance', () => {
  test.each([
    [106, 0.366304, 0.495285],
    [107, 0.384419, 0.53073],
    [108, 0.383891, 0.523737],
    [110, 0.332292, 0.403112],
  ])('of %d rows in the piece is %d on one swatch and %d on three', (rows, one, three) => {
    expect(chance(rows)).toBeCloseTo(one, 6);
    expect(chance(rows, THREE_SWATCHES)).toBeCloseTo(three, 6);
  });

  test.each([
    [0.02, 0.34, 0.47],
    [0.03, 0.48, 0.65],
    [0.05, 0.7, 0.85],
    [0.1, 0.92, 0.99],
  ])('within ±%d of the expected size is about %d on one swatch and %d on three', (share, one, three) => {
    const window = { loMm: 271.78 * (1 - share), hiMm: 271.78 * (1 + share) };
    // Two printed digits, and whole rows: within 0.0065.
    expect(Math.abs(chance(107, ONE_SWATCH, window) - one)).toBeLessThan(0.0065);
    expect(Math.abs(chance(107, THREE_SWATCHES, window) - three)).toBeLessThan(0.0065);
  });

  test('keeps its digits far out in the tail', () => {
    expect(chance(1) / 8.1483e-10).toBeCloseTo(1, 5);
  });

  test('of a hair-thin window is its density times its width', () => {
    const window = { loMm: 272, hiMm: 272 * (1 + 1e-9) };
    expect(chance(107, ONE_SWATCH, window) / 8.8168e-9).toBeCloseTo(1, 4);
  });

  test('is none when the window lies within the fixed part, and counts all below when only its lower end does', () => {
    const hemmed: Measure = { share: 1, extra: 0, fixedMm: 30 };
    expect(landingChance({ loMm: 10, hiMm: 30 }, hemmed, 4, ONE_SWATCH)).toBe(0);
    expect(landingChance({ loMm: 10, hiMm: 30 + 4 * 5.08 }, hemmed, 4, ONE_SWATCH)).toBeCloseTo(0.5, 9);
  });
});

describe('the rows for a window', () => {
  // X = √(266.7·279.4)/2.54 = 107.4709; X² = 11550 ≤ 107·108 = 11556.
  test('of 266.7 to 279.4 mm are 106, and the graft makes the 107th', () => {
    expect(rowsFor(WINDOW, FOLDED_RING, ONE_SWATCH)).toMatchObject({ rows: 106, rowsInPiece: 107 });
    const { expectedMm, chance, rowsAtLo, rowsAtHi } = rowsFor(WINDOW, FOLDED_RING, ONE_SWATCH);
    expect(expectedMm).toBeCloseTo(271.78, 9);
    expect(chance).toBeCloseTo(0.384419, 6);
    expect(rowsAtLo).toBeCloseTo(104, 9);
    expect(rowsAtHi).toBeCloseTo(109, 9);
  });

  test('in stripes of six make the graft the last row of a stripe: 107 and one, 274.32 mm', () => {
    const striped = rowsFor(WINDOW, FOLDED_RING, ONE_SWATCH, 6);
    expect(striped).toMatchObject({ rows: 107, rowsInPiece: 108 });
    expect(striped.expectedMm).toBeCloseTo(274.32, 9);
  });

  // Worked by hand at rows of exactly 5 mm.
  test.each<[string, Measure, number, number, number, number]>([
    ['a bottom grafted shut and a 25 mm hem', { share: 1, extra: 0.5, fixedMm: -25 }, 203, 213, 46, 207.5],
    ['a doubled tube, both ends shut and a turn row', { share: 0.5, extra: 0, fixedMm: 0 }, 203, 213, 83, 207.5],
    ['a ring', { share: 1, extra: 1, fixedMm: 0 }, 627, 693, 131, 660],
    ['a length shut at both ends', { share: 1, extra: 1, fixedMm: 0 }, 1425, 1575, 299, 1500],
    ['a tube gathered at both ends, turned up 50 mm', { share: 0.5, extra: -1, fixedMm: -50 }, 160, 180, 89, 170],
  ])('of %s', (_, measure, loMm, hiMm, rows, expectedMm) => {
    const even = { ...ONE_SWATCH, mu: Math.log(5) };
    const found = rowsFor({ loMm, hiMm }, measure, even);
    expect(found.rows).toBe(rows);
    expect(found.expectedMm).toBeCloseTo(expectedMm, 9);
  });

  test('are at least one, however small the window', () => {
    expect(rowsFor({ loMm: 0.1, hiMm: 0.2 }, FOLDED_RING, ONE_SWATCH).rows).toBe(1);
    expect(rowsFor({ loMm: 0.1, hiMm: 0.2 }, FOLDED_RING, ONE_SWATCH, 6).rowsInPiece).toBe(6);
  });

  test('at an exact tie are the fewer', () => {
    const even = { ...ONE_SWATCH, mu: 0 };
    const tie = { loMm: 10, hiMm: 11 };
    expect(rowsFor(tie, { share: 1, extra: 0, fixedMm: 0 }, even).rows).toBe(10);
  });
});

test('a size grows with rows, grafted rows and the fixed part', () => {
  expect(dimensionMm({ share: 0.5, extra: 1, fixedMm: -25 }, 99, 5)).toBe(225);
});
