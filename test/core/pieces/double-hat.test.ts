import { describe, expect, test } from 'vitest';
import type { Given } from '../../../core/given.js';
import { doubleHat } from '../../../core/pieces/double-hat.js';
import type { PlanInput } from '../../../core/plan.js';
import { bodySizeMm } from '../../../core/tables/bodies.js';
import { printed } from '../../../core/units/print.js';
import type { Words } from '../../../core/words.js';
import { atHand, BULKY, EVEN, mm, outcomeOf, planOf, problemsOf } from '../samples.js';

const onBulky = { needles: 48, measurements: BULKY };
const made = (values: PlanInput['values'], more: Partial<PlanInput> = onBulky) => planOf(doubleHat, values, more);
const choice = (id: string): Given => ({ is: 'choice', id });
const text = (all: readonly Words[]) => all.map((words) => printed(words, { units: 'cm' }));
const steps = (plan: ReturnType<typeof made>) => text(plan.steps.map(({ say }) => say)).join(' ');
const total = (plan: ReturnType<typeof made>, driver: string) =>
  plan.steps.filter((s) => s.driver === driver).reduce((sum, s) => sum + s.count, 0);
const size = (plan: ReturnType<typeof made>, id: string) => plan.sizes.find((s) => s.id === id)?.expectedMm;
const tails = (plan: ReturnType<typeof made>) =>
  plan.steps.flatMap((s) => s.yarn ?? []).flatMap((y) => y.lengthMm ?? []);

const GIRL = mm(bodySizeMm('head', { is: 'child', months: 24, sex: 'girl' }) ?? 0);

// A head of 471.8: depth 169.85 ± 10, brim 50. √(209.85·229.85)/3.25 = 67.575; 4566.4 > 67·68 = 4556.
describe('a double hat for a girl of two, on 48 needles in bulky yarn', () => {
  const plan = made({ head: GIRL });

  test('is 69 rows: 171 mm deep with its brim turned up, one row lost to the fold', () => {
    expect(plan).toMatchObject({ rows: 69, graftRows: -1 });
    expect(plan.landing.loMm).toBeCloseTo(159.85, 2);
    expect(plan.sizes.map((s) => [s.figure, s.expectedMm])).toEqual([
      ['heightMm', expect.closeTo(171, 9)],
      ['girthMm', expect.closeTo(456, 9)],
    ]);
  });

  // 1 − 456/(471.8 + 2π·3) = 7.1 %.
  test('is 7 % less round than the head with the inner layer on it', () => {
    expect(text(plan.assumed)).toEqual(
      expect.arrayContaining(['7% less round than a head of 47 cm', 'layers 3 mm thick', 'a brim of 5 cm turned up']),
    );
  });

  test('cranks 3312 stitches and threads 48 loops twice at either end', () => {
    const main = plan.steps.flatMap((s) => s.yarn ?? []).filter((y) => y.role === 'main');
    expect(main.reduce((sum, y) => sum + (y.stitches ?? 0), 0)).toBe(3312);
    expect(total(plan, 'gather')).toBe(192);
    expect(total(plan, 'take_out_waste')).toBe(10);
    expect(total(plan, 'cast_off') + total(plan, 'hem')).toBe(0);
  });

  // 2·456 + 300 at either end.
  test('leaves a tail to gather each crown', () => {
    expect(tails(plan)).toEqual([expect.closeTo(1212, 9), expect.closeTo(1212, 9)]);
  });

  test('marks the fold at row 35 and turns the brim up last', () => {
    expect(steps(plan)).toMatch(/Count to row 35 .*row 35 lies on the fold.*Turn up 5 cm of the fold/);
  });

  // 2·456·(171 + 50) = 48·(69 − 1)·9.5·6.5 = 201,552 mm².
  test('of two layers has the area of its stitches, less the row of the fold', () => {
    const area = 2 * (size(plan, 'girth') ?? 0) * ((size(plan, 'depth') ?? 0) + 50);
    expect(area).toBeCloseTo(48 * 68 * 9.5 * 6.5, 6);
  });

  test('gives every step an id of its own', () => {
    const ids = plan.steps.map((s) => s.id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  test('warns of sleep, and with a pompom of small parts', () => {
    expect(text(plan.cautions)[0]).toMatch(/baby before sleep/);
    expect(text(made({ head: GIRL, top: choice('pompom') }).cautions)[1]).toMatch(/under three/);
  });
});

test('layers of medium yarn are 2.5 mm thick', () => {
  expect(text(made({ head: mm(400) }, { needles: 48, measurements: EVEN }).assumed)).toContain('layers 2.5 mm thick');
});

test('a head that the needles do not go round is refused with the one that they fit', () => {
  const values = { head: mm(561.1) };
  const [problem] = problemsOf(outcomeOf(doubleHat, values, {}));
  if (problem === undefined || !('offers' in problem)) throw new Error('no offers');
  // 342.9/.9 − 2π·2.5 = 365.3.
  expect(problem).toMatchObject({
    code: 'needles_set_it',
    offers: [{ edit: { head: { mm: expect.closeTo(365.3, 1) } } }],
  });
  expect(outcomeOf(doubleHat, { head: mm(365.3) }, {}).ok).toBe(true);
});

test('a brim over half of the depth is refused, none is folded from none', () => {
  expect(problemsOf(outcomeOf(doubleHat, { head: GIRL, depth: mm(160), brim: mm(90) }, onBulky))).toMatchObject([
    { code: 'length_out_of_range', maxMm: 80, offers: [{ edit: { brim: { mm: 80 } } }] },
  ]);
  expect(steps(made({ head: GIRL, brim: mm(0) }))).not.toContain('for the brim');
});

test('an elastic in the fold comes with its length', () => {
  // .9·471.8 + 20 = 444.6, rounded up.
  expect(text(atHand(made({ head: GIRL, elastic: choice('with') })))).toEqual(['an elastic of 45 cm']);
});
