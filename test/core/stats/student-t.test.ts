import { describe, expect, test } from 'vitest';
import { tBetween, tQuantile } from '../../../core/stats/student-t.js';

describe('the probability between two points of a Student t', () => {
  test('is what its quantiles say', () => {
    expect(tBetween(-2.776445, 2.776445, 4)).toBeCloseTo(0.95, 6);
    expect(tBetween(tQuantile(0.6, 7), tQuantile(0.9, 7), 7)).toBeCloseTo(0.3, 12);
  });

  // One degree of freedom is the Cauchy distribution, whose tail beyond x is near 1/(πx).
  test('far out on either side keeps its digits', () => {
    const tail = (1 / 1e9 - 1 / 2e9) / Math.PI;
    expect(tBetween(1e9, 2e9, 1) / tail).toBeCloseTo(1, 9);
    expect(tBetween(-2e9, -1e9, 1) / tail).toBeCloseTo(1, 9);
  });

  test('is everything between the two infinities', () => {
    expect(tBetween(Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY, 4)).toBe(1);
    expect(tBetween(Number.NEGATIVE_INFINITY, 0, 4)).toBeCloseTo(0.5, 12);
  });
});
