import { casual } from 'chrono-node/en';
import { Temporal } from 'temporal-polyfill';
import { WEEKDAY } from './past-words.js';

/** A day without its year is looked for this far back. */
const MOST_DAYS = 184;

/** The last day that words name, today or before; undefined for none within half a year. */
export function pastDay(words: string, today: Temporal.PlainDate): Temporal.PlainDate | undefined {
  const weekday = new RegExp(`^last (${WEEKDAY})$`, 'i').exec(words.trim())?.[1];
  const noon = new Date(today.year, today.month - 1, today.day, 12);
  const found = casual.parse(weekday ?? words, noon)[0]?.start;
  const [year, month, day] = (['year', 'month', 'day'] as const).map((part) => found?.get(part) ?? 0);
  if (found === undefined || !year || !month || !day) return undefined;
  const named = Temporal.PlainDate.from({ year, month, day });
  const isAhead = Temporal.PlainDate.compare(named, today) > (weekday === undefined ? 0 : -1);
  const last =
    !isAhead || found.isCertain('year')
      ? named
      : named.subtract(found.isCertain('month') ? { years: 1 } : { weeks: 1 });
  const daysAgo = last.until(today).days;
  return daysAgo >= 0 && (daysAgo <= MOST_DAYS || found.isCertain('year')) ? last : undefined;
}
