import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { AT, codesOf, kindsOf, MEDIUM, replyOf, type Talk, talk } from '../../talk.js';

const MINUTE = 60_000;
const POUCH = 'pouch 11 in wide with an 8 in zip';
const START = AT + 3_600_000;

let path: string;
let t: Talk;
beforeEach(async () => {
  path = join(mkdtempSync(join(tmpdir(), 'clock-')), 'store.sqlite');
  t = await talk(undefined, path);
  for (const line of [MEDIUM, POUCH, 'start']) await t.say(line);
});
afterEach(async () => {
  await t.close();
  rmSync(join(path, '..'), { recursive: true });
});

const at = (minutes: number, line: string) => t.say(line, { at: START + minutes * MINUTE });

const kept = () =>
  t.within(async (s) => {
    const { id } = await s.makers.held('U1', '', AT);
    const times = await s.benchLog.of(id);
    return {
      drivers: times.map(({ driver }) => driver),
      minutes: times.reduce((sum, { seconds }) => sum + seconds / 60, 0),
      cranked: times.find(({ driver }) => driver === 'crank')?.count,
      runs: (await s.clocks.of(id)) !== undefined,
    };
  });

describe('the clock', () => {
  test('logs the rows that the tally moved by while it ran', async () => {
    await at(0, 'start the clock');
    await at(10, 'row 50');
    const answer = await at(12, 'stop the clock');
    expect(replyOf(answer, 'logged').times).toEqual([{ parts: ['knitting'], seconds: expect.closeTo(720, 6) }]);
    expect(await kept()).toMatchObject({ drivers: ['set_up', 'crank'], minutes: expect.closeTo(12, 6), runs: false });
    await at(20, 'start the clock');
    await at(25, 'row 100');
    await at(26, 'pause');
    const { drivers, minutes, cranked } = await kept();
    expect([drivers.slice(2), Math.round(minutes * 1e6) / 1e6]).toEqual([['crank'], 18]);
    expect(cranked).toBeCloseTo((5474 * 50) / 109, 6);
  });

  test('runs on in the store when the bot is restarted', async () => {
    await at(0, 'start the clock');
    await t.close();
    t = await talk(undefined, path);
    expect((await at(30, 'start the clock')).card.lead).toBe('The clock runs already, for 30 min');
    await at(40, 'stop the clock, cranking');
    expect(await kept()).toMatchObject({ drivers: ['crank'], minutes: expect.closeTo(40, 6), runs: false });
  });

  test('asks what the time went to when the tally did not move, and runs until that is said', async () => {
    await at(0, 'start the clock');
    expect(kindsOf(await at(40, 'stop the clock'))).toEqual(['question']);
    expect(await kept()).toMatchObject({ drivers: [], runs: true });
    await at(45, 'rings and closure');
    expect(await kept()).toMatchObject({
      drivers: ['ring', 'pin_closure', 'sew_closure'],
      minutes: expect.closeTo(40, 6),
      runs: false,
    });
  });

  test('is asked about when it ran for more than 8 hours, and what it ran is not stored', async () => {
    await at(0, 'start the clock');
    expect(kindsOf(await at(8 * 60, 'stop the clock'))).toEqual(['question']);
    const asked = await at(9 * 60, 'stop the clock');
    expect(asked.card.lead).toBe('The clock has run 9 h. How long did you work?');
    expect(await kept()).toMatchObject({ drivers: [], runs: true });
    await at(9 * 60 + 1, '50 min');
    await at(9 * 60 + 2, 'all of it');
    expect(await kept()).toMatchObject({ minutes: expect.closeTo(50, 6), runs: false });
  });

  test('is forgotten by a button, with nothing logged; undo sets it going again', async () => {
    await at(0, 'start the clock');
    await at(9 * 60, 'stop the clock');
    await t.press(1);
    expect(await kept()).toMatchObject({ drivers: [], runs: false });
    await at(9 * 60 + 2, 'undo');
    expect(await kept()).toMatchObject({ drivers: [], runs: true });
  });

  test('that ran for less than a minute logs nothing', async () => {
    await at(0, 'start the clock');
    await at(0.5, 'stop the clock');
    expect(await kept()).toMatchObject({ drivers: [], runs: false });
  });

  test('is stopped and logged in one step that undo takes back', async () => {
    await at(0, 'start the clock');
    await at(30, 'stop the clock, cranking');
    await at(31, 'undo');
    expect(await kept()).toMatchObject({ drivers: [], runs: true });
  });

  test('is not turned back over one that was started since in another talk', async () => {
    await at(0, 'start the clock');
    await at(30, 'stop the clock, cranking');
    await t.say('start the clock', { at: START + 40 * MINUTE, place: 'dm:D9' });
    expect(codesOf(await at(41, 'undo'))).toEqual(['moved_on']);
  });

  test('that does not run cannot be stopped', async () => {
    expect(codesOf(await at(0, 'stop the clock'))).toEqual(['no_clock']);
  });
});
