import { type Exact, exact, roundedDown, total } from './exact.js';

/**
 * One known amount in parts that sum to it: each part rounded down, the units still missing one each to the largest
 * remainders, ties in order.
 * @param minor the amount in minor units, less than one unit a part above the sum of the parts rounded down
 * @param parts what each part is exactly, in minor units
 * @source the largest-remainder method (Hamilton's); from memory
 */
export function apportioned(minor: number, parts: readonly Exact[]): number[] {
  const floors = parts.map(roundedDown);
  const missing = minor - floors.reduce((sum, floor) => sum + floor, 0);
  if (missing < 0 || missing > parts.length) throw new Error(`${minor} is not the sum of its parts`);
  const remainders = parts.map((part, i) => ({ i, rest: part.sub(floors[i] ?? 0) }));
  const first = remainders.sort((a, b) => b.rest.compare(a.rest) || a.i - b.i).slice(0, missing);
  const raised = new Set(first.map(({ i }) => i));
  return floors.map((floor, i) => floor + (raised.has(i) ? 1 : 0));
}

/** One known amount by shares: in proportion to them, in whole units that sum to it. Shares of 0 or more, not all 0. */
export function dividedBy(minor: number, shares: readonly number[]): number[] {
  const weights = shares.map(exact);
  const all = total(weights);
  return apportioned(
    minor,
    weights.map((weight) => weight.mul(minor).div(all)),
  );
}
