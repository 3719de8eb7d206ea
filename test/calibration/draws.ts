import chiSquare from '@stdlib/random-base-chisquare';
import normal from '@stdlib/random-base-normal';
import uniform from '@stdlib/random-base-uniform';

/** Random numbers that come the same again from the same seed. */
export type Draws = {
  /** Standard normal, times a spread. */
  normal(spread: number): number;
  uniform(lo: number, hi: number): number;
  /** Chi-square of four degrees of freedom. */
  chiSquare(): number;
  oneOf<T>(items: readonly T[]): T;
};

/** @param seed a whole number above 0 */
export function drawsFrom(seed: number): Draws {
  const standard = normal.factory(0, 1, { seed });
  const between = uniform.factory({ seed: seed + 1 });
  return {
    normal: (spread) => spread * standard(),
    uniform: (lo, hi) => between(lo, hi),
    chiSquare: chiSquare.factory(4, { seed: seed + 2 }),
    oneOf: (items) => items[Math.floor(between(0, items.length))] as (typeof items)[number],
  };
}
