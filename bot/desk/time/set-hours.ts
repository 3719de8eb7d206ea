import { type Day, say, type Words } from '../../../core/index.js';
import type { DateAsk, HoursAsk } from '../../asks/bench.js';
import { withStored } from '../../conversation.js';
import type { Effect } from '../../effect.js';
import type { DayHours, Hours, WeekHours } from '../../hours.js';
import type { BotProblem } from '../../problems.js';
import { type Desk, refusal } from '../desk.js';
import { putBack } from '../effects.js';
import { dayNumber } from './days.js';
import { hoursReply } from './show-hours.js';
import { zonedFor } from './zoned.js';

type BadHours = BotProblem & { code: 'bad_hours' };

/** When the maker works: each statement replaces what was known of its days, and nothing else. */
export const setHoursDesk: Desk<'set_hours'> = async ({ hours: asked }, at) => {
  const { iso, day: today } = await zonedFor(at);
  const problems = asked.flatMap((one) => badHours(one) ?? []);
  if (problems.length > 0) return refusal(at, ...problems);
  const before = at.maker.hours;
  const off = asked.flatMap((one) => ('off' in one ? [daysOff(one, iso)] : []));
  const wrong = off.filter((one) => 'code' in one);
  if (wrong.length > 0) return refusal(at, ...wrong);
  const after: Hours = {
    ...(weekly(before.weekly, asked) && { weekly: weekly(before.weekly, asked) }),
    off: [...before.off, ...off.filter((one) => 'from' in one)]
      .filter(({ to }) => to >= today)
      .sort((a, b) => a.from - b.from || a.to - b.to)
      .filter((one, i, all) => i === 0 || one.from !== all[i - 1]?.from || one.to !== all[i - 1]?.to),
  };
  const effect: Effect = { did: 'set_hours', makerId: at.maker.id, before, after };
  await putBack([effect], at.store, at.now);
  const isFirst = before.weekly === undefined && after.weekly !== undefined;
  const named = asked.flatMap((one) => ('days' in one ? one.days : []));
  const assumed: Words[] = isFirst && new Set(named).size < 7 ? [say`no work on the days you did not name`] : [];
  const said = asked.map((one) => one.said).join(', ');
  return {
    reply: await hoursReply('set', { ...at, maker: { ...at.maker, hours: after } }, assumed),
    talk: withStored({ ...at.talk }, said, [effect]),
  };
};

const NO_WORK: DayHours = { hours: 0 };
const FREE_WEEK: WeekHours = [NO_WORK, NO_WORK, NO_WORK, NO_WORK, NO_WORK, NO_WORK, NO_WORK];

/** The week with what was said of its days; undefined where nothing ever was. */
const weekly = (before: WeekHours | undefined, asked: readonly HoursAsk[]): WeekHours | undefined =>
  asked.reduce<WeekHours | undefined>((week, one) => {
    if (!('days' in one)) return week;
    const day: DayHours =
      'spans' in one ? { spans: one.spans.toSorted((a, b) => a.fromS - b.fromS) } : { hours: one.hours };
    return (week ?? FREE_WEEK).map((old, i) => (one.days.includes(i) ? day : old)) as WeekHours;
  }, before);

const DAY_HOURS = 24;
const DAY_S = 86_400;

function badHours(asked: HoursAsk): BadHours | undefined {
  const bad = (why: BadHours['why']): BadHours => ({ code: 'bad_hours', said: asked.said, why });
  if ('hours' in asked) return asked.hours >= 0 && asked.hours <= DAY_HOURS ? undefined : bad('over_a_day');
  if (!('spans' in asked)) return undefined;
  const spans = asked.spans.toSorted((a, b) => a.fromS - b.fromS);
  if (spans.some(({ toS }) => toS > DAY_S)) return bad('over_a_day');
  if (spans.some(({ fromS, toS }) => fromS >= toS)) return bad('backwards');
  return spans.some(({ fromS }, i) => fromS < (spans[i - 1]?.toS ?? 0)) ? bad('overlap') : undefined;
}

const LONGEST_OFF_DAYS = 366;

/** Days off as they come next: `20 to 27 December`, over a new year as well. */
function daysOff({ off, said }: Extract<HoursAsk, { off: unknown }>, today: string): Hours['off'][number] | BadHours {
  const from = dayMeant(off.from, today, off.to.year);
  const to = from === undefined ? undefined : dayMeant(off.to, isoOf(from), undefined);
  if (from === undefined || to === undefined) return { code: 'bad_hours', said, why: 'no_such_day' };
  if (to < dayNumber(today) || from > to) return { code: 'bad_hours', said, why: 'past' };
  return to - from > LONGEST_OFF_DAYS ? { code: 'bad_hours', said, why: 'too_long' } : { from, to };
}

/** The next such day, in the year said where one was; undefined for a day that its month does not have. */
function dayMeant({ day, month, year }: DateAsk, from: string, other: number | undefined): Day | undefined {
  const first = Number(from.slice(0, 4));
  const years =
    year !== undefined ? [year] : other !== undefined ? [other] : [0, 1, 2, 3, 4, 5, 6, 7, 8].map((k) => first + k);
  const days = years.flatMap((one) => {
    const at = new Date(Date.UTC(one, month - 1, day));
    return at.getUTCMonth() === month - 1 && at.getUTCDate() === day ? [dayNumber(at.toISOString().slice(0, 10))] : [];
  });
  return year !== undefined || other !== undefined ? days[0] : days.find((one) => one >= dayNumber(from));
}

const isoOf = (day: Day): string => new Date(day * DAY_S * 1000).toISOString().slice(0, 10);
