import type { Step } from '../piece.js';
import { count, length, say, tail, type Words } from '../words.js';
import { type Tail, WASTE_ROWS } from './knitting.js';

/** The thread goes through every loop as often, so that the crown holds if it breaks once. Common practice. */
const TIMES_THROUGH = 2;
/** To thread, draw and fasten with. Common practice. */
const TO_FASTEN_MM = 300;
/** How much of a bunch of loops is yarn, and yarn diameters to a stitch width: 1.5 mm to 7.5. From memory. */
const PACKING = 0.8;
const DIAMETERS_A_STITCH = 5;

/** The tail that gathers an edge this far round, in mm: twice through it and an end. */
export const gatherTailMm = (roundMm: number): number => TIMES_THROUGH * roundMm + TO_FASTEN_MM;

/** The tail that will gather an edge, or its length by the fabric when that is not known. */
export function gatherTail(roundMm: number | undefined): Tail {
  if (roundMm === undefined)
    return {
      lengthMm: undefined,
      say: say`a tail twice as long as the tube is round and ${tail(TO_FASTEN_MM)} more to gather with`,
    };
  const lengthMm = gatherTailMm(roundMm);
  return { lengthMm, say: say`a tail of ${tail(lengthMm)} to gather with` };
}

/** How small gathered loops can be drawn: the radius in mm of the yarn of `loops`, d·√(loops/(2·0.8)). */
export const plugRadiusMm = (loops: number, stitchMm: number): number =>
  (stitchMm / DIAMETERS_A_STITCH) * Math.sqrt(loops / (2 * PACKING));

const drawn = (loops: number | undefined, stitchMm: number | undefined): Words =>
  loops === undefined || stitchMm === undefined
    ? say`Draw the thread up until no hole shows and knot it.`
    : say`Draw the thread up until the bunch is about ${length(2 * plugRadiusMm(loops, stitchMm))} across and no hole shows, and knot it.`;

/**
 * The live loops of one end threaded twice on its tail and drawn together; its waste comes out.
 * @param end words for it: `the last row`
 */
export function gatherSteps(
  { needles, stitchMm }: { needles: number | undefined; stitchMm: number | undefined },
  end: Words,
): Step[] {
  const loops = needles === undefined ? say`all the loops` : say`the ${count(needles, 'loop')}`;
  return [
    {
      id: 'gather',
      driver: 'gather',
      count: TIMES_THROUGH * (needles ?? 0),
      say: say`Thread ${loops} of ${end} on the tail there, twice round.`,
    },
    {
      id: 'take_out_waste',
      driver: 'take_out_waste',
      count: WASTE_ROWS,
      say: say`Take out the waste yarn there (${WASTE_ROWS} rows). ${drawn(needles, stitchMm)}`,
    },
  ];
}

/** One fold of a grafted ring threaded twice through its bars and drawn together. */
export const gatherFoldStep = (bars: number, stitchMm: number | undefined): Step => ({
  id: 'gather',
  driver: 'gather',
  count: TIMES_THROUGH * bars,
  say: say`Thread the ${count(bars, 'bar')} of one fold on the long tail, twice round. ${drawn(bars, stitchMm)}`,
});
