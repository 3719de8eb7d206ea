import { describe, expect, test } from 'vitest';
import type { Given } from '../../../core/given.js';
import { stuffedBall } from '../../../core/pieces/stuffed-ball.js';
import type { PlanInput } from '../../../core/plan.js';
import { printed } from '../../../core/units/print.js';
import type { Words } from '../../../core/words.js';
import { atHand, EVEN, mm, outcomeOf, planOf, problemsOf, read, tube } from '../samples.js';

const PANEL: Given = { is: 'choice', id: 'panel' };
const onEven = { needles: 48, measurements: EVEN };
const ball = (values: PlanInput['values'], more: Partial<PlanInput> = {}) =>
  planOf(stuffedBall, values, { ...onEven, ...more });
const refusal = (values: PlanInput['values'], more: Partial<PlanInput> = {}) =>
  problemsOf(outcomeOf(stuffedBall, values, { ...onEven, ...more }));
const size = (plan: ReturnType<typeof ball>, id: string) => plan.sizes.find((s) => s.id === id)?.expectedMm;
const cm = (words: readonly Words[]) => words.map((w) => printed(w, { units: 'cm' })).join(' / ');
const count = (plan: ReturnType<typeof ball>, driver: string) =>
  plan.steps.filter((s) => s.driver === driver).reduce((sum, s) => sum + s.count, 0);
const yarn = (plan: ReturnType<typeof ball>, role: string) =>
  plan.steps.flatMap((s) => s.yarn ?? []).filter((y) => y.role === role);
const stitches = (plan: ReturnType<typeof ball>, role: string) =>
  yarn(plan, role).reduce((sum, y) => sum + (y.stitches ?? 0), 0);

// Worked by hand at 7.5 by 5 mm: D = 48·7.5/π = 114.59; R = 48·7.5/(2·5) = 36, the flat tube a square of 180 mm.
describe('a ball of 48 needles, 114.6 mm across', () => {
  const made = ball({ diameter: mm(114.6) });

  test('is 36 rows from pole to pole: as long as the flat tube is wide', () => {
    expect(made).toMatchObject({ needles: 48, rows: 36, graftRows: 0, tube: { flatWidthMm: expect.closeTo(180, 9) } });
    expect(size(made, 'length')).toBeCloseTo(180, 9);
    expect(size(made, 'diameter')).toBeCloseTo(114.59, 2);
  });

  test('takes 1,728 stitches, 480 of waste, 96 loops gathered twice, and two tails of 1,020 mm', () => {
    expect([stitches(made, 'main'), stitches(made, 'waste')]).toEqual([1728, 480]);
    expect(count(made, 'gather')).toBe(192);
    expect(yarn(made, 'main').flatMap((y) => y.lengthMm ?? [])).toEqual([
      expect.closeTo(1020, 9),
      expect.closeTo(1020, 9),
    ]);
  });

  // π·114.59³/6000 = 787.9 cm³; 0.03 g each.
  test('is filled with 788 cm³, 24 g', () => {
    expect(count(made, 'stuff')).toBeCloseTo(787.9, 1);
    expect(cm(atHand(made))).toBe('about 24 g of stuffing');
  });

  // 1.5·√(48/1.6) = 8.2 mm, so 1.6 cm across.
  test('is gathered to a plug that closes, one end before and one after the filling', () => {
    const told = made.steps.map((s) => [s.driver, printed(s.say, { units: 'cm' })]);
    const closing = made.steps.filter(({ driver }) => driver === 'gather' || driver === 'stuff');
    expect(closing.map(({ driver }) => driver)).toEqual(['gather', 'stuff', 'gather']);
    expect(told.map(([, words]) => words).join(' ')).toMatch(/about 1.6 cm across.*needles; .*measure its diameter/);
  });

  test('has π/2 of the fabric of its sphere, which no row count changes', () => {
    const fabricMm2 = 48 * made.rows * 7.5 * 5;
    expect(fabricMm2).toBeCloseTo(2 * 180 * (size(made, 'length') ?? 0), 6);
    expect(fabricMm2 / (Math.PI * (size(made, 'diameter') ?? 0) ** 2)).toBeCloseTo(Math.PI / 2, 9);
    expect(cm(made.assumed)).toContain('fullness at both poles');
  });

  test('is not for children under three', () => {
    expect(cm(made.cautions)).toContain('not for children under three');
  });
});

