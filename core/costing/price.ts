import type { Money } from '../money/currency.js';
import { exact, rounded, share } from '../money/exact.js';
import { done, type Outcome, refused } from '../problems.js';
import { type Fees, feeProblems, feesAt, fixedFee, NO_FEES } from './fees.js';
import { type CostProblem, currencyProblems, moneyProblems, outOfRange } from './problems.js';

/** A markup beyond this is a slip of the pen. */
const MOST_MARKUP_PERCENT = 10_000;

/** What is wrong with a cost, its fees and the price they are set against, if there is one yet. */
export const saleProblems = (cost: Money, fees: Fees, price?: Money): CostProblem[] => [
  ...moneyProblems('cost', cost),
  ...feeProblems(fees),
  ...(price === undefined ? [] : moneyProblems('price', price, 1)),
  ...currencyProblems([cost.currency, fees.fixed?.currency, price?.currency]),
];

/**
 * Returns the price of which a margin is left after cost and fees: p = (cost + F)/(1 − m − f).
 * @param marginPercent of the price, from 0; with the fee's under 100
 * @returns rounded half-even; problems `price_has_no_room` and those of figures
 */
export function priceForMargin(cost: Money, marginPercent: number, fees: Fees = NO_FEES): Outcome<Money, CostProblem> {
  const problems = [...saleProblems(cost, fees), ...outOfRange('margin', marginPercent, 0, 100)];
  if (problems.length > 0) return refused(...problems);
  const left = exact(1).sub(share(marginPercent)).sub(share(fees.percent));
  if (left.lte(0)) {
    const belowPercent = exact(100).sub(exact(fees.percent)).valueOf();
    return refused({ code: 'price_has_no_room', marginPercent, feePercent: fees.percent, belowPercent });
  }
  return done({ currency: cost.currency, minor: rounded(fixedFee(fees).add(cost.minor).div(left)) });
}

/**
 * Returns the price that leaves a markup on the cost after fees: p = (cost·(1 + k) + F)/(1 − f).
 * @param markupPercent of the cost, from 0
 * @returns rounded half-even; problems of figures
 */
export function priceForMarkup(cost: Money, markupPercent: number, fees: Fees = NO_FEES): Outcome<Money, CostProblem> {
  const problems = [...saleProblems(cost, fees), ...outOfRange('markup', markupPercent, 0, MOST_MARKUP_PERCENT)];
  if (problems.length > 0) return refused(...problems);
  const marked = share(markupPercent).add(1).mul(cost.minor);
  const minor = rounded(marked.add(fixedFee(fees)).div(exact(1).sub(share(fees.percent))));
  return done({ currency: cost.currency, minor });
}

/** A sale of one piece: what the fees take, what is left over its cost, and that as a share of the price. */
export type Sale = {
  currency: string;
  priceMinor: number;
  feeMinor: number;
  /** Price less fees and cost; negative where it is sold at a loss. */
  leftMinor: number;
  /** Of the price, before any rounding. */
  marginPercent: number;
};

/**
 * Returns what a sale at a price leaves.
 * @param price above 0
 * @returns problems of figures, `mixed_currencies`
 */
export function saleAt(cost: Money, price: Money, fees: Fees = NO_FEES): Outcome<Sale, CostProblem> {
  const problems = saleProblems(cost, fees, price);
  if (problems.length > 0) return refused(...problems);
  const taken = feesAt(price.minor, fees);
  const feeMinor = rounded(taken);
  const left = exact(price.minor).sub(taken).sub(cost.minor);
  return done({
    currency: price.currency,
    priceMinor: price.minor,
    feeMinor,
    leftMinor: price.minor - feeMinor - cost.minor,
    marginPercent: left.div(price.minor).mul(100).valueOf(),
  });
}

/** A markup of this many per cent of the cost as a margin in per cent of the price: k/(1 + k). */
export const marginOfMarkup = (markupPercent: number): number =>
  exact(markupPercent).div(exact(markupPercent).add(100)).mul(100).valueOf();

/** A margin in per cent of the price, under 100, as a markup in per cent of the cost: m/(1 − m). */
export const markupOfMargin = (marginPercent: number): number =>
  exact(marginPercent)
    .div(exact(100).sub(exact(marginPercent)))
    .mul(100)
    .valueOf();
