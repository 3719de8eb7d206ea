import { describe, expect, test } from 'vitest';
import type { Given } from '../../../core/given.js';
import { hat } from '../../../core/pieces/hat.js';
import type { PlanInput } from '../../../core/plan.js';
import { bodySizeMm } from '../../../core/tables/bodies.js';
import { printed } from '../../../core/units/print.js';
import type { Words } from '../../../core/words.js';
import { atHand, BULKY, mm, outcomeOf, planOf, problemsOf } from '../samples.js';

const onBulky = { needles: 48, measurements: BULKY };
const made = (values: PlanInput['values'], more: Partial<PlanInput> = onBulky) => planOf(hat, values, more);
const refusal = (values: PlanInput['values'], more: Partial<PlanInput> = onBulky) =>
  problemsOf(outcomeOf(hat, values, more))[0];
const choice = (id: string): Given => ({ is: 'choice', id });
const text = (all: readonly Words[]) => all.map((words) => printed(words, { units: 'cm' }));
const stepText = (plan: ReturnType<typeof made>) => text(plan.steps.map(({ say }) => say)).join(' ');
const count = (plan: ReturnType<typeof made>, driver: string) => plan.steps.find((s) => s.driver === driver)?.count;
const size = (plan: ReturnType<typeof made>, id: string) => plan.sizes.find((s) => s.id === id)?.expectedMm;
const tails = (plan: ReturnType<typeof made>) =>
  plan.steps.flatMap((s) => s.yarn ?? []).flatMap((y) => y.lengthMm ?? []);

const GIRL = mm(bodySizeMm('head', { is: 'child', months: 60, sex: 'girl' }) ?? 0);
const WOMAN = mm(bodySizeMm('head', { is: 'woman' }) ?? 0);

// A head of 499.2: depth 179.7 ± 10, brim 40. √(209.72·229.72)/6.5 = 33.768; 1140.3 > 33·34 = 1122.
describe('a hat for a girl of five, on 48 needles in bulky yarn', () => {
  const plan = made({ head: GIRL, brim: mm(40) });

  test('is 34 rows: 181 mm deep with its brim turned up, 456 mm round', () => {
    expect(plan).toMatchObject({ rows: 34, graftRows: 0 });
    expect(plan.landing.loMm).toBeCloseTo(169.72, 2);
    expect(plan.landing.hiMm).toBeCloseTo(189.72, 2);
    expect(plan.sizes.map((s) => [s.figure, s.expectedMm])).toEqual([
      ['heightMm', expect.closeTo(181, 9)],
      ['girthMm', expect.closeTo(456, 9)],
    ]);
  });

  // 1 − 456/499.2 = 8.7 %.
  test('is 9 % less round than the head', () => {
    expect(text(plan.assumed)).toEqual(
      expect.arrayContaining(['9% less round than a head of 50 cm', '36% of the head deep, give or take 1 cm']),
    );
  });

  test('cranks 1632 stitches, threads 96 loops and sews 48 down', () => {
    const main = plan.steps.flatMap((s) => s.yarn ?? []).filter((y) => y.role === 'main');
    expect(main.reduce((total, y) => total + (y.stitches ?? 0), 0)).toBe(1632);
    expect([count(plan, 'gather'), count(plan, 'hem'), count(plan, 'cast_off')]).toEqual([96, 48, undefined]);
  });

  // √(19·9.5·6.5) = 34.253 mm a stitch: 48·34.253·1.05 + 150; 2·456 + 300.
  test('leaves a tail to sew the brim and one to gather the crown', () => {
    expect(tails(plan)).toEqual([expect.closeTo(1876.3, 1), expect.closeTo(1212, 9)]);
    expect(stepText(plan)).toContain('leave 1.9 m to sew the brim down with');
  });

  // 456·(181 + 40) = 48·34·9.5·6.5 = 100,776 mm².
  test('has the area of its stitches, the brim among them', () => {
    expect((size(plan, 'girth') ?? 0) * ((size(plan, 'depth') ?? 0) + 40)).toBeCloseTo(48 * 34 * 9.5 * 6.5, 6);
  });

  test('warns of sleep, and of small parts with a pompom', () => {
    expect(text(plan.cautions)[0]).toMatch(/baby before sleep/);
    const topped = made({ head: GIRL, top: choice('pompom') });
    expect(text(topped.cautions)[1]).toMatch(/under three/);
    expect(tails(topped).at(-1)).toBe(200 * 70);
  });
});

