import { describe, expect, test } from 'vitest';
import { flatPanel } from '../../core/pieces/flat-panel.js';
import { plainTube } from '../../core/pieces/plain-tube.js';
import { pouch } from '../../core/pieces/pouch.js';
import type { Panels } from '../../core/sizing/in-panels.js';
import { printed } from '../../core/units/print.js';
import type { Words } from '../../core/words.js';
import { between, MEDIUM, mm, outcomeOf, planOf, problemsOf, tube } from './samples.js';

const inInches = (words: readonly Words[]) => words.map((w) => printed(w, { units: 'in' }));

describe('a plan', () => {
  const made = planOf(pouch, { closure: mm(203.2) });

  test('gives the rows, what grafting adds, and the chance of landing in the window', () => {
    expect(made).toMatchObject({ rows: 106, graftRows: 1, needles: 46, pieces: 1 });
    expect(made.landing).toMatchObject({ dimension: 'width', rowsInPiece: 107, loMm: 266.7, hiMm: 279.4 });
    expect(made.landing.chance).toBeCloseTo(0.384419, 6);
  });

  test('says where to measure on the way, hanging and at rest', () => {
    expect(made.checkpoint).toEqual({ row: 50, chance: expect.closeTo(0.576, 3) });
    expect(made.checkpointAtRest).toEqual({ row: 60, chance: expect.closeTo(0.9917, 4) });
    const step = made.steps.find((s) => s.id === 'rows_to_measure');
    expect(step?.count).toBe(50 * 46);
  });

  test('gives the tube before it is folded', () => {
    expect(made.tube?.flatWidthMm).toBeCloseTo(171.45, 9);
    expect(made.tube?.lengthMm).toBeCloseTo(106 * 5.08, 9);
  });

  test('counts no needles, sizes across them or yarn that are not known', () => {
    const bare = planOf(pouch, { width: mm(279.4) }, { needles: undefined, measurements: [tube('a', 110, 558.8)] });
    expect(bare).toMatchObject({ rows: 109, needles: undefined, yarn: undefined });
    expect(bare.tube?.flatWidthMm).toBeUndefined();
    expect(bare.sizes.map((s) => s.expectedMm)).toEqual([expect.closeTo(279.4, 9), undefined]);
  });

  test('is for one piece however many are asked for', () => {
    expect(planOf(pouch, { closure: mm(203.2) }, { pieces: 12 })).toEqual({ ...made, pieces: 12 });
  });

  test('says what it took for granted', () => {
    expect(inInches(planOf(plainTube, { length: mm(558.8) }).assumed)).toEqual([
      'give or take 5/8 in',
      'both ends left live on waste yarn',
      'measured at rest',
    ]);
    expect(inInches(planOf(plainTube, { length: mm(558.8), width: mm(171.45) }).assumed)).toContain(
      'flat width give or take 1/4 in',
    );
  });
});

describe('a gauge from another machine', () => {
  test('gives the same rows, is less sure of them and says so', () => {
    const own = planOf(pouch, { closure: mm(203.2) });
    const borrowed = planOf(pouch, { closure: mm(203.2) }, { borrowedFrom: 'the brass machine' });
    expect(borrowed.rows).toBe(own.rows);
    expect(borrowed.landing.chance).toBeLessThan(own.landing.chance);
    expect(inInches(borrowed.assumed)).toContain('your gauge on the brass machine holds here within 3%');
  });
});

