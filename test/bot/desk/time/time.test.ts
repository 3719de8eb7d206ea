import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { plainText } from '../../../../bot/cards/plain-text.js';
import { type Driver, divided, rates, type TimeLog, timing } from '../../../../core/index.js';
import { AT, CHANNEL, codesOf, kindsOf, MEDIUM, replyOf, type Talk, talk } from '../../talk.js';

/** 46 needles, 109 rows and the graft, two rings and a closure of 8 in. */
const POUCH = 'pouch 11 in wide with an 8 in zip';
const OWEN = { user: { slackUserId: 'U2', name: 'Owen' }, place: 'dm:D2' };

let t: Talk;
beforeEach(async () => {
  t = await talk();
});
afterEach(() => t.close());

const said = (...lines: string[]) => t.sayAll(...lines);

/** What is in a maker's log, each step in whole seconds. */
const log = (who?: typeof OWEN): Promise<Partial<Record<Driver, number>>[]> =>
  t.within(async (s) => {
    const maker = await s.makers.held(who?.user.slackUserId ?? 'U1', '', AT);
    const times = await s.benchLog.of(maker.id);
    const sessions = [...new Set(times.map(({ session }) => session))];
    return sessions.map((session) =>
      Object.fromEntries(
        times.filter((time) => time.session === session).map(({ driver, seconds }) => [driver, Math.round(seconds)]),
      ),
    );
  });
const total = (times: Partial<Record<Driver, number>> | undefined): number =>
  Object.values(times ?? {}).reduce((sum, seconds) => sum + seconds, 0);

/** The steps of the plan that was answered last, as core counts them. */
const stepsOf = async (line: string) => replyOf(await t.say(line), 'plan').plan.steps;

