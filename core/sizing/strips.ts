import type { Measure } from './rows.js';

/** Strips side by side in one piece at most. From memory. */
export const MOST_STRIPS = 100;

/** Hides the last digit of a strip that just reaches. */
const ROUNDING = 1e-9;

/**
 * The fewest strips that come to a width, at least 1.
 * @param seamMm what a seam takes of both its edges together
 */
export const fewestStrips = (widthMm: number, stripMm: number, seamMm: number): number =>
  Math.max(1, Math.ceil((widthMm - seamMm) / (stripMm - seamMm) - ROUNDING));

/**
 * How the needles of a strip make the width of them all with a border. A seam takes half a stitch of the fold of either
 * tube, and a whole one of the edge of either panel: of strips K in number, each is narrower by 2(K − 1)/K stitches.
 * @param share of its needles that a strip is wide: 1/2 of a tube, 1 of a panel
 */
export const stripsWide = (strips: number, share: number, borderMm: number): Measure => ({
  share: strips * share,
  extra: (2 - 2 * strips) / strips || 0,
  fixedMm: 2 * borderMm,
});
