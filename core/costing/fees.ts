import type { Money } from '../money/currency.js';
import { type Exact, exact, share } from '../money/exact.js';
import { type CostProblem, moneyProblems, outOfRange } from './problems.js';

/** What a platform, a card or a shop takes of each sale: a share of the price, and so much each time. */
export type Fees = { percent: number; fixed?: Money | undefined };

export const NO_FEES: Fees = { percent: 0 };

/** A fee beyond this share of the price is a slip of the pen. */
const MOST_FEE_PERCENT = 90;

export const feeProblems = ({ percent, fixed }: Fees): CostProblem[] => [
  ...outOfRange('fee', percent, 0, MOST_FEE_PERCENT),
  ...(fixed === undefined ? [] : moneyProblems('fixed_fee', fixed)),
];

/** What is taken each time, in minor units. */
export const fixedFee = ({ fixed }: Fees): Exact => exact(fixed?.minor ?? 0);

/** What is taken of a sale at this price, in minor units, not yet rounded: p·f + F. */
export const feesAt = (priceMinor: number, fees: Fees): Exact =>
  share(fees.percent).mul(priceMinor).add(fixedFee(fees));
