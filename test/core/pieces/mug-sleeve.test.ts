import { describe, expect, test } from 'vitest';
import type { Given } from '../../../core/given.js';
import { mugSleeve } from '../../../core/pieces/mug-sleeve.js';
import type { PlanInput } from '../../../core/plan.js';
import { printed } from '../../../core/units/print.js';
import type { Words } from '../../../core/words.js';
import { atHand, between, EVEN, mm, outcomeOf, planOf, problemsOf, read, tube } from '../samples.js';

const BASE: Given = { is: 'choice', id: 'gathered' };
const onEven = { needles: 48, measurements: EVEN };
const sleeve = (values: PlanInput['values'], needles: number | undefined = 48) =>
  planOf(mugSleeve, values, { ...onEven, needles });
const refusal = (values: PlanInput['values'], more: Partial<PlanInput> = {}) =>
  problemsOf(outcomeOf(mugSleeve, values, { ...onEven, ...more }));
const size = (plan: ReturnType<typeof sleeve>, id: string) => plan.sizes.find((s) => s.id === id)?.expectedMm;
const cm = (words: readonly Words[]) => words.map((w) => printed(w, { units: 'cm' })).join(' / ');
const count = (plan: ReturnType<typeof sleeve>, driver: string) =>
  plan.steps.filter((s) => s.driver === driver).reduce((sum, s) => sum + s.count, 0);
const stitches = (plan: ReturnType<typeof sleeve>, role: string) =>
  plan.steps.flatMap((s) => s.yarn ?? []).reduce((sum, y) => sum + (y.role === role ? (y.stitches ?? 0) : 0), 0);

const JAR = { girth: mm(260), height: mm(120) };

// Worked by hand at 7.5 by 5 mm: √(234·252.2)/5 = 48.586; 2360.6 > 48·49 = 2352.
describe('a sleeve for a jar 260 mm round, 120 mm tall', () => {
  const made = sleeve(JAR);

  test('is a ring of 16 needles and 48 rows, laid sideways: 245 mm round, 5.8 % under', () => {
    expect(made).toMatchObject({ needles: 16, rows: 48, graftRows: 1, parts: 1, tube: undefined });
    expect(size(made, 'girth')).toBeCloseTo(245, 9);
    expect(size(made, 'height')).toBeCloseTo(120, 9);
    expect(1 - 245 / 260).toBeCloseTo(0.058, 3);
    expect(cm(made.because ? [made.because] : [])).toContain('laid sideways');
  });

  test('takes 768 stitches, 160 of waste, 16 pairs grafted, and no seam', () => {
    expect([stitches(made, 'main'), stitches(made, 'waste')]).toEqual([768, 160]);
    expect([count(made, 'graft'), count(made, 'mattress'), count(made, 'cast_off')]).toEqual([16, 0, 0]);
  });

  test('has the area of its stitches, the grafted row among them', () => {
    expect((size(made, 'girth') ?? 0) * (size(made, 'height') ?? 0)).toBeCloseTo(16 * 49 * 7.5 * 5, 6);
  });

  test('warns of heat, and says how tightly it grips', () => {
    expect(cm(made.cautions)).toContain('mind hot vessels');
    expect(cm(made.cautions)).not.toContain('Small parts');
    expect(cm(made.assumed)).toContain('3 to 10% narrower than what it goes round');
  });

  test('has the same rows whatever the machine, for they go round', () => {
    expect([36, 48, 120].map((needles) => sleeve(JAR, needles).rows)).toEqual([48, 48, 48]);
  });

  test('is asked for by its own girth too', () => {
    const own = sleeve({ own: between(234, 252.2), height: mm(120) });
    expect(own.rows).toBe(48);
    expect(cm(own.assumed)).not.toContain('narrower');
  });
});

// 300 mm are 40 needles, more than the 34 that a machine of 36 leaves; 0.934·260/7.5 + 2 = 34.4.
describe('a sleeve too tall for its needles sideways', () => {
  test('is an upright panel of 34 needles, 240 mm round, 7.7 % under, with a seam over all its rows', () => {
    const made = sleeve({ girth: mm(260), height: mm(300) }, 36);
    expect(made).toMatchObject({ needles: 34, rows: 60, graftRows: 0 });
    expect(size(made, 'girth')).toBeCloseTo(240, 9);
    expect([count(made, 'mattress'), count(made, 'cast_off')]).toEqual([60, 68]);
  });

  test('and too wide for them upright is offered as tall as they reach', () => {
    const values = { girth: mm(400), height: mm(300) };
    const [problem] = refusal(values, { needles: 36 });
    expect(problem).toMatchObject({ code: 'too_many_needles', given: 40, max: 34 });
    expect(problem).toMatchObject({ offers: [{ edit: { height: { mm: expect.closeTo(255, 9) } } }] });
    expect(sleeve({ ...values, height: mm(255) }, 36).needles).toBe(34);
  });
});

