import { describe, expect, test } from 'vitest';
import type { Given } from '../../../core/given.js';
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

// Worked by hand: 78 + 9 + 7.85 + 10 = 104.85, closed 163 + 9 + 2.5 = 174.5; 46 needles make 167.7, 48 make 175.2.
describe('a pouch for a phone of 163 by 78 by 9 mm', () => {
  const PHONE: Given = { is: 'contents', sidesMm: [163, 78, 9] };
  const way = (id: string): Given => ({ is: 'choice', id });
  const words = (made: ReturnType<typeof planOf>) => made.assumed.map((w) => printed(w, { units: 'cm' })).join(' / ');
  const why = (made: ReturnType<typeof planOf>) => made.because && printed(made.because, { units: 'cm' });

  test('on 48 needles stands upright: 41 rows, 106.7 mm wide, its height enough with a chance of 53%', () => {
    const made = planOf(pouch, { contents: PHONE }, { needles: 48 });
    expect(made).toMatchObject({
      rows: 41,
      landing: { loMm: expect.closeTo(104.85, 2), hiMm: expect.closeTo(110.85, 2) },
    });
    expect(size(made, 'width')).toBeCloseTo(106.68, 9);
    const needed = made.sizes.find(({ id }) => id === 'height')?.across?.needed;
    expect(needed?.leastMm).toBe(174.5);
    expect(needed?.chance).toBeCloseTo(0.53, 2);
    expect(words(made)).toContain('1 cm of room to slip it in, its long side up, the top closing over it');
    expect(why(made)).toContain('say "lying"');
  });

  test('on 46 needles, too low for that even open, lies down, at least 189.85 mm wide', () => {
    const made = planOf(pouch, { contents: PHONE });
    expect(made.landing.loMm).toBeCloseTo(189.85, 2);
    expect(why(made)).toContain('upright it needs 17.5 cm of height');
    expect(problemsOf(outcomeOf(pouch, { contents: PHONE, turned: way('upright') }))).toMatchObject([
      {
        code: 'contents_too_big',
        tight: [{ needles: { has: 46, wanted: 48 } }],
        offers: [{ edit: { turned: way('lying') } }],
      },
    ]);
  });

  test('has no closure that would not let it in, and says which would', () => {
    const made = planOf(pouch, { contents: PHONE }, { needles: 48 });
    expect(made.notions).toEqual([]);
    expect(words(made)).toContain('one that lets it in is 4 in (10 cm) or longer');
    // Lying it goes in by 163 + 9 = 172 mm.
    expect(planOf(pouch, { contents: PHONE, closure: inches(7) }).landing.loMm).toBeCloseTo(7 * 25.4 + 50.8 + 12.7, 9);
    expect(problemsOf(outcomeOf(pouch, { contents: PHONE, closure: inches(6) }))).toMatchObject([
      {
        tight: [
          { field: { id: 'height' } },
          { field: { id: 'closure' }, mostMm: expect.closeTo(152.4, 9), needsMm: 172 },
        ],
      },
    ]);
  });

  test('keeps the part of a width or height asked for that takes it, and names one too small', () => {
    const on48 = { needles: 48 };
    const wide = planOf(pouch, { contents: PHONE, width: between(100, 120) }, on48);
    expect([wide.landing.loMm, wide.landing.hiMm]).toEqual([expect.closeTo(104.85, 2), 120]);
    const tall = planOf(pouch, { contents: PHONE, height: between(170, 180) }, on48);
    expect(tall.sizes[1]?.across?.asked?.window).toEqual({ loMm: 174.5, hiMm: 180 });
    expect(problemsOf(outcomeOf(pouch, { contents: PHONE, width: mm(90) }, on48))).toMatchObject([
      {
        code: 'contents_too_big',
        tight: [{ field: { id: 'width' }, mostMm: 96 }, {}],
        offers: [{ edit: { width: null } }],
      },
    ]);
  });

  test('before the needles are known takes the least fabric, its height still to come', () => {
    const made = planOf(pouch, { contents: PHONE }, { needles: undefined });
    expect([made.rows, made.sizes[1]?.expectedMm]).toEqual([41, undefined]);
  });

  test('too big either way is told the needles that it takes, and is offered an open top where that is enough', () => {
    const refusal = (...sidesMm: [number, number, number]) =>
      problemsOf(outcomeOf(pouch, { contents: { is: 'contents', sidesMm } }));
    expect(refusal(250, 175, 8)).toMatchObject([
      { tight: [{}, { way: 'lying', needles: { wanted: 51 } }], offers: [] },
    ]);
    // Open it needs 150 + 15 + 2.5 = 167.5 mm.
    expect(refusal(210, 150, 30)).toMatchObject([{ offers: [{ edit: { closure: mm(0) } }] }]);
  });
});

describe('a pouch left open', () => {
  const open = planOf(pouch, { width: inches(11), closure: mm(0) });

  test('has the rows of its width and no closure, rings or caution about them', () => {
    expect(open.rows).toBe(109);
    expect([open.notions, stepCount(open, 'sew_closure'), stepCount(open, 'ring')]).toEqual([[], undefined, undefined]);
    expect(open.cautions).toHaveLength(3);
    expect(stepCount(open, 'weave_in')).toBe(2);
  });

  test('still needs a width, and takes its strap in at the folds', () => {
    expect(problemsOf(outcomeOf(pouch, { closure: mm(0) }))).toMatchObject([{ code: 'missing' }]);
    const strap = planOf(pouch, { width: inches(11), closure: mm(0), strap: mm(250) });
    expect(strap.steps.map((s) => printed(s.say, { units: 'cm' })).join(' ')).toContain('in at a side fold');
  });
});

describe('a lined pouch', () => {
  // 271.78 − 5 − 3 + 24 = 287.8; 2·(167.7 − 10) + 30 = 345.4.
  test('has its cloth at hand and its steps after the closure', () => {
    const made = planOf(pouch, { closure: inches(8), lining: { is: 'choice', id: 'lined' } });
    expect(
      atHand(made)
        .map((words) => printed(words, { units: 'cm' }))
        .at(-1),
    ).toBe('a lining of cloth 29 cm by 34.5 cm');
    const ids = made.steps.map(({ id }) => id);
    expect(ids.slice(ids.indexOf('sew_closure'))).toEqual(['sew_closure', 'sew_lining', 'lining', 'weave_in', 'check']);
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
