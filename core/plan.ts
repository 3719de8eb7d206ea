import { assumed } from './assumed.js';
import { cautions } from './cautions.js';
import { checked } from './checked.js';
import { type Estimate, type Spacing, widened } from './gauge/estimate.js';
import { type Evidence, evidence, type Gauge, gauge, spacingMm } from './gauge/gauge.js';
import type { Measurement, Setting } from './gauge/measurement.js';
import type { Given } from './given.js';
import type { Asks, Layout, Made, Notion, Outline, Piece, Step } from './piece.js';
import { outOfReach, type PlannedSize, plannedSize, shortfall } from './planned-size.js';
import { done, type Outcome, refused } from './problems.js';
import { type Measure, type RowChoice, rowsFor, type Window } from './sizing/rows.js';
import type { Words } from './words.js';
import { type Checkpoint, checkpoint } from './work/checkpoint.js';
import { type Correction, corrected, type InHand } from './work/correction.js';
import { factorOf, type Work } from './work/pitch.js';
import { doubts, type LoopEstimate, loopEstimate, type YarnKnown } from './yarn/loop-estimate.js';
import { type YarnNeed, yarnNeed } from './yarn/need.js';

/** Changes whenever the same ask and measurements could come to other numbers; stored with each plan. */
export const ENGINE = '3';

/** The one document that cards, drawings and sheets read. All lengths in mm, yarn in metres. */
export type Plan = {
  piece: string;
  label: string;
  needles: number | undefined;
  rows: number;
  /** Rows that grafting adds to those cranked. */
  graftRows: number;
  /** How many of the piece are asked for; every figure here is for one. */
  pieces: number;
  sizes: readonly PlannedSize[];
  /** Pieces of fabric knitted alike for one of them: 2 for a pair. */
  parts: number;
  /** Why it is laid on the machine this way, where another would do. */
  because: Words | undefined;
  /** What it looks like, for a drawing. */
  outline: Outline;
  tube: { flatWidthMm: number | undefined; lengthMm: number } | undefined;
  /** `toleranced`: the window is the usual tolerance about a size, so that it may be made wider. `measure`: how rows make it. */
  landing: { dimension: string; toleranced: boolean; measure: Measure } & Window & RowChoice;
  checkpoint: Checkpoint | undefined;
  /** A reading at rest, off the machine, at the same row. */
  checkpointAtRest: Checkpoint | undefined;
  /** Where the work in hand stands, once there is any; `rows` is then its stop row. */
  work: Correction | undefined;
  /** Whether the gauge is that of another machine. */
  isBorrowed: boolean;
  /** The piece as its readings are judged while it is on the machine. */
  onMachine: Work & { row: Estimate };
  yarn: YarnNeed | undefined;
  notions: readonly Notion[];
  steps: readonly Step[];
  cautions: readonly Words[];
  /** What the needles make that was asked for otherwise, and what would change it. */
  shortfalls: readonly Words[];
  assumed: readonly Words[];
};

export type PlanInput = {
  piece: Piece;
  values: Readonly<Record<string, Given>>;
  /** Needles of the machine, when known. */
  needles: number | undefined;
  measurements: readonly Measurement[];
  /** All the maker's measurements in this yarn, on any machine, for how it changes off the machine. */
  inYarn?: readonly Measurement[] | undefined;
  /** The work in hand, to correct it by what was read of it. */
  work?: InHand | undefined;
  /** The machine the measurements are from, when it is not the one planned for. */
  borrowedFrom?: string | undefined;
  /** What is known of the yarn beside gauge: its tex, and what was weighed or unravelled of this fabric. */
  yarn?: YarnKnown | undefined;
  /** Rows of a stripe repeat that the rows with the graft must be a multiple of. */
  repeatRows?: number | undefined;
  pieces: number;
};

/** The finished size is meant at rest unless said. */
const FINISHED = 'rested';

/**
 * Returns the plan that the maker's own measurements support for a piece, or every problem with it.
 * @param input values by ask id in mm; measurements of one profile, any number, in any state
 * @returns problems of `checked`, of the piece's layouts, and `no_row_gauge`, `needles_set_it`
 */
export function plan(input: PlanInput): Outcome<Plan> {
  const { piece } = input;
  const asked = checked(piece, input.values);
  if (!asked.ok) return asked;
  const known = evidence(input.measurements, input.inYarn);
  const gauges = { round: gaugeIn('round', known, input), flat: gaugeIn('flat', known, input) };
  if (gauges.round.row === undefined) return refused({ code: 'no_row_gauge' });

  const layouts = piece.layouts(asked.value.asked, {
    needles: input.needles,
    stitchMm: { round: stitchOf(gauges.round), flat: stitchOf(gauges.flat) },
  });
  if (!layouts.ok) return layouts;
  const layout = layouts.value[0];
  if (layout === undefined) throw new Error(`${piece.id} offers no layout`);
  return laidOut(input, asked.value, layout, gauges, known);
}

/** Two machines may differ in the same yarn by about this share. From memory. */
const MACHINE_VARIANCE = 0.03 ** 2;

const SETTINGS: Record<Layout['form'], Setting> = {
  round: { state: FINISHED, form: 'tube' },
  flat: { state: FINISHED, form: 'panel' },
};

const stitchOf = ({ stitch }: Gauge) => stitch && spacingMm(stitch);

