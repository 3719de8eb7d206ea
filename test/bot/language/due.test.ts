import { describe, expect, test } from 'vitest';
import { dueReader } from '../../../bot/language/due.js';
import { hasDueCue } from '../../../bot/language/due-cue.js';
import { read } from '../../../bot/language/read.js';
import { PLAIN } from '../../language/reading.js';

/** Monday 9 November 2026, 11 in the morning in Berlin. */
const NOW = Date.parse('2026-11-09T10:00:00Z');
const due = dueReader(NOW, 'Europe/Berlin');

describe('a date after by, due or until is that day; after for, on or before the day before', () => {
  test.each([
    ['by friday', '2026-11-13'],
    ['by fri', '2026-11-13'],
    ['for friday', '2026-11-12'],
    ['before friday', '2026-11-12'],
    ['by next friday', '2026-11-20'],
    ['by 5 december', '2026-12-05'],
    ['by december 5', '2026-12-05'],
    ['by the 5th of december', '2026-12-05'],
    ['due dec 5th', '2026-12-05'],
    ['due: dec 5', '2026-12-05'],
    ['due on friday', '2026-11-13'],
    ['on 5 dec', '2026-12-04'],
    ['until tomorrow', '2026-11-10'],
    ['for tomorrow', '2026-11-09'],
    ['by 2026-12-05', '2026-12-05'],
    ['by the end of the month', '2026-11-30'],
    ['by the weekend', '2026-11-14'],
    ['for the market on 5 december', '2026-12-04'],
    ['by 1 march', '2027-03-01'],
    ['for today', '2026-11-09'],
    ['on the 48 by friday', '2026-11-13'],
    ['by friday 12 pouches', '2026-11-13'],
    ['by dec 5 12 of them', '2026-12-05'],
    ['for the winter market on dec 12', '2026-12-11'],
    ['for our craft fair saturday', '2026-11-13'],
    ['by christmas', '2026-12-25'],
    ['for christmas', '2026-12-24'],
    ['by xmas eve', '2026-12-24'],
    ['by boxing day', '2026-12-26'],
    ['by New Year’s Eve', '2026-12-31'],
    ['by new year', '2027-01-01'],
    ['by valentine', '2027-02-14'],
    ['by Halloween', '2027-10-31'],
  ])('"%s" is %s', (words, day) => {
    const text = `pouch 11 in wide ${words}`;
    expect(hasDueCue(text)).toBe(true);
    const found = due(text);
    expect(found).toMatchObject({ day });
    expect(text.slice(found?.start, found?.end)).toBe(found?.said);
  });
});

describe('no date is read', () => {
  test.each([
    'pouch 11 in by 6 3/4 in',
    'pouch 11 by 10.5 in',
    'pouch 11 in by 3/4 in',
    'pouch 11" by 6/8',
    'pouch for a 9 in zip',
    'pouch 11 in wide on the 48',
    '12 pouches for 12 makers',
    '110 rows by hand',
  ])('from "%s"', (text) => {
    expect(due(text)).toBeUndefined();
  });
});

test('an event names its own day beside the day to be ready by', () => {
  expect(due('for saturday')).toMatchObject({ day: '2026-11-13', event: '2026-11-14' });
  expect(due('by saturday')).not.toHaveProperty('event');
});

describe('a day that its month does not have is named with the reason', () => {
  test.each([
    ['for 31 november', '31 November (it has 30 days)'],
    ['by nov 31st', '31 November (it has 30 days)'],
    ['by the 30th of february', '30 February (it has 28 days)'],
    ['by 29 feb', '29 February (it has 28 days)'],
    ['by 31 sept 2027', '31 September (it has 30 days)'],
    ['by 2026-04-31', '31 April (it has 30 days)'],
  ])('%s: %s', (words, unusable) => {
    const text = `pouch 11 in wide ${words}`;
    expect(hasDueCue(text)).toBe(true);
    const { meanings, trace } = read(text, { ...PLAIN, due });
    expect(meanings).toMatchObject([{ kind: 'plan', ask: { values: { width: { mm: 279.4 } }, due: undefined } }]);
    expect(trace.leftover).toEqual([unusable]);
  });

  test('in a leap year February has 29', () => {
    expect(due('by 29 february 2028')).toMatchObject({ day: '2028-02-29' });
  });
});

test('a text of many cues is read in sane time', () => {
  const began = performance.now();
  expect(due('for 12 cats '.repeat(330))).toBeUndefined();
  expect(performance.now() - began).toBeLessThan(1000);
});

test('what day it is depends on the zone of the maker', () => {
  const late = Date.parse('2026-11-09T23:30:00Z');
  expect(dueReader(late, 'Europe/Berlin')('by tomorrow')).toMatchObject({ day: '2026-11-11' });
  expect(dueReader(late, 'America/New_York')('by tomorrow')).toMatchObject({ day: '2026-11-10' });
});

describe('in a request', () => {
  test.each([
    ['pouch 11 in wide by 5 december', '2026-12-05'],
    ['by 5 december a pouch 11 in wide', '2026-12-05'],
    ['pouch by dec 5, 11 in', '2026-12-05'],
    ['pouch by 5 dec 11 in wide', '2026-12-05'],
  ])('"%s" the numbers of the date are no sizes', (text, day) => {
    const { meanings } = read(text, { ...PLAIN, due });
    expect(meanings).toMatchObject([{ kind: 'plan', ask: { values: { width: { mm: 279.4 } }, due: { day } } }]);
    expect(Object.keys((meanings[0] as { ask: { values: object } }).ask.values)).toEqual(['width']);
  });

  test('a date changes the plan in hand', () => {
    const { meanings } = read('by friday', { ...PLAIN, due, subjectPiece: 'pouch' });
    expect(meanings).toMatchObject([{ kind: 'change', edit: { values: {}, due: { day: '2026-11-13' } } }]);
  });

  test('a day that is over is quoted, not planned for', () => {
    const { meanings, trace } = read('pouch 11 in wide by 11 may 2020', { ...PLAIN, due });
    expect(meanings).toMatchObject([{ kind: 'plan', ask: { due: undefined } }]);
    expect(trace.leftover).toEqual(['by 11 may 2020 (that day is over; name one ahead)']);
  });
});
