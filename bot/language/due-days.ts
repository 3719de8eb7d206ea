import { Temporal } from 'temporal-polyfill';

/** A day found at the start of a text, and where its words end. */
export type DayFound = { end: number } & ({ date: Temporal.PlainDate } | { unusable: string });

const NO_DAY = '(?!\\s+(?:market|fair|show|stall|sale|bazaar|party|gift|present|stocking|craft|tree)s?\\b)';
/** Feasts with a day of their own, longer names first. */
const FEASTS: readonly [name: string, month: number, day: number][] = [
  ['(?:christmas|xmas) eve', 12, 24],
  ['(?:christmas|xmas)(?: day)?', 12, 25],
  ['boxing day', 12, 26],
  ["new year['’]?s eve", 12, 31],
  ["new year(?:['’]?s)?(?: day)?", 1, 1],
  ["(?:st\\.? )?valentine(?:['’]?s)?(?: day)?", 2, 14],
  ["hallowe['’]?en", 10, 31],
];

/** The next day of a feast named at the start: `Christmas`, `New Year's Eve`. */
export function feastIn(text: string, today: Temporal.PlainDate): DayFound | undefined {
  for (const [name, month, day] of FEASTS) {
    const found = new RegExp(`^\\s*${name}\\b${NO_DAY}`, 'i').exec(text);
    if (found !== null) return { end: found[0].length, date: nextOf(month, day, today) };
  }
  return undefined;
}

function nextOf(month: number, day: number, today: Temporal.PlainDate): Temporal.PlainDate {
  const date = Temporal.PlainDate.from({ year: today.year, month, day });
  return Temporal.PlainDate.compare(date, today) < 0 ? date.add({ years: 1 }) : date;
}

const MONTHS = 'january february march april may june july august september october november december'.split(' ');
const MONTH = `(?<month>${MONTHS.map((name) => `${name.slice(0, 3)}(?:${name.slice(3)})?`).join('|')}|sept)\\b\\.?`;
const DAY = '(?<day>\\d{1,2})(?:st|nd|rd|th)?';
const YEAR = '(?:,?\\s+(?<year>\\d{4})\\b)?';
const DATES = [
  new RegExp(`^\\s*${DAY}\\s+(?:of\\s+)?${MONTH}${YEAR}`, 'i'),
  new RegExp(`^\\s*${MONTH}\\s+${DAY}\\b${YEAR}`, 'i'),
  /^\s*(?<year>\d{4})-(?<number>\d\d)-(?<day>\d\d)\b/,
];
const LONGEST_MONTH = 31;

/** A day that its month does not have, at the start, with the reason: `31 November (it has 30 days)`. */
export function impossibleIn(text: string, today: Temporal.PlainDate): DayFound | undefined {
  for (const form of DATES) {
    const match = form.exec(text);
    const groups = match?.groups;
    if (match === null || groups === undefined) continue;
    const [day, year] = [Number(groups.day), Number(groups.year ?? yearOf(Number(groups.day), groups, today))];
    const month = Temporal.PlainYearMonth.from({ year, month: monthOf(groups) }, { overflow: 'constrain' });
    if (day <= month.daysInMonth || day > LONGEST_MONTH) continue;
    const name = (MONTHS[month.month - 1] ?? '').replace(/^./, (letter) => letter.toUpperCase());
    return { end: match[0].length, unusable: `${day} ${name} (it has ${month.daysInMonth} days)` };
  }
  return undefined;
}

type Groups = Record<string, string | undefined>;

const monthOf = ({ month, number }: Groups): number =>
  number === undefined
    ? MONTHS.findIndex((name) => name.startsWith(month?.toLowerCase().slice(0, 3) ?? '-')) + 1
    : Number(number);

/** The year in which a day without one comes next. */
const yearOf = (day: number, groups: Groups, today: Temporal.PlainDate): number =>
  monthOf(groups) * 100 + day < today.month * 100 + today.day ? today.year + 1 : today.year;
