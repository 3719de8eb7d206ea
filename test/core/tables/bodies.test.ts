import { describe, expect, test } from 'vitest';
import { bodySizeMm } from '../../../core/tables/bodies.js';

describe('the measure of a person', () => {
  test('of a child without a sex is the mean of both medians: 47.7 cm round the head at two years', () => {
    expect(bodySizeMm('head', { is: 'child', months: 24 })).toBeCloseTo(477.1, 1);
  });

  test('between two published ages lies between them', () => {
    const [a = 0, b = 0, c = 0] = [6, 7, 8].map((months) => bodySizeMm('head', { is: 'child', months, sex: 'boy' }));
    expect(b).toBeCloseTo((a + c) / 2, 9);
  });

  test('is not known where no table holds it', () => {
    expect(bodySizeMm('head', { is: 'child', months: 84 })).toBeUndefined();
    expect(bodySizeMm('head', { is: 'child', months: -1 })).toBeUndefined();
    expect(bodySizeMm('hand', { is: 'child', months: 24 })).toBeUndefined();
    expect(bodySizeMm('hand', { is: 'woman' })).toBe(186.6);
  });
});
