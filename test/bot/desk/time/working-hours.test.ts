import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { AT, codesOf, replyOf, type Talk, talk } from '../../talk.js';

const OWEN = { user: { slackUserId: 'U2', name: 'Owen' }, place: 'dm:D2' };

let t: Talk;
beforeEach(async () => {
  t = await talk();
});
afterEach(() => t.close());

const held = (who?: typeof OWEN) => t.within((s) => s.makers.held(who?.user.slackUserId ?? 'U1', '', AT));
const hours = async (who?: typeof OWEN) => (await held(who)).hours;
const iso = (day: number): string => new Date(day * 86_400_000).toISOString().slice(0, 10);
const off = async () => (await hours()).off.map(({ from, to }) => `${iso(from)} ${iso(to)}`);

describe('hours of work', () => {
  test('are those of the days named, and no work on the others until they are named', async () => {
    await t.say('I work 2 hours on weekdays');
    const day = { hours: 2 };
    const none = { hours: 0 };
    expect((await hours()).weekly).toEqual([day, day, day, day, day, none, none]);
    await t.say('Saturdays 14:00 to 16:00 and 9:00 to 13:00, not on Fridays');
    const saturday = {
      spans: [
        { fromS: 9 * 3600, toS: 13 * 3600 },
        { fromS: 14 * 3600, toS: 16 * 3600 },
      ],
    };
    expect((await hours()).weekly).toEqual([day, day, day, day, none, saturday, none]);
    expect((await t.say('my hours')).card).toMatchObject({
      lead: 'You work 14 h a week',
      body: [
        'Monday to Thursday: 2 h a day.',
        'Friday: no work.',
        'Saturday: 09:00 to 13:00 and 14:00 to 16:00.',
        'Sunday: no work.',
        'Time zone: UTC, where it is 10:00 now.',
      ],
    });
  });

  test('are nobody else’s, and unknown until said', async () => {
    await t.say('2 hours a day');
    expect(await hours(OWEN)).toEqual({ weekly: undefined, off: [] });
    expect((await t.say('my hours', OWEN)).card.lead).toBe('You have not told me your hours');
  });

  test('are taken back and put in again, but not over others said since', async () => {
    await t.say('2 hours on weekdays');
    const before = await hours();
    await t.say('3 h on Saturdays');
    await t.say('undo');
    expect(await hours()).toEqual(before);
    await t.say('put it back');
    await t.say('not on Mondays', { place: 'dm:D9' });
    expect(codesOf(await t.say('undo'))).toEqual(['moved_on']);
  });

  test('have days off as they come next, over a new year as well', async () => {
    await t.say('off from 20 to 27 December');
    await t.say('off from 30 December to 3 January');
    await t.say('off on 5 November');
    expect(await off()).toEqual(['2026-12-20 2026-12-27', '2026-12-30 2027-01-03', '2027-11-05 2027-11-05']);
    await t.say('undo');
    expect(await off()).toEqual(['2026-12-20 2026-12-27', '2026-12-30 2027-01-03']);
  });

  test('have 29 February off in the next leap year', async () => {
    await t.say('off on 29 February');
    expect(await off()).toEqual(['2028-02-29 2028-02-29']);
  });

  test.each([
    ['I work 30 hours on Mondays', 'over_a_day'],
    ['Mondays 20:00 to 25:00', 'over_a_day'],
    ['Mondays 21:00 to 19:00', 'backwards'],
    ['Mondays 9:00 to 13:00 and 12:00 to 15:00', 'overlap'],
    ['off on 30 February', 'no_such_day'],
    ['off on 2026-11-08', 'past'],
    ['off from 24 December 2026 to 20 December 2026', 'past'],
    ['off from 2026-12-01 to 2028-01-01', 'too_long'],
  ])('that cannot be are named, and nothing stored: %s', async (line, why) => {
    expect(replyOf(await t.say(line), 'problem').problems).toMatchObject([{ code: 'bad_hours', why }]);
    expect(await hours()).toEqual({ weekly: undefined, off: [] });
  });

  test('last to midnight at most', async () => {
    await t.say('Mondays 20:00 to midnight');
    expect((await hours()).weekly?.[0]).toEqual({ spans: [{ fromS: 72_000, toS: 86_400 }] });
  });
});

describe('the time zone', () => {
  test('is one that there is, by its proper name; undo brings back the one before', async () => {
    const answer = await t.say('my time zone is europe/vienna');
    expect(answer.card.lead).toBe('Your time zone is Europe/Vienna: it is 11:00 there now');
    expect((await held()).timeZone).toBe('Europe/Vienna');
    await t.say('undo');
    expect((await held()).timeZone).toBe('UTC');
    expect(codesOf(await t.say('my time zone is Europe/Nowhere'))).toEqual(['no_such_zone']);
    expect((await held()).timeZone).toBe('UTC');
  });

  test('says which day is today for days off', async () => {
    const at = Date.parse('2026-12-20T23:30:00Z');
    await t.say('my time zone is Europe/Vienna');
    await t.say('off on 20 December', { at });
    expect(await off()).toEqual(['2027-12-20 2027-12-20']);
  });
});
