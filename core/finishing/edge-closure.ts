import type { Offer, Problem } from '../problems.js';
import { STOCK_CLOSURES } from '../tables/closures.js';
import { MM_PER } from '../units/units.js';
import { length, say } from '../words.js';
import { closureLength } from './closing.js';

/** What a closure without rings leaves of its edge. Common practice. */
const BESIDE_MM = 20;

/** The shortest edge that takes a closure. */
export const edgeForMm = (closureMm: number): number => closureMm + BESIDE_MM;

/** The longest stock closure that an edge takes, or undefined when none does. */
export function longestInEdgeMm(edgeMm: number): number | undefined {
  const stock = STOCK_CLOSURES.findLast(({ inches }) => edgeForMm(inches * MM_PER.in) <= edgeMm + 1e-9);
  return stock && stock.inches * MM_PER.in;
}

/**
 * The problem of a closure too long for its edge, with the longest that is not; none where it or the edge is not known.
 * @param besides what else must change where the closure is left out
 */
export function edgeClosureProblems(
  closureMm: number | undefined,
  edgeMm: number | undefined,
  { label, minMm }: { label: string; minMm: number },
  besides: Offer['edit'] = {},
): Problem[] {
  if (closureMm === undefined || edgeMm === undefined || edgeForMm(closureMm) <= edgeMm) return [];
  const mm = longestInEdgeMm(edgeMm);
  const shorter: Offer[] =
    mm === undefined
      ? []
      : [{ label: say`a closure of ${closureLength(mm)}`, edit: { closure: { is: 'length', mm } } }];
  const maxMm = Math.max(0, edgeMm - BESIDE_MM);
  return [
    {
      code: 'length_out_of_range',
      field: { id: 'closure', label },
      givenMm: closureMm,
      minMm: Math.min(minMm, maxMm),
      maxMm,
      why: say`it goes into an edge of ${length(edgeMm)}, and ${length(BESIDE_MM)} of that stay free`,
      offers: [...shorter, { label: say`no closure of that length`, edit: { ...besides, closure: null } }],
    },
  ];
}
