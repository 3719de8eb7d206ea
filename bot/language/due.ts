import type { ParsedComponents } from 'chrono-node';
import { casual } from 'chrono-node/en';
import { Temporal } from 'temporal-polyfill';
import type { DueDate } from './context.js';
import { CUE_WORD, EVENT_PHRASE } from './due-cue.js';
import { type DayFound, feastIn, impossibleIn } from './due-days.js';
import { pastDay } from './past-days.js';
import { PAST_WORDS } from './past-words.js';

const CUE = new RegExp(CUE_WORD + EVENT_PHRASE, 'giu');
const PAST = new RegExp(PAST_WORDS, 'i');

const CUES: Record<string, 'day' | 'ready_before' | 'lot'> = {
  by: 'day',
  due: 'day',
  until: 'day',
  before: 'ready_before',
  for: 'ready_before',
  on: 'ready_before',
  since: 'lot',
};

/** `for 2 year olds`, `for 18 months`: an age, and no event. */
const AGE =
  /^\s*(?:\d+(?:\s*(?:-|–|to)\s*\d+)?|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)[\s-]*(?:(?:years?|yrs?|months?|mths?|mos?)\b|(?:weeks?|wks?)[\s-]+old)/i;

/** A date stands right behind its cue: searching further would cost time and find nothing of use. */
const MOST_CHARACTERS = 60;

/**
 * Reads the first date that follows a cue word. `by`, `due` and `until` mean that day; `for`, `on` and `before` an
 * event, for which the piece is ready the day before, or today for an event today. `on` may also tell when something
 * was measured, as `yesterday` does, and `since` when a lot of yarn came.
 * @param now the instant of the message, in ms; @param zone the maker's time zone, an IANA name
 */
export function dueReader(now: number, zone: string): (text: string) => DueDate | undefined {
  const today = Temporal.Instant.fromEpochMilliseconds(now).toZonedDateTimeISO(zone).toPlainDate();
  return (text) => {
    for (const cue of text.matchAll(CUE)) {
      const from = cue.index + cue[0].length;
      const rest = text.slice(from, from + MOST_CHARACTERS);
      if (AGE.test(rest)) continue;
      const found = impossibleIn(rest, today) ?? feastIn(rest, today) ?? dateIn(rest, today);
      if (found === undefined || isSize(text.slice(0, cue.index), rest.slice(0, found.end).trim())) continue;
      const end = from + found.end;
      const said = text.slice(cue.index, end).replace(/[\s,;.]+$/, '');
      const kind = CUES[cue[1]?.toLowerCase() ?? ''];
      const mayBePast = /^(?:on|since)/i.test(cue[0]);
      const past = mayBePast ? pastDay(rest.slice(0, found.end), today)?.toString() : undefined;
      const words = { said, start: cue.index, end, ...(past !== undefined && { past }) };
      if (kind === 'lot') return { ...words, unusable: said, since: true };
      if ('unusable' in found) return { ...words, unusable: found.unusable };
      const { date } = found;
      if (Temporal.PlainDate.compare(date, today) < 0)
        return { ...words, unusable: past === undefined ? `${said} (that day is over; name one ahead)` : said };
      const isDay = kind === 'day' || date.equals(today);
      if (isDay) return { ...words, day: date.toString() };
      return { ...words, day: date.subtract({ days: 1 }).toString(), event: date.toString() };
    }
    return pastIn(text, today);
  };
}

/** The first day in a text that is over by its own words. */
function pastIn(text: string, today: Temporal.PlainDate): DueDate | undefined {
  const found = PAST.exec(text);
  const past = found === null ? undefined : pastDay(found[0], today);
  if (found === null || past === undefined) return undefined;
  const [said, start] = [found[0], found.index];
  return { said, start, end: start + said.length, unusable: said, past: past.toString() };
}

/** The date that a text begins with. */
function dateIn(text: string, today: Temporal.PlainDate): DayFound | undefined {
  const noon = new Date(today.year, today.month - 1, today.day, 12);
  const first = casual.parse(text, noon, { forwardDate: true })[0];
  const most = first && withoutSize(text, first.index, first.text);
  const found = most === undefined ? first : casual.parse(most, noon, { forwardDate: true })[0];
  if (found === undefined || text.slice(0, found.index).trim() !== '') return undefined;
  return { date: plainDate(found.start), end: found.index + found.text.length };
}

/** `11 by 3/4`: a times sign and a fraction. */
const isSize = (before: string, date: string): boolean =>
  /^\d+\/\d+$/.test(date) && /[\d"”″½¼¾⅛⅜⅝⅞]\s*(?:in|inch|inches|cm|mm)?\s*$/i.test(before);

/** The text up to a number that passes for a year or an hour: `dec 5, 28 cm wide`, `friday 12 pouches`. */
function withoutSize(rest: string, index: number, date: string): string | undefined {
  const tail = /(,?)\s+\d{1,3}$/.exec(date);
  const size =
    /^\s*(?:["”″/.½¼¾⅛⅜⅝⅞]|\d|(?:in|inch|inches|cm|mm|by|x|wide|tall|long|across|of)\b|(?:\p{L}+ )?\p{L}+s\b)/iu;
  const isWhole = /\d\D+\d/.test(date) || /^(?:mon|tue|wed|thu|fri|sat|sun|to)/i.test(date);
  if (tail === null || !isWhole) return undefined;
  const isSize = tail[1] === ',' || size.test(rest.slice(index + date.length));
  return isSize ? rest.slice(0, index + tail.index) : undefined;
}

const plainDate = (parsed: ParsedComponents): Temporal.PlainDate =>
  Temporal.PlainDate.from({
    year: parsed.get('year') ?? 0,
    month: parsed.get('month') ?? 0,
    day: parsed.get('day') ?? 0,
  });
