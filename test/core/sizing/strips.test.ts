import { expect, test } from 'vitest';
import { dimensionMm } from '../../../core/sizing/rows.js';
import { fewestStrips, stripsWide } from '../../../core/sizing/strips.js';

// Worked by hand: tubes of 48 needles are 180 mm, a seam takes 7.5: (860 − 7.5)/172.5 = 4.94.
test('the fewest strips are those that reach a width with their seams', () => {
  expect(fewestStrips(860, 180, 7.5)).toBe(5);
  expect(fewestStrips(5 * 180 - 4 * 7.5, 180, 7.5)).toBe(5);
  expect(fewestStrips(100, 180, 7.5)).toBe(1);
});

test.each([
  ['5 tubes with a border of 20 mm', 5, 1 / 2, 20, 48, 5 * 180 - 4 * 7.5 + 40],
  ['3 panels', 3, 1, 0, 37, 3 * 37 * 7.5 - 2 * 15],
  ['one tube', 1, 1 / 2, 0, 48, 180],
])(
  '%s of 7.5 mm stitches are as wide as their needles less the seams',
  (_, strips, share, borderMm, needles, wideMm) => {
    expect(dimensionMm(stripsWide(strips, share, borderMm), needles, 7.5)).toBeCloseTo(wideMm, 9);
  },
);
