import type { Made, Step } from '../piece.js';
import { count, say, tail } from '../words.js';
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
import { panelGraftSteps, panelSeamStep, panelSteps } from './panel-seam.js';
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
  const sewn = (times: number, mm: number): Pick<Step, 'yarn'> => ({
    yarn: [{ role: 'main', lengthMm: times * mattressTailMm(mm) }],
  });
  const each = say`Knit ${count(layout.parts, 'panel')} alike, with the same rows, each by the steps from here to its graft.`;
  const joinMm = mattressTailMm(2 * edgeMm);
  const join: Step = {
    ...panelSeamStep(
      seams * rowsInPiece,
      say`the rings side by side, grafts together, ${count(seams, 'seam')} with ${tail(joinMm)} of yarn each`,
    ),
    id: 'join',
    ...sewn(seams, 2 * edgeMm),
  };
  const lower = say`the lower edge shut, folded flat with the graft at one side, with ${tail(mattressTailMm(edgeMm))} of yarn`;
  const odd = rowsInPiece % 2 === 1 ? say` Ease the odd bar in at the graft.` : say``;
  const one = [...panelSteps(made, graftTail(made), looseTail), ...panelGraftSteps(made)];
  return [
    ...(seams === 0 ? [] : [{ id: 'each', driver: 'check' as const, count: 1, say: each }]),
    ...repeated(one, layout.parts),
    ...(seams === 0 ? [] : [join]),
    { ...panelSeamStep(pairs, lower, odd), ...sewn(1, edgeMm) },
  ];
}

const WAYS = { upright, sideways, ring: flatRings };

/** The steps of a cover up to its opening, as it is laid: the edge that opens, in mm. */
export const coverSteps = (made: Laid, edgeMm: number): Step[] =>
  WAYS[made.layout.id as keyof typeof WAYS](made, edgeMm);
