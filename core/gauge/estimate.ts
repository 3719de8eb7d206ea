/** One observation of a log ratio: its value and its weight relative to a perfectly measured one. */
export type Observation = { y: number; weight: number };

/** What is known beforehand of the scatter between pieces, and of the mean when `k0` is above 0. */
type Prior = { nu0: number; tau0: number; k0?: number; m0?: number };

/** A log spacing of one piece: a Student t at `mu` with scale `sd` and `nu` degrees of freedom, normal at infinity. */
export type Spacing = { mu: number; sd: number; nu: number };

/**
 * The log spacing of the next piece, with what stands behind it: `s2` is the scatter between pieces, `weight` how many
 * perfectly measured pieces the mean is worth, `pieces` how many were measured.
 */
export type Estimate = Spacing & { s2: number; weight: number; pieces: number };

/** Defaults for gauge: makers differ by about 3 % from piece to piece. From memory. */
export const GAUGE_PRIOR: Prior = { nu0: 4, tau0: 0.03 };

/** Laying out the same fabric twice never agrees better than this share. From memory. */
export const LAY_OUT = 0.005;

/**
 * Returns the conjugate estimate of a log ratio and of its next value.
 *
 * y_i ~ N(mu, s²/w_i) with s² ~ scaled-inverse-χ²(nu0, tau0²), and a mean that is flat or, with k0, centred at m0.
 * With nu0 = 0 and a flat mean this is the textbook prediction interval.
 * @param observations log ratios with weights above 0
 * @param prior nu0 and tau0 of the scatter (tau0 as a share), k0 and m0 of the mean
 * @returns undefined when nothing can be estimated: no observation under a flat mean, no degree of freedom, or no
 * scatter where none is known beforehand
 * @source Gelman et al., Bayesian Data Analysis, 3rd ed., section 3.3 (conjugate normal model); from memory
 */
export function estimate(observations: readonly Observation[], prior: Prior = GAUGE_PRIOR): Estimate | undefined {
  const k0 = prior.k0 ?? 0;
  const m0 = prior.m0 ?? 0;
  const n = observations.length;
  const { weight, mean: seen, ss: within } = weightedSums(observations);
  const kn = k0 + weight;
  const nu = prior.nu0 + n - (k0 === 0 ? 1 : 0);
  if (!(kn > 0) || nu < 1) return undefined;

  const mean = weight > 0 ? seen : m0;
  const mu = (k0 * m0 + weight * mean) / kn;
  const ss = within + ((k0 * weight) / kn) * (mean - m0) ** 2;
  if (prior.nu0 === 0 && ss === 0) return undefined;
  return settled({ mu, ss, weight: kn, nu, pieces: n }, prior);
}

/**
 * The weight of observations together, Σw, their mean ȳ, which is NaN for none, and Σw(y − ȳ)².
 * In loops, not by `sum`: it runs over every measurement a maker has, and calling a function for each costs the most.
 */
export function weightedSums(observations: readonly Observation[]): { weight: number; mean: number; ss: number } {
  let [weight, total, ss] = [0, 0, 0];
  for (const o of observations) {
    weight += o.weight;
    total += o.weight * o.y;
  }
  const mean = total / weight;
  for (const o of observations) ss += o.weight * (o.y - mean) ** 2;
  return { weight, mean, ss };
}

/** The estimate that a mean, a sum of squares and a weight come to, with the floor on scatter. */
export function settled(
  sums: { mu: number; ss: number; weight: number; nu: number; pieces: number },
  prior: Prior,
): Estimate {
  const { mu, ss, weight, nu, pieces } = sums;
  const scatter = (prior.nu0 * prior.tau0 ** 2 + ss) / nu;
  const s2 = prior.nu0 === 0 ? scatter : Math.max(LAY_OUT ** 2, scatter);
  return { mu, s2, nu, weight, sd: Math.sqrt(s2 * (1 + 1 / weight)), pieces };
}

/** The same estimate with one more unknown factor of this variance, in logs, between it and what it stands for. */
export function widened(estimate: Estimate, variance: number): Estimate {
  const weight = 1 / (1 / estimate.weight + variance / GAUGE_PRIOR.tau0 ** 2);
  return { ...estimate, weight, sd: Math.sqrt(estimate.s2 * (1 + 1 / weight)) };
}

/** The sum of a number of each item; 0 of none. */
export function sum<T>(items: readonly T[], of: (item: T) => number): number {
  return items.reduce((total, item) => total + of(item), 0);
}
