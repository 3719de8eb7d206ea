import { expect, test } from 'vitest';
import { apportioned, dividedBy } from '../../../core/money/apportioned.js';
import { exact } from '../../../core/money/exact.js';

test('6.02 over 1.005, 2.005 and 3.005 is 1.01, 2.01 and 3.00: the first of equal remainders get the units missing', () => {
  expect(apportioned(602, [100.5, 200.5, 300.5].map(exact))).toEqual([101, 201, 300]);
});

test('10.00 over three alike is 3.34, 3.33 and 3.33', () => {
  expect(dividedBy(1000, [1, 1, 1])).toEqual([334, 333, 333]);
});

test('shares get their proportion, the largest remainder first', () => {
  expect(dividedBy(100, [1, 2, 0])).toEqual([33, 67, 0]);
});

test('an amount that is not the sum of its parts is a broken assumption', () => {
  expect(() => apportioned(500, [exact(100)])).toThrow();
});
