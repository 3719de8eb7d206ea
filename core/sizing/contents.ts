/** Room to slip a thing in. Common practice, no source. */
export const SLIP_IN_MM = 10;

/** A thing that a piece must take, its sides in mm from the longest to the shortest. */
export type Contents = { longMm: number; shortMm: number; thickMm: number };

/** Which side of it stands up: the long one, or lying down the short one. */
export type Way = 'upright' | 'lying';

/** What a thing needs of a piece that takes it one way up: the least width, height and opening to go in by, in mm. */
export type Need = { way: Way; widthMm: number; heightMm: number; openingMm: number };

/** A thing by its three sides, in any order: the shortest is its thickness. */
export function contentsOf(sidesMm: readonly [number, number, number]): Contents {
  const [longMm, shortMm, thickMm] = [...sidesMm].sort((a, b) => b - a) as [number, number, number];
  return { longMm, shortMm, thickMm };
}

/**
 * The least width that takes a thing: a box of breadth b and thickness h is 2(b + h) round. The middle of the wall runs
 * 2·D round, its inside π·tau less, so that D is b + h + (π/2)·tau, and 10 mm of ease to slip it in.
 * @param wallMm thickness of the wall, tau
 * @source worked here from geometry; the ease is common practice
 */
export const leastWidthMm = (breadthMm: number, thickMm: number, wallMm: number): number =>
  breadthMm + thickMm + (Math.PI / 2) * wallMm + SLIP_IN_MM;

/**
 * The least height that takes a thing standing `upMm`: under a top that closes the wall bends over all of its
 * thickness, under one left open over half of it.
 * @param wallMm thickness of the wall, of which the fold at the bottom takes half
 * @source worked here from geometry
 */
export const leastHeightMm = (upMm: number, thickMm: number, wallMm: number, isOpen: boolean): number =>
  upMm + (isOpen ? thickMm / 2 : thickMm) + wallMm / 2;

/**
 * What a thing needs of a piece either way up: its long side up, and lying with it across. Through an opening, flat as
 * long as it is, goes what is no more than twice as long round.
 */
export function needsOf({ longMm, shortMm, thickMm }: Contents, wallMm: number, isOpen: boolean): [Need, Need] {
  const need = (way: Way, upMm: number, breadthMm: number): Need => ({
    way,
    widthMm: leastWidthMm(breadthMm, thickMm, wallMm),
    heightMm: leastHeightMm(upMm, thickMm, wallMm, isOpen),
    openingMm: breadthMm + thickMm,
  });
  return [need('upright', longMm, shortMm), need('lying', shortMm, longMm)];
}
