import { MM_PER, type Plan, type Printing, pieceById } from '../../core/index.js';

/**
 * A follow-up that makes the size of its rows a little larger, or smaller where it can be no larger, in the maker's unit.
 * None where that size is not asked for by its own name: the girth of a hat comes from the head.
 */
export function resize({ piece, sizes, landing }: Plan, { units }: Printing): string[] {
  const ask = pieceById(piece)?.asks[landing.dimension];
  const solved = sizes.find(({ id }) => id === landing.dimension);
  if (solved === undefined || (ask?.is !== 'window' && ask?.is !== 'length')) return [];
  const per = MM_PER[units];
  const fitting = [1.1, 0.9]
    .map((times) => Math.round((landing.expectedMm * times) / per))
    .filter((n) => isIn(ask, n * per));
  return fitting.slice(0, 1).map((n) => `make it ${n} ${units} ${solved.adjective.split(' ')[0]}`);
}

const isIn = ({ minMm, maxMm }: { minMm: number; maxMm: number }, mm: number): boolean => mm >= minMm && mm <= maxMm;
