import type { Money } from '../money/currency.js';
import { exact, rounded, share } from '../money/exact.js';
import { done, type Outcome, refused } from '../problems.js';
import { type BreakEven, breakEven } from './break-even.js';
import { type Fees, feeProblems, feesAt, fixedFee, NO_FEES } from './fees.js';
import { saleProblems } from './price.js';
import {
  type CostProblem,
  currencyProblems,
  MOST_QUANTITY,
  moneyProblems,
  outOfRange,
  wholeProblems,
} from './problems.js';

/** The work of a written pattern: hours of writing, drawing and testing at the maker's rate, and what else it cost. */
export type PatternWork = { hours: number; hourly: Money; otherMinor: number };

/** A minute: less is no work to speak of. */
const LEAST_HOURS = 1 / 60;

const workProblems = ({ hours, hourly, otherMinor }: PatternWork): CostProblem[] => [
  ...(hours === 0
    ? [{ code: 'no_hours' as const, what: 'hours' }]
    : outOfRange('hours', hours, LEAST_HOURS, MOST_QUANTITY)),
  ...moneyProblems('hourly', hourly),
  ...moneyProblems('other', { ...hourly, minor: otherMinor }),
];

/** What the work of a pattern comes to, in minor units: its hours rounded once, and the rest. */
const workMinor = ({ hours, hourly, otherMinor }: PatternWork): number =>
  rounded(exact(hours).mul(hourly.minor)) + otherMinor;

/** Returns how many copies at a price pay for the work of a pattern. A copy costs nothing to make. */
export function copiesToPay(work: PatternWork, price: Money, fees: Fees = NO_FEES): Outcome<BreakEven, CostProblem> {
  const problems = workProblems(work);
  if (problems.length > 0) return refused(...problems);
  const { currency } = work.hourly;
  return breakEven({ currency, minor: workMinor(work) }, { currency, minor: 0 }, price, fees);
}

/** Returns the price at which so many copies pay for the work of a pattern: (work/copies + F)/(1 − f), half-even. */
export function patternPrice(work: PatternWork, copies: number, fees: Fees = NO_FEES): Outcome<Money, CostProblem> {
  const problems = [
    ...workProblems(work),
    ...wholeProblems('copies', copies, 1, MOST_QUANTITY),
    ...feeProblems(fees),
    ...currencyProblems([work.hourly.currency, fees.fixed?.currency]),
  ];
  if (problems.length > 0) return refused(...problems);
  const each = exact(workMinor(work)).div(copies).add(fixedFee(fees));
  return done({ currency: work.hourly.currency, minor: rounded(each.div(exact(1).sub(share(fees.percent)))) });
}

/** Returns what an hour of writing a pattern has earned once so many copies are sold, in minor units. */
export function patternEarned(
  work: PatternWork,
  sales: { copies: number; price: Money },
  fees: Fees = NO_FEES,
): Outcome<Money, CostProblem> {
  const { copies, price } = sales;
  const { currency } = work.hourly;
  const problems = [
    ...workProblems(work),
    ...wholeProblems('copies', copies, 0, MOST_QUANTITY),
    ...saleProblems({ currency, minor: 0 }, fees, price),
  ];
  if (problems.length > 0) return refused(...problems);
  const taken = exact(price.minor).sub(feesAt(price.minor, fees)).mul(copies);
  return done({ currency, minor: rounded(taken.sub(work.otherMinor).div(exact(work.hours))) });
}
