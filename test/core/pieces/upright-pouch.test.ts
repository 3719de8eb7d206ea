import { describe, expect, test } from 'vitest';
import type { Given } from '../../../core/given.js';
import { uprightPouch } from '../../../core/pieces/upright-pouch.js';
import type { PlanInput } from '../../../core/plan.js';
import { printed } from '../../../core/units/print.js';
import type { Words } from '../../../core/words.js';
import { atHand, between, EVEN, mm, outcomeOf, planOf, problemsOf, tube } from '../samples.js';

const onEven = { needles: 48, measurements: EVEN };
const made = (values: PlanInput['values'], more: Partial<PlanInput> = {}) =>
  planOf(uprightPouch, values, { ...onEven, ...more });
const refusal = (values: PlanInput['values'], more: Partial<PlanInput> = {}) =>
  problemsOf(outcomeOf(uprightPouch, values, { ...onEven, ...more }));
const choice = (id: string): Given => ({ is: 'choice', id });
const size = (plan: ReturnType<typeof made>, id: string) => plan.sizes.find((s) => s.id === id)?.expectedMm ?? 0;
const cm = (words: readonly Words[]) => words.map((w) => printed(w, { units: 'cm' })).join(' / ');
const says = (plan: ReturnType<typeof made>) => cm(plan.steps.map((s) => s.say));
const counted = (plan: ReturnType<typeof made>, driver: string) =>
  plan.steps.filter((s) => s.driver === driver).reduce((sum, s) => sum + s.count, 0);
const stitches = (plan: ReturnType<typeof made>, role: string) =>
  plan.steps.flatMap((s) => s.yarn ?? []).reduce((sum, y) => sum + (y.role === role ? (y.stitches ?? 0) : 0), 0);
const HIGH = between(203, 213);

// Worked by hand at 7.5 by 5 mm: √(228·238)/5 = 46.589; 2170.6 ≤ 46.5·47.5 = 2208.75.
describe('an upright pouch 208 mm tall in one layer', () => {
  const single = made({ height: HIGH });

  test('is 46 rows, 207.5 mm tall with a hem of 25 mm, 180 mm wide', () => {
    expect(single).toMatchObject({ rows: 46, graftRows: 0.5, needles: 48, parts: 1 });
    expect(size(single, 'height')).toBeCloseTo(207.5, 9);
    expect(size(single, 'width')).toBeCloseTo(180, 9);
    expect(single.sizes.map((s) => s.figure)).toEqual(['heightMm', 'widthMm']);
  });

  test('cranks 2208 stitches and 480 of waste, grafts 24 pairs, hems 48 loops, sews no seam', () => {
    expect([stitches(single, 'main'), stitches(single, 'waste')]).toEqual([2208, 480]);
    const counts = ['graft', 'hem', 'mattress', 'cast_off', 'take_out_waste'].map((d) => counted(single, d));
    expect(counts).toEqual([24, 48, 0, 0, 10]);
  });

  // 2·180·(207.5 + 25) = 48·46.5·7.5·5 = 83,700 mm².
  test('has the area of its stitches in two layers, the hem among them', () => {
    expect(2 * size(single, 'width') * (size(single, 'height') + 25)).toBeCloseTo(48 * 46.5 * 7.5 * 5, 6);
  });

  // 2·180 + 2·140, rounded up.
  test('takes a cord of 640 mm, rounded up, in its hem, with the cautions of cords, beads and load', () => {
    expect(cm(atHand(single))).toContain('a cord of 65 cm');
    expect(says(single)).toContain('Thread the cord through the hem');
    expect(single.cautions).toHaveLength(6);
    expect(cm(single.cautions)).toMatch(/Small parts|Cords and drawstrings/);
    expect(cm(single.assumed)).toContain('a hem of 2.5 cm folded in');
  });

  // √(203·213)/5 = 41.588; 1729.6 ≤ 41.5·42.5.
  test('without a hem is cast off at the top, its cord in and out through 6 places', () => {
    const bare = made({ height: HIGH, hem: mm(0) });
    expect(bare.rows).toBe(41);
    expect([counted(bare, 'hem'), counted(bare, 'cast_off')]).toEqual([0, 48]);
    expect(says(bare)).toContain('6 times');
  });

  test('lies flat with its bottom grafted and its top open', () => {
    expect(single.outline.points[2]).toEqual([expect.closeTo(180, 9), expect.closeTo(207.5, 9)]);
    expect(single.outline.lines.map((line) => line.is)).toEqual(['graft', 'fold', 'opening', 'fold']);
  });
});

