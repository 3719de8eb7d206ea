import { DAY_S, type WallS } from '../../../core/index.js';

const SECOND_MS = 1000;
const DAY_MS = DAY_S * SECOND_MS;

/** What calendar and clocks show in a time zone at a moment in ms, as seconds from the start of 1970. */
export function wallOf(now: number, zone: string): WallS {
  if (zone === 'UTC') return Math.floor(now / SECOND_MS);
  const shown = Object.fromEntries(
    partsIn(zone)
      .formatToParts(now)
      .map(({ type, value }) => [type, Number(value)]),
  );
  const { year = 0, month = 1, day = 1, hour = 0, minute = 0, second = 0 } = shown;
  return Date.UTC(year, month - 1, day, hour, minute, second) / SECOND_MS;
}

/** The moment at which a time zone shows this; one that clocks skip is the moment that they do. */
export function momentOf(wall: WallS, zone: string): number {
  const asUtc = wall * SECOND_MS;
  const offsetAt = (moment: number): number => wallOf(moment, zone) * SECOND_MS - moment;
  const [before, after] = [asUtc - offsetAt(asUtc - DAY_MS), asUtc - offsetAt(asUtc + DAY_MS)];
  return [before, after].find((moment) => wallOf(moment, zone) === wall) ?? Math.max(before, after);
}

const known = new Map<string, Intl.DateTimeFormat>();

/** Making a format takes longer than all else here. */
function partsIn(timeZone: string): Intl.DateTimeFormat {
  const format = known.get(timeZone) ?? new Intl.DateTimeFormat('en-GB', { ...NUMERIC, timeZone });
  known.set(timeZone, format);
  return format;
}

const NUMERIC = {
  year: 'numeric',
  month: 'numeric',
  day: 'numeric',
  hour: 'numeric',
  minute: 'numeric',
  second: 'numeric',
  hourCycle: 'h23',
} as const;
