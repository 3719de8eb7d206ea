import { expect, test } from 'vitest';
import { graftTailMm, mattressTailMm } from '../../../core/finishing/tails.js';

// Worked by hand: 46·26.8234·1.05 + 150 = 1445.6; 2.5·271.78 + 300 = 979.45.
test('a tail that grafts 46 stitches of 26.82 mm is 1446 mm, one that sews 271.8 mm is 979 mm', () => {
  expect(graftTailMm(46, 26.8234)).toBeCloseTo(1445.6, 1);
  expect(mattressTailMm(271.78)).toBeCloseTo(979.45, 9);
});
