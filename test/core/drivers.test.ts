import { describe, expect, test } from 'vitest';
import type { Step } from '../../core/piece.js';
import { pieceById, pieces } from '../../core/pieces/index.js';
import type { PlanInput } from '../../core/plan.js';
import { BULKY, between, EVEN, MEDIUM, mm, planOf, read, tube } from './samples.js';

type Row = {
  /** A kind's id, and in brackets which of its ways. */
  piece: string;
  values: PlanInput['values'];
  on: Partial<PlanInput>;
  /** Yarn in a stitch, in mm: √(19·w·c). */
  loopMm: number;
  main: number;
  waste?: number;
  grafted?: number;
  bars?: number;
  castOffOrHemmed?: number;
  gathered?: number;
  /** Main rows and grafting alone, in metres. */
  mainAndGraftM: number;
};

const choice = (id: string) => ({ is: 'choice', id }) as const;
const A = { on: { needles: 46, measurements: MEDIUM }, loopMm: 26.823 };
const B = { on: { needles: 48, measurements: EVEN }, loopMm: 26 };
const H = { on: { needles: 48, measurements: BULKY }, loopMm: 34.253 };
/** A cord of rows 6 mm high; its yarn is told as that of B. */
const CORD = { on: { needles: 48, measurements: [tube('cord', 100, 600, { stitches: read(2, 15) })] }, loopMm: 26 };
const ID = /^[\w-]+/;

/** What the worked plan of every kind takes; worked out apart from the code, from rows, needles and bars. */
const ROWS: readonly Row[] = [
  {
    piece: 'pouch',
    values: { closure: mm(203.2) },
    ...A,
    main: 4876,
    waste: 460,
    grafted: 46,
    bars: 53,
    mainAndGraftM: 132,
  },
  {
    piece: 'upright-pouch (single)',
    values: { height: between(203, 213) },
    ...B,
    main: 2208,
    waste: 480,
    grafted: 24,
    castOffOrHemmed: 48,
    mainAndGraftM: 58,
  },
  {
    piece: 'upright-pouch (double)',
    values: { height: between(203, 213), layers: choice('double') },
    ...B,
    main: 3984,
    waste: 480,
    grafted: 48,
    mainAndGraftM: 104.8,
  },
  { piece: 'cowl', values: { girth: mm(660) }, ...B, main: 6288, waste: 480, grafted: 48, mainAndGraftM: 164.7 },
  { piece: 'headband', values: { head: mm(561.1) }, ...B, main: 4800, waste: 480, grafted: 48, mainAndGraftM: 126 },
  {
    piece: 'hat',
    values: { head: mm(499.2), brim: mm(40) },
    ...H,
    main: 1632,
    waste: 480,
    castOffOrHemmed: 48,
    gathered: 96,
    mainAndGraftM: 55.9,
  },
  {
    piece: 'double-hat',
    values: { head: mm(471.8) },
    ...H,
    main: 3312,
    waste: 480,
    gathered: 192,
    mainAndGraftM: 113.4,
  },
  {
    piece: 'scarf',
    values: { length: mm(1500), fringe: mm(120) },
    ...B,
    main: 14_352,
    waste: 480,
    grafted: 48,
    mainAndGraftM: 374.4,
  },
  {
    piece: 'cushion-cover',
    values: { width: mm(300), closure: mm(270) },
    ...B,
    main: 4756,
    waste: 410,
    grafted: 41,
    bars: 58,
    mainAndGraftM: 124.7,
  },
  {
    piece: 'limb-warmers',
    values: { hand: mm(186.6), length: mm(180) },
    ...B,
    main: 1728,
    waste: 480,
    bars: 54,
    castOffOrHemmed: 96,
    mainAndGraftM: 44.9,
  },
  {
    piece: 'mug-sleeve',
    values: { girth: mm(260), height: mm(120) },
    ...B,
    main: 768,
    waste: 160,
    grafted: 16,
    mainAndGraftM: 20.4,
  },
  {
    piece: 'strip-blanket',
    values: { width: mm(900), length: mm(1100), border: mm(20) },
    ...B,
    main: 50_640,
    waste: 2400,
    grafted: 240,
    bars: 848,
    mainAndGraftM: 1322.9,
  },
  {
    piece: 'wreath-cover',
    values: { outside: mm(300), girth: mm(160) },
    ...B,
    main: 3192,
    waste: 210,
    grafted: 21,
    bars: 153,
    mainAndGraftM: 83.5,
  },
  {
    piece: 'stuffed-ball',
    values: { diameter: mm(114.6) },
    ...B,
    main: 1728,
    waste: 480,
    gathered: 192,
    mainAndGraftM: 44.9,
  },
  {
    piece: 'tie-cord',
    values: { drop: mm(250), width: mm(280) },
    ...CORD,
    main: 412,
    gathered: 4,
    mainAndGraftM: 10.7,
  },
  {
    piece: 'plain-tube',
    values: { length: between(545, 575), ends: choice('cast_off') },
    ...A,
    main: 5060,
    waste: 460,
    castOffOrHemmed: 92,
    mainAndGraftM: 135.7,
  },
  {
    piece: 'flat-panel',
    values: { length: between(285, 315), needles: { is: 'count', count: 40 } },
    ...B,
    main: 2400,
    waste: 400,
    castOffOrHemmed: 80,
    mainAndGraftM: 62.4,
  },
];

const total = (steps: readonly Step[], of: (step: Step) => number): number =>
  steps.reduce((sum, step) => sum + (step.times ?? 1) * of(step), 0);

describe.each(ROWS)('the steps of the worked $piece', ({ piece: named, values, on, loopMm, ...wanted }) => {
  const piece = pieceById(ID.exec(named)?.[0] ?? '');
  if (piece === undefined) throw new Error(`no ${named}`);
  const { steps } = planOf(piece, values, on);
  const counted = (...drivers: Step['driver'][]) =>
    total(steps, ({ driver, count }) => (drivers.includes(driver) ? count : 0));
  const cranked = (role: 'main' | 'waste') =>
    total(steps, ({ driver, yarn = [] }) =>
      driver === 'crank' ? yarn.reduce((sum, use) => sum + (use.role === role ? (use.stitches ?? 0) : 0), 0) : 0,
    );

  test('take the stitches, pairs, bars and loops of the table', () => {
    const { main, waste = 0, grafted = 0, bars = 0, castOffOrHemmed = 0, gathered = 0 } = wanted;
    expect({
      main: cranked('main'),
      waste: cranked('waste'),
      cranked: counted('crank'),
      grafted: counted('graft'),
      bars: counted('mattress'),
      castOffOrHemmed: counted('cast_off', 'hem'),
      gathered: counted('gather'),
    }).toEqual({ main, waste, cranked: main + waste, grafted, bars, castOffOrHemmed, gathered });
    expect(((cranked('main') + counted('graft')) * loopMm) / 1000).toBeCloseTo(wanted.mainAndGraftM, 1);
  });

  test('lay their work off the machine once for every time it is set up', () => {
    expect(counted('run_off')).toBe(piece.id === 'tie-cord' ? 0 : counted('set_up'));
  });
});

test('every kind is worked', () => {
  expect(new Set(ROWS.map(({ piece }) => ID.exec(piece)?.[0]))).toEqual(new Set(pieces.map(({ id }) => id)));
});
