import { expect, test } from 'vitest';
import { printed } from '../../../core/units/print.js';
import { feel, feelSaid, massPerM2 } from '../../../core/yarn/fabric.js';
import { LOOP_MM } from './samples.js';

const own = { tex: 500, loopMm: LOOP_MM };

// 26.8234·500/(7.45435·5.08) = 354.2.
test('loops of 26.82 mm of 500 tex make fabric of 354 g/m²', () => {
  expect(massPerM2(own, 342.9 / 46, 5.08)).toBeCloseTo(354.2, 1);
});

// 9% of tightness is 18.8% of tex.
test('fabric is as usual within a tenth of the maker’s own tightness', () => {
  expect(feel({ ...own, tex: 500 * 1.09 ** 2 }, own)).toBe('usual');
  expect(feel({ ...own, tex: 500 * 0.91 ** 2 }, own)).toBe('usual');
  expect(feel({ ...own, tex: 500 * 0.89 ** 2 }, own)).toBe('looser');
  expect(feel({ ...own, tex: 500 * 1.11 ** 2 }, own)).toBe('stiffer');
});

test('stiff fabric is said to be hard to crank', () => {
  expect(printed(feelSaid({ ...own, tex: 650 }, own), { units: 'in' })).toContain('harder to crank');
});
