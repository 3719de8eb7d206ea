import { expect, test } from 'vitest';
import { loopLengthMm } from '../../../core/yarn/loop.js';

// Worked by hand: √(19·(342.9/46)·5.08) = 26.8234, √(21.6·(342.9/46)·5.08) = 28.600, √(19·9.5·6.5) = 34.253.
test('a stitch of 7.454 by 5.08 mm holds 26.82 mm of yarn at rest and 28.60 mm washed', () => {
  expect(loopLengthMm(342.9 / 46, 5.08, 'rested')).toBeCloseTo(26.8234, 4);
  expect(loopLengthMm(342.9 / 46, 5.08, 'washed')).toBeCloseTo(28.6, 3);
  expect(loopLengthMm(9.5, 6.5, 'rested')).toBeCloseTo(34.253, 3);
});
