import type { Step } from '../piece.js';
import { count, key, length, say, tail, type Words } from '../words.js';
import { further } from './further.js';
import { tailOf } from './joining.js';
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
  if (roundMm !== undefined) return tailOf(gatherTailMm(roundMm), 'gather with');
  const left = key`leave twice the girth and ${tail(TO_FASTEN_MM)}`;
  return { lengthMm: undefined, say: say`${left} to gather with` };
}

/** How small gathered loops can be drawn: the radius in mm of the yarn of `loops`, d·√(loops/(2·0.8)). */
export const plugRadiusMm = (loops: number, stitchMm: number): number =>
  (stitchMm / DIAMETERS_A_STITCH) * Math.sqrt(loops / (2 * PACKING));

/** The thread drawn up and knotted; its time is that of threading it. */
function drawUp(loops: number | undefined, stitchMm: number | undefined): Step {
  const across =
    loops === undefined || stitchMm === undefined
      ? say`no hole shows`
      : say`the bunch is about ${length(2 * plugRadiusMm(loops, stitchMm))} across and no hole shows`;
  return further('draw_up', say`${key`Draw the thread up`} until ${across}; ${key`knot it`}.`);
}

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
      say: say`${key`Thread ${loops} of ${end}`} on the tail there, ${key`twice round`}.`,
    },
    {
      id: 'take_out_waste',
      driver: 'take_out_waste',
      count: WASTE_ROWS,
      say: say`${key`Take out the waste yarn`} there (${WASTE_ROWS} rows).`,
    },
    drawUp(needles, stitchMm),
  ];
}

/** One fold of a grafted ring threaded twice through its bars and drawn together. */
export const gatherFoldSteps = (bars: number, stitchMm: number | undefined): Step[] => [
  {
    id: 'gather',
    driver: 'gather',
    count: TIMES_THROUGH * bars,
    say: say`${key`Thread the ${count(bars, 'bar')} of one fold`} on the long tail, ${key`twice round`}.`,
  },
  drawUp(bars, stitchMm),
];
