import { expect, test } from 'vitest';
import { unitsIn } from '../../bot/units-meant.js';

test.each([
  ['110 rows in 22 in', 'in'],
  ['22", then 56 cm', 'in'],
  ['56 cm (22 in)', 'cm'],
  ['1.5m of yarn', 'cm'],
  ['6 3/4 inches', 'in'],
  ['in centimetres', 'cm'],
  ['11½" wide', 'in'],
  ['2 more', undefined],
  ['make it 12', undefined],
])('the unit typed first in "%s" is %s', (text, units) => {
  expect(unitsIn(text)).toBe(units);
});
