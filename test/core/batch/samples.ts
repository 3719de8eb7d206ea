import fc from 'fast-check';
import { type Calendar, DAY_S, type Day, type Span, startOf } from '../../../core/batch/calendar.js';
import type { Maker } from '../../../core/batch/shares.js';

/** A Monday: 9 November 2026. */
export const MONDAY: Day = 20_766;
export const FROM = startOf(MONDAY);

export const hours = (h: number): number => h * 3600;
export const at = (day: Day, hour: number): number => startOf(day) + hours(hour);

const span = (from: number, to: number): Span => ({ fromS: hours(from), toS: hours(to) });

/** Spans by weekday, Monday 0. */
export const week = (
  spans: Partial<Record<number, readonly [number, number][]>>,
  off: readonly Day[] = [],
): Calendar => ({
  weekly: Array.from({ length: 7 }, (_, day) => (spans[day] ?? []).map(([from, to]) => span(from, to))),
  off,
});

const evening: [number, number][] = [[18, 20]];
/** Weekdays from six to eight in the evening. */
export const EVENINGS = week({ 0: evening, 1: evening, 2: evening, 3: evening, 4: evening });
/** Tuesday mornings and most of Saturday. */
export const TWO_DAYS = week({ 1: [[9, 13]], 5: [[9, 15]] });
/** Work that never stops. */
export const ALWAYS = week(Object.fromEntries(Array.from({ length: 7 }, (_, day) => [day, [[0, 24]]])));

export const A: Maker = { id: 'a', paceS: hours(1.5), calendar: EVENINGS };
export const B: Maker = { id: 'b', paceS: hours(2), calendar: TWO_DAYS };

/** A week with holes in it, and days off. */
export const calendar: fc.Arbitrary<Calendar> = fc
  .record({
    weekly: fc.array(
      fc
        .uniqueArray(fc.integer({ min: 0, max: 24 }), { maxLength: 4 })
        .map((ends) => ends.toSorted((a, b) => a - b))
        .map((ends) =>
          Array.from({ length: Math.floor(ends.length / 2) }, (_, i) => span(ends[2 * i] ?? 0, ends[2 * i + 1] ?? 0)),
        ),
      { minLength: 7, maxLength: 7 },
    ),
    off: fc.array(fc.integer({ min: MONDAY, max: MONDAY + 20 }), { maxLength: 5 }),
  })
  .filter(({ weekly }) => weekly.some((spans) => spans.length > 0));

/** Seconds of work for a piece, in whole minutes. */
export const pace = fc.integer({ min: 10, max: 600 }).map((minutes) => 60 * minutes);

export const maker: fc.Arbitrary<Maker> = fc.record({ id: fc.constant('m'), paceS: pace, calendar });

/** Every way to deal `n` pieces to so many makers. */
export function dealings(n: number, makers: number): number[][] {
  if (makers === 1) return [[n]];
  return Array.from({ length: n + 1 }, (_, own) => dealings(n - own, makers - 1).map((rest) => [own, ...rest])).flat();
}

/** Every order of some things. */
export const orders = <T>(things: readonly T[]): T[][] =>
  things.length === 0 ? [[]] : things.flatMap((one, i) => orders(things.toSpliced(i, 1)).map((rest) => [one, ...rest]));

/** Which weekday a date is on, and its day, by the calendar of the machine that runs the test. */
export const dayOfDate = (iso: string): Day => Date.parse(`${iso}T00:00:00Z`) / (DAY_S * 1000);
