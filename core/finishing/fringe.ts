import type { Step, Things } from '../piece.js';
import { count, key, length, say, tail } from '../words.js';
import { further } from './further.js';

/** What a strand loses in its knot and in the trimming, at each end. Common practice. */
const KNOT_MM = 20;
/** A length measured as a whole number of gaps still takes its last tassel. */
const ROUNDING = 1e-9;

/** A fringe at both ends: tassels an end, strands a tassel, how long it hangs. */
export type Fringe = { tassels: number; strands: number; hangsMm: number };

/** Tassels along an edge, one at each corner and the others so far apart at least. */
export const tasselsAlong = (edgeMm: number, apartMm: number): number => Math.floor(edgeMm / apartMm + ROUNDING) + 1;

/** A strand is folded in half: twice what hangs, and its knot, cut length in mm. */
export const strandMm = (hangsMm: number): number => 2 * (hangsMm + KNOT_MM);

const strandsOf = ({ tassels, strands }: Fringe): number => 2 * tassels * strands;

/** Yarn of the whole fringe, in mm. */
export const fringeYarnMm = (fringe: Fringe): number => strandsOf(fringe) * strandMm(fringe.hangsMm);

/** Strands to cut. */
export const fringeNotion = (fringe: Fringe): Things => ({
  id: 'fringe',
  count: strandsOf(fringe),
  one: 'strand',
  cutMm: strandMm(fringe.hangsMm),
  after: say` for the fringe`,
});

/** Strands cut, knotted in at both ends and trimmed. */
export function fringeSteps(fringe: Fringe): Step[] {
  const { tassels, strands, hangsMm } = fringe;
  const where = tassels === 1 ? say`in the middle` : say`one at each corner and the others evenly between`;
  return [
    {
      id: 'cut_fringe',
      driver: 'fringe',
      count: strandsOf(fringe),
      yarn: [{ role: 'main', lengthMm: fringeYarnMm(fringe) }],
      say: say`${key`Cut ${count(strandsOf(fringe), 'strand')} of ${tail(strandMm(hangsMm))}`} of the main yarn.`,
    },
    further(
      'knot_fringe',
      say`${key`Knot ${count(tassels, 'tassel')} into each end`}, ${where}: fold ${count(strands, 'strand')} in half, draw the loop through and the ends through the loop.`,
    ),
    {
      id: 'trim_fringe',
      driver: 'check',
      count: 1,
      say: say`Lay the ends flat; ${key`trim the fringe to ${length(hangsMm)}`}.`,
    },
  ];
}
