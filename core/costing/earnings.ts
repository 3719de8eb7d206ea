import type { Money } from '../money/currency.js';
import { exact, rounded } from '../money/exact.js';
import { done, type Outcome, refused } from '../problems.js';
import type { Bill, LeftOut } from './bill.js';
import { type Fees, feesAt, NO_FEES } from './fees.js';
import { saleProblems } from './price.js';
import type { CostProblem } from './problems.js';

/** What an hour of the maker's earns, in minor units, and what it would still have to pay for. */
export type Earned = { currency: string; anHourMinor: number; leftOut: readonly LeftOut[] };

/**
 * Returns what an hour earns when each piece of a bill is sold at a price: what the sale leaves after fees, materials
 * and overhead, over the hours. Negative where it does not pay for the materials.
 * @returns rounded half-even; problems `no_hours`, `mixed_currencies` and those of figures
 */
export function earnedAnHour(bill: Bill, price: Money, fees: Fees = NO_FEES): Outcome<Earned, CostProblem> {
  const { currency, pieces, lines, hours, overheadMinor = 0 } = bill;
  const problems = saleProblems({ currency, minor: bill.costMinor }, fees, price);
  if (problems.length > 0) return refused(...problems);
  if (hours === 0) return refused({ code: 'no_hours', what: 'earned' });
  const materials = lines.reduce((sum, { is, minor }) => (is === 'material' ? sum + minor : sum), 0);
  const taken = exact(price.minor).sub(feesAt(price.minor, fees)).mul(pieces);
  const anHour = taken.sub(materials).sub(overheadMinor).div(exact(hours));
  const leftOut = bill.leftOut.filter(({ is }) => is !== 'time');
  return done({ currency, anHourMinor: rounded(anHour), leftOut });
}
