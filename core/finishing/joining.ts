import type { Made, Step } from '../piece.js';
import { count, say, tail, type Words } from '../words.js';
import { type Tail, WASTE_ROWS } from './knitting.js';
import { GRAFT_WIDTHS, graftTailMm, LOOSE_TAIL_MM, mattressTailMm } from './tails.js';

type Fabric = Pick<Made<never>, 'needles' | 'rows' | 'loopMm'>;

/** Pairs left ungrafted until the waste is out: a closed ring cannot be reached inside. Common practice. */
const LAST_PAIRS = 5;

/** The tail that will graft every needle, or its length in widths of the fabric. */
export function graftTail({ needles, loopMm }: Fabric): Tail {
  if (needles === undefined || loopMm === undefined) {
    return { lengthMm: undefined, say: say`a tail ${GRAFT_WIDTHS} times as long as the tube is round` };
  }
  const lengthMm = graftTailMm(needles, loopMm);
  return { lengthMm, say: say`a tail of ${tail(lengthMm)} to graft with` };
}

/** The tail that will sew a seam of this length, in mm. */
export function seamTail(seamMm: number): Tail {
  const lengthMm = mattressTailMm(seamMm);
  return { lengthMm, say: say`a tail of ${tail(lengthMm)} to sew with` };
}

/** A tail only to be woven in. */
export const looseTail: Tail = { lengthMm: LOOSE_TAIL_MM, say: say`a tail of ${tail(LOOSE_TAIL_MM)}` };

/** A tube grafted end to end into a ring, with half a twist if wanted. Grafting makes one more row. */
export function ringGraftSteps(made: Fabric, { halfTwist = false } = {}): Step[] {
  const { needles, rows } = made;
  const pairs = needles ?? 0;
  const howMany = needles === undefined ? say`every pair of stitches` : say`${count(needles, 'pair')} of stitches`;
  return [
    {
      id: 'turn_for_graft',
      driver: 'turn_for_graft',
      count: 1,
      say: say`Turn the side you graft from outside and draw the tube straight. ${endsTogether(needles, halfTwist)}`,
    },
    {
      id: 'graft',
      driver: 'graft',
      count: pairs,
      say: say`Graft ${howMany} with the long tail, one from each side, at the tension of a row; stop ${LAST_PAIRS} pairs short. The graft makes row ${rows + 1}.`,
    },
    {
      id: 'take_out_waste',
      driver: 'take_out_waste',
      count: 2 * WASTE_ROWS,
      say: say`Take out both strips of waste yarn (${2 * WASTE_ROWS} rows), weave in the ends inside, graft the last ${LAST_PAIRS} pairs and fasten.`,
    },
  ];
}

function endsTogether(needles: number | undefined, halfTwist: boolean): Words {
  if (!halfTwist)
    return say`Lay the ends together, needle 1 to needle 1; the two contrast threads must run without a twist.`;
  const half =
    needles === undefined ? say`half of the stitches` : say`${count(Math.floor(needles / 2), 'stitch', 'stitches')}`;
  return say`Turn one end half round, so that the ends meet ${half} off and each contrast thread runs on into the other.`;
}

/** The tail that will shut one end flat, or its length in widths of the fabric. */
export function shutTail({ needles, loopMm }: Fabric): Tail {
  if (needles === undefined || loopMm === undefined)
    return { lengthMm: undefined, say: say`a tail ${GRAFT_WIDTHS} times as long as the tube is wide` };
  const lengthMm = graftTailMm(needles / 2, loopMm);
  return { lengthMm, say: say`a tail of ${tail(lengthMm)} to shut the end with` };
}

/** Ends of a tube shut flat, front grafted to back: each makes half a row in either layer. */
export function shutSteps({ needles }: Pick<Fabric, 'needles'>, ends: 1 | 2): Step[] {
  const pairs = Math.floor((needles ?? 0) / 2);
  const howMany =
    needles === undefined
      ? say`front to back`
      : say`${count(pairs, 'pair')}, front to back, needle 1 with needle ${needles} and so on`;
  const odd = needles !== undefined && needles % 2 === 1 ? say` Take the odd loop together with the last.` : say``;
  const where = ends === 2 ? say`each end` : say`the last end`;
  return [
    {
      id: 'shut',
      driver: 'graft',
      count: ends * pairs,
      say: say`Fold ${where} flat on the two threads and graft ${howMany}, with its tail, at the tension of a row; it makes half a row of each layer.${odd}`,
    },
    {
      id: 'take_out_waste',
      driver: 'take_out_waste',
      count: ends * WASTE_ROWS,
      say: say`Take out the waste yarn there (${ends * WASTE_ROWS} rows), fasten the tail and draw it inside.`,
    },
  ];
}

/** Two edges of a ring folded flat, sewn bar to bar. An odd bar is eased in at the graft. */
export function foldSeamSteps(rowsInPiece: number): Step[] {
  const pairs = Math.floor(rowsInPiece / 2);
  const odd = rowsInPiece % 2 === 1 ? say` Ease the odd bar in at the graft.` : say``;
  return [
    {
      id: 'mattress',
      driver: 'mattress',
      count: pairs,
      say: say`Fold flat on the two threads with the graft on a side fold. Mark every 10th bar on both lower edges from the graft and sew ${count(pairs, 'bar')} in mattress stitch, one bar a side, meeting at each marker.${odd}`,
    },
  ];
}

/** Live loops cast off at both ends, or at the one named, the waste taken out. */
export function castOffSteps(needles: number | undefined, only?: string): Step[] {
  const what = needles === undefined ? say`every stitch` : say`${count(needles, 'stitch', 'stitches')}`;
  return [
    {
      id: 'cast_off',
      driver: 'cast_off',
      count: (only === undefined ? 2 : 1) * (needles ?? 0),
      say: say`Cast off ${what} at ${only ?? 'each end'}, drawing each loop loosely through the one before it, and take out the waste yarn.`,
    },
  ];
}
