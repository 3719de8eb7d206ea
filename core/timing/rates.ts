import { type Estimate, estimate, sum } from '../gauge/estimate.js';
import { DRIVERS, type Driver, USUAL_RATES } from './usual-rates.js';

/** Time logged for so many of what a driver counts, both above 0. Logs of one `session` are one look at the clock. */
export type TimeLog = { session: string; driver: Driver; count: number; seconds: number };

/** How long one of each takes, in log seconds, for this maker; and how many times they looked at the clock. */
export type Rates = { of: Readonly<Record<Driver, Estimate>>; sessions: number };

/** One time strays from the maker's own rate by about a quarter, and a maker from the usual by a third. From memory. */
const TAU0 = 0.25;
const MAKERS_CV = 0.35;
const PRIOR = { nu0: 4, tau0: TAU0, k0: TAU0 ** 2 / MAKERS_CV ** 2 };

/** Returns the rates that a maker's logs teach, each from the usual one on. */
export function rates(logs: readonly TimeLog[]): Rates {
  const learned = DRIVERS.map((driver) => [driver, rateOf(driver, logs)] as const);
  return { of: Object.fromEntries(learned) as Rates['of'], sessions: sessionsOf(logs).length };
}

const sessionsOf = (logs: readonly TimeLog[]): string[] => [...new Set(logs.map(({ session }) => session))];

function rateOf(driver: Driver, all: readonly TimeLog[]): Estimate {
  const logs = all.filter((log) => log.driver === driver);
  const observations = sessionsOf(logs).map((session) => {
    const together = logs.filter((log) => log.session === session);
    return { y: Math.log(sum(together, (l) => l.seconds) / sum(together, (l) => l.count)), weight: 1 };
  });
  const found = estimate(observations, { ...PRIOR, m0: Math.log(USUAL_RATES[driver].seconds) });
  if (found === undefined) throw new Error(`no rate for ${driver}`);
  return found;
}
