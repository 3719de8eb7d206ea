import { dividedBy } from '../money/apportioned.js';
import { type Exact, rounded, share, total } from '../money/exact.js';
import type { Purchase } from '../money/packs.js';
import { done, type Outcome, refused } from '../problems.js';
import { costOf, type Item, itemProblems, type Price, quantityFor } from './item.js';
import {
  type CostProblem,
  currencyProblems,
  MOST_QUANTITY,
  moneyProblems,
  outOfRange,
  wholeProblems,
} from './problems.js';

/** What goes on beside a piece: light, needles, rent. */
export type Overhead =
  | { is: 'none' }
  | { is: 'per_hour'; currency: string; minor: number }
  | { is: 'percent_of_prime'; percent: number };

/** One priced item of a bill: how much of it, what it costs, and what to buy where it is sold whole. */
export type BillLine = Pick<Item, 'id' | 'is'> & { quantity: number; minor: number; purchase: Purchase | undefined };

/** What a bill lacks, since nobody has said its price. */
export type LeftOut = { id: string; is: Item['is'] | 'overhead' };

/** What so many pieces cost, in minor units. Each line is rounded once, half-even; sums are sums of lines. */
export type Bill = {
  currency: string;
  pieces: number;
  lines: readonly BillLine[];
  /** Hours of time in all, priced or not. */
  hours: number;
  /** Materials and time together. */
  primeMinor: number;
  /** Undefined where the maker has not said what it is. */
  overheadMinor: number | undefined;
  costMinor: number;
  /** All that has no price yet: the cost is without these. */
  leftOut: readonly LeftOut[];
};

/**
 * Returns the bill of so many pieces: materials, time, prime cost, overhead and cost.
 * @param items each in the unit it is priced by, time in hours
 * @param overhead by the hour or in per cent of the prime cost; undefined where the maker has not said
 * @param pieces whole, from 1; what is sold whole is bought for all of them together
 * @returns problems `figure_out_of_range`, `figure_not_whole`, `not_a_currency`, `mixed_currencies`, `no_hours`,
 * `nothing_priced`
 * @source prime cost and overhead as in OpenStax, Principles of Accounting 2, sections 4.4 and 6.1
 */
export function bill(items: readonly Item[], overhead: Overhead | undefined, pieces = 1): Outcome<Bill, CostProblem> {
  const leftOut = [
    ...items.filter(({ price }) => price === undefined).map(({ id, is }): LeftOut => ({ id, is })),
    ...(overhead === undefined ? [{ id: 'overhead', is: 'overhead' as const }] : []),
  ];
  const currencies = [...items.map(({ price }) => price?.currency), overheadCurrency(overhead)];
  const currency = currencies.find((code) => code !== undefined);
  const unmade = wholeProblems('pieces', pieces, 1, MOST_QUANTITY);
  const problems = [
    ...unmade,
    ...items.flatMap((item) => itemProblems(item, unmade.length > 0 ? 1 : pieces)),
    ...(overhead === undefined ? [] : overheadProblems(overhead, items)),
    ...currencyProblems(currencies),
  ];
  if (problems.length > 0) return refused(...problems);
  if (currency === undefined) return refused({ code: 'nothing_priced', items: items.map(({ id }) => id) });

  const hours = total(items.filter((item) => item.is === 'time').map((item) => quantityFor(item, pieces)));
  const lines = items.flatMap((item) => (item.price === undefined ? [] : [lineOf(item, item.price, pieces)]));
  const primeMinor = lines.reduce((sum, { minor }) => sum + minor, 0);
  const overheadMinor = overhead && rounded(overheadOf(overhead, hours, primeMinor));
  const costMinor = primeMinor + (overheadMinor ?? 0);
  return done({ currency, pieces, lines, hours: hours.valueOf(), primeMinor, overheadMinor, costMinor, leftOut });
}

function lineOf(item: Item, price: Price, pieces: number): BillLine {
  const quantity = quantityFor(item, pieces);
  const { minor, purchase } = costOf(quantity, price);
  return { id: item.id, is: item.is, quantity: quantity.valueOf(), minor: rounded(minor), purchase };
}

const overheadCurrency = (overhead: Overhead | undefined): string | undefined =>
  overhead?.is === 'per_hour' ? overhead.currency : undefined;

/**
 * What each piece of a bill costs in minor units: the whole cost divided, so that they sum to it. The first costs no
 * less than the others.
 */
export const eachOf = ({ costMinor, pieces }: Pick<Bill, 'costMinor' | 'pieces'>): number[] =>
  dividedBy(
    costMinor,
    Array.from({ length: pieces }, () => 1),
  );

/** Overhead in per cent of the prime cost beyond this is a slip of the pen. */
const MOST_OVERHEAD_PERCENT = 1000;

function overheadProblems(overhead: Overhead, items: readonly Item[]): CostProblem[] {
  if (overhead.is === 'none') return [];
  if (overhead.is === 'percent_of_prime') return outOfRange('overhead', overhead.percent, 0, MOST_OVERHEAD_PERCENT);
  const hasTime = items.some((item) => item.is === 'time' && item.quantity > 0);
  return [
    ...moneyProblems('overhead', overhead),
    ...(hasTime ? [] : [{ code: 'no_hours' as const, what: 'overhead' }]),
  ];
}

function overheadOf(overhead: Overhead, hours: Exact, primeMinor: number): Exact {
  if (overhead.is === 'none') return total([]);
  return overhead.is === 'per_hour' ? hours.mul(overhead.minor) : share(overhead.percent).mul(primeMinor);
}
