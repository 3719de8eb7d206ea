import { expect, test } from 'vitest';
import { otherUnits } from '../../../core/units/units.js';

test('the other of two systems is the other both ways', () => {
  expect([otherUnits('in'), otherUnits('cm')]).toEqual(['cm', 'in']);
});