describe('a bottle sleeve with a gathered base', () => {
  // The base takes 242.9/(2π) = 38.7 mm of rows: √(115·125) + 38.7 = 158.5, 31.7 rows.
  test('has rows for the radius of the base, and one end gathered twice round', () => {
    const made = sleeve({ ...JAR, base: BASE });
    expect(made).toMatchObject({ needles: 34, rows: 32 });
    expect(size(made, 'height')).toBeCloseTo(160 - Math.sqrt(234 * 252.2) / (2 * Math.PI), 6);
    expect([count(made, 'gather'), count(made, 'cast_off'), count(made, 'mattress')]).toEqual([68, 34, 32]);
    expect(cm(made.assumed)).toContain('a base gathered to its middle');
  });

  // 32·7.5 = 240 mm, within 234 to 252.2.
  test('is a tube where the needles make its girth', () => {
    const made = sleeve({ ...JAR, base: BASE }, 32);
    expect(made).toMatchObject({ needles: 32, rows: 32, tube: { lengthMm: expect.closeTo(160, 9) } });
    expect([count(made, 'gather'), count(made, 'cast_off'), count(made, 'mattress')]).toEqual([64, 32, 0]);
  });

  test('that no needles make is offered without the base', () => {
    const values = { girth: mm(700), height: mm(120), base: BASE };
    expect(refusal(values)).toMatchObject([{ code: 'too_many_needles', max: 46, offers: [{ edit: { base: null } }] }]);
  });
});

describe('room for a handle', () => {
  // Ends cast off, 30 mm apart: √(234 − 30)(252.2 − 30)/5 = 42.6; 1813 > 42·43 = 1806.
  test('stops the ring short by it, with a loop and a button for each 50 mm of the height', () => {
    const made = sleeve({ ...JAR, handle: mm(30) });
    expect(made).toMatchObject({ rows: 43, graftRows: 0, needles: 16 });
    expect(size(made, 'girth')).toBeCloseTo(43 * 5 + 30, 9);
    expect([count(made, 'button'), count(made, 'loop'), count(made, 'cast_off'), count(made, 'graft')]).toEqual([
      2, 2, 32, 0,
    ]);
    expect(cm(atHand(made))).toBe('2 buttons of about 2 cm (32 lignes)');
    expect(cm(made.cautions)).toContain('Small parts');
  });

  test('is a part of the seam left open in an upright panel', () => {
    const made = sleeve({ ...JAR, base: BASE, handle: mm(60) });
    expect(count(made, 'mattress')).toBe(32 - 12);
    expect(cm(made.steps.map((s) => s.say))).toContain('leave 12 rows open where the handle is');
    expect(cm(made.assumed)).toContain('6 cm left open in the seam for the handle');
  });

  test('leaves some of the sleeve above it', () => {
    expect(refusal({ ...JAR, handle: mm(110) })).toMatchObject([{ code: 'length_out_of_range', maxMm: 105 }]);
  });
});

describe('what a sleeve goes round', () => {
  test('tapers to four fifths at most', () => {
    expect(refusal({ ...JAR, narrowest: mm(200) })).toMatchObject([
      { code: 'length_out_of_range', field: { id: 'narrowest' }, minMm: 208, maxMm: 260 },
    ]);
    expect(sleeve({ ...JAR, narrowest: mm(215) }).rows).toBe(48);
  });

  test('is gripped by the girth asked of the sleeve', () => {
    expect(refusal({ ...JAR, own: mm(262) })).toMatchObject([
      { code: 'length_out_of_range', field: { id: 'own' }, minMm: 234, maxMm: expect.closeTo(252.2, 9) },
    ]);
  });
});

test('a sleeve in a fabric too coarse for its height says what its needles make', () => {
  const coarse = { needles: 12, measurements: [tube('coarse', 20, 300, { stitches: read(10, 250) })] };
  const [problem] = refusal({ girth: mm(61), height: between(30, 31) }, coarse);
  expect(problem).toMatchObject({ code: 'needles_set_it', field: { id: 'height' } });
});

test('a sleeve before a stitch was measured waits for one', () => {
  expect(refusal(JAR, { measurements: [tube('a', 100, 500)] })).toMatchObject([{ code: 'no_stitch_gauge' }]);
});