describe('a ball that the needles come near', () => {
  // 110 is 4 % under 114.6: the rows follow the needles, so that it is no egg. 46·7.5/10 is 34.5.
  test('is made as they make it, with as many rows', () => {
    expect(ball({ diameter: mm(110) }).rows).toBe(36);
    expect(ball({ diameter: mm(114.6) }, { needles: 46 }).rows).toBe(34);
  });

  // 41.9 needles: 114.6 is 14.6 % over.
  test('no nearer than 5 % is refused, with what the machine makes, and a panel, for offers', () => {
    const [problem] = refusal({ diameter: mm(100) });
    if (problem?.code !== 'needles_set_it') throw new Error('the diameter was taken');
    expect(problem).toMatchObject({ expectedMm: expect.closeTo(114.59, 2), needles: 48, needlesWanted: 42 });
    expect(problem.offers.map(({ label }) => printed(label, { units: 'cm' }))).toEqual([
      '11.5 cm across, as all your needles make it',
      'a panel of 44 needles, sewn up',
    ]);
    expect(problem.offers.map(({ edit }) => edit)).toEqual([
      { lay: null, diameter: { is: 'length', mm: expect.closeTo(114.59, 2) } },
      { lay: PANEL },
    ]);
  });
});

describe('a ball from a panel', () => {
  const made = ball({ diameter: mm(100), lay: PANEL });

  // (44 − 2)·7.5 = 315 = π·100.3; half of it in rows of 5 mm: 31.5, and 31 is nearer in logs.
  test('of 100 mm is 44 needles and 31 rows, seamed over all its rows', () => {
    expect(made).toMatchObject({ needles: 44, rows: 31, tube: undefined });
    expect(size(made, 'diameter')).toBeCloseTo(100.27, 2);
    expect(count(made, 'mattress')).toBe(31);
  });

  test('too big for the needles is offered as the widest panel and as the tube make it', () => {
    const [problem] = refusal({ diameter: mm(150), lay: PANEL });
    expect(problem).toMatchObject({ code: 'too_many_needles', given: 65, max: 46 });
    expect(problem).toMatchObject({
      offers: [
        { edit: { lay: null, diameter: { mm: expect.closeTo(114.59, 2) } } },
        { edit: { lay: PANEL, diameter: { mm: expect.closeTo(105.04, 2) } } },
      ],
    });
  });

  // In stitches of 25 mm the plug of 12 needles is 0.158·√12 = 0.547 of a stitch, over a sixth of 10/π.
  test('too small for its ends to close is refused', () => {
    const coarse = { needles: 40, measurements: [tube('coarse', 20, 300, { stitches: read(10, 250) })] };
    expect(refusal({ diameter: mm(80), lay: PANEL }, coarse)).toMatchObject([
      { code: 'length_out_of_range', minMm: expect.closeTo((11 * 25) / Math.PI, 6) },
    ]);
  });
});

describe('a ball while its needles are not known', () => {
  test('has rows for the diameter asked for, and says so', () => {
    const made = ball({ diameter: mm(114.6) }, { needles: undefined });
    expect(made).toMatchObject({ needles: undefined, rows: 36 });
    expect(cm(made.assumed)).toContain('needles that make this diameter');
    expect(count(made, 'stuff')).toBeCloseTo((Math.PI * ((2 * 180) / Math.PI) ** 3) / 6000, 6);
  });

  test('cannot be made from a panel before a stitch was measured', () => {
    const rowsOnly = { measurements: [tube('a', 100, 500)] };
    expect(refusal({ diameter: mm(100), lay: PANEL }, rowsOnly)).toMatchObject([{ code: 'no_stitch_gauge' }]);
    expect(ball({ diameter: mm(100) }, rowsOnly).rows).toBe(31);
  });
});
