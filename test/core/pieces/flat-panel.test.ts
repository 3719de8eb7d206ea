import { describe, expect, test } from 'vitest';
import type { Given } from '../../../core/given.js';
import { flatPanel } from '../../../core/pieces/flat-panel.js';
import type { PlanInput } from '../../../core/plan.js';
import { printed } from '../../../core/units/print.js';
import { between, EVEN, mm, outcomeOf, planOf, problemsOf, read, tube } from '../samples.js';

const needles = (count: number): Given => ({ is: 'count', count });
const seam = (id: string): Given => ({ is: 'choice', id });
const onEven = { needles: 48, measurements: EVEN };
const panel = (values: PlanInput['values'], more: Partial<PlanInput> = onEven) => planOf(flatPanel, values, more);
const widthOf = (made: ReturnType<typeof panel>) => made.sizes.find((s) => s.id === 'width')?.expectedMm;

// Worked by hand at 7.5 by 5 mm: √(285·315)/5 = 59.925; 3591 > 59·60 = 3540.
describe('a panel of 40 needles, 285 to 315 mm long', () => {
  const length = between(285, 315);

  test('is 60 rows: 300 mm long and 300 mm wide', () => {
    const made = panel({ needles: needles(40), length });
    expect(made).toMatchObject({ rows: 60, needles: 40, tube: undefined });
    expect(made.landing.expectedMm).toBeCloseTo(300, 9);
    expect(widthOf(made)).toBeCloseTo(300, 9);
  });

  test('between seams is narrower by the stitches that they take', () => {
    expect(widthOf(panel({ needles: needles(40), length, seam: seam('full') }))).toBeCloseTo(285, 9);
    expect(widthOf(panel({ needles: needles(40), length, seam: seam('half') }))).toBeCloseTo(292.5, 9);
  });

  test('has the area of its stitches', () => {
    const made = panel({ needles: needles(40), length });
    expect(made.landing.expectedMm * (widthOf(made) ?? 0)).toBeCloseTo(40 * 60 * 7.5 * 5, 6);
  });

  test('counts the yarn of its own needles, not of the machine', () => {
    const stitches = panel({ needles: needles(40), length }).steps.flatMap((s) => s.yarn ?? []);
    const main = stitches.filter((y) => y.role === 'main').reduce((total, y) => total + (y.stitches ?? 0), 0);
    expect(main).toBe(2400);
  });
});

