import type { DateAsk, HoursAsk } from '../asks/bench.js';
import type { Request } from '../request.js';
import { DURATION, numberOf, secondsOf } from './durations.js';
import { MONTHS } from './vocabulary.js';

const DAYS = [
  'mon(?:day)?',
  'tue(?:s(?:day)?)?',
  'wed(?:nesday)?',
  'thu(?:rs(?:day)?)?',
  'fri(?:day)?',
  'sat(?:urday)?',
  'sun(?:day)?',
];
const DAY = `(?:${DAYS.join('|')})s?`;
const TO = '(?:to|until|till|through|and|[-–—])';
const DAY_RANGE = `${DAY}\\s*(?:to|through|until|[-–—])\\s*${DAY}|${DAY}`;
const EVERY_DAY = '(?:every|each|a|per)\\s+day|daily|all\\s+week|(?:all\\s+)?seven\\s+days(?:\\s+a\\s+week)?';
const WEEKDAYS = '(?:every\\s+)?(?:week\\s?days?|working\\s+days?)';
const WEEKEND = '(?:the\\s+)?week\\s?ends?';
const WHEN = `(?:${EVERY_DAY}|${WEEKDAYS}|${WEEKEND}|(?:every\\s+)?(?:${DAY_RANGE})(?:(?:\\s*,\\s*|\\s*(?:&|and|or)\\s+)(?:on\\s+)?(?:${DAY_RANGE}|${WEEKEND}))*)`;

const TIME = '(?:\\d{1,2}(?:[:.]\\d\\d)?(?:\\s*[ap]\\.?m\\.?)?|noon|midnight)';
const SPAN = `(?:from\\s+|between\\s+)?${TIME}\\s*${TO}\\s*${TIME}`;
const SPANS = `${SPAN}(?:(?:\\s*,\\s*|\\s+and\\s+)(?:again\\s+)?${SPAN})*`;
const MUCH = `(?:${SPANS}|${DURATION}|\\d+(?:[.,]\\d+)?)`;

const MONTH = `(?:${MONTHS.join('|')})\\.?`;
const DATE = `(?:the\\s+)?(?:\\d{4}-\\d\\d?-\\d\\d?|\\d{1,2}(?:st|nd|rd|th)?(?:\\s+(?:of\\s+)?${MONTH})?(?:,?\\s+20\\d\\d)?|${MONTH}\\s+\\d{1,2}(?:st|nd|rd|th)?(?:,?\\s+20\\d\\d)?)`;

const I_WORK = `(?:(?:i|we)\\s+(?:(?:can|usually|only|mostly|also)\\s+)*(?:work|knit|crank|have)|(?:my|the)\\s+(?:working\\s+)?hours(?:\\s+are)?|(?:working\\s+)?hours)\\s*:?\\s*`;
const FREE = `(?:(?:i\\s+)?(?:do\\s+not|don'?t|never|cannot|can'?t)(?:\\s+(?:work|knit))?|not|no(?:t\\s+any)?(?:\\s+work)?|nothing|off|free)`;
const AWAY = `(?:i'?\\s?a?m\\s+|i\\s+am\\s+)?(?:(?:off|away|on\\s+holiday|on\\s+leave|closed|not\\s+working|not\\s+there)|(?:holidays?|days?\\s+off))`;

/** One statement; those of a message stand apart by commas, full stops and `and`. */
const FORMS = [
  `(?:${AWAY})\\s*:?\\s*(?:(?:on|from|between)\\s+)?(?<from>${DATE})(?:\\s*${TO}\\s*(?:the\\s+)?(?<to>${DATE}))?`,
  `(?:${FREE})\\s+(?:(?:on|at)\\s+)?(?<never>${WHEN})`,
  `(?<free>${WHEN})\\s*:?\\s+(?:(?:are|is)\\s+)?(?:off|free|none|no\\s+work)`,
  `(?:${I_WORK})?(?<first>${MUCH})\\s*(?:(?:on|at|over|in)\\s+)?(?<on>${WHEN})`,
  `(?:${I_WORK})?(?:(?:on|at)\\s+)?(?<each>${WHEN})\\s*[:,]?\\s*(?:for\\s+)?(?<then>${MUCH})`,
].map((form) => new RegExp(`^${form}(?:\\s+(?:please|only))?(?=\\s*(?:$|[,;.\\n]|and\\b|but\\b|${DAY}\\b))`, 'iu'));

const JOINT = /^(?:[\s,;.\n]|and\b|but\b)+/iu;

/** All that a message says of when its maker works; undefined for a message that says anything else. */
function hoursIn(text: string): Extract<Request, { kind: 'set_hours' }> | undefined {
  const hours: HoursAsk[] = [];
  let rest = inHalves(text.trim().replace(/[\s.!]+$/, ''));
  while (rest !== '') {
    const found = FORMS.map((form) => form.exec(rest)).find((match) => match !== null);
    if (found === undefined || found === null) return undefined;
    const said = hoursSaid(found);
    if (said === undefined) return undefined;
    hours.push(said);
    rest = rest.slice(found[0].length).replace(JOINT, '');
  }
  return hours.length === 0 ? undefined : { kind: 'set_hours', hours };
}

/** `7 in the evening` is 7 pm. */
const inHalves = (text: string): string =>
  text.replace(/(?<=\d)\s+in\s+the\s+(morning|afternoon|evening)\b/giu, (_, part: string) =>
    /^m/i.test(part) ? 'am' : 'pm',
  );

