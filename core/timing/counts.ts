import type { Step } from '../piece.js';
import type { Driver } from './usual-rates.js';

/** What some steps count of each driver, in the order in which it first comes up, and drivers that count nothing yet. */
export type Counts = { known: readonly { driver: Driver; count: number }[]; unknown: readonly Driver[] };

/**
 * Adds up what steps count. A step that counts 0 is one whose count waits for something not known yet, such as the
 * needles of the machine: its driver is named, since what is known of it is not the whole. One without a driver
 * counts nothing.
 */
export function countsOf(steps: readonly Pick<Step, 'driver' | 'count' | 'times'>[]): Counts {
  const counts = new Map<Driver, number>();
  const unknown = new Set<Driver>();
  for (const { driver, count, times = 1 } of steps) {
    if (driver === undefined) continue;
    counts.set(driver, (counts.get(driver) ?? 0) + times * count);
    if (count === 0) unknown.add(driver);
  }
  const known = [...counts].map(([driver, count]) => ({ driver, count })).filter(({ count }) => count > 0);
  return { known, unknown: [...unknown] };
}
