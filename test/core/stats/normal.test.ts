import { expect, test } from 'vitest';
import { normalBelow, normalDensity } from '../../../core/stats/normal.js';

test('the standard normal has half below 0, 97.5 % below 1.959964, and density 1/√(2π) at 0', () => {
  expect(normalBelow(0)).toBe(0.5);
  expect(normalBelow(1.959964)).toBeCloseTo(0.975, 8);
  expect(normalDensity(0)).toBeCloseTo(1 / Math.sqrt(2 * Math.PI), 12);
});
