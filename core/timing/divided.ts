import { sum } from '../gauge/estimate.js';
import type { Step } from '../piece.js';
import { done, type Outcome, refused } from '../problems.js';
import { countsOf } from './counts.js';
import type { Rates, TimeLog } from './rates.js';

/** What cannot be logged, as data. */
export type TimeProblem =
  | { code: 'time_out_of_range'; givenS: number; minS: number; maxS: number }
  /** None of the steps meant has a count. */
  | { code: 'nothing_to_time' };

/** From a second to a month: outside of these a slip of the pen. */
const LEAST_S = 1;
const MOST_S = 31 * 86_400;

/**
 * Returns one time over several steps as a log of each: divided as the maker's rates so far divide it, so that each
 * is as much slower or faster as the whole.
 * @param pieces how many were made in that time
 * @param session one for each look at the clock
 */
export function divided(
  seconds: number,
  steps: readonly Pick<Step, 'driver' | 'count' | 'times'>[],
  rates: Rates,
  { session, pieces = 1 }: { session: string; pieces?: number },
): Outcome<TimeLog[], TimeProblem> {
  // Written so that NaN is out of range as well.
  if (!(seconds >= LEAST_S && seconds <= MOST_S))
    return refused({ code: 'time_out_of_range', givenS: seconds, minS: LEAST_S, maxS: MOST_S });
  const { known } = countsOf(steps);
  if (known.length === 0) return refused({ code: 'nothing_to_time' });
  const expected = known.map(({ driver, count }) => count * pieces * Math.exp(rates.of[driver].mu));
  const pace = seconds / sum(expected, (s) => s);
  return done(
    known.map(({ driver, count }, i) => ({
      session,
      driver,
      count: count * pieces,
      seconds: (expected[i] ?? 0) * pace,
    })),
  );
}
