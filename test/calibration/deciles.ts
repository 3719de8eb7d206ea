import type { Landing } from './landings.js';

/** Landings together: the mean chance stated, and the share that landed. */
export type Group = { stated: number; observed: number; count: number; chiSquare: number };

export function together(landings: readonly Landing[]): Group {
  let [sum, hits, variance] = [0, 0, 0];
  for (const { stated, landed } of landings) {
    sum += stated;
    hits += Number(landed);
    variance += stated * (1 - stated);
  }
  const count = landings.length;
  return { stated: sum / count, observed: hits / count, count, chiSquare: (hits - sum) ** 2 / variance };
}

/** Ten groups of as many landings each, from the least chance stated to the greatest. */
export function deciles(landings: readonly Landing[]): Group[] {
  const inOrder = [...landings].sort((a, b) => a.stated - b.stated);
  const start = (i: number): number => Math.round((i * inOrder.length) / 10);
  return Array.from({ length: 10 }, (_, i) => together(inOrder.slice(start(i), start(i + 1))));
}

export const off = ({ stated, observed }: Group): number => Math.abs(stated - observed);
export const worst = (groups: readonly Group[]): number => Math.max(...groups.map(off));
/** Of ten groups a chi-square of ten degrees of freedom, if what is stated is so. */
export const chiSquareOf = (groups: readonly Group[]): number => groups.reduce((sum, g) => sum + g.chiSquare, 0);
