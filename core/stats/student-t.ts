import cdf from '@stdlib/stats-base-dists-t-cdf';
import quantile from '@stdlib/stats-base-dists-t-quantile';
import { normalBelow, normalQuantile } from './normal.js';

const below = (x: number, nu: number): number => (nu === Number.POSITIVE_INFINITY ? normalBelow(x) : cdf(x, nu));

/**
 * The probability that a Student t variable lies between `lo` and `hi`.
 * Both tails are taken on the side where they are small, so that a narrow window far out keeps its digits.
 * @param lo standardised lower bound; @param hi standardised upper bound, at least `lo`
 * @param nu degrees of freedom, above 0; at infinity the normal distribution
 */
export function tBetween(lo: number, hi: number, nu: number): number {
  return lo > 0 ? below(-lo, nu) - below(-hi, nu) : below(hi, nu) - below(lo, nu);
}

/** The point below which a Student t variable with `nu` degrees of freedom falls with probability `p`. */
export const tQuantile = (p: number, nu: number): number =>
  nu === Number.POSITIVE_INFINITY ? normalQuantile(p) : quantile(p, nu);
