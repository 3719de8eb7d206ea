import { describe, expect, test } from 'vitest';
import type { Given } from '../../../core/given.js';
import { cushionCover } from '../../../core/pieces/cushion-cover.js';
import type { PlanInput } from '../../../core/plan.js';
import { printed } from '../../../core/units/print.js';
import type { Words } from '../../../core/words.js';
import { atHand, between, EVEN, mm, outcomeOf, planOf, problemsOf, tube } from '../samples.js';

const onEven = { needles: 48, measurements: EVEN };
const made = (values: PlanInput['values'], more: Partial<PlanInput> = {}) =>
  planOf(cushionCover, values, { ...onEven, ...more });
const refusal = (values: PlanInput['values'], more: Partial<PlanInput> = {}) =>
  problemsOf(outcomeOf(cushionCover, values, { ...onEven, ...more }));
const choice = (id: string): Given => ({ is: 'choice', id });
const cm = (words: readonly Words[]) => words.map((w) => printed(w, { units: 'cm' })).join(' / ');
const because = (plan: ReturnType<typeof made>) => cm(plan.because ? [plan.because] : []);
const size = (plan: ReturnType<typeof made>, id: string) => plan.sizes.find((s) => s.id === id)?.expectedMm ?? 0;
const counted = (plan: ReturnType<typeof made>, driver: string) =>
  plan.steps.filter((s) => s.driver === driver).reduce((sum, s) => sum + s.count * (s.times ?? 1), 0);
const stitches = (plan: ReturnType<typeof made>, role: string) =>
  plan.steps
    .flatMap((s) => (s.yarn ?? []).map((y) => ({ ...y, times: s.times ?? 1 })))
    .reduce((sum, y) => sum + (y.role === role ? (y.stitches ?? 0) * y.times : 0), 0);

const SQUARE = { width: mm(300), height: mm(300) };

// Worked by hand at 7.5 by 5 mm: √(570·600)/5 = 116.962; 13680 > 116·117 = 13572; .975·300/7.5 + 2 = 41.
describe('a cushion cover for a form of 300 by 300 mm', () => {
  const cover = made({ ...SQUARE, closure: mm(270) });

  test('is a flat ring of 41 needles and 116 rows, 292.5 mm either way, since the tube is 180 mm', () => {
    expect(cover).toMatchObject({ needles: 41, rows: 116, graftRows: 1, parts: 1, tube: undefined });
    expect([size(cover, 'width'), size(cover, 'height')]).toEqual([expect.closeTo(292.5, 9), expect.closeTo(292.5, 9)]);
    expect([cover.landing.loMm, cover.landing.hiMm]).toEqual([285, 300]);
    expect(because(cover)).toBe('a flat ring, since a tube of all your needles is 18 cm wide flat');
  });

  test('cranks 4756 stitches and 410 of waste, grafts 41 pairs, sews 58 bars and a closure of 270 mm', () => {
    expect([stitches(cover, 'main'), stitches(cover, 'waste')]).toEqual([4756, 410]);
    expect(['graft', 'mattress', 'cast_off', 'sew_closure'].map((d) => counted(cover, d))).toEqual([41, 58, 0, 540]);
  });

  // 41·117·7.5·5 = 179,887.5 mm², of which 2·7.5·117·5 = 8775 lie in the seams.
  test('has the area of its stitches less what the seams take', () => {
    const inSeams = 2 * 7.5 * 117 * 5;
    expect(2 * size(cover, 'width') * size(cover, 'height')).toBeCloseTo(41 * 117 * 7.5 * 5 - inSeams, 6);
  });

  test('is square where one side is given, and names its form', () => {
    const square = made({ width: mm(300) });
    expect(square).toMatchObject({ needles: 41, rows: 116 });
    expect(cm(square.assumed)).toContain('as tall as it is wide');
    expect(cm(atHand(square))).toContain('a cushion form of 30 cm by 30 cm');
  });

  test('has the longest stock closure that leaves 20 mm, or buttons every 50 mm', () => {
    // 10 in is 254 mm, 12 in 304.8 mm.
    expect(counted(made(SQUARE), 'sew_closure')).toBeCloseTo(508, 9);
    const buttoned = made({ ...SQUARE, closing: choice('buttons') });
    expect([counted(buttoned, 'button'), counted(buttoned, 'sew_closure')]).toEqual([6, 0]);
  });

  test('refuses a closure longer than its opening, with one that fits', () => {
    expect(refusal({ ...SQUARE, closure: mm(280) })).toMatchObject([
      { code: 'length_out_of_range', field: { id: 'closure' }, offers: [{ edit: { closure: { mm: 254 } } }, {}] },
    ]);
  });

  test('warns of babies’ beds and of small parts', () => {
    expect(cm(cover.cautions)).toMatch(/Small parts|sleeping baby/);
    expect(cover.cautions).toHaveLength(5);
  });

  test('is made to a width of its own that suits the form, and to no other', () => {
    expect(made({ ...SQUARE, own: between(290, 300) }).landing.loMm).toBe(290);
    expect(made({ own: between(285, 300) }).rows).toBe(116);
    expect(refusal({ ...SQUARE, own: mm(400) })).toMatchObject([
      { code: 'length_out_of_range', field: { id: 'own' }, minMm: 285, maxMm: 300 },
    ]);
  });
});

