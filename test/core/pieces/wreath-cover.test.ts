import { describe, expect, test } from 'vitest';
import { wreathCover } from '../../../core/pieces/wreath-cover.js';
import type { PlanInput } from '../../../core/plan.js';
import { printed } from '../../../core/units/print.js';
import type { Words } from '../../../core/words.js';
import { atHand, between, EVEN, mm, outcomeOf, planOf, problemsOf, read, tube } from '../samples.js';

const onEven = { needles: 48, measurements: EVEN };
const wreath = (values: PlanInput['values'], needles: number | undefined = 48) =>
  planOf(wreathCover, values, { ...onEven, needles });
const refusal = (values: PlanInput['values'], more: Partial<PlanInput> = {}) =>
  problemsOf(outcomeOf(wreathCover, values, { ...onEven, ...more }));
const size = (plan: ReturnType<typeof wreath>, id: string) => plan.sizes.find((s) => s.id === id)?.expectedMm ?? 0;
const cm = (words: readonly Words[]) => words.map((w) => printed(w, { units: 'cm' })).join(' / ');
const count = (plan: ReturnType<typeof wreath>, driver: string) =>
  plan.steps.filter((s) => s.driver === driver).reduce((sum, s) => sum + s.count, 0);
const stitches = (plan: ReturnType<typeof wreath>, role: string) =>
  plan.steps.flatMap((s) => s.yarn ?? []).reduce((sum, y) => sum + (y.role === role ? (y.stitches ?? 0) : 0), 0);

const FORM = { outside: mm(300), girth: mm(160) };

// Worked by hand at 7.5 by 5 mm: s = 160/π = 50.93, L = π·249.07 = 782.48; √(743.35·782.48)/5 = 152.533;
// 23266 > 152·153 = 23256. n = 144/7.5 + 2 = 21.2.
describe('a cover for a form 300 mm across and 160 mm round', () => {
  const made = wreath(FORM);

  test('is a panel of 21 needles and 152 rows: 765 mm long with the graft, 142.5 mm round between the seams', () => {
    expect(made).toMatchObject({ needles: 21, rows: 152, graftRows: 1, tube: undefined });
    expect(size(made, 'length')).toBeCloseTo(765, 9);
    expect(size(made, 'girth')).toBeCloseTo(142.5, 9);
    expect([made.landing.loMm, made.landing.hiMm]).toEqual([expect.closeTo(743.35, 1), expect.closeTo(782.48, 2)]);
  });

  test('takes 3,192 stitches, 210 of waste, 21 pairs grafted and 153 bars sewn', () => {
    expect([stitches(made, 'main'), stitches(made, 'waste')]).toEqual([3192, 210]);
    expect([count(made, 'graft'), count(made, 'mattress'), count(made, 'loop')]).toEqual([21, 153, 1]);
  });

  // 300/249.07 − 1 = 20.4 %.
  test('says how far its outer edge is stretched, near the most there is', () => {
    expect(cm(made.assumed)).toContain('by about 20% more along the outer edge, near the most that knitting takes');
    expect(cm(wreath({ outside: mm(400), girth: mm(160) }).assumed)).not.toContain('near the most');
  });

  test('has the area of its stitches less two at the seam, and of the form what its ease leaves', () => {
    const areaMm2 = size(made, 'length') * size(made, 'girth');
    expect(areaMm2 + 2 * 7.5 * 153 * 5).toBeCloseTo(21 * 153 * 7.5 * 5, 6);
    // A ring form has the surface of its girth times its middle line, which the theorem of Pappus gives: 4π²·R·r.
    const formMm2 = 4 * Math.PI ** 2 * (150 - 160 / (2 * Math.PI)) * (160 / (2 * Math.PI));
    expect(areaMm2 / formMm2).toBeCloseTo((142.5 / 160) * (765 / 782.48), 5);
  });

  test('needs the form and a cord to hang it by, and is kept off candles', () => {
    expect(cm(atHand(made))).toBe('a ring form 30 cm across and 16 cm round / a hanging cord of 15 cm');
    expect(cm(made.cautions)).toMatch(/Small parts.*candles/);
    expect(cm(made.because ? [made.because] : [])).toContain('a closed form enters no tube');
  });
});

describe('a form', () => {
  // π·300/5 = 188.5.
  test('too thick for the cover to stretch round its outer edge is refused', () => {
    expect(refusal({ outside: mm(300), girth: mm(200) })).toMatchObject([
      { code: 'length_out_of_range', field: { id: 'girth' }, maxMm: expect.closeTo(188.5, 1) },
    ]);
    expect(refusal({ length: mm(780), girth: mm(200) })).toMatchObject([{ maxMm: expect.closeTo(195, 0) }]);
  });

  // 18 needles leave 16: 14·7.5/0.8986 = 116.8 mm.
  test('too thick for the needles is told with the one that they go round', () => {
    const [problem] = refusal(FORM, { needles: 18 });
    expect(problem).toMatchObject({ code: 'too_many_needles', given: 21, max: 16 });
    expect(problem).toMatchObject({ offers: [{ edit: { girth: { mm: expect.closeTo(116.8, 1) } } }] });
    expect(wreath({ ...FORM, girth: mm(116.8) }, 18).needles).toBe(16);
  });

  test('too thin for a coarse fabric is told with the one that it goes round', () => {
    const coarse = [tube('coarse', 20, 300, { stitches: read(10, 250) })];
    expect(refusal({ outside: mm(300), girth: mm(42) }, { measurements: coarse })).toMatchObject([
      { code: 'needles_set_it', field: { id: 'girth' }, offers: [{ edit: { girth: { is: 'length' } } }] },
    ]);
  });
});

describe('the length of the cover', () => {
  test('may be asked for by itself', () => {
    const made = wreath({ length: between(743.35, 782.48), girth: mm(160) });
    expect(made.rows).toBe(152);
    expect(cm(atHand(made))).toContain('a ring form 16 cm round');
  });

  test('must suit the form asked for with it', () => {
    expect(wreath({ ...FORM, length: mm(760) }).rows).toBe(151);
    expect(refusal({ ...FORM, length: mm(900) })).toMatchObject([
      { code: 'length_out_of_range', field: { id: 'length' }, maxMm: expect.closeTo(782.5, 1) },
    ]);
  });
});

test('a cover before a stitch was measured waits for one', () => {
  expect(refusal(FORM, { measurements: [tube('a', 100, 500)] })).toMatchObject([{ code: 'no_stitch_gauge' }]);
});
