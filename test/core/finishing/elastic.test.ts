import { expect, test } from 'vitest';
import { elasticMm, elasticNotion, elasticStep } from '../../../core/finishing/elastic.js';
import { printed } from '../../../core/units/print.js';

// 0.9·561.1 + 20 = 525; 0.9·215.7 + 20 = 214.1.
test('an elastic is nine tenths of what it goes round, and an overlap', () => {
  expect(elasticMm(561.1)).toBeCloseTo(525, 1);
  expect(elasticMm(215.7)).toBeCloseTo(214.1, 1);
  expect(elasticNotion(525)).toMatchObject({ count: 1, cutMm: 525 });
  expect(elasticNotion(525, 2).count).toBe(2);
  expect(printed(elasticStep('the brim').say, { units: 'cm' })).toContain('round the brim; overlap its ends by 2 cm');
});
