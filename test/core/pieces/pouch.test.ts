import { describe, expect, test } from 'vitest';
import { pouch } from '../../../core/pieces/pouch.js';
import type { Problem } from '../../../core/problems.js';
import { printed } from '../../../core/units/print.js';
import { atHand, between, mm, outcomeOf, planOf, problemsOf } from '../samples.js';

const inches = (n: number) => mm(n * 25.4);
const size = (plan: ReturnType<typeof planOf>, id: string) => plan.sizes.find((s) => s.id === id)?.expectedMm;
const stepCount = (plan: ReturnType<typeof planOf>, driver: string) =>
  plan.steps.find((s) => s.driver === driver)?.count;
const tooLong = (width: ReturnType<typeof mm>, closure: number): Problem & { code: 'closure_too_long' } => {
  const [problem] = problemsOf(outcomeOf(pouch, { width, closure: inches(closure) }));
  if (problem?.code !== 'closure_too_long') throw new Error('the closure was taken');
  return problem;
};

// Worked by hand: window 203.2 + 50.8 + 12.7 = 266.7 to 279.4; 53.5·5.08 = 271.78; 171.45 − 3.73 = 167.7.
describe('a pouch for an 8 in closure on 46 needles', () => {
  const made = planOf(pouch, { closure: inches(8) });

  test('is 106 rows, 271.78 mm wide and 167.7 mm tall', () => {
    expect(made.rows).toBe(106);
    expect(size(made, 'width')).toBeCloseTo(271.78, 9);
    expect(size(made, 'height')).toBeCloseTo(167.7, 1);
  });

  test('grafts 46 pairs, sews 53 pairs of bars and 406.4 mm of tape', () => {
    expect(stepCount(made, 'graft')).toBe(46);
    expect(stepCount(made, 'mattress')).toBe(53);
    expect(stepCount(made, 'sew_closure')).toBeCloseTo(406.4, 9);
    expect(stepCount(made, 'weave_in')).toBe(6);
  });

  // 271.78·4·171.45 = 46·107·7.4543·5.08 = 186,387 mm².
  test('has four layers of tube width: the area is that of its stitches', () => {
    const area = 4 * (size(made, 'width') ?? 0) * (made.tube?.flatWidthMm ?? 0);
    expect(area).toBeCloseTo(46 * 107 * (342.9 / 46) * 5.08, 6);
    expect(Math.round(area)).toBe(186_387);
  });

  test('says that it kept rings and ease, and warns of small parts', () => {
    const assumed = made.assumed.map((w) => printed(w, { units: 'in' }));
    expect(assumed).toContain('1 in kept for a ring at each side');
    expect(assumed).toContain('1/2 to 1 in of ease beside the closure');
    expect(made.cautions).toHaveLength(4);
  });

  test('without rings is narrower by two of them', () => {
    const bare = planOf(pouch, { closure: inches(8), ring: mm(0) });
    expect(bare.landing.loMm).toBeCloseTo(266.7 - 50.8, 9);
    expect(bare.notions.map((n) => n.id)).toEqual(['closure']);
  });
});

describe('a pouch of a width alone', () => {
  test('of 11 in is 109 rows, for the graft makes the 110th', () => {
    const made = planOf(pouch, { width: inches(11) });
    expect(made).toMatchObject({ rows: 109, graftRows: 1 });
    expect(size(made, 'width')).toBeCloseTo(279.4, 9);
  });

  test('takes the longest stock closure that its expected width takes', () => {
    const made = planOf(pouch, { width: inches(11) });
    expect(atHand(made).map((words) => printed(words, { units: 'in' }))[0]).toBe('a closure of 8 in (20 cm)');
  });

  test('too narrow for any closure has none, and no caution about one', () => {
    const small = planOf(pouch, { width: mm(120) });
    expect(small.notions).toEqual([]);
    expect(small.cautions).toHaveLength(3);
    expect(stepCount(small, 'sew_closure')).toBeUndefined();
    expect(stepCount(small, 'weave_in')).toBe(2);
  });
});

