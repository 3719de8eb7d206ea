import { describe, expect, test } from 'vitest';
import { doubleHat } from '../../core/pieces/double-hat.js';
import { pouch } from '../../core/pieces/pouch.js';
import { scarf } from '../../core/pieces/scarf.js';
import { reasons } from '../../core/reasons.js';
import { rowsGiven } from '../../core/sizing/rows.js';
import { printedChance } from '../../core/units/chance.js';
import { printed } from '../../core/units/print.js';
import { between, mm, planOf } from './samples.js';

const POUCH = planOf(pouch, { width: between(266.7, 279.4) });
const inches = (...args: Parameters<typeof reasons>) =>
  reasons(...args).map((words) => printed(words, { units: 'in' }));

describe('why a pouch of 10 1/2 to 11 in has its rows', () => {
  test('by hand: the middle of its window is 10.747 in, folded 21.49 in, and 545.9 mm at 5.08 mm a row are 107', () => {
    expect(inches(POUCH, []).slice(0, 3)).toEqual([
      'Wanted: 10 1/2 to 11 in wide, so aim for 10 3/4 in.',
      'Laid straight: 10 3/4 in comes to 21 1/2 in of rows.',
      'Sum: 21 1/2 in at 5.08 mm a row is 107 rows; the graft makes one of them, so knit 106.',
    ]);
  });

  test('names the rows at the edges and the chance of the plan', () => {
    const lines = inches(POUCH, []);
    expect(lines[3]).toBe('Edges: row 104 would most likely give 10 1/2 in, row 109 would give 11 in.');
    expect(lines[4]).toContain(printedChance(POUCH.landing.chance));
    expect(lines).toHaveLength(5);
  });

  test('sets another count beside its own', () => {
    const { chance } = rowsGiven(115, POUCH.landing, POUCH.landing.measure, POUCH.onMachine.row);
    expect(inches(POUCH, [115]).at(-1)).toBe(`115 rows would come out near 11 5/8 in: ${printedChance(chance)}.`);
  });
});

test('what no rows make, and what a fold or shut ends take, is told apart', () => {
  const hat = inches(planOf(doubleHat, { head: mm(406.4) }), []).join(' ');
  expect(hat).toMatch(/turned up or taken in, comes to .* of rows\./);
  expect(hat).toContain('; the fold takes 1, so knit ');
  expect(inches(planOf(scarf, { length: mm(1524) }), []).join(' ')).toContain('; closing the ends makes 1 of them');
});
