import { describe, expect, test } from 'vitest';
import type { Given } from '../../../core/given.js';
import { tieCord } from '../../../core/pieces/tie-cord.js';
import type { PlanInput } from '../../../core/plan.js';
import { printed } from '../../../core/units/print.js';
import type { Words } from '../../../core/words.js';
import { atHand, between, mm, outcomeOf, planOf, problemsOf, read, tube } from '../samples.js';

const choice = (id: string): Given => ({ is: 'choice', id });
/** A cord of rows 6 mm high. */
const CORD = [tube('cord', 100, 600, { stitches: read(2, 15) })];
const cord = (values: PlanInput['values']) => planOf(tieCord, values, { needles: 48, measurements: CORD });
const cm = (words: readonly Words[]) => words.map((w) => printed(w, { units: 'cm' })).join(' / ');
const count = (plan: ReturnType<typeof cord>, driver: string) =>
  plan.steps.filter((s) => s.driver === driver).reduce((sum, s) => sum + s.count, 0);
const yarn = (plan: ReturnType<typeof cord>) => plan.steps.flatMap((s) => s.yarn ?? []);

// Worked by hand: 2·√(250² + 90²) + 100 + 80 = 711.4, of which 5 % either way: √(675.8·747.0)/6.9 = 102.974;
// 10603.7 > 102·103 = 10506.
describe('a strap that drops 250 mm to a piece 280 mm wide', () => {
  const made = cord({ drop: mm(250), width: mm(280) });

  test('is 103 rows: 710.7 mm under its load, 618 at rest', () => {
    expect(made).toMatchObject({ needles: 4, rows: 103, graftRows: 0 });
    expect([made.landing.loMm, made.landing.hiMm]).toEqual([expect.closeTo(675.8, 1), expect.closeTo(747, 1)]);
    expect(made.sizes[0]?.expectedMm).toBeCloseTo(710.7, 9);
    expect(made.tube?.lengthMm).toBeCloseTo(618, 9);
    expect(cm(made.assumed)).toContain('15% longer under its load than the 62 cm at rest: hang the load');
  });

  test('takes 412 stitches and no waste yarn, 4 loops gathered and 2 ends sewn to rings', () => {
    expect(yarn(made).reduce((sum, y) => sum + (y.stitches ?? 0), 0)).toBe(412);
    expect(yarn(made).some(({ role }) => role === 'waste')).toBe(false);
    expect([count(made, 'gather'), count(made, 'ring')]).toEqual([4, 2]);
    expect(cm(atHand(made))).toBe('2 rings or swivels');
    expect(cm(made.assumed)).toContain('8 cm of it turned through the rings');
  });

  test('has the area of its stitches once it hangs unloaded', () => {
    expect((made.tube?.lengthMm ?? 0) * 2 * (made.tube?.flatWidthMm ?? 0)).toBeCloseTo(4 * 103 * 7.5 * 6, 6);
  });

  test('warns of the loop it makes, of the load and of small parts', () => {
    expect(cm(made.cautions)).toMatch(/long loop.*bear the load.*Small parts/);
    expect(cm(made.steps.map((s) => s.say))).toMatch(/Hang twice the load on it.*knit it double/);
  });

  test('needs the width it hangs on', () => {
    expect(problemsOf(outcomeOf(tieCord, { drop: mm(250) }))).toMatchObject([
      { code: 'missing', anyOf: [{ id: 'width' }] },
    ]);
  });
});

describe('a tie 600 mm long', () => {
  test('does not stretch, and warns of cords alone', () => {
    const made = cord({ length: mm(600) });
    expect(made.rows).toBe(100);
    expect(made.notions).toEqual([]);
    expect(cm(made.assumed)).toContain('laid flat, no stretch');
    expect(cm(made.cautions)).toMatch(/Cords and drawstrings/);
    expect(cm(made.cautions)).not.toMatch(/bear the load|Small parts/);
  });

  // 50 mm each: √(670·730)/6 = 116.6; 13585 > 116·117 = 13572.
  test('is longer by what its knots take', () => {
    const made = cord({ length: mm(600), ends: choice('knots') });
    expect(made.rows).toBe(117);
    expect(cm(made.assumed)).toContain('10 cm of it in the knots');
    expect(cm(made.steps.map((s) => s.say))).toContain('Knot each end');
  });

  // √(650·710)/(6·1.15) = 98.46; 9694 ≤ 98·99 = 9702.
  test('that will be a strap through rings is shorter at rest', () => {
    expect(cord({ length: mm(600), use: choice('strap'), ends: choice('rings') }).rows).toBe(98);
  });

  // 600·0.99875/(6·1.2) = 83.2.
  test('stretches by what its own load was seen to do', () => {
    const made = cord({ length: mm(600), stretch: { is: 'percent', percent: 20 } });
    expect(made.rows).toBe(83);
    expect(cm(made.assumed)).not.toContain('hang the load');
  });

  test('is as long as it was asked for, whatever drop was said with it', () => {
    const made = cord({ length: between(590, 610), drop: mm(250), width: mm(280) });
    expect(made.rows).toBe(100);
    expect(cm(made.assumed)).toContain('whatever the drop');
  });
});

test('a cord takes 3 to 8 needles', () => {
  const needles = (n: number): Given => ({ is: 'count', count: n });
  expect(cord({ length: mm(600), needles: needles(6) }).needles).toBe(6);
  expect(problemsOf(outcomeOf(tieCord, { length: mm(600), needles: needles(9) }))).toMatchObject([
    { code: 'count_out_of_range', min: 3, max: 8 },
  ]);
});
