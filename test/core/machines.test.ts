import { describe, expect, test } from 'vitest';
import { acrossOf, type MachineBench, onMachines } from '../../core/machines.js';
import { flatPanel } from '../../core/pieces/flat-panel.js';
import { plainTube } from '../../core/pieces/plain-tube.js';
import { pouch } from '../../core/pieces/pouch.js';
import type { PlanInput } from '../../core/plan.js';
import { between, MEDIUM, mm, planOf, problemsOf } from './samples.js';

const bench = (needles: number, more: Partial<MachineBench> = {}): MachineBench => ({
  name: String(needles),
  needles,
  measurements: MEDIUM,
  ...more,
});
const names = (ranked: readonly { bench: MachineBench }[]): string[] => ranked.map(({ bench: { name } }) => name);

// Worked independently, one swatch: 46 needles 171.5 mm, .62; 48: 178.9, .48; 40: 149.1, .03; wanted 46.2.
describe('a tube 165 to 180 mm wide on machines of 40, 46 and 48 needles', () => {
  const asked = { piece: plainTube, values: { length: mm(558.8), width: between(165, 180) } };
  const ranked = onMachines(asked, [bench(40), bench(48), bench(46)]);

  test('suits the 46 best, then the 48, and the 40 not at all', () => {
    expect(names(ranked)).toEqual(['46', '48', '40']);
    expect(ranked.map(({ outcome }) => outcome.ok)).toEqual([true, true, false]);
    // Two printed digits.
    for (const [i, chance] of [0.62, 0.48, 0.03].entries()) {
      expect(Math.abs((ranked[i]?.chance ?? 0) - chance)).toBeLessThan(0.005);
    }
  });

  test('comes with its rows and its width eight times in ten on each', () => {
    const plans = ranked.flatMap(({ outcome }) => (outcome.ok ? [outcome.value] : []));
    expect(plans.map(({ rows }) => rows)).toEqual([110, 110]);
    const [first, second] = plans.map(({ sizes }) => sizes.find(({ across }) => across)?.across);
    expect(first?.expectedMm).toBeCloseTo(171.45, 6);
    expect(first?.likelyMm.loMm).toBeCloseTo(160.4, 1);
    expect(first?.likelyMm.hiMm).toBeCloseTo(183.3, 1);
    expect(second?.expectedMm).toBeCloseTo(178.9, 1);
    expect(plans[0] && acrossOf(plans[0])?.across.asked?.needlesWanted).toBe(46);
  });

  test('tells why the 40 cannot make it', () => {
    expect(problemsOf(ranked[2]?.outcome ?? { ok: true, value: undefined })).toMatchObject([
      { code: 'needles_set_it', needles: 40, needlesWanted: 46 },
    ]);
  });
});

describe('a size that rows alone make', () => {
  const asked = { piece: pouch, values: { width: mm(279.4) } };

  test('is surer on a machine with a gauge of its own than on one that borrows it', () => {
    const ranked = onMachines(asked, [bench(40, { borrowedFrom: 'the 46' }), bench(46)]);
    expect(names(ranked)).toEqual(['46', '40']);
    expect(ranked[0]?.chance).toBe(planOf(pouch, asked.values).landing.chance);
  });

  test('is made on the fewer needles where the rows are as sure', () => {
    expect(names(onMachines(asked, [bench(48), bench(40), bench(46)]))).toEqual(['40', '46', '48']);
  });
});

// A phone of 163 by 78 by 9 mm: 48 needles just have its height under a closed top, 46 have not.
test('room for what must go in counts where no size was asked for', () => {
  const values: PlanInput['values'] = {
    contents: { is: 'contents', sidesMm: [163, 78, 9] },
    turned: { is: 'choice', id: 'upright' },
  };
  const ranked = onMachines({ piece: pouch, values }, [bench(46), bench(48), bench(60)]);
  expect(names(ranked)).toEqual(['60', '48', '46']);
  expect(ranked[1]?.chance).toBeCloseTo(0.53, 2);
  expect(ranked[2]?.outcome).toMatchObject({ ok: false, problems: [{ code: 'contents_too_big' }] });
});

test('a piece that takes needles of its own choosing counts by its rows', () => {
  const values = { width: between(195, 215), length: mm(300) };
  const ranked = onMachines({ piece: flatPanel, values }, [bench(48), bench(24), bench(40)]);
  expect(names(ranked)).toEqual(['40', '48', '24']);
  expect(ranked[0]?.chance).toBe(planOf(flatPanel, values, { needles: 40 }).landing.chance);
  expect(ranked[2]?.outcome).toMatchObject({ ok: false, problems: [{ code: 'too_many_needles' }] });
});

test('machines that miss by far come with the nearest first', () => {
  const values = { length: mm(558.8), width: mm(300) };
  const ranked = onMachines({ piece: plainTube, values }, [bench(40), bench(48), bench(46)]);
  expect(names(ranked)).toEqual(['48', '46', '40']);
});