function hoursSaid({ 0: words, groups = {} }: RegExpExecArray): HoursAsk | undefined {
  const { from, to, never, free, first, on, each, then } = groups;
  const said = words.trim();
  if (from !== undefined) {
    const last = dateOf(to ?? from);
    const start = dateOf(from, last);
    return start === undefined || last === undefined ? undefined : { off: { from: start, to: last }, said };
  }
  const none = never ?? free;
  if (none !== undefined) return { days: daysOf(none), hours: 0, said };
  const [much, days] = [first ?? then ?? '', daysOf(on ?? each ?? '')];
  const spans = [...much.matchAll(new RegExp(SPAN, 'giu'))].map(([span]) => spanOf(span));
  if (spans.length > 0) return { days, spans, said };
  const isBare = /^\d+(?:[.,]\d+)?$/.test(much.trim());
  return { days, hours: isBare ? numberOf(much) : secondsOf(much) / 3600, said };
}

/** Weekdays that words name, 0 for a Monday. */
function daysOf(words: string): number[] {
  const text = words.toLowerCase();
  if (new RegExp(`^(?:${EVERY_DAY})$`, 'i').test(text)) return [0, 1, 2, 3, 4, 5, 6];
  const ranges = [...text.matchAll(new RegExp(`week\\s?ends?|week\\s?days?|working\\s+days?|${DAY_RANGE}`, 'giu'))];
  const days = ranges.flatMap(([range]) => {
    if (/end/.test(range)) return [5, 6];
    if (/week|working/.test(range)) return [0, 1, 2, 3, 4];
    const [a, b] = [...range.matchAll(new RegExp(DAY, 'giu'))].map(([day]) => dayIndex(day));
    if (a === undefined) return [];
    const length = b === undefined ? 1 : ((b - a + 7) % 7) + 1;
    return Array.from({ length }, (_, i) => (a + i) % 7);
  });
  return [...new Set(days)].sort((a, b) => a - b);
}

const dayIndex = (word: string): number => DAYS.findIndex((day) => new RegExp(`^${day}s?$`, 'i').test(word));

/** `7-9pm` are both of the evening. */
function spanOf(words: string): { fromS: number; toS: number } {
  const [from = '', to = ''] = [...words.matchAll(new RegExp(TIME, 'giu'))].map(([time]) => time);
  const half = /[ap](?=\.?m)/i.exec(to)?.[0];
  const isBoth = half !== undefined && !/[ap]\.?m|noon|midnight/i.test(from);
  const [first, last] = [clockS(from, false), clockS(to, true)];
  const shifted = isBoth ? clockS(`${from}${half}m`, false) : first;
  return { fromS: isBoth && shifted < last ? shifted : first, toS: last };
}

/** Seconds of the day that a time stands for. */
function clockS(time: string, isEnd: boolean): number {
  if (/noon/i.test(time)) return 12 * 3600;
  if (/midnight/i.test(time)) return isEnd ? 24 * 3600 : 0;
  const [, hour = '', minute = '0', half] = /^(\d+)(?:[:.](\d\d))?\s*([ap])?/i.exec(time) ?? [];
  const hours = half === undefined ? Number(hour) : (Number(hour) % 12) + (half.toLowerCase() === 'p' ? 12 : 0);
  return hours * 3600 + Number(minute) * 60;
}

/** A date; a day alone takes the month of the one that follows it. Undefined where no month is said. */
function dateOf(words: string, other?: DateAsk): DateAsk | undefined {
  const said = words.trim();
  const iso = /^(?:the\s+)?(\d{4})-(\d\d?)-(\d\d?)$/.exec(said);
  if (iso !== null) return { year: Number(iso[1]), month: Number(iso[2]), day: Number(iso[3]), said };
  const year = /\b20\d\d\b/.exec(said)?.[0];
  const name = new RegExp(MONTH, 'i').exec(said)?.[0].toLowerCase().slice(0, 3);
  const day = Number(/\d{1,2}/.exec(said)?.[0]);
  const month = name === undefined ? other?.month : NAMES.indexOf(name) + 1;
  const own = year === undefined ? other?.year : Number(year);
  return month === undefined ? undefined : { day, month, ...(own !== undefined && { year: own }), said };
}

const NAMES = MONTHS.slice(0, 12).map((name) => name.slice(0, 3));

const MY_HOURS =
  /^(?:(?:show |list |what are )?(?:me )?(?:my |the )?(?:working |work )?hours(?: of work)?|when do i work|(?:my |the )?days off|what are my days off|my calendar)\s*\??$/i;
/** Hours that cannot be read are none, rather than sizes. */
const TOLD = /^(?:i (?:(?:can|usually|only|mostly) )*work|(?:my|the) (?:working )?hours(?: are|:))\b.*\d/is;
const ZONE =
  /^(?:(?:my |the )?time ?zone(?: is| to|:)?|(?:set|change) (?:my |the )?time ?zone to|i(?:'m| am) in)\s*:?\s*(?<zone>[a-z_]+(?:\/[a-z_+\-\d]+)+|utc|gmt)[.!]?$/i;

/** A message that is about the maker's hours as a whole: what they are, how they change, in which zone they are. */
export function ofHours(text: string): Request | undefined {
  if (MY_HOURS.test(text)) return { kind: 'show_hours' };
  const zone = ZONE.exec(text)?.groups?.zone;
  if (zone !== undefined) return { kind: 'set_time_zone', zone };
  return hoursIn(text) ?? (TOLD.test(text) ? { kind: 'unread', why: 'hours', words: text } : undefined);
}
