import { type Estimate, estimate, type Observation } from '../../core/gauge/estimate.js';

/** The estimate with nothing known of the scatter beforehand, which is then the textbook one. */
export function textbookOf(observations: readonly Observation[]): Estimate {
  const found = estimate(observations, { nu0: 0, tau0: 0.03 });
  if (found === undefined) throw new Error('no estimate');
  return found;
}

/** The same of readings that all weigh alike. */
export const textbook = (sample: readonly number[]): Estimate => textbookOf(sample.map((y) => ({ y, weight: 1 })));

/** The standard deviation of the mean. */
export const meanDeviation = ({ s2, weight }: Estimate): number => Math.sqrt(s2 / weight);
