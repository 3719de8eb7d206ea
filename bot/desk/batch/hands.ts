import { type Calendar, type Day, type Hand, type Plan, type Timing, timing } from '../../../core/index.js';
import type { AnyProblem, BotProblem } from '../../problems.js';
import type { Maker } from '../../store/ports.js';
import type { At } from '../desk.js';
import { calendarOf } from '../time/hours.js';
import { paceOf } from '../time/pace.js';

export type OfBatch = BotProblem & { code: 'of_batch' };

/** Somebody of a batch, ready to be reckoned with. */
export type Handed = { maker: Maker; hand: Hand; timing: Timing; hasLogged: boolean };

/** Days that somebody is away from a batch, from the first to the last. */
type Away = { from: Day; to: Day };

/** What a piece takes a maker, by their own pace and in their own hours; or that they told no hours. */
export async function handOf(
  plan: Plan,
  maker: Maker,
  { store, maker: asking }: Pick<At, 'store' | 'maker'>,
  away: readonly Away[] = [],
): Promise<Handed | OfBatch> {
  const calendar = calendarOf(maker.hours);
  if (calendar === undefined)
    return { code: 'of_batch', problem: { code: 'no_hours', who: maker.id === asking.id ? '' : maker.name } };
  const pace = await paceOf({ store, maker });
  const took = timing(plan.steps, pace);
  const { whole, knit } = took;
  return {
    maker,
    hand: {
      id: maker.id,
      medianS: whole.medianS,
      slowS: whole.hiS,
      knitS: Math.min(knit.medianS, whole.medianS),
      calendar: withAway(calendar, away),
    },
    timing: took,
    hasLogged: pace.sessions > 0,
  };
}

const withAway = ({ weekly, off }: Calendar, away: readonly Away[]): Calendar => ({
  weekly,
  off: [...off, ...away.flatMap(({ from, to }) => Array.from({ length: to - from + 1 }, (_, i) => from + i))],
});

/** True where it is the maker who asks that told no hours. */
export const isOwnHours = (problem: AnyProblem): boolean =>
  problem.code === 'of_batch' && problem.problem.code === 'no_hours' && problem.problem.who === '';
