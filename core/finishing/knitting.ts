import type { Made, Step } from '../piece.js';
import { count, length, say, tail, type Words } from '../words.js';
import { LOOSE_TAIL_MM } from './tails.js';

/** Rows of waste yarn before and after the piece. Common practice, no source: about five. */
export const WASTE_ROWS = 5;
/** A counter is checked against a marker tied every so many rows. Common practice. */
const MARKER_ROWS = 10;

type Counts = Pick<Made<never>, 'needles' | 'rows' | 'hangingRowMm' | 'measureAtRow'>;

const stitches = (rows: number, needles: number | undefined) => (needles === undefined ? 0 : rows * needles);

/** Words for a tail: its length, or how to measure it off the fabric when no stitch width is known. */
export type Tail = { lengthMm: number | undefined; say: Words };

const onNeedles = (needles: number | undefined): Words =>
  needles === undefined ? say`all needles` : say`${count(needles, 'needle')}`;

const tailYarn = (left: Tail) =>
  left.lengthMm === undefined ? [] : [{ role: 'main' as const, lengthMm: left.lengthMm }];

/** The needle across the circle from needle 1, where a tube folds. */
const opposite = (needles: number | undefined): Words =>
  needles === undefined ? say`the needle opposite` : say`needle ${Math.floor(needles / 2) + 1}`;

/**
 * Waste yarn on, the main yarn joined with the tail the finish will need.
 * @param threads whether contrast threads must mark where the tube folds, to see a twist by
 * @param beside what else setting up takes
 */
export function startSteps(
  made: Pick<Counts, 'needles'>,
  left: Tail,
  { threads = false, beside = say`` } = {},
): Step[] {
  const waste = { role: 'waste' as const, stitches: stitches(WASTE_ROWS, made.needles) };
  return [
    {
      id: 'set_up',
      driver: 'set_up',
      count: 1,
      say: say`Set up ${onNeedles(made.needles)} with waste yarn; leave a tail of ${tail(LOOSE_TAIL_MM)}.${beside}`,
    },
    {
      id: 'waste_on',
      driver: 'crank',
      count: waste.stitches,
      yarn: [waste],
      say: say`Crank ${WASTE_ROWS} rows of waste yarn.`,
    },
    {
      id: 'join_main',
      driver: 'change',
      count: 1,
      yarn: tailYarn(left),
      say: say`Change to the main yarn; leave ${left.say}. Set your counters to 0.`,
    },
    ...(threads
      ? [
          {
            id: 'threads',
            driver: 'change' as const,
            count: 1,
            say: say`Tie a contrast thread to the stitch of needle 1 and one to that of ${opposite(made.needles)}, and let them run up with the rows: they mark the two folds.`,
          },
        ]
      : []),
  ];
}

/** How rows are cranked: round and round, or to and fro over a panel. Words put after the rows, the stop, the end. */
type Manner = { crank: Words; stop: Words; end: Words };

const ROUND: Manner = { crank: say``, stop: say`; stop with the yarn at needle 1`, end: say`` };

/** The rows themselves, with the stop to measure on the way. */
export function bodySteps(made: Counts, manner: Manner = ROUND): Step[] {
  const { needles, rows, hangingRowMm, measureAtRow } = made;
  const knit = (id: string, n: number, words: Words): Step => {
    const knitted = stitches(n, needles);
    return { id, driver: 'crank', count: knitted, yarn: [{ role: 'main', stitches: knitted }], say: words };
  };
  const first = (n: number): Words =>
    say`Crank ${count(n, 'row')}${manner.crank}, tying a marker every ${MARKER_ROWS} rows`;
  if (measureAtRow === undefined) return [knit('rows', rows, say`${first(rows)}${manner.end}.`)];
  return [
    knit('rows_to_measure', measureAtRow, say`${first(measureAtRow)}${manner.stop}.`),
    {
      id: 'measure',
      driver: 'measure',
      count: 1,
      say: say`Lift the weights off so that the work hangs free, and measure from the first main row to the needles: about ${length(measureAtRow * hangingRowMm)}. Tell me the row, this length and "hanging", and stop at the row I give; on your own, stop where all the rows hang about ${length(rows * hangingRowMm)}.`,
    },
    knit(
      'rows',
      rows - measureAtRow,
      say`Crank on to row ${rows} (or to the row I gave you)${manner.crank}${manner.end}.`,
    ),
  ];
}

/** The main yarn cut with its tail, waste yarn over it, the work off the machine. */
export function endSteps(made: Counts, left: Tail): Step[] {
  const waste = { role: 'waste' as const, stitches: stitches(WASTE_ROWS, made.needles) };
  return [
    {
      id: 'cut_main',
      driver: 'change',
      count: 1,
      yarn: tailYarn(left),
      say: say`Check your counters against the markers; if they differ, measure before you cut. Cut the main yarn, leaving ${left.say}, and change to waste yarn.`,
    },
    {
      id: 'waste_off',
      driver: 'crank',
      count: waste.stitches,
      yarn: [waste],
      say: say`Crank ${WASTE_ROWS} rows of waste yarn and cut it.`,
    },
    {
      id: 'run_off',
      driver: 'run_off',
      count: 1,
      say: say`Crank once more without yarn, so that the waste drops off the needles, and lift the work off.`,
    },
  ];
}

/** Ends woven in, contrast threads out, tools counted, the size taken at rest. */
export function tidySteps(ends: number, measured: string, threads = false, flat = true): Step[] {
  const out = threads ? say` Take out the contrast threads and markers.` : say` Take out the markers.`;
  return [
    { id: 'weave_in', driver: 'weave_in', count: ends, say: say`Weave in ${count(ends, 'end')}.${out}` },
    {
      id: 'check',
      driver: 'check',
      count: 1,
      say: say`Count pins and needles, ${flat ? 'let the piece rest flat, and' : 'and'} measure its ${measured}.`,
    },
  ];
}

/** The steps of one part done for each of `parts` knitted alike, so that yarn and counts are for them all. */
export const repeated = (steps: readonly Step[], parts: number): Step[] =>
  steps.map((step) => ({ ...step, times: (step.times ?? 1) * parts }));
