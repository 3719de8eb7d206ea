import { GAUGE_PRIOR } from './estimate.js';
import type { Count, Measurement, Setting } from './measurement.js';

/** Reading error of a ruler laid on knitting: 1/16 in. From memory. */
export const RULER_MM = 1.6;

/** All that was read of one swatch in one setting: the log pitch, the length behind it and its reading error, in mm. */
export type SwatchReading = Setting & { y: number; lengthMm: number; errorMm: number; day: number | undefined };

/** The readings of one swatch, one for each setting it was read in. */
export type Swatch = readonly SwatchReading[];

/** Whole rows counted inside a fixed ruler length err by up to half a row either way: pitch/√12. */
const variance = ({ count, overMm, how, spreadMm = 0 }: Count): number =>
  RULER_MM ** 2 + spreadMm ** 2 + (how === 'read' ? 0 : (overMm / count) ** 2 / 12);

/** Which of a measurement's counts: along the tube, or across the needles. */
export type Axis = 'rows' | 'stitches';

/** Measurements by the swatch they are of. */
export function bySwatch(measurements: readonly Measurement[]): Measurement[][] {
  const known = new Map<string, Measurement[]>();
  for (const measurement of measurements) {
    const others = known.get(measurement.swatch);
    if (others === undefined) known.set(measurement.swatch, [measurement]);
    else others.push(measurement);
  }
  return [...known.values()];
}

/**
 * What was read of each swatch along one axis; swatches without any are left out. Several readings of one swatch in
 * one setting are merged into one, so that three places on one swatch do not pass for three pieces:
 * y = Σ y·x²/Σ x², x² = Σ x².
 */
export function swatches(grouped: readonly (readonly Measurement[])[], axis: Axis): Swatch[] {
  const found: Swatch[] = [];
  for (const measurements of grouped) {
    const readings = measurements.length === 1 ? readingOf(measurements[0], axis) : readingsOf(measurements, axis);
    if (readings.length > 0) found.push(readings);
  }
  return found;
}

function readingsOf(measurements: readonly Measurement[], axis: Axis): Swatch {
  const swatch: SwatchReading[] = [];
  for (const measurement of measurements) {
    for (const reading of readingOf(measurement, axis)) {
      const known = swatch.findIndex((r) => r.state === reading.state && r.form === reading.form);
      const same = swatch[known];
      if (same === undefined) swatch.push(reading);
      else swatch[known] = merged(same, reading);
    }
  }
  return swatch;
}

/** The one reading a measurement holds along an axis, or none. */
function readingOf(measurement: Measurement | undefined, axis: Axis): Swatch {
  const count = measurement?.[axis];
  if (measurement === undefined || count === undefined) return NONE;
  const { state, form, day } = measurement;
  const y = Math.log(count.overMm / count.count);
  return [{ state, form, y, lengthMm: count.overMm, errorMm: Math.sqrt(variance(count)), day }];
}

const NONE: Swatch = [];

function merged(a: SwatchReading, b: SwatchReading): SwatchReading {
  const [x, z] = [a.lengthMm ** 2, b.lengthMm ** 2];
  const mean = (of: (reading: SwatchReading) => number): number => (x * of(a) + z * of(b)) / (x + z);
  return {
    ...b,
    y: mean((r) => r.y),
    lengthMm: Math.sqrt(x + z),
    errorMm: Math.sqrt(mean((r) => r.errorMm ** 2)),
  };
}

/** The variance in logs that reading a length with a ruler brings. */
export const rulerVariance = ({ errorMm, lengthMm }: Pick<SwatchReading, 'errorMm' | 'lengthMm'>): number =>
  (errorMm / lengthMm) ** 2;

/**
 * What a reading weighs against a perfectly measured piece, by how long it was measured over: w = 1/(1 + (u/(x·tau0))²).
 * @param extraVariance variance in logs added to the ruler's, for a reading converted from another state
 */
export const weightOf = (reading: Pick<SwatchReading, 'errorMm' | 'lengthMm'>, extraVariance = 0): number =>
  1 / (1 + (rulerVariance(reading) + extraVariance) / GAUGE_PRIOR.tau0 ** 2);
