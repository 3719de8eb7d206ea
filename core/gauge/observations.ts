import { GAUGE_PRIOR, type Observation, sum } from './estimate.js';
import type { Count, Form, Measurement, State } from './measurement.js';

/** Reading error of a ruler laid on knitting: 1/16 in. From memory. */
export const RULER_MM = 1.6;

/** One swatch in one state: the log pitch, the length behind it and the reading error of that length, in mm. */
export type SwatchReading = {
  swatch: string;
  state: State;
  form: Form;
  y: number;
  lengthMm: number;
  errorMm: number;
};

/** Whole rows counted inside a fixed ruler length err by up to half a row either way: pitch/√12. */
const errorOf = (count: Count): number =>
  count.how === 'read' ? RULER_MM : Math.hypot(RULER_MM, count.overMm / count.count / Math.sqrt(12));

/**
 * Merges the readings of each swatch in each state into one, so that three places on one swatch do not pass for
 * three pieces: y = Σ y·x²/Σ x², x² = Σ x².
 * @param of which of a measurement's counts to read, rows or stitches; measurements without it are passed over
 */
export function swatchReadings(
  measurements: readonly Measurement[],
  of: (measurement: Measurement) => Count | undefined,
): SwatchReading[] {
  const groups = new Map<string, { swatch: string; state: State; form: Form; counts: Count[] }>();
  for (const measurement of measurements) {
    const count = of(measurement);
    if (count === undefined) continue;
    const { swatch, state, form } = measurement;
    const key = `${state} ${form} ${swatch}`;
    groups.set(key, { swatch, state, form, counts: [...(groups.get(key)?.counts ?? []), count] });
  }
  return [...groups.values()].map(({ counts, ...setting }) => {
    const squares = sum(counts, (c) => c.overMm ** 2);
    return {
      ...setting,
      y: sum(counts, (c) => c.overMm ** 2 * Math.log(c.overMm / c.count)) / squares,
      lengthMm: Math.sqrt(squares),
      errorMm: Math.sqrt(sum(counts, (c) => c.overMm ** 2 * errorOf(c) ** 2) / squares),
    };
  });
}

/**
 * The observation a reading makes, weighted by how long it was measured over: w = 1/(1 + (u/(x·tau0))²).
 * @param extraVariance variance in logs added to the ruler's, for a reading converted from another state
 */
export function observation(reading: SwatchReading, extraVariance = 0): Observation {
  const variance = (reading.errorMm / reading.lengthMm) ** 2 + extraVariance;
  return { y: reading.y, weight: 1 / (1 + variance / GAUGE_PRIOR.tau0 ** 2) };
}