describe('a pouch of a width and a closure', () => {
  test('that fit keeps the part of the width that takes the closure', () => {
    const { landing } = planOf(pouch, { width: between(260, 285), closure: inches(8) });
    expect([landing.loMm, landing.hiMm]).toEqual([expect.closeTo(266.7, 9), 285]);
  });

  test('too long for it is refused with the width that it needs and a closure that fits', () => {
    const problem = tooLong(inches(11), 9);
    expect(problem).toMatchObject({ closureMm: 228.6, needsMm: expect.closeTo(292.1, 9) });
    expect(problem.offers.map((o) => o.edit)).toEqual([
      { width: { is: 'window', loMm: expect.closeTo(292.1, 9), hiMm: expect.closeTo(304.8, 9) } },
      { closure: { is: 'length', mm: 203.2 } },
    ]);
  });

  test.each<[string, ReturnType<typeof mm>, number]>([
    ['11 in and a 9 in closure', inches(11), 9],
    ['10 to 10 1/2 in, which an 8 in closure would fill to the last hair, and a 9 in closure', between(254, 266.7), 9],
    ['4 3/4 in and a 12 in closure', inches(4.75), 12],
    ['6 in and a closure of a metre', inches(6), 39],
  ])('gets only offers that make a plan: %s', (_, width, closure) => {
    const { offers } = tooLong(width, closure);
    expect(offers.length).toBeGreaterThan(0);
    for (const { edit } of offers) {
      const values = { width, closure: inches(closure), ...(edit as Record<string, ReturnType<typeof mm>>) };
      const made = planOf(pouch, values);
      expect(made.landing.expectedMm).toBeGreaterThan(made.landing.loMm);
      expect(made.landing.expectedMm).toBeLessThan(made.landing.hiMm);
    }
  });

  test('offers no closure where no stock length fits', () => {
    expect(tooLong(inches(4.75), 12).offers).toHaveLength(1);
  });
});

describe('rings', () => {
  test('over a third of the height are refused, and none is offered', () => {
    const values = { closure: inches(8), ring: mm(60) };
    expect(problemsOf(outcomeOf(pouch, values))).toMatchObject([
      { code: 'ring_too_big', ringMm: 60, offers: [{ edit: { ring: { mm: 0 } } }] },
    ]);
    expect(outcomeOf(pouch, { ...values, ring: mm(0) }).ok).toBe(true);
    expect(outcomeOf(pouch, { ...values, ring: mm(55) }).ok).toBe(true);
  });

  // On 20 needles it is 70.8 mm tall, of which 25.4 mm is more than a third.
  test('not asked for are left out of a pouch too low for them, which then takes the longer closure', () => {
    const low = planOf(pouch, { width: inches(11) }, { needles: 20 });
    const assumed = low.assumed.map((w) => printed(w, { units: 'in' }));
    expect(assumed).toContain('no rings, for which it is too low');
    expect(atHand(low).map((words) => printed(words, { units: 'in' }))).toEqual(['a closure of 10 in (25 cm)']);
    expect(stepCount(low, 'ring')).toBeUndefined();
  });

  test('asked for are refused in a pouch too low for them, whether or not a closure was named', () => {
    const outcome = outcomeOf(pouch, { width: inches(11), ring: mm(30) }, { needles: 20 });
    expect(problemsOf(outcome)).toMatchObject([{ code: 'ring_too_big', ringMm: 30 }]);
  });
});

describe('a strap', () => {
  test('asked for by its drop comes with its length, its step and the cautions of loops and loads', () => {
    const made = planOf(pouch, { closure: inches(8), strap: mm(250) });
    // 2·√(250² + ((271.78 − 100)/2)²) + 100 + 80 = 708.7, rounded up to 5 cm.
    expect(atHand(made).map((words) => printed(words, { units: 'cm' }))[0]).toBe('a strap of 75 cm');
    expect(stepCount(made, 'strap')).toBe(2);
    expect(made.cautions.map((w) => printed(w, { units: 'cm' })).join(' ')).toMatch(/long loop.*bear the load/);
    expect(made.assumed.map((w) => printed(w, { units: 'cm' }))).toContain('a strap that drops 25 cm to the top edge');
  });

  test('is on no pouch that was asked for without one', () => {
    expect(stepCount(planOf(pouch, { closure: inches(8) }), 'strap')).toBeUndefined();
  });
});

describe('more needles', () => {
  test('make it taller and not wider', () => {
    const [on46, on48] = [46, 48].map((needles) => planOf(pouch, { closure: inches(8) }, { needles }));
    if (!on46 || !on48) throw new Error('no plans');
    expect(on48.rows).toBe(on46.rows);
    // 48·7.4543/2 − 3.73 = 175.2.
    expect(size(on48, 'height')).toBeCloseTo(175.2, 1);
  });
});
