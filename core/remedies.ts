import type { Estimate, Spacing } from './gauge/estimate.js';
import { pairTaught } from './gauge/factors.js';
import { chanceAfterSwatches } from './gauge/next-swatch.js';
import { RULER_MM, weightOf } from './gauge/swatches.js';
import type { Plan } from './plan.js';
import { type Measure, rowsFor, type Window } from './sizing/rows.js';
import { type Checkpoint, checkpoint } from './work/checkpoint.js';
import { pitchAfter, type Work } from './work/pitch.js';
import type { Reading } from './work/reading.js';

/** One thing that would raise the landing chance, and what to expect of it. */
export type Remedy =
  /** Measure the piece on the way, as it hangs or off the machine at rest. */
  | { is: 'measure_hanging' | 'measure_at_rest'; row: number; chance: number }
  /** One more measured piece as long as this one. */
  | { is: 'swatch'; chance: number }
  /** One piece read hanging and again at rest: what a hanging reading would then give. */
  | { is: 'pair'; row: number; chance: number }
  /** A wider window round the same middle. */
  | { is: 'wider'; window: Window; chance: number };

/** The chance a wider window is made for. */
const LIKELY = 0.6;
/** A window is never offered wider than this many times what was asked. */
const MOST_WIDER = 3;
const STEPS_WIDER = 10;
/** Less than this is no remedy. */
const WORTH_SAYING = 0.01;

/**
 * What would raise the chance of a plan, best first; only what does.
 * @param readings of the work in hand: once there are any, more swatches come too late for it
 * @param knitted rows of it on the machine
 */
export function remedies(
  { landing, sizes, onMachine: work, isBorrowed }: Plan,
  readings: readonly Reading[] = [],
  knitted = 0,
): Remedy[] {
  const measure = sizes.find(({ id }) => id === landing.dimension)?.measure;
  if (measure === undefined) throw new Error(`${landing.dimension} is no size of the plan`);
  const found: Remedy[] = [
    ...measured('measure_hanging', checkpoint(landing, measure, work, 'hanging', readings, knitted)),
    ...measured('measure_at_rest', checkpoint(landing, measure, work, work.target.state, readings, knitted)),
    ...(readings.length === 0 && knitted === 0 ? beforehand(landing, measure, work, isBorrowed) : []),
    ...(landing.toleranced ? wider(landing, measure, pitchAfter(work, readings)) : []),
  ];
  return found.filter((r) => r.chance - landing.chance >= WORTH_SAYING).sort((a, b) => b.chance - a.chance);
}

/** What is of use only while nothing of the piece was read. */
const beforehand = (
  window: Window,
  measure: Measure,
  work: Work & { row: Estimate },
  isBorrowed: boolean,
): Remedy[] => [
  // A swatch on a machine without any takes the place of the borrowed gauge; what it then is cannot be told beforehand.
  ...(isBorrowed ? [] : [{ is: 'swatch' as const, chance: afterOneMore(window, measure, work) }]),
  ...measured('pair', checkpoint(window, measure, withOnePair(work), 'hanging')),
];

const measured = (is: 'measure_hanging' | 'measure_at_rest' | 'pair', at: Checkpoint | undefined): Remedy[] =>
  at === undefined ? [] : [{ is, ...at }];

const lengthOf = ({ row, rowsInPiece }: Work): number => rowsInPiece * Math.exp(row.mu);

function afterOneMore(window: Window, measure: Measure, work: Work & { row: Estimate }): number {
  const weight = weightOf({ lengthMm: lengthOf(work), errorMm: RULER_MM });
  return chanceAfterSwatches(window, measure, work.row, weight);
}

function withOnePair(work: Work): Work {
  const rulerVariance = 2 * (RULER_MM / lengthOf(work)) ** 2;
  const from = { ...work.target, state: 'hanging' as const };
  return { ...work, factors: pairTaught(work.factors, { from, to: work.target, rulerVariance }) };
}

/** The narrowest window, in ten steps up to the widest offered, that the best count is likely to end in. */
function wider(window: Window, measure: Measure, row: Spacing): Remedy[] {
  const half = (window.hiMm - window.loMm) / 2;
  for (let step = 1; step <= STEPS_WIDER; step++) {
    const more = (half * (MOST_WIDER - 1) * step) / STEPS_WIDER;
    const widened = { loMm: window.loMm - more, hiMm: window.hiMm + more };
    if (widened.loMm <= measure.fixedMm) return [];
    const { chance } = rowsFor(widened, measure, row);
    if (chance >= LIKELY) return [{ is: 'wider', window: widened, chance }];
  }
  return [];
}
