import { tQuantile } from '../stats/student-t.js';
import type { Estimate } from './estimate.js';
import type { Count, Measurement } from './measurement.js';
import { RULER_MM, type SwatchReading, swatchReadings } from './observations.js';
import { estimateIn, type Setting, unpairedFactor } from './states.js';

/** A maker's gauge on one machine in one yarn: the log height of a row and the log width of a stitch, in mm. */
export type Gauge = { row: Estimate | undefined; stitch: Estimate | undefined; pieces: number };

const RESTED_TUBE: Setting = { state: 'rested', form: 'tube' };

/**
 * Returns the gauge that the measurements of one profile support, in the setting finished sizes are meant in.
 * @param measurements any number, in any state; those without rows count for stitches alone, and the other way round
 * @param target rested tube unless said
 * @returns `row` and `stitch` undefined where nothing was measured; `pieces` stand behind the better known of the two
 */
export function gauge(measurements: readonly Measurement[], target: Setting = RESTED_TUBE): Gauge {
  const row = spacing(measurements, (m) => m.rows, target);
  const stitch = spacing(measurements, (m) => m.stitches, target);
  return { row, stitch, pieces: Math.max(row?.pieces ?? 0, stitch?.pieces ?? 0) };
}

/** A swatch read in several states is one piece: the reading nearest to the target stands for it. */
function spacing(
  measurements: readonly Measurement[],
  of: (measurement: Measurement) => Count | undefined,
  target: Setting,
): Estimate | undefined {
  const readings = swatchReadings(measurements, of);
  const nearest = new Map<string, SwatchReading>();
  for (const reading of readings) {
    const known = nearest.get(reading.swatch);
    if (known === undefined || variance(reading, target) < variance(known, target))
      nearest.set(reading.swatch, reading);
  }
  return estimateIn(target, [...nearest.values()]);
}

const variance = (reading: SwatchReading, target: Setting): number => unpairedFactor(reading, target).variance;

/** The expected spacing in mm: the median of the next piece. */
export const spacingMm = (estimate: Estimate): number => Math.exp(estimate.mu);

/** How sure a gauge is, in a word. */
export type Sureness = 'rough' | 'fair' | 'good' | 'firm';

/** The word for a gauge by the half-width of the next piece's 80 % interval: rough over 5 %, then 3.5 and 2.5 %. */
export function sureness(estimate: Estimate): Sureness {
  const half = Math.expm1(tQuantile(0.9, estimate.nu) * estimate.sd);
  if (half > 0.05) return 'rough';
  if (half > 0.035) return 'fair';
  return half > 0.025 ? 'good' : 'firm';
}

/** Where a new measurement stands against a gauge: `unusual` beyond the t quantile that one piece in 100 passes. */
export function standing(estimate: Estimate, count: Count): 'usual' | 'unusual' {
  const ruler = (RULER_MM / count.overMm) ** 2;
  const z = (Math.log(count.overMm / count.count) - estimate.mu) / Math.sqrt(estimate.sd ** 2 + ruler);
  return Math.abs(z) > tQuantile(0.995, estimate.nu) ? 'unusual' : 'usual';
}
