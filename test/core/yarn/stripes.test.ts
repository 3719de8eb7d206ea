import { describe, expect, test } from 'vitest';
import { plainTube } from '../../../core/pieces/plain-tube.js';
import { pouch } from '../../../core/pieces/pouch.js';
import { isRing, type Striping, striped } from '../../../core/yarn/stripes.js';
import { mm, planOf } from '../samples.js';
import { LOOP_MM, valueIn, yarnProblems } from './samples.js';

const RED_CREAM = [
  { colour: 'red', rows: 4 },
  { colour: 'cream', rows: 2 },
];
const ring = (more: Partial<Striping> = {}): Striping => ({
  repeat: RED_CREAM,
  rows: 107,
  ring: true,
  needles: 46,
  loopMm: LOOP_MM,
  ...more,
});
const stripes = (more: Partial<Striping> = {}) => valueIn(striped(ring(more)));

describe('four rows of red and two of cream', () => {
  test('are seamless in a ring of 108 rows, the last of them grafted in cream', () => {
    const { meeting, graftColour, repeatRows } = stripes();
    expect(meeting).toEqual({ where: 'across_graft', isWhole: true, add: 0, drop: 0 });
    expect({ graftColour, repeatRows }).toEqual({ graftColour: 'cream', repeatRows: 6 });
  });

  test('miss by five rows more or one fewer in a ring of 109', () => {
    expect(stripes({ rows: 108 }).meeting).toEqual({ where: 'across_graft', isWhole: false, add: 5, drop: 1 });
  });

  test('are a checklist of rows to crank, with what the counter shows at each end', () => {
    const { runs } = stripes({ rows: 11 });
    expect(runs).toEqual([
      { colour: 'red', rows: 4, from: 1, to: 4 },
      { colour: 'cream', rows: 2, from: 5, to: 6 },
      { colour: 'red', rows: 4, from: 7, to: 10 },
      { colour: 'cream', rows: 1, from: 11, to: 11 },
    ]);
  });

  // 18 repeats: 72 rows of red, 35 of cream and the graft; 46·26.8234 mm a row; 18 stripes each with two ends.
  test('take what their rows take, and two ends a stripe', () => {
    const { colours, ends } = stripes();
    const rowM = (46 * LOOP_MM) / 1000;
    expect(colours).toMatchObject([
      { colour: 'red', rows: 72, graftM: 0 },
      { colour: 'cream', rows: 35 },
    ]);
    expect(colours[0]?.rowsM).toBeCloseTo(72 * rowM, 9);
    expect(colours[1]?.graftM).toBeCloseTo(rowM, 9);
    expect(colours[1]?.lengthM).toBeCloseTo(36 * rowM + 18 * 0.3, 9);
    expect(ends).toBe(72);
  });
});

describe('a piece with two ends', () => {
  test('begins and ends alike with four rows more than whole repeats', () => {
    expect(stripes({ ring: false, rows: 106 })).toMatchObject({
      graftColour: undefined,
      meeting: { where: 'at_ends', isWhole: true, add: 0, drop: 0 },
    });
    expect(stripes({ ring: false, rows: 107 }).meeting).toMatchObject({ isWhole: false, add: 5, drop: 1 });
  });
});

test('a graft in a colour of its own brings two ends more', () => {
  const { runs, ends, colours } = stripes({ rows: 4 });
  expect(runs).toHaveLength(1);
  expect(ends).toBe(4);
  expect(colours[1]).toMatchObject({ rows: 0, rowsM: 0 });
});

test('neighbours of one colour are one stripe', () => {
  const repeat = [
    { colour: 'red', rows: 2 },
    { colour: 'cream', rows: 4 },
    { colour: 'red', rows: 2 },
  ];
  expect(stripes({ repeat, rows: 23 }).runs.map(({ rows }) => rows)).toEqual([2, 4, 4, 4, 4, 4, 1]);
});

test('a repeat taller than the piece is finished nowhere, and colours not reached are named', () => {
  const repeat = [
    { colour: 'red', rows: 60 },
    { colour: 'cream', rows: 60 },
    { colour: 'oat', rows: 60 },
  ];
  const { unreached, meeting } = stripes({ repeat });
  expect(unreached).toEqual(['oat']);
  expect(meeting).toMatchObject({ isWhole: false, add: 72, drop: undefined });
});

describe('stripes that cannot be', () => {
  const problems = (repeat: Striping['repeat']) => yarnProblems(striped(ring({ repeat })));

  test('are none, or of too many colours', () => {
    expect(problems([])).toEqual([{ code: 'no_stripes' }]);
    const forty = Array.from({ length: 40 }, (_, i) => ({ colour: `${i}`, rows: 1 }));
    expect(problems(forty)).toEqual([{ code: 'too_many_colours', given: 40, max: 20 }]);
  });

  test('are of no row, of part of one, or taller than the piece', () => {
    const tall = [
      { colour: 'red', rows: 0 },
      { colour: 'cream', rows: 1.5 },
      { colour: 'oat', rows: 109 },
    ];
    expect(problems(tall)).toEqual([
      { code: 'stripe_not_whole', colour: 'red', given: 0 },
      { code: 'stripe_not_whole', colour: 'cream', given: 1.5 },
      { code: 'stripe_too_tall', colour: 'oat', given: 109, rowsInPiece: 108 },
    ]);
  });
});

test('a pouch is a ring; a tube shut at both ends is none', () => {
  expect(isRing(planOf(pouch, { closure: mm(203.2) }).steps)).toBe(true);
  const shut = planOf(plainTube, { length: mm(550), ends: { is: 'choice', id: 'shut' } });
  expect(isRing(shut.steps)).toBe(false);
});
