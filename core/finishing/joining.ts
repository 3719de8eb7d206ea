import type { Made, Step } from '../piece.js';
import { count, key, say, tail, type Words } from '../words.js';
import { further } from './further.js';
import { type Tail, WASTE_ROWS } from './knitting.js';
import { GRAFT_WIDTHS, graftTailMm, LOOSE_TAIL_MM, mattressTailMm } from './tails.js';

type Fabric = Pick<Made<never>, 'needles' | 'rows' | 'loopMm'>;

/** Pairs left ungrafted until the waste is out: a closed ring cannot be reached inside. Common practice. */
const LAST_PAIRS = 5;

/** A tail of so many mm, and what it is for. */
export const tailOf = (lengthMm: number, purpose: string): Tail => ({
  lengthMm,
  say: say`${key`leave ${tail(lengthMm)}`} to ${purpose}`,
});

/** The tail that will graft every needle, or its length in widths of the fabric. */
export function graftTail({ needles, loopMm }: Fabric, purpose = 'graft with'): Tail {
  return needles === undefined || loopMm === undefined
    ? { lengthMm: undefined, say: say`${key`leave ${GRAFT_WIDTHS} times the girth`} of the tube to ${purpose}` }
    : tailOf(graftTailMm(needles, loopMm), purpose);
}

/** The tail that will sew a seam of this length, in mm. */
export const seamTail = (seamMm: number): Tail => tailOf(mattressTailMm(seamMm), 'sew with');

/** A tail only to be woven in. */
export const looseTail: Tail = { lengthMm: LOOSE_TAIL_MM, say: say`${key`leave ${tail(LOOSE_TAIL_MM)}`}` };

/** A tube grafted end to end into a ring, with half a twist if wanted. Grafting makes one more row. */
export function ringGraftSteps(made: Fabric, { halfTwist = false } = {}): Step[] {
  const { needles, rows } = made;
  return [
    {
      id: 'turn_for_graft',
      driver: 'turn_for_graft',
      count: 1,
      say: say`${key`Turn the tube`} so that the face you graft from is outside; draw it straight.`,
    },
    further('ends_together', endsTogether(needles, halfTwist)),
    {
      id: 'graft',
      driver: 'graft',
      count: needles ?? 0,
      say: say`${key`Graft ${pairsOf(needles)}`} of stitches with the long tail, one from each side, at the tension of a row: this is ${key`row ${rows + 1}`}; ${key`stop ${LAST_PAIRS} pairs short`}.`,
    },
    {
      id: 'take_out_waste',
      driver: 'take_out_waste',
      count: 2 * WASTE_ROWS,
      say: say`${key`Take out both strips of waste yarn`} (${2 * WASTE_ROWS} rows); tuck in and weave the inner ends.`,
    },
    further('finish_graft', say`${key`Graft the last ${LAST_PAIRS} pairs`}; fasten.`),
  ];
}

/** So many pairs of stitches, or every one of them. */
export const pairsOf = (pairs: number | undefined): Words =>
  pairs === undefined ? say`every pair` : say`${count(pairs, 'pair')}`;

function endsTogether(needles: number | undefined, halfTwist: boolean): Words {
  if (!halfTwist)
    return say`${key`Lay the ends together`}, needle ${1} to needle ${1}; check that the two threads run ${key`without a twist`}.`;
  const half =
    needles === undefined ? say`half of the stitches` : say`${count(Math.floor(needles / 2), 'stitch', 'stitches')}`;
  return say`${key`Turn one end half round`}, so that the ends meet ${key`${half} off`} and each thread runs on into the other.`;
}

/** The tail that will shut one end flat, or its length in widths of the fabric. */
export function shutTail({ needles, loopMm }: Fabric): Tail {
  const purpose = 'shut the end with';
  return needles === undefined || loopMm === undefined
    ? { lengthMm: undefined, say: say`${key`leave ${GRAFT_WIDTHS} times the width`} of the tube to ${purpose}` }
    : tailOf(graftTailMm(needles / 2, loopMm), purpose);
}

/** Ends of a tube shut flat, front grafted to back: each makes half a row in either layer. */
export function shutSteps({ needles, layout }: Pick<Made<never>, 'needles' | 'layout'>, ends: 1 | 2): Step[] {
  const pairs = needles === undefined ? undefined : Math.floor(needles / 2);
  const [where, at] = ends === 2 ? ['each end', ' at each end'] : ['the last end', ''];
  const inTurn = needles === undefined ? say`` : say`, needle ${1} with needle ${needles} and so on`;
  const odd = needles !== undefined && needles % 2 === 1 ? say`; take the odd loop together with the last` : say``;
  return [
    further(
      'fold_end',
      say`${key`Fold ${where} flat`}, ${layout.form === 'round' ? 'on the two threads' : 'the seam at one side'}.`,
    ),
    {
      id: 'shut',
      driver: 'graft',
      count: ends * (pairs ?? 0),
      say: say`${key`Graft ${pairsOf(pairs)}${at}`}, front to back${inTurn}, with the tail there, at the tension of a row: half a row of each layer${odd}.`,
    },
    {
      id: 'take_out_waste',
      driver: 'take_out_waste',
      count: ends * WASTE_ROWS,
      say: say`${key`Take out the waste yarn`} there (${ends * WASTE_ROWS} rows); fasten the tail and draw it inside.`,
    },
  ];
}

/** Markers along edges that are sewn bar to bar. */
export const markBars = (edges: Words): Step =>
  further('mark_bars', say`Put a ${key`marker at every ${10}th bar`} of ${edges}.`);

/** Two edges of a ring folded flat, sewn bar to bar. An odd bar is eased in at the graft. */
export function foldSeamSteps(rowsInPiece: number): Step[] {
  const pairs = Math.floor(rowsInPiece / 2);
  const odd = rowsInPiece % 2 === 1 ? say`; ease the odd bar in at the graft` : say``;
  return [
    further('fold_flat', say`${key`Fold flat`} on the two threads, the graft on a side fold.`),
    markBars(say`both lower edges, from the graft side`),
    {
      id: 'mattress',
      driver: 'mattress',
      count: pairs,
      say: say`${key`Mattress ${count(pairs, 'bar')}`}, one bar a side, meeting at each marker${odd}.`,
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
      say: say`${key`Cast off ${what} at ${only ?? 'each end'}`}, drawing each loop loosely through the one before it; take the waste yarn out as you go.`,
    },
  ];
}
