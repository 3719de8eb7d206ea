import { describe, expect, test } from 'vitest';
import type { Given } from '../../../core/given.js';
import { cowl } from '../../../core/pieces/cowl.js';
import type { PlanInput } from '../../../core/plan.js';
import { printed } from '../../../core/units/print.js';
import type { Words } from '../../../core/words.js';
import { between, EVEN, mm, outcomeOf, planOf, problemsOf } from '../samples.js';

const onEven = { needles: 48, measurements: EVEN };
const made = (values: PlanInput['values'], more: Partial<PlanInput> = onEven) => planOf(cowl, values, more);
const HALF: Given = { is: 'choice', id: 'half' };
const text = (all: readonly Words[]) => all.map((words) => printed(words, { units: 'cm' }));
const stepText = (plan: ReturnType<typeof made>) => text(plan.steps.map(({ say }) => say)).join(' ');
const count = (plan: ReturnType<typeof made>, driver: string) => plan.steps.find((s) => s.driver === driver)?.count;

// Worked by hand: √(627·693)/5 = 131.835; 17380 > 131·132 = 17292.
describe('a cowl of 66 cm, give or take 5 %', () => {
  const plain = made({ girth: mm(660) });

  test('is 131 rows, 660 mm round and 180 mm tall, the graft its 132nd row', () => {
    expect(plain).toMatchObject({ rows: 131, graftRows: 1 });
    expect(plain.landing.loMm).toBeCloseTo(627, 9);
    expect(plain.landing.hiMm).toBeCloseTo(693, 9);
    expect(plain.sizes.map((s) => [s.figure, s.expectedMm])).toEqual([
      ['girthMm', expect.closeTo(660, 9)],
      ['heightMm', expect.closeTo(180, 9)],
    ]);
  });

  test('cranks 6288 stitches, grafts 48 pairs and sews nothing', () => {
    const cranked = plain.steps.flatMap((s) => s.yarn ?? []).filter((y) => y.role === 'main');
    expect(cranked.reduce((total, y) => total + (y.stitches ?? 0), 0)).toBe(6288);
    expect(count(plain, 'graft')).toBe(48);
    expect(count(plain, 'take_out_waste')).toBe(10);
    expect(count(plain, 'mattress')).toBeUndefined();
  });

  // √(19·7.5·5) = 26.693 mm a stitch: 48·26.693·1.05 + 150.
  test('leaves the tail that grafts it, and one to weave in', () => {
    const tails = plain.steps.flatMap((s) => s.yarn ?? []).flatMap((y) => y.lengthMm ?? []);
    expect(tails).toEqual([expect.closeTo(1495.3, 1), 150]);
  });

  // 2·660·180 = 48·132·7.5·5 = 237,600 mm².
  test('of two layers has the area of its stitches', () => {
    const [girthMm = 0, heightMm = 0] = plain.sizes.map((s) => s.expectedMm ?? 0);
    expect(2 * girthMm * heightMm).toBeCloseTo(48 * 132 * 7.5 * 5, 6);
  });

  test('has the same rows on any needles, and is as tall as they make it', () => {
    expect(made({ girth: mm(660) }, { ...onEven, needles: 40 })).toMatchObject({ rows: 131 });
    expect(made({ girth: mm(660) }, { ...onEven, needles: 40 }).sizes[1]?.expectedMm).toBeCloseTo(150, 9);
  });

  test('is worn once round and says over what head it goes; one of 130 cm twice', () => {
    expect(text(plain.assumed)).toEqual(
      expect.arrayContaining(['worn once round', 'goes over a head of up to 72.5 cm']),
    );
    expect(text(made({ girth: mm(1300) }).assumed)).toContain('worn twice round');
  });

  test('lies flat as half its girth by its height, grafted at one end', () => {
    expect(plain.outline.points[2]).toEqual([expect.closeTo(330, 9), expect.closeTo(180, 9)]);
    expect(plain.outline.lines.map((line) => line.is)).toEqual(['fold', 'fold', 'fold', 'graft']);
  });
});

describe('a half twist', () => {
  test('leaves the rows as they are and grafts half the needles off', () => {
    const twisted = made({ girth: mm(660), twist: HALF });
    expect(twisted.rows).toBe(131);
    expect(stepText(twisted)).toContain('the ends meet 24 stitches off');
    expect(stepText(made({ girth: mm(660) }))).toContain('run without a twist');
  });

  // 3·180 = 540 mm: √(.95·1.05)·540 falls just short of it.
  test('under three times the height is refused, with a girth that does, or none', () => {
    const values = { girth: mm(500), twist: HALF };
    const [problem] = problemsOf(outcomeOf(cowl, values, onEven));
    if (problem === undefined || !('why' in problem)) throw new Error('it was taken');
    expect(problem).toMatchObject({
      code: 'length_out_of_range',
      field: { id: 'girth' },
      minMm: expect.closeTo(540, 9),
    });
    expect(text([problem.why])).toEqual(['a half twist bunches under 3 times the height, which is 18 cm here']);
    expect(problem.offers.map(({ edit }) => made({ ...values, ...(edit as PlanInput['values']) }).rows)).toEqual([
      108, 99,
    ]);
  });

  test('on an odd number of needles leaves a stitch, and says so', () => {
    const odd = made({ girth: mm(660), twist: HALF }, { ...onEven, needles: 47 });
    expect(stepText(odd)).toContain('the ends meet 23 stitches off');
    expect(text(odd.assumed)).toContain('an odd stitch left over by the half twist, eased in');
  });
});

describe('a cowl for a head', () => {
  // √(561.1·701.375)/5 = 125.466; 15741.7 ≤ 125·126 = 15750.
  test('is as round as the head, to a quarter more', () => {
    const plan = made({ head: mm(561.1) });
    expect(plan.rows).toBe(124);
    expect([plan.landing.loMm, plan.landing.hiMm]).toEqual([561.1, expect.closeTo(701.375, 9)]);
    expect(text(plan.assumed)).toEqual(expect.arrayContaining(['for a head of 56 cm', '56 to 70 cm round']));
  });

  test('that it would not pass over is refused, with a girth that would', () => {
    const values = { girth: mm(480), head: mm(561.1) };
    const [problem] = problemsOf(outcomeOf(cowl, values, onEven));
    expect(problem).toMatchObject({ code: 'length_out_of_range', minMm: expect.closeTo(510.1, 1) });
    expect(made({ ...values, girth: mm(561.1) }).landing.expectedMm).toBeGreaterThan(510);
  });

  test('of a child comes with the cautions of loops and of sleep, of an adult with neither', () => {
    expect(text(made({ head: mm(477) }).cautions).join(' ')).toMatch(/round the neck.*sleeping baby/);
    expect(made({ head: mm(561) }).cautions).toHaveLength(3);
    expect(made({ girth: between(470, 500) }).cautions).toHaveLength(5);
  });
});

test('a height that the needles do not make is refused with the one that they do', () => {
  const values = { girth: mm(660), height: mm(300) };
  const [problem] = problemsOf(outcomeOf(cowl, values, onEven));
  expect(problem).toMatchObject({ code: 'needles_set_it', needlesWanted: 80, offers: [{ edit: { height: null } }] });
});
