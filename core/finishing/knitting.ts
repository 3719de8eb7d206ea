import type { Made, Step } from '../piece.js';
import { count, key, length, say, tail, type Words } from '../words.js';
import { further } from './further.js';
import { LOOSE_TAIL_MM } from './tails.js';

/** Rows of waste yarn before and after the piece. Common practice, no source: about five. */
export const WASTE_ROWS = 5;
/** A counter is checked against a marker tied every so many rows. Common practice. */
const MARKER_ROWS = 10;
/** The work hangs from the needles by its own weight: it is lifted every so many rows. From memory. */
const LIFT_ROWS = 60;

type Counts = Pick<Made<never>, 'needles' | 'rows' | 'hangingRowMm' | 'measureAtRow'>;

const stitches = (rows: number, needles: number | undefined) => (needles === undefined ? 0 : rows * needles);

/** A tail to leave: its length, or how to measure it off the fabric when no stitch width is known. */
export type Tail = { lengthMm: number | undefined; say: Words };

const onNeedles = (needles: number | undefined): Words =>
  needles === undefined ? say`all needles` : say`${count(needles, 'needle')}`;

const tailYarn = (left: Tail) =>
  left.lengthMm === undefined ? [] : [{ role: 'main' as const, lengthMm: left.lengthMm }];

/** The needle across the circle from needle 1, where a tube folds. */
const opposite = (needles: number): number => Math.floor(needles / 2) + 1;

/** Both counters at 0, and the folds marked where they must be found again. */
export function countersStep(needles: number | undefined, threads: boolean): Step {
  const zero = key`both counters to ${0}`;
  if (!threads) return further('counters', say`Set ${zero}.`);
  const at =
    needles === undefined
      ? key`contrast threads at needle ${1} and opposite`
      : key`contrast threads at needles ${1} and ${opposite(needles)}`;
  const words = say`Set ${zero}; tie ${at}, to run up with the rows and mark the two folds.`;
  return { id: 'threads', driver: 'change', count: 1, say: words };
}

/**
 * Waste yarn on, the main yarn joined with the tail the finish will need.
 * @param threads whether contrast threads must mark where the tube folds, to see a twist by
 * @param beside what else setting up takes
 */
export function startSteps(
  made: Pick<Counts, 'needles'>,
  left: Tail,
  { threads = false, beside = [] as readonly Step[] } = {},
): Step[] {
  const waste = { role: 'waste' as const, stitches: stitches(WASTE_ROWS, made.needles) };
  return [
    {
      id: 'set_up',
      driver: 'set_up',
      count: 1,
      say: say`${key`Set up ${onNeedles(made.needles)}`} with waste yarn; leave ${tail(LOOSE_TAIL_MM)}.`,
    },
    ...beside,
    {
      id: 'waste_on',
      driver: 'crank',
      count: waste.stitches,
      yarn: [waste],
      say: say`${key`Crank ${WASTE_ROWS} waste rows`}.`,
    },
    {
      id: 'join_main',
      driver: 'change',
      count: 1,
      yarn: tailYarn(left),
      say: say`${key`Change`} to the main yarn; ${left.say}.`,
    },
    countersStep(made.needles, threads),
  ];
}

/** How rows are cranked: round and round, or to and fro over a panel. Words put after the rows, the stop, the end. */
type Manner = { crank: Words; stop: Words; end: Words };

const ROUND: Manner = { crank: say``, stop: say`; stop with the yarn at needle ${1}`, end: say`` };

/** Words after a count of rows so long that the work pulls on itself. */
const lifting = (rows: number): Words =>
  rows > LIFT_ROWS ? say`; lift the work every ${LIFT_ROWS} rows so that it does not stretch` : say``;

/** The rows themselves, with the stop to measure on the way. */
export function bodySteps(made: Counts, manner: Manner = ROUND): Step[] {
  const { needles, rows, hangingRowMm, measureAtRow } = made;
  const knit = (id: string, n: number, words: Words): Step => {
    const knitted = stitches(n, needles);
    return { id, driver: 'crank', count: knitted, yarn: [{ role: 'main', stitches: knitted }], say: words };
  };
  const first = (n: number): Words =>
    say`${key`Crank ${count(n, 'row')}`}${manner.crank}; every ${MARKER_ROWS} rows tie a marker and say "+${MARKER_ROWS}"${lifting(n)}`;
  if (measureAtRow === undefined) return [knit('rows', rows, say`${first(rows)}${manner.end}.`)];
  const rest = say`on your own, stop where all the rows hang about ${length(rows * hangingRowMm)}`;
  return [
    knit('rows_to_measure', measureAtRow, say`${first(measureAtRow)}${manner.stop}.`),
    {
      id: 'measure',
      driver: 'measure',
      count: 1,
      say: say`Lift the weights off so that the work hangs free and ${key`measure`} from the first main row to the needles, ${key`about ${length(measureAtRow * hangingRowMm)}`}; say the row, the length and "hanging".`,
    },
    knit(
      'rows',
      rows - measureAtRow,
      say`${key`Crank on to row ${rows}`}${manner.crank}, or to the row I give you${lifting(rows)}; ${rest}${manner.end}.`,
    ),
  ];
}

/** The main yarn cut with its tail, waste yarn over it, the work off the machine. */
export function endSteps(made: Counts, left: Tail): Step[] {
  const waste = { role: 'waste' as const, stitches: stitches(WASTE_ROWS, made.needles) };
  return [
    further(
      'check_counters',
      say`${key`Check both counters`} against the markers; if they differ, measure again before you go on.`,
    ),
    {
      id: 'cut_main',
      driver: 'change',
      count: 1,
      yarn: tailYarn(left),
      say: say`${key`Cut`} the main yarn; ${left.say}.`,
    },
    {
      id: 'waste_off',
      driver: 'crank',
      count: waste.stitches,
      yarn: [waste],
      say: say`Change to waste yarn; ${key`crank ${WASTE_ROWS} waste rows`}; cut it.`,
    },
    {
      id: 'run_off',
      driver: 'run_off',
      count: 1,
      say: say`Crank once more without yarn to drop the waste off the needles; ${key`lift the work off`}.`,
    },
  ];
}

/** Ends woven in, contrast threads out, tools counted, the size taken at rest. */
export function tidySteps(ends: number, measured: string, threads = false, flat = true): Step[] {
  const out = threads ? say`take out the contrast threads and markers` : say`take out the markers`;
  const rest = flat ? say`let the piece rest flat` : say`let the piece rest`;
  return [
    {
      id: 'weave_in',
      driver: 'weave_in',
      count: ends,
      say: say`${key`Weave in ${count(ends, 'end')}`}; ${out}.`,
    },
    {
      id: 'check',
      driver: 'check',
      count: 1,
      say: say`${key`Count pins and needles`}; ${rest}, ${key`measure its ${measured}`} and say "done, came out …".`,
    },
  ];
}

/** The steps of one part done for each of `parts` knitted alike, so that yarn and counts are for them all. */
export const repeated = (steps: readonly Step[], parts: number): Step[] =>
  steps.map((step) => ({ ...step, times: (step.times ?? 1) * parts }));
