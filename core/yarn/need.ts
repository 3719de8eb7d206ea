import { sum } from '../gauge/estimate.js';
import type { Step, StepYarn } from '../piece.js';
import type { LoopEstimate, LoopSample } from './loop-estimate.js';

/** What main yarn goes into, in metres: `seamsM` is seams and the ends of all tails, `trimM` loops, pompoms, borders. */
export type YarnParts = {
  rowsM: number;
  graftM: number;
  seamsM: number;
  fringeM: number;
  cordM: number;
  trimM: number;
};

/** Yarn of one piece, folded over its steps; waste yarn apart. */
export type YarnNeed = {
  lengthM: number;
  wasteM: number;
  /** How far `lengthM` may be off, as a coefficient of variation. */
  cv: number;
  source: LoopEstimate['from'];
  /** Sums to `lengthM`. */
  parts: YarnParts;
  /** Stitches knitted and grafted. */
  stitches: number;
  /** Of the main yarn, in grams; known once the tex is, or a swatch was weighed. */
  massG: number | undefined;
  massCv: number | undefined;
  loop: LoopEstimate;
};

/** How far lengths cut by eye may be off. Common practice. */
const CUT_CV = 0.2;

/** Where a length cut in a step goes; where none is named here, into seams and tails. */
const CUT_FOR: Partial<Record<NonNullable<Step['driver']>, keyof YarnParts>> = {
  fringe: 'fringeM',
  drawstring: 'cordM',
  pompom: 'trimM',
  loop: 'trimM',
};

/**
 * The yarn that a plan's steps use: stitches by loop length, tails as cut. Of the tails that graft, the part that makes
 * stitches is told apart from its slack and ends.
 * @param loop yarn in one stitch
 * @param tex of the yarn, where it is known
 */
export function yarnNeed(steps: readonly Step[], loop: LoopEstimate, tex?: number): YarnNeed {
  const knitted = (isCranked: boolean): number =>
    used(steps, 'main', ({ driver }, { stitches = 0 }) => ((driver === 'crank') === isCranked ? stitches : 0));
  const cutMm = (part: keyof YarnParts): number =>
    used(steps, 'main', (step, { lengthMm = 0 }) => (cutFor(step) === part ? lengthMm : 0));
  const metres = (stitches: number, mm = 0): number => (stitches * loop.mm + mm) / 1000;

  const [cranked, bordered, tailsMm] = [knitted(true), knitted(false), cutMm('seamsM')];
  const pairs = sum(steps, ({ driver, count, times = 1 }) => (driver === 'graft' ? times * count : 0));
  const grafted = Math.min(pairs, tailsMm / loop.mm);
  const parts: YarnParts = {
    rowsM: metres(cranked),
    graftM: metres(grafted),
    seamsM: Math.max(0, metres(-grafted, tailsMm)),
    fringeM: metres(0, cutMm('fringeM')),
    cordM: metres(0, cutMm('cordM')),
    trimM: metres(bordered, cutMm('trimM')),
  };
  const lengthM = sum(Object.values(parts), (m) => m);
  const stitches = cranked + grafted + bordered;
  return {
    lengthM,
    wasteM: used(steps, 'waste', (_, { stitches = 0, lengthMm = 0 }) => metres(stitches, lengthMm)),
    cv: spread(lengthM, metres(stitches), loop.cv),
    source: loop.from,
    parts,
    stitches,
    ...massOf(lengthM, metres(stitches), loop, tex),
    loop,
  };
}

const cutFor = ({ driver }: Step): keyof YarnParts => (driver && CUT_FOR[driver]) ?? 'seamsM';

/** Stitches err together, as their loop length does; what is cut by eye errs apart from them. */
const spread = (lengthM: number, stitchedM: number, loopCv: number): number =>
  lengthM > 0 ? Math.hypot(stitchedM * loopCv, (lengthM - stitchedM) * CUT_CV) / lengthM : loopCv;

/** Weighed, the mass of a stitch is surer than its length; what is cut is then as heavy as the yarn of a stitch. */
function massOf(lengthM: number, stitchedM: number, { mm, cv, gPerStitch }: LoopEstimate, tex: number | undefined) {
  if (gPerStitch === undefined)
    return tex === undefined
      ? { massG: undefined, massCv: undefined }
      : { massG: (lengthM * tex) / 1000, massCv: spread(lengthM, stitchedM, cv) };
  const gPerM = (1000 * gPerStitch.value) / mm;
  const cutG = (lengthM - stitchedM) * (tex === undefined ? gPerM : tex / 1000);
  return { massG: stitchedM * gPerM + cutG, massCv: spread(lengthM, stitchedM, gPerStitch.cv) };
}

/** What a finished piece that was weighed says of the yarn in a stitch, its seams and tails kept apart. */
export const weighedPiece = ({ stitches, lengthM, loop }: YarnNeed, massG: number): LoopSample => ({
  is: 'weighed',
  stitches,
  massG,
  otherMm: Math.max(0, lengthM * 1000 - stitches * loop.mm),
});

/** The sum over all uses of yarn in a role, each as often as its step is done. */
export const used = (
  steps: readonly Step[],
  role: StepYarn['role'],
  of: (step: Step, use: StepYarn) => number,
): number =>
  sum(steps, (step) => (step.times ?? 1) * sum(step.yarn ?? [], (use) => (use.role === role ? of(step, use) : 0)));