// Upright √(332.5·350)/5 = 68.227 half rows at 67.5 and 68.5: 4654.9 > 67.5·68.5 = 4623.75, so 68 rows, 342.5 mm.
// Sideways 180 − 3.75 = 176.25 mm: 2.1 % under 180, where upright is on it.
describe('a bolster cover for a form of 350 by 180 mm', () => {
  const bolster = { width: mm(350), height: mm(180) };
  const upright = made(bolster);

  test('is laid upright, 68 rows, 342.5 mm, the opening along its 180 mm', () => {
    expect(upright).toMatchObject({ rows: 68, graftRows: 0.5, needles: 48 });
    expect([size(upright, 'width'), size(upright, 'height')]).toEqual([
      expect.closeTo(342.5, 9),
      expect.closeTo(180, 9),
    ]);
    expect(because(upright)).toBe('laid upright: your needles make 18 cm, near the 18 cm of the form');
    expect([counted(upright, 'graft'), counted(upright, 'cast_off'), counted(upright, 'mattress')]).toEqual([
      24, 48, 0,
    ]);
    expect(upright.outline.lines[1]?.is).toBe('opening');
  });

  // 2·342.5·180 = 48·68.5·7.5·5.
  test('has the area of its stitches in two layers upright, and in four sideways, before its seam', () => {
    expect(2 * size(upright, 'width') * size(upright, 'height')).toBeCloseTo(48 * 68.5 * 7.5 * 5, 6);
    const sideways = made({ ...bolster, opening: choice('width') });
    expect((4 * size(sideways, 'width') * (48 * 7.5)) / 2).toBeCloseTo(48 * 136 * 7.5 * 5, 6);
  });

  // √(665·700)/5 = 136.455; 18620 ≤ 136·137 = 18632, so 135 rows and the graft: 340 mm.
  test('is laid sideways where the opening must lie along its 350 mm', () => {
    const sideways = made({ ...bolster, opening: choice('width') });
    expect(sideways).toMatchObject({ rows: 135, graftRows: 1, needles: 48 });
    expect([size(sideways, 'width'), size(sideways, 'height')]).toEqual([
      expect.closeTo(340, 9),
      expect.closeTo(176.25, 9),
    ]);
    expect([counted(sideways, 'graft'), counted(sideways, 'mattress')]).toEqual([48, 68]);
    expect(sideways.outline.lines.map((l) => l.is)).toEqual(['seam', 'fold', 'opening', 'graft']);
  });

  test('or where the closure goes along it alone', () => {
    expect(made({ ...bolster, closure: mm(254) }).rows).toBe(135);
  });
});

// A panel of 46 needles shows 44: 330 mm. 475 mm take two; .975·500/(2·7.5) + 2 rounds to 34 or 35.
describe('a form wider than one flat ring', () => {
  const large = made({ width: mm(500) });

  test('takes two rings side by side', () => {
    expect(large).toMatchObject({ parts: 2, needles: 34 });
    expect(size(large, 'height')).toBeCloseTo(2 * 32 * 7.5, 9);
    expect(because(large)).toBe('2 flat rings side by side, since a panel takes 46 needles at most');
  });

  test('with yarn and seams of both: one between them, round, and half of it below', () => {
    const bars = large.landing.rowsInPiece;
    expect(stitches(large, 'main')).toBe(2 * 34 * large.rows);
    expect(counted(large, 'graft')).toBe(2 * 34);
    expect(counted(large, 'mattress')).toBe(bars + Math.floor(bars / 2));
  });

  test('is refused where not even six would do, with the form that six make', () => {
    const few = { needles: 16 };
    const [problem] = refusal({ width: mm(900) }, few);
    expect(problem).toMatchObject({
      code: 'too_many_needles',
      max: 14,
      offers: [{ edit: { height: { mm: expect.closeTo(540, 9) } } }],
    });
    expect(made({ width: mm(900), height: mm(540) }, few).parts).toBe(6);
  });
});

test('a cover before a machine is known is a flat ring, and before a stitch was measured waits for one', () => {
  expect(made(SQUARE, { needles: undefined })).toMatchObject({ needles: 41, because: undefined });
  expect(refusal(SQUARE, { measurements: [tube('rows', 100, 500)] })).toMatchObject([{ code: 'no_stitch_gauge' }]);
});
