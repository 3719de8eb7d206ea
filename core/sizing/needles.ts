import type { Spacing } from '../gauge/estimate.js';
import { tQuantile } from '../stats/student-t.js';
import { dimensionMm, landingChance, type Measure, type Window } from './rows.js';

/** What the needles make of a dimension. Rows cannot change it. */
export type NeedleDimension = {
  expectedMm: number;
  /** The range that holds the next piece 80 times in 100. */
  likelyMm: Window;
  /** Set when something must have room: the least it must come to, and the chance that it does. */
  needed?: { leastMm: number; chance: number } | undefined;
  /** Set when a window was asked for. */
  asked?: { window: Window; chance: number; inside: boolean; needlesWanted: number; stitchChange: number } | undefined;
};

/**
 * The dimension across the needles, with its interval and, for an asked window, its chance and what would meet it:
 * the needles 2·√(lo·hi)/w of fact, and the change of stitch width as a share of the present one.
 */
export function needleDimension(
  measure: Measure,
  needles: number,
  stitch: Spacing,
  window: Window | undefined,
  leastMm?: number | undefined,
): NeedleDimension {
  const w = Math.exp(stitch.mu);
  const spread = Math.exp(tQuantile(0.9, stitch.nu) * stitch.sd);
  const at = (spacing: number): number => dimensionMm(measure, needles, spacing);
  const chanceIn = (range: Window): number => landingChance(range, measure, needles + measure.extra, stitch);
  const expectedMm = at(w);
  return {
    expectedMm,
    needed: leastMm === undefined ? undefined : { leastMm, chance: chanceIn({ loMm: leastMm, hiMm: Infinity }) },
    likelyMm: { loMm: at(w / spread), hiMm: at(w * spread) },
    asked: window && {
      window,
      chance: chanceIn(window),
      inside: window.loMm <= expectedMm && expectedMm <= window.hiMm,
      needlesWanted: needlesFor(window, measure, w),
      stitchChange: (centreMm(window, measure) - (expectedMm - measure.fixedMm)) / (expectedMm - measure.fixedMm),
    },
  };
}

const centreMm = (window: Window, measure: Measure): number =>
  Math.sqrt((window.loMm - measure.fixedMm) * (window.hiMm - measure.fixedMm));

/** The needles whose dimension lies nearest in logs to the middle of a window: a whole number, at least 1. */
export function needlesFor(window: Window, measure: Measure, stitchMm: number): number {
  const x = centreMm(window, measure) / (measure.share * stitchMm);
  const f = Math.max(1 + measure.extra, measure.extra + Math.floor(x - measure.extra));
  return (x * x <= f * (f + 1) ? f : f + 1) - measure.extra;
}