describe('the girth of a hat', () => {
  // 1 − 456/561.1 = 18.7 %.
  test('snug on a woman’s head is taken, and said', () => {
    expect(text(made({ head: WOMAN }).assumed)).toContain('19% less round than a head of 56 cm, which is snug');
  });

  // 46 needles of medium yarn: 342.9 mm, 38.9 % under. .9·561.1/342.9·46 = 67.7 needles.
  test('that no head stretches to is refused, and sideways offered', () => {
    const problem = refusal({ head: WOMAN }, {});
    if (problem === undefined || !('offers' in problem)) throw new Error('no offers');
    expect(problem).toMatchObject({ code: 'needles_set_it', needlesWanted: 68, expectedMm: expect.closeTo(342.9, 9) });
    expect(text(problem.offers.map((offer) => offer.label))).toEqual([
      'knitted sideways, where rows make the girth and needles the depth',
      'as it comes, for a head of 38 cm',
    ]);
    for (const { edit } of problem.offers) {
      const values = Object.entries({ head: WOMAN, ...edit }).flatMap(([id, given]) => (given ? [[id, given]] : []));
      expect(outcomeOf(hat, Object.fromEntries(values)).ok).toBe(true);
    }
  });

  test('too loose for the head is refused as well', () => {
    expect(refusal({ head: mm(400) })).toMatchObject({ code: 'needles_set_it' });
  });
});

// √(476.935·533.045)/5.08 = 99.254; 9851.4 ≤ 99·100: .90·561.1/5.08 − 1 = 98.4 rows.
describe('a hat knitted sideways', () => {
  const plan = made({ head: WOMAN, lay: choice('sideways') }, {});

  test('is a ring of 98 rows, 502.9 mm round and as deep as the tube is wide', () => {
    expect(plan).toMatchObject({ rows: 98, graftRows: 1 });
    expect(size(plan, 'girth')).toBeCloseTo(99 * 5.08, 9);
    expect(size(plan, 'depth')).toBeCloseTo(171.45, 9);
  });

  test('grafts 46 pairs and threads 99 bars twice', () => {
    expect([count(plan, 'graft'), count(plan, 'gather'), count(plan, 'fold')]).toEqual([46, 198, undefined]);
    expect(text(plan.assumed)).toEqual(
      expect.arrayContaining([
        '10% less round than a head of 56 cm',
        'the needles make it 17 cm deep; 19 to 21 cm is usual for the head',
      ]),
    );
  });

  // 2·502.92·171.45 = 46·99·7.4543·5.08.
  test('of two layers has the area of its stitches', () => {
    const area = 2 * (size(plan, 'girth') ?? 0) * (size(plan, 'depth') ?? 0);
    expect(area).toBeCloseTo(46 * 99 * (342.9 / 46) * 5.08, 6);
  });

  test('turns up a brim only when asked, and at most a third of the tube', () => {
    const values = { head: WOMAN, lay: choice('sideways') };
    expect(size(made({ ...values, brim: mm(40) }, {}), 'depth')).toBeCloseTo(131.45, 9);
    expect(refusal({ ...values, brim: mm(60) }, {})).toMatchObject({
      field: { id: 'brim' },
      maxMm: expect.closeTo(57.15, 9),
    });
  });

  test('as deep as asked only where the needles make it', () => {
    const values = { head: WOMAN, lay: choice('sideways') };
    expect(made({ ...values, depth: mm(175) }, {}).sizes[1]?.across?.asked?.inside).toBe(true);
    expect(refusal({ ...values, depth: mm(210) }, {})).toMatchObject({ offers: [{ edit: { depth: null } }] });
  });
});

test('a hat needs the head that it is for', () => {
  expect(refusal({ depth: mm(200) })).toMatchObject({ code: 'missing', anyOf: [{ id: 'head' }] });
});

describe('the brim', () => {
  test('is 5 cm turned up unless said', () => {
    expect(text(made({ head: GIRL }).assumed)).toContain('a brim of 5 cm turned up');
  });

  test('refused is cast off, and the hat has fewer rows', () => {
    const plan = made({ head: GIRL, brim: mm(0) });
    expect(plan.rows).toBe(28);
    expect([count(plan, 'cast_off'), count(plan, 'hem')]).toEqual([48, undefined]);
    expect(stepText(plan)).toContain('Cast off the 48 loops of the first row loosely');
    expect(tails(plan)[0]).toBe(150);
  });

  test('over half of the depth is refused, with one that is not', () => {
    expect(refusal({ head: GIRL, depth: mm(180), brim: mm(100) })).toMatchObject({
      code: 'length_out_of_range',
      maxMm: 90,
      offers: [{ edit: { brim: { mm: 90 } } }],
    });
  });

  test('with elastic comes with its length and its step', () => {
    // .9·561.1 + 20 = 525, rounded up.
    const plan = made({ head: WOMAN, elastic: choice('with') });
    expect(text(atHand(plan))).toEqual(['an elastic of 55 cm']);
    expect(count(plan, 'elastic')).toBe(1);
  });
});
