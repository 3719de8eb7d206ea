import cdf from '@stdlib/stats-base-dists-normal-cdf';
import pdf from '@stdlib/stats-base-dists-normal-pdf';
import quantile from '@stdlib/stats-base-dists-normal-quantile';

/** Standard normal distribution function. */
export const normalBelow = (z: number): number => cdf(z, 0, 1);

/** Standard normal density. */
export const normalDensity = (z: number): number => pdf(z, 0, 1);

/** The point below which a standard normal variable falls with probability `p`. */
export const normalQuantile = (p: number): number => quantile(p, 0, 1);
