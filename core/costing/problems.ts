import { isCurrency, type Money } from '../money/currency.js';

/**
 * What cannot be costed, as data. `what` is the id of the figure meant: that of an item of the bill, or the name of a
 * field such as `margin`, `markup`, `fee`, `price`, `hours`.
 */
export type CostProblem =
  /** Not a number from min to max: negative, too large, or no number at all. */
  | { code: 'figure_out_of_range'; what: string; given: number; min: number; max: number }
  /** Minor units and packs come whole. */
  | { code: 'figure_not_whole'; what: string; given: number }
  | { code: 'not_a_currency'; what: string; given: string }
  | { code: 'mixed_currencies'; currencies: readonly string[] }
  /** Margin and fees take the whole price, so that no price has this margin. It must be under `belowPercent`. */
  | { code: 'price_has_no_room'; marginPercent: number; feePercent: number; belowPercent: number }
  /** Earnings and overhead by the hour need the hours. */
  | { code: 'no_hours'; what: string }
  /** Nothing has a price yet; these items lack one. */
  | { code: 'nothing_priced'; items: readonly string[] };

/** The largest amount in minor units, and the largest quantity of one item: sums of many stay exact. */
const MOST_MINOR = 1e9;
export const MOST_QUANTITY = 100_000;

/** A number from min to max. */
// Written so that NaN is out of range as well.
export const outOfRange = (what: string, given: number, min: number, max: number): CostProblem[] =>
  given >= min && given <= max ? [] : [{ code: 'figure_out_of_range', what, given, min, max }];

/** A whole number from min to max. */
export function wholeProblems(what: string, given: number, min: number, max: number): CostProblem[] {
  const outside = outOfRange(what, given, min, max);
  if (outside.length > 0 || Number.isInteger(given)) return outside;
  return [{ code: 'figure_not_whole', what, given }];
}

/** A whole amount from 0, or from the least that makes sense, in something that has the form of a currency. */
export function moneyProblems(what: string, { currency, minor }: Money, leastMinor = 0): CostProblem[] {
  const unknown: CostProblem[] = isCurrency(currency) ? [] : [{ code: 'not_a_currency', what, given: currency }];
  return [...unknown, ...wholeProblems(what, minor, leastMinor, MOST_MINOR)];
}

/** All that is summed is in one currency; undefined where there is no amount. */
export function currencyProblems(named: readonly (string | undefined)[]): CostProblem[] {
  const currencies = [...new Set(named.filter((code) => code !== undefined))];
  return currencies.length > 1 ? [{ code: 'mixed_currencies', currencies }] : [];
}
