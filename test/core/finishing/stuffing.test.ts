import { expect, test } from 'vitest';
import { ballFilling, stuffingNotion, stuffStep } from '../../../core/finishing/stuffing.js';
import { printed } from '../../../core/units/print.js';

// 4/3·π·5³ = 523.6 cm³; 0.03 g each is 15.7 g.
test('a ball of 100 mm takes 524 cm³ of stuffing, 16 g', () => {
  const { volumeCm3, massG } = ballFilling(100);
  expect(volumeCm3).toBeCloseTo((4 / 3) * Math.PI * 125, 9);
  expect(massG).toBeCloseTo(15.7, 1);
  expect(stuffingNotion(massG).massG).toBe(massG);
  expect(stuffStep(volumeCm3).count).toBe(volumeCm3);
  expect(printed(stuffStep(volumeCm3).say, { units: 'cm' })).toContain('524 cubic centimetres');
});
