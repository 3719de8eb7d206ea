import { describe, expect, test } from 'vitest';
import type { Given } from '../../../core/given.js';
import { stripBlanket } from '../../../core/pieces/strip-blanket.js';
import type { PlanInput } from '../../../core/plan.js';
import { printed } from '../../../core/units/print.js';
import type { Words } from '../../../core/words.js';
import { EVEN, mm, outcomeOf, planOf, problemsOf, tube } from '../samples.js';

const onEven = { needles: 48, measurements: EVEN };
const made = (values: PlanInput['values'], more: Partial<PlanInput> = {}) =>
  planOf(stripBlanket, values, { ...onEven, ...more });
const refusal = (values: PlanInput['values'], more: Partial<PlanInput> = {}) =>
  problemsOf(outcomeOf(stripBlanket, values, { ...onEven, ...more }));
const choice = (id: string): Given => ({ is: 'choice', id });
const cm = (words: readonly Words[]) => words.map((w) => printed(w, { units: 'cm' })).join(' / ');
const size = (plan: ReturnType<typeof made>, id: string) => plan.sizes.find((s) => s.id === id)?.expectedMm ?? 0;
const counted = (plan: ReturnType<typeof made>, driver: string) =>
  plan.steps.filter((s) => s.driver === driver).reduce((sum, s) => sum + s.count * (s.times ?? 1), 0);
const cranked = (plan: ReturnType<typeof made>, role: string) =>
  plan.steps
    .filter((s) => s.driver === 'crank')
    .flatMap((s) => (s.yarn ?? []).map((y) => (y.role === role ? (y.stitches ?? 0) * (s.times ?? 1) : 0)))
    .reduce((a, b) => a + b, 0);

const SIZE = { width: mm(900), length: mm(1100) };
const BORDERED = { ...SIZE, border: mm(20) };

// Worked by hand at 7.5 by 5 mm: (900 − 40 − 7.5)/(180 − 7.5) = 4.94; √(1027·1093)/5 = 211.897; 44900 > 211·212.
describe('a blanket of 900 by 1100 mm with a border of 20 mm', () => {
  const blanket = made(BORDERED);

  test('is 5 tubes of 211 rows, 910 mm wide and 1100 mm long', () => {
    expect(blanket).toMatchObject({ parts: 5, rows: 211, graftRows: 1, needles: 48, because: undefined });
    expect([size(blanket, 'width'), size(blanket, 'length')]).toEqual([
      expect.closeTo(910, 9),
      expect.closeTo(1100, 9),
    ]);
    expect([blanket.landing.loMm, blanket.landing.hiMm]).toEqual([1067, 1133]);
  });

  test('cranks 50,640 stitches and 2400 of waste, grafts 240 pairs and sews 848', () => {
    expect([cranked(blanket, 'main'), cranked(blanket, 'waste')]).toEqual([50_640, 2400]);
    expect(['graft', 'mattress', 'cast_off', 'take_out_waste'].map((d) => counted(blanket, d))).toEqual([
      240, 848, 0, 50,
    ]);
  });

  // 40·2010 − 1600 = 78,800 mm², 2101 stitches of 37.5 mm².
  test('has a border of 2101 stitches, its yarn in the need', () => {
    expect(counted(blanket, 'border')).toBe(2101);
    expect(blanket.steps.find((s) => s.id === 'border')?.yarn).toEqual([{ role: 'main', stitches: 2101 }]);
  });

  // 5·2·180·1060 = 5·48·212·7.5·5; the seams take 2·3.75·4 = 30 mm of the width.
  test('has the area of its stitches, less what the seams take and with the border', () => {
    const strips = (5 * 48 * 212 * 7.5 * 5) / 2;
    const [wide, long] = [size(blanket, 'width') - 40, size(blanket, 'length') - 40];
    expect((wide + 2 * 3.75 * 4) * long).toBeCloseTo(strips, 6);
  });

  test('says that strips are alike and from one lot, and that the work is lifted', () => {
    const words = cm(blanket.steps.map((s) => s.say));
    expect(words).toContain('Knit 5 strips alike from one dye lot');
    expect(words).toContain('lift the work every 60 rows');
    expect(words).toContain('4 seams of 212 bars');
    expect(cm(blanket.cautions)).toContain('Not for the bed of a sleeping baby');
  });

  test('is drawn with a line at each of its 4 seams', () => {
    expect(blanket.outline.lines.filter((l) => l.is === 'seam')).toHaveLength(4);
    expect(blanket.outline.points[4]).toEqual([expect.closeTo(20 + 870 / 5, 9), 20]);
  });
});

describe('a width that no number of tubes comes to', () => {
  // (776 − 7.5)/172.5 = 4.45: 5 tubes are 870 mm. (776 − 15)/(46·7.5 − 15) = 2.3: 3 panels of (800 + 60/2)/22.5 needles.
  test('takes panels, of the needles that come to it', () => {
    const panels = made({ ...SIZE, width: mm(800) });
    expect(panels).toMatchObject({ parts: 3, needles: 37, graftRows: 0 });
    expect(size(panels, 'width')).toBeCloseTo(3 * 37 * 7.5 - 2 * 7.5 * 2, 9);
    expect([counted(panels, 'mattress'), counted(panels, 'cast_off')]).toEqual([2 * panels.rows, 3 * 2 * 37]);
    expect(cm(panels.because ? [panels.because] : [])).toContain('5 tubes of all your needles would come to 87 cm');
  });

  test('of tubes all the same is refused with what they come to', () => {
    const values = { ...SIZE, width: mm(780), fabric: choice('tube') };
    const [problem] = refusal(values);
    expect(problem).toMatchObject({
      code: 'needles_set_it',
      offers: [{ edit: { width: { mm: expect.closeTo(870, 9) } } }],
    });
    expect(made({ ...values, width: mm(870) }).parts).toBe(5);
  });
});

describe('strips as asked for', () => {
  test('take panels as wide as they must be', () => {
    // (900 + 15·2)/(3·7.5) = 41.3.
    expect(made({ ...SIZE, strips: { is: 'count', count: 3 } })).toMatchObject({ parts: 3, needles: 41 });
  });

  test('too few for the machine are refused, with as many as it takes', () => {
    const values = { ...SIZE, strips: { is: 'count', count: 2 } as const };
    expect(refusal(values)).toMatchObject([
      { code: 'too_many_needles', given: 61, max: 46, offers: [{ edit: { strips: null } }] },
    ]);
  });

  test('are one at least', () => {
    expect(refusal({ ...SIZE, strips: { is: 'count', count: 0 } })).toMatchObject([{ code: 'count_out_of_range' }]);
  });
});

test('a blanket before a machine is known guesses its strips and says so', () => {
  const bare = made(SIZE, { needles: undefined, measurements: [tube('rows', 100, 500)] });
  expect(bare.parts).toBe(6);
  expect(bare.needles).toBeUndefined();
  expect(cm(bare.assumed)).toContain('6 strips, each about 17 cm wide until your needles are known');
});

test('a width of more strips than anyone sews is refused', () => {
  const fine = {
    needles: 12,
    measurements: [tube('fine', 200, 200, { stitches: { count: 100, overMm: 150, how: 'read' as const } })],
  };
  expect(refusal({ width: mm(3000), length: mm(900) }, fine)).toMatchObject([
    { code: 'count_out_of_range', field: { id: 'strips' }, max: 100 },
  ]);
});