describe('a time in words', () => {
  test('is divided over its steps as core divides it, and teaches the rates that core learns from it', async () => {
    await said(MEDIUM);
    const steps = await stepsOf(POUCH);
    await said('knit 30 min, seaming and zip an hour');
    const known = timing(steps, rates([])).lines;
    const atMachine = known.filter(({ stage }) => stage === 'knit');
    const sewn = known.filter(({ driver }) => ['mattress', 'pin_closure', 'sew_closure'].includes(driver));
    const share = (lines: typeof known, seconds: number): TimeLog[] => {
      const logs = divided(seconds, lines, rates([]), { session: 's' });
      if (!logs.ok) throw new Error('core divides it');
      return logs.value;
    };
    const expected = [...share(atMachine, 1800), ...share(sewn, 3600)];
    expect(await log()).toEqual([
      Object.fromEntries(expected.map(({ driver, seconds }) => [driver, Math.round(seconds)])),
    ]);
    const { time } = replyOf(await t.say('how long will it take'), 'time');
    expect(time.timing.whole.medianS).toBeCloseTo(timing(steps, rates(expected)).whole.medianS, 6);
  });

  test('says how the estimate moved', async () => {
    await said(MEDIUM, POUCH);
    const reply = replyOf(await t.say('took 3 hours'), 'logged');
    const before = replyOf(await t.say('how long will it take'), 'time').time.timing.whole;
    expect(reply.now).toEqual(before);
    expect(reply.now.medianS).toBeGreaterThan(reply.was.medianS);
  });

  test('of grafting alone moves the rate of grafting by the formula', async () => {
    await said(MEDIUM, POUCH, 'grafting took 30 min');
    // At the usual rates of 180 s to pin and 18 s for each of 46 pairs: 1008 s, of which the pairs have 828.
    expect(await log()).toEqual([
      { turn_for_graft: Math.round((1800 * 180) / 1008), graft: Math.round((1800 * 828) / 1008) },
    ]);
    const { time } = replyOf(await t.say('how long will it take'), 'time');
    // By hand: one log beside the usual rate that weighs .5102 of one: 18 x (1800 / 1008) ^ (1 / 1.5102) s a pair.
    const pairS = 18 * (1800 / 1008) ** (1 / 1.5102);
    expect(time.timing.lines.find(({ driver }) => driver === 'graft')?.medianS).toBeCloseTo(46 * pairS, 0);
  });

  test('for the work in hand is for the rows so far, and later for those since', async () => {
    await said(MEDIUM, POUCH, 'start', 'row 50', 'cranking took 10 min');
    await said('row 100', 'cranking took 10 min');
    const counts = await t.within(async (s) => {
      const { id } = await s.makers.held('U1', '', AT);
      return (await s.benchLog.of(id)).map(({ count }) => count);
    });
    expect(counts[0]).toBeCloseTo((5474 * 50) / 109, 6);
    expect(counts[1]).toBeCloseTo((5474 * 50) / 109, 6);
    expect(codesOf(await t.say('cranking took 5 min'))).toEqual(['timed_already']);
  });

  test('for all of the work is less what was logged of it before', async () => {
    await said(MEDIUM, POUCH, 'start', 'done 10 7/8', 'cranking took 25 min', 'took 85 minutes');
    const [first, second] = await log();
    expect(first).toEqual({ crank: 1500 });
    expect(second?.crank).toBeUndefined();
    expect(Math.abs(total(second) - 3600)).toBeLessThan(8);
  });

  test('for all of half-knitted work is for its knitting so far, whatever was sewn already', async () => {
    await said(MEDIUM, POUCH, 'start', 'row 58', 'cranking took 12 min, weaving in ends took 6 min', 'took 20 min');
    const [, second] = await log();
    expect(Object.keys(second ?? {})).toEqual(['set_up', 'change', 'measure']);
    expect(Math.abs(total(second) - 8 * 60)).toBeLessThan(3);
  });

  test('of work whose time is all in is that of another like it', async () => {
    await said(MEDIUM, POUCH, 'start', 'done 10 7/8', 'took 85 minutes');
    const { assumed } = replyOf(await t.say('took 80 minutes'), 'logged');
    expect(assumed).toHaveLength(1);
    expect((await log()).map(total).map((s) => Math.round(s / 60))).toEqual([85, 80]);
  });

  test('at the table is for the piece done last, though another is on the machine', async () => {
    await said(MEDIUM, POUCH, 'start', 'done 10 7/8');
    await said('cowl 60 cm round', 'start', 'row 40');
    await said('weaving in ends took 10 min', 'cranking took 5 min');
    const works = await t.within(async (s) => {
      const { id } = await s.makers.held('U1', '', AT);
      const times = await s.benchLog.of(id);
      return Promise.all(times.map(async ({ workId }) => (await s.works.get(workId, id))?.endedAt !== undefined));
    });
    expect(works).toEqual([true, false]);
  });

  test('of several pieces counts them all', async () => {
    await said(MEDIUM, POUCH, 'took 3 hours for both');
    const counts = await t.within(async (s) => {
      const { id } = await s.makers.held('U1', '', AT);
      return (await s.benchLog.of(id)).find(({ driver }) => driver === 'graft')?.count;
    });
    expect(counts).toBe(92);
  });

  test.each([
    ['took 0 minutes', 'of_time'],
    ['took -5 minutes', 'of_time'],
    ['took 800 hours', 'of_time'],
    ['lining took 20 min', 'of_time'],
  ])('that cannot be is named, and nothing stored: %s', async (line, code) => {
    await said(MEDIUM, POUCH);
    expect(codesOf(await t.say(line))).toEqual([code]);
    expect(await log()).toEqual([]);
  });

  test('of a maker without a plan is asked for a plan', async () => {
    expect(codesOf(await t.say('took 85 minutes'))).toEqual(['no_plan_yet']);
  });

  test.each([
    ['took 30 hours', 'yes', [30 * 60]],
    ['took 30 hours', 'never mind', []],
    ['cranking took 1 min', 'yes', [1]],
  ])('far from the usual is asked about first: %s, %s', async (line, answer, minutes) => {
    await said(MEDIUM, POUCH);
    expect(kindsOf(await t.say(line))).toEqual(['question']);
    expect(await log()).toEqual([]);
    await t.say(answer);
    expect((await log()).map(total).map((s) => Math.round(s / 60))).toEqual(minutes);
  });

  test('is taken back and put in again whole', async () => {
    await said(MEDIUM, POUCH, 'knit 30 min, seaming and zip an hour');
    const before = await log();
    await t.say('undo');
    expect(await log()).toEqual([]);
    await t.say('put it back');
    expect(await log()).toEqual(before);
  });

  test.each([
    ['Europe/Vienna', '2026-03-28T23:30:00Z', '2026-03-29'],
    ['Europe/Vienna', '2026-03-29T21:59:00Z', '2026-03-29'],
    ['Europe/Vienna', '2026-03-29T22:00:00Z', '2026-03-30'],
    ['Europe/Vienna', '2026-10-24T22:00:00Z', '2026-10-25'],
    ['Europe/Vienna', '2026-10-25T22:59:00Z', '2026-10-25'],
    ['Europe/Vienna', '2026-10-25T23:00:00Z', '2026-10-26'],
    ['America/New_York', '2026-11-02T04:59:00Z', '2026-11-01'],
  ])('is of the day that it is in %s at %s, whatever the clocks do that day', async (zone, iso, day) => {
    await said(`my time zone is ${zone}`, MEDIUM, POUCH);
    await t.say('took 85 minutes', { at: Date.parse(iso) });
    const days = await t.within(async (s) => {
      const { id } = await s.makers.held('U1', '', AT);
      return (await s.benchLog.of(id)).map((time) => new Date(time.day * 86_400_000).toISOString().slice(0, 10));
    });
    expect([...new Set(days)]).toEqual([day]);
  });
});

