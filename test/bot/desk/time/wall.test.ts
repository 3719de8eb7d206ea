import { describe, expect, test } from 'vitest';
import { nextMoment, remindAt } from '../../../../bot/desk/time/remind-times.js';
import { momentOf, wallOf } from '../../../../bot/desk/time/wall.js';
import type { Maker } from '../../../../bot/store/ports.js';

const at = (iso: string): number => Date.parse(iso);
const wall = (iso: string): number => Date.parse(`${iso}Z`) / 1000;
const dayOf = (iso: string): number => Date.parse(iso) / 86_400_000;

describe('wall time', () => {
  test.each([
    ['2026-11-09T10:00:00Z', 'Europe/Vienna', '2026-11-09T11:00:00'],
    ['2026-07-01T23:30:00Z', 'Europe/Vienna', '2026-07-02T01:30:00'],
    ['2028-02-29T12:00:00Z', 'America/New_York', '2028-02-29T07:00:00'],
    ['2026-03-29T01:00:00Z', 'Europe/Vienna', '2026-03-29T03:00:00'],
  ])('%s in %s is %s, and back', (moment, zone, shown) => {
    expect(wallOf(at(moment), zone)).toBe(wall(shown));
    expect(momentOf(wall(shown), zone)).toBe(at(moment));
  });

  test('of a time that clocks skip is the moment after they do', () => {
    expect(momentOf(wall('2026-03-29T02:30:00'), 'Europe/Vienna')).toBe(at('2026-03-29T01:30:00Z'));
  });
});

describe('a reminder', () => {
  const none = { hours: 0 };
  const evening = { spans: [{ fromS: 68_400, toS: 75_600 }] };
  const maker: Maker = {
    id: 'm1',
    slackUserId: 'U1',
    name: 'Nadia',
    units: undefined,
    timeZone: 'Europe/Vienna',
    hours: { weekly: [evening, evening, evening, evening, { hours: 2 }, none, none], off: [] },
    currency: undefined,
  };

  test('comes at the start of the hours of its day, in the zone of its maker, in summer as in winter', () => {
    expect(remindAt(dayOf('2026-11-09'), maker)).toBe(at('2026-11-09T18:00:00Z'));
    expect(remindAt(dayOf('2026-07-06'), maker)).toBe(at('2026-07-06T17:00:00Z'));
  });

  test('comes by day where the hours have no times, and on the last day of work before a free one', () => {
    expect(remindAt(dayOf('2026-11-13'), maker)).toBe(at('2026-11-13T08:00:00Z'));
    expect(remindAt(dayOf('2026-11-15'), maker)).toBe(at('2026-11-13T08:00:00Z'));
  });

  test('waits outside the hours for the next start of them', () => {
    expect(nextMoment(at('2026-11-09T18:30:00Z'), maker)).toBe(at('2026-11-09T18:30:00Z'));
    expect(nextMoment(at('2026-11-09T20:30:00Z'), maker)).toBe(at('2026-11-10T18:00:00Z'));
    expect(nextMoment(at('2026-11-14T10:00:00Z'), maker)).toBe(at('2026-11-16T18:00:00Z'));
  });
});
