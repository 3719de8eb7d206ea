import { sum } from '../gauge/estimate.js';
import type { Step, StepYarn } from '../piece.js';
import { LOOP_FROM_GAUGE_CV } from './loop.js';

/** Yarn of one piece, in metres, folded over its steps; waste yarn apart. */
export type YarnNeed = { lengthM: number; wasteM: number; cv: number; source: 'gauge' };

/**
 * The yarn that a plan's steps use: stitches by loop length, tails as cut.
 * @param loopMm yarn in one stitch, in mm; without it nothing is known
 */
export function yarnNeed(steps: readonly Step[], loopMm: number | undefined): YarnNeed | undefined {
  if (loopMm === undefined) return undefined;
  const metres = (role: StepYarn['role']): number =>
    sum(steps, (step) =>
      sum(step.yarn ?? [], (use) =>
        use.role === role ? ((step.times ?? 1) * ((use.stitches ?? 0) * loopMm + (use.lengthMm ?? 0))) / 1000 : 0,
      ),
    );
  return { lengthM: metres('main'), wasteM: metres('waste'), cv: LOOP_FROM_GAUGE_CV, source: 'gauge' };
}
