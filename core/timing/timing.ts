import { sum } from '../gauge/estimate.js';
import type { Step } from '../piece.js';
import { normalQuantile } from '../stats/normal.js';
import { varianceOf } from '../work/pitch.js';
import { countsOf } from './counts.js';
import type { Rates } from './rates.js';
import { type Driver, type Stage, USUAL_RATES } from './usual-rates.js';

/** A time that is as likely passed as not, with the range that holds 8 times in 10, in seconds. */
export type TimeRange = { medianS: number; loS: number; hiS: number };

/** All that one driver takes in a piece: so many of what it counts, and their median time in seconds. */
export type TimeLine = { driver: Driver; stage: Stage; count: number; medianS: number };

/** How long a piece takes. */
export type Timing = {
  lines: readonly TimeLine[];
  knit: TimeRange;
  finish: TimeRange;
  whole: TimeRange;
  /** The driver that takes the longest. */
  slowest: Driver | undefined;
  /** Drivers of steps whose count is not known yet: the times are without these. */
  leftOut: readonly Driver[];
};

/**
 * Returns how long the steps of a piece take a maker.
 *
 * The medians of the lines sum to less than the median of the whole: a step may take far longer than usual, but never
 * far less than nothing, and among many steps some do.
 */
export function timing(steps: readonly Pick<Step, 'driver' | 'count' | 'times'>[], rates: Rates): Timing {
  const { known, unknown } = countsOf(steps);
  const lines = known.map(({ driver, count }): TimeLine => {
    const { stage } = USUAL_RATES[driver];
    return { driver, stage, count, medianS: count * Math.exp(rates.of[driver].mu) };
  });
  const of = (stage: Stage): TimeRange =>
    together(
      lines.filter((line) => line.stage === stage),
      rates,
    );
  return {
    lines,
    knit: of('knit'),
    finish: of('finish'),
    whole: together(lines, rates),
    slowest: lines.reduce<TimeLine | undefined>((a, b) => (a && a.medianS >= b.medianS ? a : b), undefined)?.driver,
    leftOut: unknown,
  };
}

/** A day may be slow in everything: one factor common to all steps, wide until a few times were logged. From memory. */
const COMMON_SD = { before: 0.25, after: 0.1 };
const ENOUGH_SESSIONS = 3;

/**
 * Steps together: independent of one another but for the common factor, matched by mean and variance to a log-normal.
 * Each is taken as a log-normal of the variance of its t, since the mean of a log-t does not exist. Of times drawn from
 * the very model 7 to 11 in 100 end on either side of the range; around the sum of the medians up to 20 end beyond it.
 * @source Fenton, IRE Trans. Commun. Syst. 8 (1960) 57, sums of log-normals; from memory
 */
function together(lines: readonly TimeLine[], rates: Rates): TimeRange {
  if (lines.length === 0) return { medianS: 0, loS: 0, hiS: 0 };
  const steps = lines.map(({ driver, medianS }) => {
    const variance = varianceOf(rates.of[driver]);
    return { mean: medianS * Math.exp(variance / 2), variance };
  });
  const mean = sum(steps, (step) => step.mean);
  const relative = sum(steps, (step) => step.mean ** 2 * Math.expm1(step.variance)) / mean ** 2;
  const common = rates.sessions < ENOUGH_SESSIONS ? COMMON_SD.before : COMMON_SD.after;
  const medianS = mean / Math.sqrt(1 + relative);
  const spread = Math.exp(normalQuantile(0.9) * Math.sqrt(Math.log1p(relative) + common ** 2));
  return { medianS, loS: medianS / spread, hiS: medianS * spread };
}
