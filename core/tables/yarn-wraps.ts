import { YARN_WEIGHTS, type YarnWeight } from './yarn-weights.js';

/**
 * Wraps of a yarn laid side by side on an inch, by category of the standard yarn weight system. A rule of thumb: how
 * tightly one wraps changes the figure, the ranges overlap, and two copies seen print them alike at second hand.
 *
 * Source: Craft Yarn Council's YarnStandards.com, from second-hand copies. Left out: needle sizes, names of yarns.
 */
const WRAPS: readonly { number: YarnWeight['number']; from: number; to: number }[] = [
  { number: 0, from: 30, to: Number.POSITIVE_INFINITY },
  { number: 1, from: 14, to: 30 },
  { number: 2, from: 12, to: 18 },
  { number: 3, from: 11, to: 15 },
  { number: 4, from: 9, to: 12 },
  { number: 5, from: 6, to: 9 },
  { number: 6, from: 5, to: 6 },
  { number: 7, from: 1, to: 4 },
];

/**
 * The categories a yarn may be in by its wraps: up to three, finest first, none under 1.
 * @param wrapsPerInch rounded to whole wraps, as the ranges are published
 */
export function yarnWeightsWrapped(wrapsPerInch: number): YarnWeight[] {
  const wraps = Math.round(wrapsPerInch);
  return YARN_WEIGHTS.filter(({ number }) =>
    WRAPS.some((row) => row.number === number && row.from <= wraps && wraps <= row.to),
  );
}
