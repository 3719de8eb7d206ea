import type { Day } from '../../../core/index.js';
import { dayNumber, dayOf } from './days.js';

/** What calendar and clock show somewhere: the zone by its proper name, the day, the time as `11:05`. */
type Zoned = { zone: string; day: Day; iso: string; clock: string };

/** A moment in ms as it is in a time zone; undefined for a zone there is not. The library is loaded for other zones. */
export async function zoned(now: number, zone: string): Promise<Zoned | undefined> {
  if (zone === 'UTC') {
    const iso = new Date(now).toISOString();
    return { zone, day: dayOf({ now }), iso: iso.slice(0, 10), clock: iso.slice(11, 16) };
  }
  const { Temporal } = await import('temporal-polyfill');
  try {
    const there = Temporal.Instant.fromEpochMilliseconds(now).toZonedDateTimeISO(zone);
    const iso = there.toPlainDate().toString();
    return { zone: there.timeZoneId, day: dayNumber(iso), iso, clock: there.toPlainTime().toString().slice(0, 5) };
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

/** The same for a maker, whose zone was seen to be one when it was stored. */
export async function zonedFor({ now, maker }: { now: number; maker: { timeZone: string } }): Promise<Zoned> {
  const there = await zoned(now, maker.timeZone);
  if (there === undefined) throw new Error(`a maker in ${maker.timeZone}`);
  return there;
}
