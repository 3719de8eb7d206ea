import { describe, expect, test } from 'vitest';
import type { Given } from '../../../core/given.js';
import { scarf } from '../../../core/pieces/scarf.js';
import type { PlanInput } from '../../../core/plan.js';
import { printed } from '../../../core/units/print.js';
import type { Words } from '../../../core/words.js';
import { EVEN, mm, outcomeOf, planOf, problemsOf } from '../samples.js';

const onEven = { needles: 48, measurements: EVEN };
const made = (values: PlanInput['values'], more: Partial<PlanInput> = {}) =>
  planOf(scarf, values, { ...onEven, ...more });
const choice = (id: string): Given => ({ is: 'choice', id });
const cm = (words: readonly Words[]) => words.map((w) => printed(w, { units: 'cm' })).join(' / ');
const counted = (plan: ReturnType<typeof made>, driver: string) =>
  plan.steps.filter((s) => s.driver === driver).reduce((sum, s) => sum + s.count, 0);
const yarn = (plan: ReturnType<typeof made>) => plan.steps.flatMap((s) => s.yarn ?? []);
const stitches = (plan: ReturnType<typeof made>, role: string) =>
  yarn(plan).reduce((sum, y) => sum + (y.role === role ? (y.stitches ?? 0) : 0), 0);

const FRINGED = { length: mm(1500), fringe: mm(120) };

// Worked by hand at 7.5 by 5 mm: √(1425·1575)/5 = 299.625; 89775 > 299·300 = 89700.
describe('a scarf of 150 cm, give or take 5 %', () => {
  const plain = made({ length: mm(1500) });

  test('is 299 rows, 1500 mm long and 180 mm wide, both ends shut', () => {
    expect(plain).toMatchObject({ rows: 299, graftRows: 1, needles: 48 });
    expect(plain.sizes.map((s) => [s.figure, s.expectedMm])).toEqual([
      ['lengthMm', expect.closeTo(1500, 9)],
      ['widthMm', expect.closeTo(180, 9)],
    ]);
    expect([plain.landing.loMm, plain.landing.hiMm]).toEqual([1425, 1575]);
  });

  test('cranks 14,352 stitches and 480 of waste, and grafts 24 pairs twice', () => {
    expect([stitches(plain, 'main'), stitches(plain, 'waste')]).toEqual([14_352, 480]);
    const counts = ['graft', 'mattress', 'cast_off', 'take_out_waste', 'fringe'].map((d) => counted(plain, d));
    expect(counts).toEqual([48, 0, 0, 10, 0]);
  });

  // 2·180·1500 = 48·300·7.5·5 = 540,000 mm².
  test('has the area of its stitches in two layers', () => {
    const [lengthMm = 0, widthMm = 0] = plain.sizes.map((s) => s.expectedMm ?? 0);
    expect(2 * widthMm * lengthMm).toBeCloseTo(48 * 300 * 7.5 * 5, 6);
  });

  test('has the same rows on any needles', () => {
    expect(made({ length: mm(1500) }, { needles: 40 }).rows).toBe(299);
  });

  test('says how it grows in wear, and warns of no loop', () => {
    expect(cm(plain.assumed)).toContain('it grows about 5% longer');
    expect(cm(plain.assumed)).not.toContain('adults wear');
    expect(plain.cautions).toHaveLength(3);
    expect(plain.outline.lines.map((line) => line.is)).toEqual(['graft', 'fold', 'graft', 'fold']);
  });
});

describe('a fringe', () => {
  test('of 120 mm is 7 tassels an end, 42 strands of 280 mm: 11.76 m, outside the length', () => {
    const fringed = made(FRINGED);
    expect(fringed.rows).toBe(299);
    expect(counted(fringed, 'fringe')).toBe(42);
    expect(fringed.notions).toMatchObject([{ id: 'fringe', count: 42 }]);
    expect((fringed.yarn?.lengthM ?? 0) - (made({ length: mm(1500) }).yarn?.lengthM ?? 0)).toBeCloseTo(11.76, 9);
    expect(cm(fringed.assumed)).toContain('7 tassels an end of 3 strands, with which it is 174 cm long');
  });

  test('takes strands and spacing as asked', () => {
    // 180/20 + 1 = 10 an end, of 5 strands.
    expect(counted(made({ ...FRINGED, strands: { is: 'count', count: 5 }, apart: mm(20) }), 'fringe')).toBe(100);
  });

  test('is one tassel at a gathered end', () => {
    expect(counted(made({ ...FRINGED, ends: choice('gathered') }), 'fringe')).toBe(6);
  });

  test('waits for a width before it is counted', () => {
    const bare = made(FRINGED, { needles: undefined });
    expect([bare.notions, counted(bare, 'fringe')]).toEqual([[], 0]);
    expect(cm(bare.assumed)).toContain('a tassel every 3 cm');
    expect(counted(made({ ...FRINGED, width: mm(180) }, { needles: undefined }), 'fringe')).toBe(42);
  });
});

// √(1425·1575)/5 is 299.625: without a grafted row 300 rows.
describe('other ends', () => {
  test.each([
    ['gathered', 'gather', 192],
    ['cast_off', 'cast_off', 96],
  ])('%s add no row', (id, driver, loops) => {
    const open = made({ length: mm(1500), ends: choice(id) });
    expect(open).toMatchObject({ rows: 300, graftRows: 0 });
    expect([counted(open, driver), counted(open, 'graft')]).toEqual([loops, 0]);
  });
});

test('a scarf under 120 cm is taken for a child’s, with the caution of what goes round the neck', () => {
  const small = made({ length: mm(1000) });
  expect(cm(small.cautions)).toContain('round the neck');
  expect(cm(small.assumed)).toContain('adults wear 140 to 180 cm');
});

test('a width that the needles do not make is refused with the one that they do', () => {
  expect(problemsOf(outcomeOf(scarf, { length: mm(1500), width: mm(300) }, onEven))).toMatchObject([
    { code: 'needles_set_it', needlesWanted: 80, offers: [{ edit: { width: null } }] },
  ]);
});
