import { DAY_S, type Day } from '../core/index.js';

const DAY_MS = DAY_S * 1000;
const THURSDAY = 3;

/** 0 for a Monday. */
export const weekdayNumber = (day: Day): number => (((day + THURSDAY) % 7) + 7) % 7;

const inWords = (day: Day, parts: Intl.DateTimeFormatOptions): string =>
  new Intl.DateTimeFormat('en-GB', { ...parts, timeZone: 'UTC' }).format(new Date(day * DAY_MS));

/** `Friday 4 December`; with its year where that is not the one of `today`. */
export function longDay(day: Day, today: Day): string {
  const year = inWords(day, { year: 'numeric' });
  const named = `${inWords(day, { weekday: 'long' })} ${inWords(day, { day: 'numeric', month: 'long' })}`;
  return year === inWords(today, { year: 'numeric' }) ? named : `${named} ${year}`;
}

/** `4 Dec`. */
export const shortDay = (day: Day): string => inWords(day, { day: 'numeric', month: 'short' });

/** `2026-12-04`. */
export const isoDay = (day: Day): string => new Date(day * DAY_MS).toISOString().slice(0, 10);
