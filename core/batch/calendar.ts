/** A day as a count of days from 1 January 1970, a Thursday, in the calendar of whoever works. */
export type Day = number;

/**
 * Time as clocks on the wall show it: seconds from the start of day 0, with 86,400 to every day. Where the clocks change
 * that is not the time that passes, and a due date does not move for it.
 */
export type WallS = number;

export const DAY_S = 86_400;
const HOUR_S = 3600;

/** A stretch of work within a day, in seconds of the day. */
export type Span = { fromS: number; toS: number };

/** When somebody works: the spans of each weekday, Monday first, in order and apart, and whole days off. */
export type Calendar = { weekly: readonly (readonly Span[])[]; off: readonly Day[] };

export const dayOf = (at: WallS): Day => Math.floor(at / DAY_S);

/** The day on which something is done; at midnight the day that ends. */
export const endDayOf = (at: WallS): Day => dayOf(at - 1);

export const startOf = (day: Day): WallS => day * DAY_S;

/** 0 for a Monday: day 0 was a Thursday. */
export const weekdayOf = (day: Day): number => (((day + 3) % 7) + 7) % 7;

/**
 * A week of so many hours a day, Monday first, where the time of day was not said. Each day counts from its start, so
 * that what one hands to another who is already through with the day waits for their next.
 */
export const hoursADay = (hours: readonly number[], off: readonly Day[] = []): Calendar => ({
  weekly: hours.map((h) => (h > 0 ? [{ fromS: 0, toS: h * HOUR_S }] : [])),
  off,
});

/** Whether somebody works at all. */
export const works = ({ weekly }: Calendar): boolean => weekly.some((spans) => spans.length > 0);

/** The spans of work from a day on, forwards or backwards, in wall time and without end. */
function* spansFrom(calendar: Calendar, day: Day, step: 1 | -1): Generator<{ from: WallS; to: WallS }> {
  if (!works(calendar) || !Number.isInteger(day)) throw new Error(`no work from day ${day}`);
  const off = new Set(calendar.off);
  for (let at = day; ; at += step) {
    if (off.has(at)) continue;
    const spans = calendar.weekly[weekdayOf(at)] ?? [];
    for (const { fromS, toS } of step === 1 ? spans : spans.toReversed()) {
      yield { from: startOf(at) + fromS, to: startOf(at) + toS };
    }
  }
}

/** When work that begins at or after a time, and takes so many seconds of hours worked, is done. */
export function doneAfter(calendar: Calendar, start: WallS, workS: number): WallS {
  let left = workS;
  for (const { from, to } of spansFrom(calendar, dayOf(start), 1)) {
    const begins = Math.max(start, from);
    const room = to - begins;
    if (room <= 0) continue;
    if (left <= room) return begins + left;
    left -= room;
  }
  throw new Error('time ended');
}

/** When work that takes so many seconds of hours worked must begin to be done at a time or before. */
export function beginBefore(calendar: Calendar, end: WallS, workS: number): WallS {
  let left = workS;
  for (const { from, to } of spansFrom(calendar, dayOf(end), -1)) {
    const ends = Math.min(end, to);
    const room = ends - from;
    if (room <= 0) continue;
    if (left <= room) return ends - left;
    left -= room;
  }
  throw new Error('time ended');
}

/** The seconds of work between two times. */
export function workBetween(calendar: Calendar, start: WallS, end: WallS): number {
  let worked = 0;
  for (const { from, to } of spansFrom(calendar, dayOf(start), 1)) {
    if (!(from < end)) return worked;
    worked += Math.max(0, Math.min(to, end) - Math.max(from, start));
  }
  return worked;
}
