import { describe, expect, test } from 'vitest';
import type { Given } from '../../../core/given.js';
import { limbWarmers } from '../../../core/pieces/limb-warmers.js';
import type { PlanInput } from '../../../core/plan.js';
import { bodySizeMm } from '../../../core/tables/bodies.js';
import { printed } from '../../../core/units/print.js';
import type { Words } from '../../../core/words.js';
import { atHand, EVEN, mm, outcomeOf, planOf, problemsOf, read, tube } from '../samples.js';

const LEG: Given = { is: 'choice', id: 'leg' };
const HAND = mm(bodySizeMm('hand', { is: 'woman' }) ?? 0);
const CALF = mm(bodySizeMm('calf', { is: 'woman' }) ?? 0);
const warmers = (values: PlanInput['values'], needles: number | undefined = 48) =>
  planOf(limbWarmers, values, { needles, measurements: EVEN });
const refusal = (values: PlanInput['values'], more: Partial<PlanInput> = {}) =>
  problemsOf(outcomeOf(limbWarmers, values, { needles: 48, measurements: EVEN, ...more }));
const size = (plan: ReturnType<typeof warmers>, id: string) => plan.sizes.find((s) => s.id === id)?.expectedMm;
const cm = (words: readonly Words[]) => words.map((w) => printed(w, { units: 'cm' })).join(' / ');
const total = (plan: ReturnType<typeof warmers>, driver: string) =>
  plan.steps.filter((s) => s.driver === driver).reduce((sum, s) => sum + s.count * (s.times ?? 1), 0);
const stitches = (plan: ReturnType<typeof warmers>, role: string) =>
  plan.steps
    .flatMap((s) => (s.yarn ?? []).map((y) => (y.role === role ? (y.stitches ?? 0) * (s.times ?? 1) : 0)))
    .reduce((a, b) => a + b, 0);

// Worked by hand at 7.5 by 5 mm for a hand of 186.6: √(170·190)/5 = 35.944; 1292 > 35·36 = 1260.
describe('wrist warmers for a woman, 180 mm long', () => {
  const made = warmers({ length: mm(180), hand: HAND });

  test('are two panels of 24 needles and 36 rows: 165 mm round between the seams', () => {
    expect(made).toMatchObject({ needles: 24, rows: 36, graftRows: 0, parts: 2 });
    expect(size(made, 'length')).toBeCloseTo(180, 9);
    expect(size(made, 'girth')).toBeCloseTo(165, 9);
    expect(1 - 165 / 186.6).toBeCloseTo(0.116, 3);
    expect(cm(made.because ? [made.because] : [])).toContain('a tube of all your needles is 36 cm round');
  });

  test('count for the pair: 1,728 stitches, 480 of waste, 54 bars sewn and 96 cast off', () => {
    expect(stitches(made, 'main')).toBe(1728);
    expect(stitches(made, 'waste')).toBe(480);
    expect([total(made, 'mattress'), total(made, 'cast_off'), total(made, 'graft')]).toEqual([54, 96, 0]);
  });

  // 45/5 = 9 rows from row 18: 36 − 9 = 27 bars.
  test('leave 9 rows of the seam open for the thumb, from row 18 to 27', () => {
    const seam = made.steps.find((s) => s.id === 'mattress');
    expect(seam?.count).toBe(27);
    expect(cm(seam ? [seam.say] : [])).toMatch(/leave rows 19 to 27 open for the thumb.*two stitches across each end/);
    expect(cm(made.assumed)).toContain('a thumb opening of 4.5 cm, 9 rows from row 18 on');
  });

  test('have the area of their stitches, a stitch of each edge inside the seam', () => {
    const area = (size(made, 'length') ?? 0) * ((size(made, 'girth') ?? 0) + 2 * 7.5);
    expect(area).toBeCloseTo(24 * 36 * 7.5 * 5, 6);
  });

  test('without a thumb opening are sewn over all their rows', () => {
    const closed = warmers({ length: mm(180), hand: HAND, thumb: mm(0) });
    expect(total(closed, 'mattress')).toBe(72);
    expect(cm(closed.assumed)).not.toContain('thumb');
  });

  // A tube of 22 needles: 165 mm, hand −11.6 %.
  test('are tubes on a machine of 22 needles, cranked to and fro beside the thumb', () => {
    const tubes = warmers({ length: mm(180), hand: HAND }, 22);
    expect(tubes).toMatchObject({
      needles: 22,
      rows: 36,
      because: undefined,
      tube: { flatWidthMm: expect.closeTo(82.5, 9) },
    });
    expect(size(tubes, 'girth')).toBeCloseTo(165, 9);
    expect(cm(tubes.steps.map((s) => s.say))).toContain('but rows 19 to 27 to and fro for the thumb');
    expect(total(tubes, 'mattress')).toBe(0);
  });
});

