import { describe, expect, test } from 'vitest';
import type { Given } from '../../../core/given.js';
import { headband } from '../../../core/pieces/headband.js';
import type { PlanInput } from '../../../core/plan.js';
import { printed } from '../../../core/units/print.js';
import type { Words } from '../../../core/words.js';
import { between, EVEN, mm, outcomeOf, planOf, problemsOf } from '../samples.js';

const onEven = { needles: 48, measurements: EVEN };
const band = (values: PlanInput['values'], more: Partial<PlanInput> = onEven) => planOf(headband, values, more);
const refusal = (values: PlanInput['values'], more: Partial<PlanInput> = onEven) =>
  problemsOf(outcomeOf(headband, values, more))[0];
const lay = (id: string): Given => ({ is: 'choice', id });
const text = (all: readonly Words[]) => all.map((words) => printed(words, { units: 'cm' }));
const heightOf = (made: ReturnType<typeof band>) => made.sizes.find((s) => s.id === 'height')?.expectedMm;
const count = (made: ReturnType<typeof band>, driver: string) => made.steps.find((s) => s.driver === driver)?.count;

// A woman's head. Worked by hand: √(476.935·533.045)/5 = 100.842; 10169 > 100·101.
describe('a headband for a head of 561.1 mm', () => {
  const made = band({ head: mm(561.1) });

  test('is 100 rows: 505 mm round, 10 % under the head, and 180 mm tall', () => {
    expect(made).toMatchObject({ rows: 100, graftRows: 1 });
    expect(made.landing.loMm).toBeCloseTo(476.935, 9);
    expect(made.landing.hiMm).toBeCloseTo(533.045, 9);
    expect(made.sizes.map((s) => [s.figure, s.expectedMm])).toEqual([
      ['girthMm', expect.closeTo(505, 9)],
      ['heightMm', expect.closeTo(180, 9)],
    ]);
    expect(text(made.assumed)).toEqual(
      expect.arrayContaining(['10% less round than a head of 56 cm', 'folded once in wear to 9 cm, for 18 cm is tall']),
    );
  });

  test('cranks 4800 stitches, grafts 48 pairs and sews nothing', () => {
    const main = made.steps.flatMap((s) => s.yarn ?? []).filter((y) => y.role === 'main');
    expect(main.reduce((total, y) => total + (y.stitches ?? 0), 0)).toBe(4800);
    expect(count(made, 'graft')).toBe(48);
    expect(count(made, 'mattress')).toBeUndefined();
  });

  // 2·505·180 = 48·101·7.5·5 = 181,800 mm².
  test('of two layers has the area of its stitches', () => {
    expect(2 * made.landing.expectedMm * (heightOf(made) ?? 0)).toBeCloseTo(48 * 101 * 7.5 * 5, 6);
  });

  test('of another ease is as much rounder', () => {
    const looser = band({ head: mm(561.1), ease: { is: 'percent', percent: 5 } });
    expect([looser.landing.loMm, looser.landing.hiMm]).toEqual([expect.closeTo(504.99, 9), expect.closeTo(561.1, 9)]);
    expect(looser.rows).toBe(105);
  });
});

describe('the height of a headband', () => {
  test('that half the tube makes folds it once along and sews a round of bars more', () => {
    const made = band({ head: mm(561.1), height: mm(90) });
    expect(heightOf(made)).toBeCloseTo(90, 9);
    expect(text(made.because ? [made.because] : [])).toEqual([
      'a tube on 48 needles is 18 cm tall, so it is folded once along',
    ]);
    expect(made.rows).toBe(100);
    expect(count(made, 'mattress')).toBe(101);
    // 2.5·505 + 300 to sew with.
    const tails = made.steps.flatMap((s) => s.yarn ?? []).flatMap((y) => y.lengthMm ?? []);
    expect(tails[1]).toBeCloseTo(1562.5, 9);
  });

  // 200/7.5 + 2 = 28.7: 29 needles, (29 − 2)·7.5/2 = 101 mm.
  test('that neither makes comes of a panel of 29 needles, folded and sewn along 101 bars', () => {
    const made = band({ head: mm(561.1), height: mm(100) });
    expect(made).toMatchObject({ needles: 29, rows: 100, tube: undefined });
    expect(heightOf(made)).toBeCloseTo(101.25, 9);
    expect([count(made, 'graft'), count(made, 'mattress')]).toEqual([29, 101]);
    expect(text(made.because ? [made.because] : [])[0]).toContain('so a panel is folded instead');
    expect(text(made.steps.map((s) => s.say)).join(' ')).toContain(
      'Mattress 101 bars, a full stitch from each edge, meeting at each marker: the ring folded once along',
    );
  });

  // 29·101·7.5·5, of which 2·7.5·505 lie in the seam.
  test('of a panel has the area of its stitches, less what the seam takes', () => {
    const made = band({ head: mm(561.1), height: mm(100) });
    const shown = 2 * made.landing.expectedMm * (heightOf(made) ?? 0);
    expect(shown + 2 * 7.5 * made.landing.expectedMm).toBeCloseTo(29 * 101 * 7.5 * 5, 6);
  });

  test('near that of the tube stays a tube, with what tension would do', () => {
    const made = band({ head: mm(561.1), height: mm(165) });
    expect(heightOf(made)).toBeCloseTo(180, 9);
    expect(text(made.shortfalls)[0]).toContain('tighter');
  });

  test('over that of the tube is refused, and what the needles make offered', () => {
    expect(refusal({ head: mm(561.1), height: mm(300) })).toMatchObject({
      code: 'needles_set_it',
      needlesWanted: 80,
      offers: [{ edit: { height: null } }],
    });
  });

  test('of a panel not asked for is a usual one; more needles than the machine has are refused', () => {
    const made = band({ head: mm(561.1), lay: lay('panel') });
    expect(made.needles).toBe(30);
    expect(text(made.assumed)).toContain('of the usual height');
    expect(refusal({ head: mm(561.1), lay: lay('panel') }, { ...onEven, needles: 20 })).toMatchObject({
      code: 'too_many_needles',
      given: 30,
      max: 18,
      offers: [{ edit: { height: null, lay: lay('tube') } }],
    });
  });
});

describe('a girth asked for', () => {
  test('is taken as it is finished, and says what head it is for', () => {
    const made = band({ girth: between(480, 510) });
    expect(made.rows).toBe(98);
    expect(text(made.assumed)).toContain('for a head of about 55 cm');
  });

  test('that would not stay on the head, or not go on, is refused', () => {
    for (const girth of [between(590, 600), between(420, 430)])
      expect(refusal({ head: mm(561.1), girth })).toMatchObject({
        code: 'length_out_of_range',
        offers: [{ edit: { girth: null } }],
      });
    expect(band({ head: mm(561.1), girth: mm(500) }).landing.loMm).toBeCloseTo(475, 9);
  });
});

test('a baby’s comes with the caution of sleep, a grown person’s does not', () => {
  expect(band({ head: mm(440) }).cautions).toHaveLength(4);
  expect(band({ head: mm(561.1) }).cautions).toHaveLength(3);
});
