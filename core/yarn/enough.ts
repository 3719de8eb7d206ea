import { sum } from '../gauge/estimate.js';
import { done, refused } from '../problems.js';
import { normalBelow, normalQuantile } from '../stats/normal.js';
import type { YarnOutcome } from './problems.js';

/** Yarn needed, in metres, with its coefficient of variation. A `YarnNeed` is one. */
export type Needed = { lengthM: number; cv: number };

/** Balls alike: how many, and what each is said to hold, in metres. */
export type Balls = { balls: number; lengthM: number };

/**
 * How far a lot, and a ball in it, strays from its label. From memory.
 * @source an upper bound: Directive 76/211/EEC, Annex I, lets a pack of 50 g lack 9 % and one of 100 g 4.5 g
 */
const LOT_CV = 0.02;
const BALL_CV = 0.02;

/** Enough this often. The maker may want another figure, from a half to nearly always. */
export const ENOUGH = 0.95;
const SURE = { min: 0.5, max: 0.999 };

/** Problems with how sure a maker wants to be: `sureness_out_of_range`. */
export const sureEnough = (sure: number): YarnOutcome<number> =>
  sure >= SURE.min && sure <= SURE.max ? done(sure) : refused({ code: 'sureness_out_of_range', given: sure, ...SURE });

/** What several pieces need together. All alike err together, so the share stays; yarn told apart errs apart. */
export function together(needs: readonly Needed[]): Needed {
  const lengthM = sum(needs, (need) => need.lengthM);
  return { lengthM, cv: Math.sqrt(sum(needs, (need) => (need.lengthM * need.cv) ** 2)) / lengthM };
}

/** The same with a share kept for repairs, only where that is asked for. It is not what makes the chance. */
export const withReserve = ({ lengthM, cv }: Needed, share: number): Needed => ({ lengthM: lengthM * (1 + share), cv });

/**
 * The chance that balls hold what is needed: Φ(ln(L/Q)/√(cvQ² + cvL² + cvB²·Σnb²/L²)), of n balls alike Σnb²/L² = 1/n.
 * All lots count as one, which errs on the safe side.
 */
export function chanceEnough(need: Needed, balls: readonly Balls[]): number {
  const lengthM = heldM(balls);
  if (lengthM <= 0) return 0;
  return normalBelow(Math.log(lengthM / need.lengthM) / spread(need, unevenness(balls)));
}

/** The length that must be held to be enough this often, where balls are so uneven. */
export const toHoldM = (need: Needed, sure: number, uneven: number): number =>
  need.lengthM * Math.exp(normalQuantile(sure) * spread(need, uneven));

/** The share of the scatter of one ball that is left in all together: Σnb²/L², 1 for one ball. */
export const unevenness = (balls: readonly Balls[]): number =>
  sum(balls, (one) => one.balls * one.lengthM ** 2) / heldM(balls) ** 2;

export const heldM = (balls: readonly Balls[]): number => sum(balls, (one) => one.balls * one.lengthM);

const spread = ({ cv }: Needed, uneven: number): number => Math.sqrt(cv ** 2 + LOT_CV ** 2 + BALL_CV ** 2 * uneven);

/**
 * The fewest balls alike that are enough this often, with those that are there already.
 * @param ballM what one holds, above 0; @param sure at least a half, under 1; @param have not enough alone
 */
export function leastBalls(
  need: Needed,
  ballM: number,
  sure = ENOUGH,
  have: readonly Balls[] = [],
): { balls: number; chance: number } {
  const chanceOf = (balls: number): number => chanceEnough(need, [...have, { balls, lengthM: ballM }]);
  let balls = Math.max(1, Math.ceil((toHoldM(need, sure, 0) - heldM(have)) / ballM));
  while (chanceOf(balls) < sure) balls += 1;
  return { balls, chance: chanceOf(balls) };
}
