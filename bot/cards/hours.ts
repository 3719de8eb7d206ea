import type { Printing } from '../../core/index.js';
import { durationText } from '../desk/time/durations.js';
import type { DayHours, Hours } from '../hours.js';
import type { ReplyOf } from '../reply.js';
import { assumedFact } from './assumed.js';
import { type Card, plainCard } from './card.js';
import { dayInWords } from './names.js';

const DAYS = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'];
const HOUR_S = 3600;

/** When a maker works: the week, the days off, the zone. */
export function hoursCard(reply: ReplyOf<'hours'>, printing: Printing): Card {
  const { became, hours, timeZone, clock, assumed, offers } = reply;
  const zone = `Time zone: ${timeZone}, where it is ${clock} now.`;
  const off = hours.off.map(offText);
  const week = weekLines(hours);
  return plainCard(leadOf(reply), {
    kept: became === 'shown',
    body: [...week, ...(off.length === 0 ? [] : [`Off: ${off.join('; ')}.`]), ...(became === 'zone' ? [] : [zone])],
    facts: assumedFact(assumed, printing),
    offers,
    foot: ['Your hours are yours; those who make a batch with you see when you work on it.'],
    sayings: [
      ...(hours.weekly === undefined ? ['2 hours on weekdays', 'Mon to Fri 19:00 to 21:00'] : ['3 h on Saturdays']),
      'not on Sundays',
      'off from 20 to 27 December',
      ...(timeZone === 'UTC' ? ['my time zone is Europe/Vienna'] : []),
    ],
  });
}

function leadOf({ became, hours, timeZone, clock }: ReplyOf<'hours'>): string {
  if (became === 'zone') return `Your time zone is ${timeZone}: it is ${clock} there now`;
  if (hours.weekly === undefined)
    return became === 'set' ? 'Kept; I do not know your hours yet' : 'You have not told me your hours';
  const week = weekText(hours);
  return week === NO_WORK ? 'You work on no day of the week' : `You work ${week}`;
}

const NO_WORK = 'no work';

/** All of a week: `12 h a week`; undefined until it was told. */
export function weekText({ weekly }: Hours): string | undefined {
  const seconds = weekly?.reduce((sum, day) => sum + secondsOf(day), 0);
  if (seconds === undefined) return undefined;
  return seconds === 0 ? NO_WORK : `${durationText(seconds)} a week`;
}

const secondsOf = (day: DayHours): number =>
  'spans' in day ? day.spans.reduce((sum, { fromS, toS }) => sum + toS - fromS, 0) : day.hours * HOUR_S;

/** Days alike and next to one another in a line. */
function weekLines({ weekly }: Hours): string[] {
  const runs: { from: number; to: number; text: string }[] = [];
  for (const [i, day] of (weekly ?? []).entries()) {
    const text = dayText(day);
    const run = runs.at(-1);
    if (run?.text === text) run.to = i;
    else runs.push({ from: i, to: i, text });
  }
  return runs.map(({ from, to, text }) => {
    const days = from === to ? DAYS[from] : `${DAYS[from]} ${to === from + 1 ? 'and' : 'to'} ${DAYS[to]}`;
    return `${days}: ${text}${from === to || text === NO_WORK ? '' : ' a day'}.`;
  });
}

const dayText = (day: DayHours): string => {
  if (secondsOf(day) === 0) return NO_WORK;
  if (!('spans' in day)) return durationText(day.hours * HOUR_S);
  return day.spans.map(({ fromS, toS }) => `${clockText(fromS)} to ${clockText(toS)}`).join(' and ');
};

const clockText = (seconds: number): string =>
  `${String(Math.floor(seconds / HOUR_S)).padStart(2, '0')}:${String(Math.round((seconds % HOUR_S) / 60)).padStart(2, '0')}`;

const offText = ({ from, to }: Hours['off'][number]): string =>
  from === to ? dayInWords(from) : `${dayInWords(from)} to ${dayInWords(to)}`;
