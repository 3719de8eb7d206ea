import type { Money } from '../money/currency.js';
import { exact, rounded, roundedUp } from '../money/exact.js';
import { done, type Outcome, refused } from '../problems.js';
import { type Fees, feesAt, NO_FEES } from './fees.js';
import { saleProblems } from './price.js';
import { type CostProblem, currencyProblems, moneyProblems } from './problems.js';

/** How many must be sold before something is paid; undefined where no number does, since a sale leaves nothing. */
export type BreakEven = {
  pieces: number | undefined;
  /** What each sale leaves towards it, in minor units, rounded half-even. */
  eachMinor: number;
};

/**
 * Returns how many sales pay for something: fixed/(p·(1 − f) − F − cost), rounded up.
 * @param fixed what is to be paid whatever is sold, such as a stall, and a profit aimed at if there is one
 * @param cost of one piece
 * @returns problems of figures, `mixed_currencies`
 * @source OpenStax, Principles of Accounting 2, section 3.2
 */
export function breakEven(
  fixed: Money,
  cost: Money,
  price: Money,
  fees: Fees = NO_FEES,
): Outcome<BreakEven, CostProblem> {
  const problems = [
    ...moneyProblems('fixed', fixed),
    ...saleProblems(cost, fees, price),
    ...currencyProblems([fixed.currency, cost.currency]),
  ];
  if (problems.length > 0) return refused(...problems);
  const each = exact(price.minor).sub(feesAt(price.minor, fees)).sub(cost.minor);
  const pieces = each.gt(0) ? roundedUp(exact(fixed.minor).div(each)) : undefined;
  return done({ pieces: fixed.minor === 0 ? 0 : pieces, eachMinor: rounded(each) });
}
