import { type Exact, exact, roundedUp } from '../money/exact.js';
import { cheapestPacks, type Pack, type Purchase } from '../money/packs.js';
import { type CostProblem, MOST_QUANTITY, moneyProblems, outOfRange, wholeProblems } from './problems.js';

/**
 * What something costs. `rate`: any part of it costs its part, such as 620 for 105 m of yarn or 1600 for 1 hour.
 * `packs`: sold whole, one or several at a price.
 */
export type Price = { currency: string } & (
  | { is: 'rate'; minor: number; per: number }
  | { is: 'packs'; packs: readonly Pack[] }
);

/** One thing that a piece takes: so much of it in the unit it is priced by, at a price or at none yet. */
export type Item = {
  id: string;
  is: 'material' | 'time';
  quantity: number;
  /** Taken once for all pieces together: a pattern bought, balls for the batch. */
  once?: boolean;
  price: Price | undefined;
};

/** All that is wrong with an item, as so many pieces take it. */
export const itemProblems = ({ id, quantity, once = false, price }: Item, pieces: number): CostProblem[] => [
  ...outOfRange(id, quantity * (once ? 1 : pieces), 0, MOST_QUANTITY),
  ...(price === undefined ? [] : priceProblems(id, price)),
];

function priceProblems(id: string, price: Price): CostProblem[] {
  if (price.is === 'rate') return [...moneyProblems(id, price), ...outOfRange(id, price.per, 1e-6, MOST_QUANTITY)];
  return [
    ...wholeProblems(id, price.packs.length, 1, MOST_QUANTITY),
    ...price.packs.flatMap(({ count, minor }) => [
      ...moneyProblems(id, { currency: price.currency, minor }),
      ...wholeProblems(id, count, 1, MOST_QUANTITY),
    ]),
  ];
}

/** How much of an item so many pieces take, in its own unit. */
export const quantityFor = ({ quantity, once = false }: Item, pieces: number): Exact =>
  exact(quantity).mul(once ? 1 : pieces);

/** What so much of something costs in minor units, not yet rounded, and what to buy where it is sold whole. */
export function costOf(quantity: Exact, price: Price): { minor: Exact; purchase: Purchase | undefined } {
  if (price.is === 'rate') return { minor: quantity.mul(price.minor).div(exact(price.per)), purchase: undefined };
  const purchase = cheapestPacks(roundedUp(quantity), price.packs);
  return { minor: exact(purchase.minor), purchase };
}