// Worked by hand: 46·7.5 = 345 mm, 7.6 % under 373.3; √(340·360)/5 = 69.97; 4896 > 69·70 = 4830.
describe('leg warmers for a woman, 350 mm long', () => {
  const made = warmers({ limb: LEG, length: mm(350), calf: CALF, ankle: mm(215.7), heel: mm(310.3) }, 46);

  test('are two tubes of 46 needles and 70 rows, 345 mm round', () => {
    expect(made).toMatchObject({ needles: 46, rows: 70, parts: 2 });
    expect(size(made, 'girth')).toBeCloseTo(345, 9);
    expect(size(made, 'length')).toBeCloseTo(350, 9);
  });

  // 0.9·215.7 + 20 = 214.1, rounded up to 25 cm.
  test('take an elastic at each ankle and have no thumb', () => {
    expect(made.notions).toMatchObject([{ id: 'elastic', count: 2 }]);
    expect(cm(atHand(made))).toBe('2 elastics of 25 cm (50 cm altogether)');
    expect(total(made, 'elastic')).toBe(2);
    expect(cm(made.assumed)).not.toContain('thumb');
  });

  // 1.4·0.95·373.3 = 496.5.
  test('must pass the heel', () => {
    const values = { limb: LEG, length: mm(350), calf: CALF, heel: mm(500) };
    expect(refusal(values, { needles: 46 })).toMatchObject([
      { code: 'length_out_of_range', field: { id: 'heel' }, maxMm: expect.closeTo(496.5, 1) },
    ]);
  });

  test('need not be called so where only a calf is given', () => {
    expect(warmers({ length: mm(350), calf: CALF }, 46)).toMatchObject({ needles: 46, rows: 70 });
  });

  test('need the calf, whatever the hand', () => {
    expect(refusal({ limb: LEG, length: mm(350), hand: HAND })).toMatchObject([
      { code: 'missing', anyOf: [{ id: 'calf' }] },
    ]);
  });
});

describe('warmers that neither a tube nor a panel of the needles goes round', () => {
  // 300 mm are 40 needles; 0.899·450 = 404.4: 404.4/5 = 80.9, so 81 rows with the graft.
  test('are laid sideways, rows round the limb, and grafted', () => {
    const made = warmers({ limb: LEG, length: mm(300), calf: mm(450) }, 46);
    expect(made).toMatchObject({ needles: 40, rows: 80, graftRows: 1 });
    expect(size(made, 'girth')).toBeCloseTo(405, 9);
    expect(size(made, 'length')).toBeCloseTo(300, 9);
    expect([total(made, 'graft'), total(made, 'mattress')]).toEqual([80, 0]);
    expect(cm(made.because ? [made.because] : [])).toContain('laid sideways');
  });

  test('and are too long to lay sideways are offered as long as the needles reach', () => {
    const values = { limb: LEG, length: mm(500), calf: mm(450) };
    const [problem] = refusal(values, { needles: 46 });
    expect(problem).toMatchObject({
      code: 'too_many_needles',
      max: 44,
      offers: [{ edit: { length: { mm: expect.closeTo(330, 9) } } }],
    });
    expect(warmers({ ...values, length: mm(330) }, 46).needles).toBe(44);
  });

  test('in a fabric too coarse for the girth say what a panel would be', () => {
    const coarse = [tube('coarse', 20, 300, { stitches: read(10, 250) })];
    expect(refusal({ length: mm(61), hand: mm(100) }, { needles: 12, measurements: coarse })[0]).toMatchObject({
      code: 'needles_set_it',
      offers: [{ edit: { length: { mm: expect.closeTo(250, 9) } } }],
    });
  });
});

describe('a thumb opening', () => {
  test('of more than half the length is refused', () => {
    expect(refusal({ length: mm(150), hand: HAND, thumb: mm(100) })).toMatchObject([
      { code: 'length_out_of_range', field: { id: 'thumb' }, maxMm: 70 },
    ]);
  });

  test('nobody asked for is left out of a piece too short for it, and of one laid sideways', () => {
    expect(cm(warmers({ length: mm(80), hand: HAND }).assumed)).toContain(
      'no thumb opening, for which it is too short',
    );
    expect(cm(warmers({ length: mm(100), hand: mm(380) }, 40).assumed)).toContain('has no side seam');
  });

  test('asked for in a leg warmer is said to be none', () => {
    const made = warmers({ limb: LEG, length: mm(350), calf: CALF, thumb: mm(50) }, 46);
    expect(cm(made.assumed)).toContain('no thumb opening in a leg warmer');
  });
});

test('warmers before a stitch was measured wait for one', () => {
  expect(refusal({ length: mm(180), hand: HAND }, { measurements: [tube('a', 100, 500)] })).toMatchObject([
    { code: 'no_stitch_gauge', field: { id: 'girth' } },
  ]);
});
