import type { Made, Step } from '../piece.js';
import { count, key, say, tail } from '../words.js';
import {
  castOffSteps,
  foldSeamSteps,
  graftTail,
  looseTail,
  ringGraftSteps,
  seamTail,
  shutSteps,
  shutTail,
} from './joining.js';
import { bodySteps, endSteps, repeated, startSteps } from './knitting.js';
import { panelGraftSteps, panelSeamSteps, panelSteps } from './panel-seam.js';
import { mattressTailMm } from './tails.js';

type Laid = Omit<Made<never>, 'asked'>;

function upright(made: Laid): Step[] {
  return [
    ...startSteps(made, looseTail, { threads: true }),
    ...bodySteps(made),
    ...endSteps(made, shutTail(made)),
    ...shutSteps(made, 1),
    ...castOffSteps(made.needles, 'the first row'),
  ];
}

function sideways(made: Laid, edgeMm: number): Step[] {
  return [
    ...startSteps(made, graftTail(made), { threads: true }),
    ...bodySteps(made),
    ...endSteps(made, seamTail(edgeMm)),
    ...ringGraftSteps(made),
    ...foldSeamSteps(made.rowsInPiece),
  ];
}

/** Flat rings, sewn side by side where there are several, and shut along the lower edge. */
function flatRings(made: Laid, edgeMm: number): Step[] {
  const { layout, rowsInPiece } = made;
  const seams = layout.parts - 1;
  const pairs = Math.floor(rowsInPiece / 2);
  const alike = say`${key`Knit ${count(layout.parts, 'panel')} alike`}, with the same rows, each by the steps from here to its graft.`;
  const [joinMm, lowerMm] = [mattressTailMm(2 * edgeMm), mattressTailMm(edgeMm)];
  const sideBySide = say`the rings side by side, grafts together, ${count(seams, 'seam')} with ${tail(joinMm)} of yarn each`;
  const odd = rowsInPiece % 2 === 1 ? say`; ease the odd bar in at the graft` : say``;
  const lower = say`the lower edge shut, folded flat with the graft at one side, with ${tail(lowerMm)} of yarn${odd}`;
  const one = [...panelSteps(made, graftTail(made), looseTail), ...panelGraftSteps(made)];
  return [
    ...(seams === 0 ? [] : [{ id: 'each', driver: 'check' as const, count: 1, say: alike }]),
    ...repeated(one, layout.parts),
    ...(seams === 0 ? [] : panelSeamSteps(seams * rowsInPiece, sideBySide, { id: 'join', cutMm: seams * joinMm })),
    ...panelSeamSteps(pairs, lower, { cutMm: lowerMm }),
  ];
}

const WAYS = { upright, sideways, ring: flatRings };

/** The steps of a cover up to its opening, as it is laid: the edge that opens, in mm. */
export const coverSteps = (made: Laid, edgeMm: number): Step[] =>
  WAYS[made.layout.id as keyof typeof WAYS](made, edgeMm);