// √(203·213)/2.5 = 83.176; 6918.2 ≤ 83·84 = 6972.
describe('an upright pouch turned into itself', () => {
  const double = made({ height: HIGH, layers: choice('double') });

  test('is 83 rows, 207.5 mm tall, both ends shut', () => {
    expect(double).toMatchObject({ rows: 83, graftRows: 0 });
    expect(size(double, 'height')).toBeCloseTo(207.5, 9);
    expect([stitches(double, 'main'), stitches(double, 'waste'), counted(double, 'graft')]).toEqual([3984, 480, 48]);
    expect([counted(double, 'hem'), counted(double, 'fold'), counted(double, 'cast_off')]).toEqual([0, 1, 0]);
    expect(says(double)).toContain('until the two bottoms meet');
  });

  // 4·180·207.5 = 48·83·7.5·5 = 149,400 mm²: either end makes half a row, and the rim takes one.
  test('has the area of its stitches in four layers', () => {
    expect(4 * size(double, 'width') * size(double, 'height')).toBeCloseTo(48 * (83 + 1 - 1) * 7.5 * 5, 6);
  });
});

describe('a width across the needles', () => {
  // 2·120/7.5 + 2 = 34 needles.
  test('narrower than the tube is a panel of 34 needles with a seam at one side', () => {
    const panel = made({ height: HIGH, width: mm(120) });
    expect(panel).toMatchObject({ needles: 34, rows: 46, tube: undefined });
    expect(size(panel, 'width')).toBeCloseTo(120, 9);
    expect([counted(panel, 'mattress'), counted(panel, 'graft')]).toEqual([46, 17]);
    expect(cm(panel.because ? [panel.because] : [])).toContain('a tube of all your needles is 18 cm wide');
    expect(panel.outline.lines[1]?.is).toBe('seam');
  });

  test('wider than the tube is refused, with what the needles make', () => {
    expect(refusal({ height: HIGH, width: mm(240) })).toMatchObject([
      { code: 'needles_set_it', needlesWanted: 64, offers: [{ edit: { width: null } }] },
    ]);
  });

  test('that the tube has is a tube', () => {
    expect(made({ height: HIGH, width: mm(182) })).toMatchObject({ needles: 48, because: undefined });
  });
});

describe('other tops', () => {
  // 207.5 mm and no hem: √(203·213)/5 gives 41 rows and 207.5 mm; a third of it is 13.8 rows.
  test('a flap is half the stitches wide and a third of the height long, with a button every 50 mm', () => {
    const flapped = made({ height: HIGH, top: choice('flap') });
    expect(flapped.rows).toBe(41);
    expect(stitches(flapped, 'main')).toBe(41 * 48 + 14 * 24);
    expect([counted(flapped, 'graft'), counted(flapped, 'cast_off'), counted(flapped, 'button')]).toEqual([48, 48, 4]);
    expect(cm(flapped.cautions)).toContain('Small parts');
    expect(cm(flapped.cautions)).not.toContain('Cords');
  });

  test('of a double one is sewn to the fold', () => {
    const flapped = made({ height: HIGH, top: choice('flap'), layers: choice('double') });
    expect([counted(flapped, 'graft'), counted(flapped, 'hem'), counted(flapped, 'cast_off')]).toEqual([48, 24, 24]);
  });

  test('longer than the height is refused, with one that is not', () => {
    const values = { height: HIGH, top: choice('flap'), flap: mm(230) };
    expect(refusal(values)).toMatchObject([
      { code: 'length_out_of_range', maxMm: 203, offers: [{ edit: { flap: null, top: choice('flap') } }] },
    ]);
    expect(stitches(made({ height: HIGH, flap: mm(100) }), 'main')).toBe(41 * 48 + 20 * 24);
  });

  test('a closure is 20 mm shorter than the width at most', () => {
    const fitting = made({ height: HIGH, closure: mm(152.4) });
    expect([counted(fitting, 'sew_closure'), counted(fitting, 'drawstring')]).toEqual([304.8, 0]);
    expect(refusal({ height: HIGH, closure: mm(177.8) })).toMatchObject([
      {
        code: 'length_out_of_range',
        maxMm: expect.closeTo(160, 9),
        offers: [{ edit: { closure: { mm: expect.closeTo(152.4, 9) } } }, {}],
      },
    ]);
  });

  test('may be left open', () => {
    const plain = made({ height: HIGH, top: choice('plain') });
    expect([plain.notions, plain.cautions.length]).toEqual([[], 3]);
  });
});

