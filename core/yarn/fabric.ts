import { say, type Words } from '../words.js';
import { jams, tightness } from './loop.js';

/** A yarn knitted to a loop: its tex, and the yarn in a stitch in mm. */
export type Knitted = { tex: number; loopMm: number };

/** The mass of fabric in g/m², from loop, tex, stitch width and row height in mm: l·tex/(w·c). */
export const massPerM2 = ({ tex, loopMm }: Knitted, stitchMm: number, rowMm: number): number =>
  (loopMm * tex) / (stitchMm * rowMm);

/** How a fabric stands to the maker's own. */
export type Feel = 'looser' | 'usual' | 'stiffer';

/** Within this share of a maker's own tightness fabric feels as usual. From memory. */
const USUAL = 0.1;

/**
 * How a fabric will feel beside the maker's own. Not judged by a textbook's range: that is of industrial fabric, and
 * what hand-cranked machines make is often looser than all of it.
 * @param own a fabric the maker is content with
 */
export function feel(knitted: Knitted, own: Knitted): Feel {
  const ratio = tightness(knitted.tex, knitted.loopMm) / tightness(own.tex, own.loopMm);
  if (ratio < 1 - USUAL) return 'looser';
  return ratio > 1 + USUAL ? 'stiffer' : 'usual';
}

/** What the feel means for the work. */
export function feelSaid(knitted: Knitted, own: Knitted): Words {
  if (jams(knitted.tex, knitted.loopMm)) return say`too thick for stitches of this size: it would jam`;
  switch (feel(knitted, own)) {
    case 'looser':
      return say`looser than your usual fabric: consider a lining, or tighten the stitch`;
    case 'stiffer':
      return say`stiffer than your usual fabric, and harder to crank: loosen the stitch`;
    case 'usual':
      return say`about as close as your usual fabric`;
  }
}
