import { checked } from './checked.js';
import type { Spacing } from './gauge/estimate.js';
import type { Given } from './given.js';
import type { Dimension, Piece } from './piece.js';
import type { Offer, Problem } from './problems.js';
import type { Panels } from './sizing/in-panels.js';
import { type NeedleDimension, needleDimension } from './sizing/needles.js';
import { panelsInstead } from './sizing/panels.js';
import type { Measure, Window } from './sizing/rows.js';
import { length, say, type Words } from './words.js';

/** One finished dimension. `expectedMm` is undefined while the needles or the stitch width are not known. */
export type PlannedSize = Pick<Dimension, 'id' | 'figure' | 'label' | 'adjective' | 'axis' | 'inPanels'> & {
  /** How rows or needles make it, so that a finished piece can be measured by it. */
  measure: Measure;
  expectedMm: number | undefined;
  across?: NeedleDimension | undefined;
};

/** A change of stitch width beyond this share is not reached by tension. From memory. */
export const TENSION_REACH = 0.1;

type Asking = { piece: Piece; values: Readonly<Record<string, Given>> };

/** What panels in the place of a tube are knitted to: their stitch width, and what their rows must measure. */
type Flat = { stitchMm: number | undefined; along: Window };

/** A dimension as it will come out: by rows the landing's own, by needles with its range. */
export function plannedSize(
  dimension: Dimension,
  rowsExpectedMm: number,
  needles: number | undefined,
  stitch: Spacing | undefined,
): PlannedSize {
  const { id, figure, label, adjective, axis, inPanels, share, extra, fixedMm } = dimension;
  const own = { id, figure, label, adjective, axis, inPanels, measure: { share, extra, fixedMm } };
  if (axis === 'rows') return { ...own, expectedMm: rowsExpectedMm };
  const across =
    needles && stitch ? needleDimension(dimension, needles, stitch, dimension.window, dimension.leastMm) : undefined;
  return { ...own, expectedMm: across?.expectedMm, across };
}

/** A size across the needles that no tension reaches: what the needles make, and what would work. */
export function outOfReach(input: Asking, size: PlannedSize, needles: number | undefined, flat: Flat): Problem[] {
  const { id, label, across } = size;
  const asked = across?.asked;
  if (!asked || !needles || asked.inside || Math.abs(asked.stitchChange) <= TENSION_REACH) return [];
  return [
    {
      code: 'needles_set_it',
      field: { id, label },
      expectedMm: across.expectedMm,
      window: asked.window,
      needles,
      needlesWanted: asked.needlesWanted,
      stitchChange: asked.stitchChange,
      chance: asked.chance,
      panels: panelsFor(size, asked.window, needles, flat),
      offers: asTheNeedlesMakeIt(input, id, across.expectedMm),
    },
  ];
}

function panelsFor(
  { inPanels: way, measure }: PlannedSize,
  window: Window,
  needles: number,
  { stitchMm, along }: Flat,
): Panels | undefined {
  if (way === undefined || stitchMm === undefined) return undefined;
  return panelsInstead({ way, along }, { window, measure, stitchMm }, needles);
}

/** The size left out, or, where the piece needs it, set to what the needles make: whichever the piece takes. */
function asTheNeedlesMakeIt({ piece, values }: Asking, id: string, expectedMm: number): Offer[] {
  const { [id]: asked, ...others } = values;
  const label = say`${length(expectedMm)}, as the needles make it`;
  const made: Given = { is: 'length', mm: expectedMm };
  if (checked(piece, others).ok) return [{ label, edit: { [id]: null } }];
  return checked(piece, { ...others, [id]: made }).ok ? [{ label, edit: { [id]: made } }] : [];
}

/** A size across the needles that tension could reach, in words; empty when it is met. */
export function shortfall({ label, across }: PlannedSize): Words[] {
  const asked = across?.asked;
  if (!asked || asked.inside) return [];
  const change = Math.round(Math.abs(asked.stitchChange) * 100);
  const way = asked.stitchChange > 0 ? say`looser` : say`tighter`;
  return [
    say`${label}: about ${length(across.expectedMm)}, outside what you asked for. Rows cannot change that; about ${asked.needlesWanted} needles would, or stitches ${Math.max(1, change)}% ${way}.`,
  ];
}
