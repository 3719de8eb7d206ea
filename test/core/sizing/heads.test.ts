import { expect, test } from 'vitest';
import { easeWords, mayBeChild } from '../../../core/sizing/heads.js';
import { bodySizeMm } from '../../../core/tables/bodies.js';
import { printed } from '../../../core/units/print.js';

test.each([
  [0.1, '10% less round than a head of 56 cm'],
  [-0.02, '2% rounder than a head of 56 cm'],
  [0.004, 'as round as a head of 56 cm'],
  [-0.004, 'as round as a head of 56 cm'],
])('an ease of %d is said as "%s"', (ease, said) => {
  expect(printed(easeWords(ease, 560), { units: 'cm' })).toBe(said);
});

test('children to five and heads not known may be a child’s, a woman’s is none', () => {
  expect(mayBeChild(bodySizeMm('head', { is: 'child', months: 60, sex: 'boy' }))).toBe(true);
  expect(mayBeChild(undefined)).toBe(true);
  expect(mayBeChild(bodySizeMm('head', { is: 'woman' }))).toBe(false);
});
