/**
 * The Craft Yarn Council's standard yarn weight system: stitches in stockinette over 4 in, which it takes to be 10 cm,
 * in whole stitches. Guidelines for hand knitting, lace above all. Needle sizes, wraps and the trade names of yarns
 * are left out: several of those stand in two categories, and worsted is a yarn count as well. Numbers 0 to 5 are from
 * the council's own chart, 6 and 7 second-hand; charts before the one with eight categories print 6 to 11 for 6.
 *
 * Source: Craft Yarn Council's YarnStandards.com
 */
export const YARN_WEIGHTS = [
  { number: 0, name: 'Lace', from: 33, to: 40 },
  { number: 1, name: 'Super Fine', from: 27, to: 32 },
  { number: 2, name: 'Fine', from: 23, to: 26 },
  { number: 3, name: 'Light', from: 21, to: 24 },
  { number: 4, name: 'Medium', from: 16, to: 20 },
  { number: 5, name: 'Bulky', from: 12, to: 15 },
  { number: 6, name: 'Super Bulky', from: 7, to: 11 },
  { number: 7, name: 'Jumbo', from: 0, to: 6 },
] as const;

export type YarnWeight = (typeof YARN_WEIGHTS)[number];

/**
 * The categories whose stitches these are: two for 23 and 24, none over 40.
 * @param stitchesPer4In above 0, rounded to whole stitches, as the ranges are published
 */
export function yarnWeightsFor(stitchesPer4In: number): YarnWeight[] {
  const stitches = Math.round(stitchesPer4In);
  return YARN_WEIGHTS.filter(({ from, to }) => from <= stitches && stitches <= to);
}

/** The category that words name by its number or its name, in any case; undefined where they name none. */
export function yarnWeightNamed(words: string): YarnWeight | undefined {
  const said = words.trim().toLowerCase();
  return YARN_WEIGHTS.find(({ number, name }) => said === `${number}` || said === name.toLowerCase());
}

/** Stitches beyond a category's range by more than this share of its end are worth a question. From memory. */
const UNUSUAL = 0.25;

/**
 * How far stitches lie outside a category, as a share of the nearer end of its range in stitches over 4 in; undefined
 * up to a quarter. To be asked about, never refused: a machine's gauge is often not a hand knitter's.
 * @param stitchesPer4In above 0
 */
export function unusualFor(
  { from, to }: YarnWeight,
  stitchesPer4In: number,
): { beyond: number; end: number } | undefined {
  const end = stitchesPer4In > to ? to : from;
  const beyond = stitchesPer4In > to ? stitchesPer4In / to - 1 : 1 - stitchesPer4In / from;
  return beyond > UNUSUAL ? { beyond, end } : undefined;
}