describe('a size across the needles', () => {
  test('a little outside what was asked is told with the needles and stitches that would meet it', () => {
    const made = planOf(plainTube, { length: mm(558.8), width: between(178, 184) });
    expect(inInches(made.shortfalls)).toEqual([
      'Flat width: about 6 3/4 in, outside what you asked for. Rows cannot change that; about 49 needles would, or stitches 6% looser.',
    ]);
  });

  test('inside what was asked is no shortfall', () => {
    expect(planOf(plainTube, { length: mm(558.8), width: mm(171) }).shortfalls).toEqual([]);
  });

  test('beyond what tension can reach is refused, with the size as it comes for an offer', () => {
    const values = { length: mm(558.8), width: mm(250) };
    const problems = problemsOf(outcomeOf(plainTube, values));
    expect(problems).toMatchObject([
      {
        code: 'needles_set_it',
        field: { id: 'width', label: 'Flat width' },
        needles: 46,
        needlesWanted: 67,
        offers: [{ edit: { width: null } }],
      },
    ]);
    expect(outcomeOf(plainTube, { length: values.length }).ok).toBe(true);
  });

  // Front and back are 2·250/7.4543 = 67.1 stitches round, of which 42 of a panel show: 2 of 33 or 34 + 2.
  test('beyond what tension can reach comes with its chance, and the panels that would be sewn to it', () => {
    const [problem] = problemsOf(outcomeOf(plainTube, { length: between(540, 560), width: mm(250) }));
    if (problem?.code !== 'needles_set_it') throw new Error('the width was taken');
    expect(problem.chance).toBeLessThan(0.01);
    expect(problem.panels).toEqual({
      way: 'sewn_round',
      count: 2,
      needles: 36,
      along: { loMm: 540, hiMm: 560 },
    });
    const sewn = planOf(flatPanel, flatPanel.ofPanels?.(problem.panels as Panels) ?? {});
    expect(sewn).toMatchObject({ needles: 36, parts: 2 });
    expect((sewn.sizes.find(({ id }) => id === 'width')?.expectedMm ?? 0) / 2).toBeCloseTo(34 * 7.4543, 1);
  });

  test('of a ring folded flat is made in one layer by a panel as long as the ring is round', () => {
    const [problem] = problemsOf(outcomeOf(pouch, { width: between(270, 290), height: mm(210) }));
    expect(problem).toMatchObject({
      panels: { way: 'one_layer', count: 1, needles: 30, along: { loMm: 540, hiMm: 580 } },
    });
  });
});

describe('without a gauge of rows', () => {
  test('no plan can be made', () => {
    expect(problemsOf(outcomeOf(pouch, { width: mm(279.4) }, { measurements: [] }))).toEqual([
      { code: 'no_row_gauge' },
    ]);
    const stitches = MEDIUM.map((m) => ({ ...m, rows: undefined }));
    expect(problemsOf(outcomeOf(pouch, { width: mm(279.4) }, { measurements: stitches }))).toEqual([
      { code: 'no_row_gauge' },
    ]);
  });

  test('faults in what was asked are told first', () => {
    expect(problemsOf(outcomeOf(pouch, { width: mm(1) }, { measurements: [] }))[0]?.code).toBe('length_out_of_range');
  });
});

describe('what is known of the yarn', () => {
  const weighed = { tex: 500, samples: [{ is: 'weighed' as const, stitches: 2760, massG: 42 }] };
  const byGauge = planOf(pouch, { closure: mm(203.2) });
  const byWeight = planOf(pouch, { closure: mm(203.2) }, { yarn: weighed });

  test('makes yarn and tails longer where a swatch took more than gauge says, and surer', () => {
    expect(byGauge.yarn).toMatchObject({ source: 'gauge', cv: expect.closeTo(0.198, 3) });
    expect(byWeight.yarn).toMatchObject({ source: 'weighed', cv: expect.closeTo(0.021, 3) });
    // 1e6·42/(500·2760) = 30.43 mm a stitch, where gauge says 26.82.
    expect((byWeight.yarn?.lengthM ?? 0) / (byGauge.yarn?.lengthM ?? 1)).toBeCloseTo(30.4 / 26.82, 2);
    expect(byWeight.rows).toBe(byGauge.rows);
    expect(inInches(byWeight.assumed)).toEqual(inInches(byGauge.assumed));
  });

  test('is doubted in words where it is far from gauge', () => {
    const light = { tex: 500, samples: [{ is: 'weighed' as const, stitches: 2760, massG: 28 }] };
    const { assumed } = planOf(pouch, { closure: mm(203.2) }, { yarn: light });
    expect(inInches(assumed).some((said) => said.includes('by weight') && said.includes('far apart'))).toBe(true);
  });
});

describe('a stripe repeat', () => {
  test('makes the rows with the graft a multiple of it', () => {
    const striped = planOf(pouch, { closure: mm(203.2) }, { repeatRows: 6 });
    expect(striped.landing).toMatchObject({ rows: 107, rowsInPiece: 108 });
    expect(striped.landing.expectedMm).toBeCloseTo(274.32, 9);
  });

  test('holds for the stop row of work in hand', () => {
    const reading = { row: 60, lengthMm: 320.04, state: 'rested' as const };
    const work = { readings: [reading], stopAt: 107, knitted: 60 };
    const stop = (more: { repeatRows?: number }) => planOf(pouch, { closure: mm(203.2) }, { work, ...more }).landing;
    expect(stop({}).rowsInPiece).toBe(102);
    expect(stop({ repeatRows: 4 }).rowsInPiece % 4).toBe(0);
  });
});
