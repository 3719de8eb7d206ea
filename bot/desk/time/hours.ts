import type { Calendar, Day } from '../../../core/index.js';
import type { DayHours, Hours } from '../../hours.js';

const HOUR_S = 3600;

/**
 * The hours of a maker as core reckons with them; undefined for a maker who said none. A day of so many hours at no
 * time in particular counts from its start.
 */
export const calendarOf = ({ weekly, off }: Hours): Calendar | undefined =>
  weekly && { weekly: weekly.map(spansOf), off: off.flatMap(daysOf) };

const spansOf = (day: DayHours): Calendar['weekly'][number] =>
  'spans' in day ? day.spans : day.hours > 0 ? [{ fromS: 0, toS: day.hours * HOUR_S }] : [];

const daysOf = ({ from, to }: Hours['off'][number]): Day[] => Array.from({ length: to - from + 1 }, (_, i) => from + i);
