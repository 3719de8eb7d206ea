import { expect, test } from 'vitest';
import { mmOf, otherUnits } from '../../../core/units/units.js';

test('a bare number of a maker’s units is inches or centimetres', () => {
  expect(mmOf(4, 'in')).toBeCloseTo(101.6, 12);
  expect(mmOf(4, 'cm')).toBe(40);
});

test('the other of two systems is the other both ways', () => {
  expect([otherUnits('in'), otherUnits('cm')]).toEqual(['cm', 'in']);
});