function gaugeIn(form: Layout['form'], known: Evidence, { borrowedFrom }: PlanInput): Gauge {
  const own = gauge(known, SETTINGS[form]);
  if (borrowedFrom === undefined) return own;
  const { row, stitch } = own;
  return { ...own, row: row && widened(row, MACHINE_VARIANCE), stitch: stitch && widened(stitch, MACHINE_VARIANCE) };
}

function laidOut(
  input: PlanInput,
  { asked, toleranced }: { asked: Made<Asks>['asked']; toleranced: readonly string[] },
  layout: Layout,
  gauges: Readonly<Record<Layout['form'], Gauge>>,
  known: Evidence,
): Outcome<Plan> {
  const { piece, measurements, pieces } = input;
  const target = SETTINGS[layout.form];
  const { row, stitch, drift } = gauges[layout.form];
  const solved = layout.dimensions.find((d) => d.axis === 'rows' && d.window !== undefined);
  if (row === undefined || solved?.window === undefined) throw new Error(`${piece.id} has no window to solve`);
  if (solved.window.loMm <= solved.fixedMm) {
    return refused({ code: 'empty_window', field: { id: solved.id, label: solved.label }, window: solved.window });
  }

  const needles = layout.needles ?? input.needles;
  const byProfile = rowsFor(solved.window, solved, row, input.repeatRows);
  const onMachine = { row, rowsInPiece: byProfile.rowsInPiece, target, factors: known.rows.factors };
  const work = input.work && corrected(solved.window, solved, onMachine, input.work, input.repeatRows);
  const landing = work?.stop ?? byProfile;
  const sizes = layout.dimensions.map((d) => plannedSize(d, landing.expectedMm, needles, stitch));
  const flat = { stitchMm: stitchOf(gauges.flat), along: stretched(solved.window, solved) };
  const unreachable = sizes.flatMap((size) => outOfReach(input, size, needles, flat));
  if (unreachable.length > 0) return refused(...unreachable);

  const measureAt = toMeasure(solved.window, solved, onMachine, work, input.work?.knitted);
  const pitch = work?.pitch ?? row;
  const loop = loopEstimate(
    { stitchMm: stitch && spacingMm(stitch), rowMm: spacingMm(pitch), state: FINISHED },
    input.yarn,
  );
  const made = settledCounts({ asked, layout, needles, landing, row: pitch, stitch, loop, measureAt, onMachine });
  const steps = piece.steps(made);
  return done({
    piece: piece.id,
    label: piece.label,
    needles,
    rows: landing.rows,
    graftRows: solved.extra,
    pieces,
    sizes,
    parts: layout.parts,
    because: layout.because,
    outline: piece.outline(made),
    tube:
      layout.form === 'round'
        ? {
            flatWidthMm: needles && made.stitchMm && (needles * made.stitchMm) / 2,
            lengthMm: landing.rows * made.rowMm,
          }
        : undefined,
    landing: {
      dimension: solved.id,
      toleranced: toleranced.includes(solved.id),
      measure: { share: solved.share, extra: solved.extra, fixedMm: solved.fixedMm },
      ...solved.window,
      ...landing,
    },
    checkpoint: measureAt,
    checkpointAtRest: work ? undefined : checkpoint(solved.window, solved, onMachine, FINISHED),
    work,
    isBorrowed: input.borrowedFrom !== undefined,
    onMachine,
    yarn: needles === undefined || loop === undefined ? undefined : yarnNeed(steps, loop, input.yarn?.tex),
    notions: piece.notions(made),
    steps,
    cautions: cautions(piece.traits(made)),
    shortfalls: sizes.flatMap(shortfall),
    assumed: assumed({
      layout,
      toleranced,
      own: [...piece.assumes(made), ...(loop === undefined ? [] : doubts(loop))],
      measurements,
      borrowedFrom: input.borrowedFrom,
      drift,
    }),
  });
}

/** What the rows themselves must measure, laid straight. */
const stretched = ({ loMm, hiMm }: Window, { share, fixedMm }: Measure): Window => ({
  loMm: (loMm - fixedMm) / share,
  hiMm: (hiMm - fixedMm) / share,
});

/** The row to measure at: before the work is read the plan's own, afterwards only where another reading pays. */
function toMeasure(window: Window, measure: Measure, onMachine: Work, work: Correction | undefined, knitted = 0) {
  if (work === undefined || work.standing === undefined)
    return checkpoint(window, measure, onMachine, 'hanging', [], knitted);
  return work.next.is === 'measure_again' ? work.next.at : undefined;
}

function settledCounts(parts: {
  asked: Made<Asks>['asked'];
  layout: Layout;
  needles: number | undefined;
  landing: RowChoice;
  row: Spacing;
  stitch: Gauge['stitch'];
  loop: LoopEstimate | undefined;
  measureAt: Checkpoint | undefined;
  onMachine: Work;
}): Made<Asks> {
  const { asked, layout, needles, landing, row, stitch, loop, measureAt, onMachine } = parts;
  const rowMm = spacingMm(row);
  const hangingRowMm = rowMm * Math.exp(-factorOf(onMachine, 'hanging').delta);
  return {
    asked,
    layout,
    needles,
    rows: landing.rows,
    rowsInPiece: landing.rowsInPiece,
    row,
    rowMm,
    hangingRowMm,
    stitchMm: stitch && spacingMm(stitch),
    loopMm: loop?.mm,
    measureAtRow: measureAt?.row,
  };
}
