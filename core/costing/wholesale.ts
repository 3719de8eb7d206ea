import type { Money } from '../money/currency.js';
import { exact, rounded, share } from '../money/exact.js';
import { done, type Outcome, refused } from '../problems.js';
import { priceForMargin } from './price.js';
import { type CostProblem, moneyProblems, outOfRange } from './problems.js';

/**
 * The price a shop asks for what it bought at this one, when it keeps a margin: of 50 %, the double.
 * @param shopMarginPercent of the shop's price, under 100
 */
export const retailFrom = (wholesale: Money, shopMarginPercent: number): Outcome<Money, CostProblem> =>
  priceForMargin(wholesale, shopMarginPercent);

/**
 * What a shop pays for what it sells at this price, when it keeps a margin.
 * @param shopMarginPercent of the shop's price, up to 100
 */
export function wholesaleFrom(retail: Money, shopMarginPercent: number): Outcome<Money, CostProblem> {
  const problems = [...moneyProblems('price', retail, 1), ...outOfRange('margin', shopMarginPercent, 0, 100)];
  if (problems.length > 0) return refused(...problems);
  const kept = exact(1).sub(share(shopMarginPercent));
  return done({ currency: retail.currency, minor: rounded(kept.mul(retail.minor)) });
}