describe('how long it takes', () => {
  test('is at the usual pace about 30 min at the machine and an hour at the table, each within 15%', async () => {
    await said(MEDIUM);
    // Common practice, no source, for a piece of 110 rows on 46 needles.
    const lines = timing(await stepsOf('pouch 11 in wide with an 8 in zip'), rates([])).lines;
    const minutes = (of: 'knit' | 'finish') =>
      lines.filter(({ stage }) => stage === of).reduce((sum, { medianS }) => sum + medianS / 60, 0);
    expect(Math.abs(minutes('knit') / 30 - 1)).toBeLessThan(0.15);
    expect(Math.abs(minutes('finish') / 60 - 1)).toBeLessThan(0.15);
  });

  test('for 12 is twelve times as long as for one', async () => {
    await said(MEDIUM, POUCH);
    const one = replyOf(await t.say('how long will it take'), 'time').time.timing;
    const twelve = replyOf(await t.say('how long for 12'), 'time').time;
    expect(twelve.copies).toBe(12);
    expect(twelve.timing.whole.medianS).toBeCloseTo(12 * one.whole.medianS, 6);
    expect(twelve.timing.whole.hiS).toBeCloseTo(12 * one.whole.hiS, 6);
  });

  test('leads a plan that is asked for by its time, and the rows follow', async () => {
    await said(MEDIUM);
    const answer = await t.say('how long will a pouch 11 in wide with an 8 in zip take?');
    expect(answer.card.lead).toMatch(/^About .* for one pouch$/);
    expect(answer.card.body[0]).toBe('Knit 109 rows on 46 needles, and measure at row 50.');
  });

  test('never prints the steps as if they summed', async () => {
    await said(MEDIUM, POUCH);
    const { card } = await t.say('how long will it take');
    expect(card.body).toContain(
      'The steps do not add up to the whole: now and then one takes far longer, hardly ever far less.',
    );
    expect(card.table?.rows.flat().join(' ')).not.toMatch(/total|sum|whole/i);
  });

  test('says that the pace is the usual one until it is logged, and for which steps it still is', async () => {
    await said(MEDIUM, POUCH);
    const assumed = async () =>
      (await t.say('how long will it take')).card.facts.find(({ label }) => label === 'Assumed')?.text;
    expect(await assumed()).toBe('the usual pace, until you log your own.');
    await t.say('cranking took 25 min');
    expect(await assumed()).toBe('the usual pace for all but cranking.');
    await t.say('took 85 minutes');
    expect(await assumed()).toBeUndefined();
  });

  test('asks which of several sizes is meant', async () => {
    await said(MEDIUM, 'pouches 10 and 11 in wide');
    expect(kindsOf(await t.say('how long will it take'))).toEqual(['question']);
  });
});

describe('a maker’s pace', () => {
  test('is nobody else’s', async () => {
    await said(MEDIUM, POUCH, 'took 3 hours');
    for (const line of [MEDIUM, POUCH]) await t.say(line, OWEN);
    expect(await log(OWEN)).toEqual([]);
    const { time } = replyOf(await t.say('how long will it take', OWEN), 'time');
    expect(time.paced).toEqual([]);
    await t.say('took 2 hours', OWEN);
    expect((await log()).length).toBe(1);
    await t.say('undo', OWEN);
    expect((await log()).length).toBe(1);
  });

  test.each(['took 85 minutes', 'how long will it take', 'time for a pouch 10 in wide', 'my hours'])(
    'is told in a channel to the one who asked alone: %s',
    async (line) => {
      await said(MEDIUM, POUCH);
      const address = { ...CHANNEL, threadTs: '1.5' };
      await t.say(POUCH, { address, place: 'thread:C1:1.5' });
      await t.say(line, { address, place: 'thread:C1:1.5' });
      const sent = await t.store.outbox.take(AT + 1e6, 1000, 10);
      expect(sent.map((row) => row.address.to)).toEqual(['post', 'ephemeral']);
    },
  );

  test('is not in the question that a strange time raises, which a channel reads', async () => {
    await said(MEDIUM, POUCH, 'took 3 hours', 'took 3 hours', 'took 3 hours');
    const { card } = await t.say('took 60 hours');
    expect(plainText(card)).toContain('usually takes about 1 h 25 min');
  });
});
