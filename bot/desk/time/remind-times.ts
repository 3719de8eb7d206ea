import { DAY_S, type Day, dayOf, type Span, startOf } from '../../../core/index.js';
import type { Maker } from '../../store/ports.js';
import { calendarOf } from './hours.js';
import { momentOf, wallOf } from './wall.js';

const HOUR_S = 3600;
/** Where no time of day was said. */
const BY_DAY: Span = { fromS: 9 * HOUR_S, toS: 18 * HOUR_S };
/** So far a next or a last day of work is looked for. */
const FURTHEST_DAYS = 366;

/** When a maker may be reminded on a day, in wall seconds of it: in their hours, by day where these have no times. */
function spansOn(day: Day, { hours }: Maker): readonly Span[] {
  const calendar = calendarOf(hours);
  if (calendar === undefined) return [BY_DAY];
  if (calendar.off.includes(day)) return [];
  const weekday = (((day + 3) % 7) + 7) % 7;
  const said = hours.weekly?.[weekday];
  if (said === undefined) return [BY_DAY];
  return 'spans' in said ? said.spans : said.hours > 0 ? [BY_DAY] : [];
}

/** The moment to remind a maker of a day: at the start of their hours on it, else on the last day before that has any. */
export function remindAt(day: Day, maker: Maker): number {
  for (let at = day; at > day - FURTHEST_DAYS; at--) {
    const [first] = spansOn(at, maker);
    if (first !== undefined) return momentOf(startOf(at) + first.fromS, maker.timeZone);
  }
  return momentOf(startOf(day) + BY_DAY.fromS, maker.timeZone);
}

/** The next moment at which a maker may be reminded: now, where that is in their hours. */
export function nextMoment(now: number, maker: Maker): number {
  const wall = wallOf(now, maker.timeZone);
  const today = dayOf(wall);
  for (let day = today; day < today + FURTHEST_DAYS; day++) {
    for (const { fromS, toS } of spansOn(day, maker)) {
      const [from, to] = [day * DAY_S + fromS, day * DAY_S + toS];
      if (wall < to) return wall >= from ? now : momentOf(from, maker.timeZone);
    }
  }
  return now;
}