describe('the needles of a panel', () => {
  test('are chosen for the width', () => {
    expect(panel({ width: mm(300), length: mm(300) }).needles).toBe(40);
    expect(panel({ width: mm(285), length: mm(300), seam: seam('full') }).needles).toBe(40);
  });

  test('leave two of the machine free', () => {
    expect(panel({ needles: needles(46), length: mm(300) }).needles).toBe(46);
    expect(problemsOf(outcomeOf(flatPanel, { needles: needles(48), length: mm(300) }, onEven))).toMatchObject([
      { code: 'too_many_needles', given: 48, max: 46, machine: 48 },
    ]);
  });

  // 600 mm are 80 stitches: 2 panels of (80 − 2)/2 + 2 = 41 needles, joined 2·39·7.5 + 2·7.5 = 600 mm.
  test('too many for the machine come with panels to join, and with the widest panel there is', () => {
    const values = { width: mm(600), length: mm(300) };
    const [problem] = problemsOf(outcomeOf(flatPanel, values, onEven));
    if (problem?.code !== 'too_many_needles') throw new Error('the width was taken');
    expect(problem.offers.map(({ label }) => printed(label, { units: 'cm' }))).toEqual([
      '2 panels of 41 needles, joined with full-stitch seams to about 60 cm wide',
      '46 needles, the most it takes, about 34.5 cm wide',
    ]);
    expect(problem.offers.map(({ edit }) => edit)).toEqual([
      { width: null, needles: needles(41), joined: { is: 'count', count: 2 }, seam: seam('free') },
      { width: null, needles: needles(46), joined: null, seam: seam('free') },
    ]);
  });

  // 2·(41 − 2)·7.5 + 2·7.5 = 600 mm; both panels of 60 rows of 41 stitches, and one seam of 60 bars.
  test('joined from two are as wide as both less the seam, and take the yarn of both', () => {
    const joined = { is: 'count', count: 2 } as const;
    const made = planOf(flatPanel, { needles: needles(41), joined, length: between(285, 315) }, onEven);
    expect([made.rows, made.parts]).toEqual([60, 2]);
    expect(made.sizes.map((s) => s.expectedMm)).toEqual([expect.closeTo(300, 9), expect.closeTo(600, 9)]);
    expect(made.steps.find((s) => s.id === 'join')?.count).toBe(60);
    const one = planOf(flatPanel, { needles: needles(41), length: between(285, 315) }, onEven);
    // The seam: 2.5·300 + 300 = 1050 mm.
    expect(made.yarn?.lengthM).toBeCloseTo(2 * (one.yarn?.lengthM ?? 0) + 1.05, 9);
  });

  test('too many before a stitch was measured are told in stitches', () => {
    const rowsOnly = { ...onEven, measurements: [tube('a', 100, 500)] };
    const [problem] = problemsOf(outcomeOf(flatPanel, { needles: needles(60), length: mm(300) }, rowsOnly));
    if (problem?.code !== 'too_many_needles') throw new Error('the needles were taken');
    expect(problem.offers.map(({ label }) => printed(label, { units: 'cm' }))[0]).toBe(
      '2 panels of 31 needles, joined with full-stitch seams to about 60 stitches wide',
    );
  });

  test('that work are marked, so that none is cranked past', () => {
    const { steps } = panel({ needles: needles(40), length: mm(300) });
    const told = steps.map((step) => printed(step.say, { units: 'cm' })).join(' ');
    expect(told).toMatch(/40 needles .*Mark the first and the last needle/);
  });

  test('may be any while the machine is not known', () => {
    expect(panel({ needles: needles(48), length: mm(300) }, { ...onEven, needles: undefined }).needles).toBe(48);
  });

  test('cannot be chosen for a width before a stitch was measured', () => {
    const rowsOnly = { ...onEven, measurements: [tube('a', 100, 500)] };
    expect(problemsOf(outcomeOf(flatPanel, { width: mm(300), length: mm(300) }, rowsOnly))).toEqual([
      { code: 'no_stitch_gauge', field: { id: 'width', label: 'Width' } },
    ]);
    expect(panel({ needles: needles(40), length: mm(300) }, rowsOnly).rows).toBe(60);
  });

  test('are never fewer than a panel can have, and the width that these make is offered', () => {
    const coarse = { needles: 48, measurements: [tube('a', 20, 300, { stitches: read(10, 120) })] };
    const values = { width: mm(25), length: mm(300) };
    const [problem] = problemsOf(outcomeOf(flatPanel, values, coarse));
    if (problem?.code !== 'needles_set_it') throw new Error('the width was taken');
    expect(problem.offers.map((o) => o.edit)).toEqual([{ width: { is: 'length', mm: expect.closeTo(36, 9) } }]);
    expect(panel({ ...values, width: mm(36) }, coarse).needles).toBe(3);
  });
});

describe('a panel from the gauge of a tube', () => {
  test('says that it took the tube’s, and is less sure than a tube would be', () => {
    const made = panel({ needles: needles(40), length: mm(300) });
    const assumed = made.assumed.map((w) => printed(w, { units: 'cm' }));
    expect(assumed).toContain('a panel knits up as your tube does, within 3%');
    const measured = panel(
      { needles: needles(40), length: mm(300) },
      { ...onEven, measurements: [tube('p', 100, 500, { form: 'panel' })] },
    );
    expect(measured.landing.chance).toBeGreaterThan(made.landing.chance);
  });
});

describe('the last row of a panel', () => {
  test.each([
    [60, 'the side it began on'],
    [61, 'the side away from its start'],
  ])('of %d rows ends at %s', (rows, side) => {
    const made = panel({ needles: needles(40), length: between(5 * rows - 1, 5 * rows + 1) });
    expect(made.rows).toBe(rows);
    expect(made.steps.map((s) => printed(s.say, { units: 'cm' })).join(' ')).toContain(side);
  });

  test('of an odd number is advised against, and only that', () => {
    const advice = (rows: number) =>
      panel({ needles: needles(40), length: between(5 * rows - 1, 5 * rows + 1) })
        .assumed.map((w) => printed(w, { units: 'cm' }))
        .filter((said) => said.includes('even'));
    expect(advice(61)).toEqual(['61 rows, an odd count, end at the far side; even ones, 60 or 62, are easier']);
    expect(advice(60)).toEqual([]);
  });

  test('gives the bars of a side that will be sewn', () => {
    const told = (id: string) =>
      panel({ needles: needles(40), length: between(285, 315), seam: seam(id) })
        .steps.map((s) => printed(s.say, { units: 'cm' }))
        .join(' ');
    expect(told('full')).toContain('60 bars up each edge');
    expect(told('free')).not.toContain('bars up each edge');
  });
});
