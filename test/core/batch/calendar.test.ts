import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  beginBefore,
  dayOf,
  doneAfter,
  endDayOf,
  hoursADay,
  startOf,
  weekdayOf,
  workBetween,
  works,
} from '../../../core/batch/calendar.js';
import { ALWAYS, at, calendar, dayOfDate, EVENINGS, FROM, hours, MONDAY, pace, TWO_DAYS, week } from './samples.js';

test('weekdays are those of the common calendar, before 1970 too', () => {
  for (const iso of ['1969-12-31', '1970-01-01', '2024-02-29', '2026-11-09', '2028-02-29']) {
    const sundayFirst = new Date(`${iso}T00:00:00Z`).getUTCDay();
    expect(weekdayOf(dayOfDate(iso))).toBe((sundayFirst + 6) % 7);
  }
  expect(dayOfDate('2026-11-09')).toBe(MONDAY);
});

describe('work in the evening', () => {
  test('goes on the next evening, and after a weekend on Monday', () => {
    expect(doneAfter(EVENINGS, FROM, hours(1.5))).toBe(at(MONDAY, 19.5));
    expect(doneAfter(EVENINGS, at(MONDAY, 19.5), hours(1.5))).toBe(at(MONDAY + 1, 19));
    expect(doneAfter(EVENINGS, at(MONDAY + 4, 19), hours(2))).toBe(at(MONDAY + 7, 19));
  });

  test('fills an evening to its end, and never begins on the next for nothing', () => {
    expect(doneAfter(EVENINGS, FROM, hours(2))).toBe(at(MONDAY, 20));
  });

  test('leaves out days off', () => {
    const off = { ...EVENINGS, off: [MONDAY, MONDAY + 2] };
    expect(doneAfter(off, FROM, hours(3))).toBe(at(MONDAY + 3, 19));
  });

  test('must begin so much before it is due', () => {
    expect(beginBefore(EVENINGS, at(MONDAY + 4, 24), hours(3))).toBe(at(MONDAY + 3, 19));
    expect(beginBefore(EVENINGS, at(MONDAY + 7, 12), hours(2))).toBe(at(MONDAY + 4, 18));
  });

  test('is 10 hours a week', () => {
    expect(workBetween(EVENINGS, FROM, FROM + startOf(7))).toBe(hours(10));
    expect(workBetween(EVENINGS, at(MONDAY, 19), at(MONDAY + 1, 18.5))).toBe(hours(1.5));
    expect(workBetween(TWO_DAYS, at(MONDAY, 0), at(MONDAY, 24))).toBe(0);
  });
});

test('a break in the day is no work', () => {
  const broken = week({
    0: [
      [9, 10],
      [14, 15],
    ],
  });
  expect(doneAfter(broken, FROM, hours(1.5))).toBe(at(MONDAY, 14.5));
  expect(beginBefore(broken, at(MONDAY, 14.5), hours(1))).toBe(at(MONDAY, 9.5));
});

test('hours a day count from the start of the day', () => {
  const two = hoursADay([2, 0, 2, 0, 0, 0, 3]);
  expect(doneAfter(two, FROM, hours(3))).toBe(at(MONDAY + 2, 1));
  expect(works(hoursADay([0, 0, 0, 0, 0, 0, 0]))).toBe(false);
});

test('what ends at midnight ends on the day before it', () => {
  expect(endDayOf(startOf(8))).toBe(7);
  expect(endDayOf(startOf(8) + 1)).toBe(8);
  expect(dayOf(startOf(8))).toBe(8);
});

test('a calendar without hours is a broken assumption', () => {
  expect(() => doneAfter(hoursADay([]), FROM, 1)).toThrow();
});

test('forwards and backwards undo each other, and the work between is the work done', () => {
  fc.assert(
    fc.property(calendar, pace, fc.integer({ min: 0, max: 20 * 24 }), (hours, workS, hour) => {
      const start = at(MONDAY, hour);
      const done = doneAfter(hours, start, workS);
      expect(workBetween(hours, start, done)).toBe(workS);
      const begin = beginBefore(hours, done, workS);
      expect(begin).toBeGreaterThanOrEqual(start);
      expect(doneAfter(hours, begin, workS)).toBe(done);
    }),
    { seed: 6, numRuns: 400 },
  );
});

test('who never stops is done when the time is over', () => {
  expect(doneAfter(ALWAYS, FROM, hours(30))).toBe(FROM + hours(30));
});
