import cdf from '@stdlib/stats-base-dists-normal-cdf';
import pdf from '@stdlib/stats-base-dists-normal-pdf';

/** Standard normal distribution function. */
export const normalBelow = (z: number): number => cdf(z, 0, 1);

/** Standard normal density. */
export const normalDensity = (z: number): number => pdf(z, 0, 1);