describe('an upright pouch that must take a phone of 163 by 78 by 9 mm', () => {
  const contents: Given = { is: 'contents', sidesMm: [163, 78, 9] };

  // 78 + 9 + 3.93 + 10 = 100.93: 2·100.93/7.5 + 2 = 28.9; 163 + 9 + 1.25 = 173.25, √(198.25·204.25)/5 = 40.2.
  test('is a panel of 30 needles and 40 rows, upright since lying down it is wider than the tube', () => {
    const held = made({ contents });
    expect(held).toMatchObject({ needles: 30, rows: 40, landing: { loMm: 173.25, hiMm: 179.25 } });
    expect(size(held, 'width')).toBeGreaterThan(100.93);
    expect(cm(held.because ? [held.because] : [])).toMatch(/lying down it needs 18.5 cm of width.*flat panel/);
  });

  // 172 + 2.5 and, with a wall of 5 mm, 78 + 9 + 7.85 + 10 = 104.85.
  test('turned into itself has walls twice as thick, and no cloth for a lining', () => {
    const double = made({ contents, layers: choice('double'), lining: choice('lined') });
    expect(double.landing.loMm).toBe(174.5);
    expect(double.sizes[1]?.across?.needed?.leastMm).toBeCloseTo(104.85, 2);
    expect([counted(double, 'lining'), cm(double.assumed)]).toEqual([
      0,
      expect.stringContaining('its inner layer is the lining'),
    ]);
  });

  // 163 + 4.5 + 1.25.
  test('left open is lower by half of its thickness', () => {
    expect(made({ contents, top: choice('plain') }).landing.loMm).toBe(168.75);
  });

  test('with a closure is wide enough for that too', () => {
    expect(made({ contents, closure: mm(152.4) }).sizes[1]?.across?.needed?.leastMm).toBeCloseTo(172.4, 9);
    expect(refusal({ contents, closure: mm(80) })).toMatchObject([
      {
        code: 'contents_too_big',
        tight: [{ field: { id: 'closure' }, needsMm: 87 }, {}],
        offers: [{ edit: { closure: null } }, { edit: { top: choice('plain'), closure: null } }],
      },
    ]);
  });

  test('is refused where the tube is too narrow, with the needles that it takes', () => {
    expect(refusal({ contents: { is: 'contents', sidesMm: [250, 175, 8] } })).toMatchObject([
      { tight: [{ way: 'upright', field: { id: 'width' }, needles: { has: 48, wanted: 53 } }, {}], offers: [] },
    ]);
  });
});

// 180 − 2.5 − 3 + 24 = 198.5; 2·(207.5 − 10) + 30 = 425.
test('a lined upright pouch has cloth of 198.5 by 425 mm', () => {
  const lined = made({ height: HIGH, lining: choice('lined') });
  expect(cm(atHand(lined))).toContain('a lining of cloth 20 cm by 42.5 cm');
  expect(counted(lined, 'lining')).toBe(1);
});

test('an upright pouch before its needles are known says its cord by the top', () => {
  const bare = made({ height: HIGH }, { needles: undefined, measurements: [tube('rows', 100, 500)] });
  expect(bare.rows).toBe(46);
  expect(cm(atHand(bare))).toBe('a cord, once round the top and 30 cm more');
});
