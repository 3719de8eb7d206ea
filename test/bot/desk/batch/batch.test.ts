import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { blocks } from '../../../../bot/cards/blocks.js';
import { asJson } from '../../../../bot/terminal/json.js';
import type { Turn } from '../../../../bot/turn.js';
import { blockFaults } from '../../cards/block-faults.js';
import { type Answer, CHANNEL, codesOf, MEDIUM, replyOf, type Talk, talk } from '../../talk.js';

const OWEN: Partial<Turn> = { user: { slackUserId: 'U2', name: 'Owen' }, place: 'dm:D2' };
const LOTTE: Partial<Turn> = { user: { slackUserId: 'U3', name: 'Lotte' }, place: 'dm:D3' };
const TWELVE = '12 pouches 11 in wide with Owen by 5 december';

let open: Talk;
beforeEach(async () => {
  open = await talk();
});
afterEach(() => open.close());

/** Nadia works 2 h from Monday to Friday, Owen 3 h on Saturday and Sunday, both with the same gauge and pace. */
async function both(): Promise<void> {
  for (const line of [MEDIUM, '3 hours on weekends']) await open.say(line, OWEN);
  for (const line of [MEDIUM, '2 hours on weekdays']) await open.say(line);
}

const sharesOf = (answer: Answer) =>
  Object.fromEntries(replyOf(answer, 'batch').members.map(({ name, share, done }) => [name, [share, done]]));
const isoOf = (day: number | undefined): string => new Date((day ?? 0) * 86_400_000).toISOString().slice(0, 10);
const readyOf = (answer: Answer): string => isoOf(replyOf(answer, 'batch').schedule?.readyDay);

/**
 * By hand, from Monday 9 November 10:00, when the 2 h of that day, counted from its start, are over. A piece takes
 * 1.69 h, so that the k-th is done after 1.69 k hours worked.
 * Nadia has worked 2 h by the end of Tue 10, 4 Wed, 6 Thu, 8 Fri 13, 10 Mon 16, 12 Tue, 14 Wed, 16 Thu 19, 18 Fri 20:
 * her pieces are done Tue 10 (1.69), Wed 11 (3.38), Thu 12 (5.07), Fri 13 (6.76), Mon 16 (8.45), Tue 17 (10.14),
 * Tue 17 (11.83), Wed 18 (13.52), Thu 19 (15.21).
 * Owen has worked 3 h by the end of Sat 14, 6 Sun 15, 9 Sat 21: Sat 14 (1.69), Sun 15 (3.38), Sun 15 (5.07),
 * Sat 21 (6.76).
 */
describe('twelve for a date with two makers', () => {
  test('are dealt so that the last is done earliest, as a hand calculation has it', async () => {
    await both();
    const answer = await open.say(TWELVE);
    const { schedule } = replyOf(answer, 'batch');
    const [nadia] = schedule?.makers ?? [];
    expect((nadia?.workS ?? 0) / 9 / 3600).toBeCloseTo(1.69, 2);
    // The twelve soonest of both lists: Nadia's first nine, to Thu 19, and Owen's first three.
    expect(sharesOf(answer)).toEqual({ Nadia: [9, 0], Owen: [3, 0] });
    expect(readyOf(answer)).toBe('2026-11-19');
    expect(nadia?.days.map(isoOf).map((day) => Number(day.slice(8)))).toEqual([10, 11, 12, 13, 16, 17, 17, 18, 19]);
    expect(answer.card.body).toContain('9 Nov to 15 Nov: Nadia ■■■■ 4, Owen ■■■ 3; 7 of 12');
    expect(answer.card.body).toContain('16 Nov to 22 Nov: Nadia ■■■■■ 5; 12 of 12');
    expect(blockFaults(blocks(answer.card, 'turn'))).toEqual([]);
  });

  test('three done, each keeps their share until it is planned again; then it says what changed', async () => {
    await both();
    await open.say(TWELVE);
    const counted = await open.say('done 3');
    expect(sharesOf(counted)).toEqual({ Nadia: [9, 3], Owen: [3, 0] });
    // Her six that are left: to Tue 17.
    expect(readyOf(counted)).toBe('2026-11-17');
    const again = await open.say('re-plan');
    // The nine soonest: Nadia's first six are done by Tue 17 at 0:08, Owen's first three by Sun 15: nothing moves.
    expect(sharesOf(again)).toEqual({ Nadia: [9, 3], Owen: [3, 0] });
    expect(again.card.body).toContain('Changed: ready Tuesday 17 November instead of Thursday 19 November.');

    await open.say('done 2', OWEN);
    const behind = await open.say('without Owen next week', OWEN);
    // Of seven, Nadia's four to Fri 13 and Owen's three to Sun 15, the weekend of this week.
    expect(sharesOf(behind)).toEqual({ Nadia: [7, 3], Owen: [5, 2] });
    const alone = await open.say('without Owen');
    // Seven for Nadia: to Tue 17.
    expect(sharesOf(alone)).toEqual({ Nadia: [10, 3], Owen: [2, 2] });
    expect(readyOf(alone)).toBe('2026-11-17');
    expect(alone.card.body).toContain(
      'Changed: Owen makes no more; Nadia 10 instead of 7; ready Tuesday 17 November instead of Sunday 15 November.',
    );
  });

  test('with nothing done a week later all is a week later, and is said to be', async () => {
    await both();
    await open.say(TWELVE);
    const behind = await open.say('re-plan', { at: Date.parse('2026-11-16T10:00:00Z') });
    expect(sharesOf(behind)).toEqual({ Nadia: [9, 0], Owen: [3, 0] });
    expect(behind.card.body).toContain('Changed: ready Thursday 26 November instead of Thursday 19 November.');
  });

  test('with more of them all is dealt again, and undo brings the batch and its plan back', async () => {
    await both();
    await open.say(TWELVE);
    const more = await open.say('13 of them');
    // The thirteenth is Nadia's tenth, after 16.9 h on Fri 20; Owen's fourth would be Sat 21.
    expect(sharesOf(more)).toEqual({ Nadia: [10, 0], Owen: [3, 0] });
    expect(readyOf(more)).toBe('2026-11-20');
    await open.say('undo');
    expect(sharesOf(await open.say('where are we with the batch?'))).toEqual({ Nadia: [9, 0], Owen: [3, 0] });
    expect((await open.conversation()).subject?.copies).toBe(12);
    await open.say('put it back');
    expect(replyOf(await open.say('the batch'), 'batch').pieces).toBe(13);
  });

  test('done is taken back, and one done by another meanwhile stays', async () => {
    await both();
    await open.say(TWELVE);
    await open.say('done 3');
    await open.say('done 1', OWEN);
    await open.say('undo');
    expect(sharesOf(await open.say('the batch'))).toEqual({ Nadia: [9, 0], Owen: [3, 1] });
  });

  test('shows each their own rows, and nobody the rows of another', async () => {
    await open.say('40 needles, 200 rows, 22 in long, 6 3/4 flat', OWEN);
    await open.say('3 hours on weekends', OWEN);
    for (const line of [MEDIUM, '2 hours on weekdays']) await open.say(line);
    const [hers, his] = [await open.say(TWELVE), await open.say('the batch', OWEN)];
    expect(replyOf(hers, 'batch').own?.rows).toBe(109);
    const { rows = 0 } = replyOf(his, 'batch').own ?? {};
    expect(rows).toBeGreaterThan(180);
    expect(JSON.stringify(hers.exchanges)).not.toContain(`"rows":${rows}`);
  });

  test('once all are done the batch is over', async () => {
    await both();
    await open.say('2 pouches 11 in wide with Owen by 5 december');
    expect((await open.say('done 2')).card.lead).toBe('Pouch, 2 of them, by Saturday 5 December');
    expect(codesOf(await open.say('re-plan'))).toEqual(['no_batch']);
  });
});

test('in a channel a batch, with the rows in it, is seen by the asker alone', async () => {
  await both();
  await open.say(TWELVE, { address: CHANNEL });
  expect((await open.store.outbox.take(Number.MAX_SAFE_INTEGER / 2, 1, 10)).map(({ address }) => address)).toEqual([
    { to: 'ephemeral', channel: 'C1', user: 'U1' },
  ]);
});

describe('who cannot make a share is named', () => {
  test('without gauge, without hours, unknown, or of another workspace', async () => {
    await open.say('hello', LOTTE);
    for (const line of [MEDIUM, '2 hours on weekdays']) await open.say(line);
    const with3 = await open.say('12 pouches 11 in wide with Lotte by 5 december');
    expect(replyOf(with3, 'problem').problems).toEqual([{ code: 'no_gauge_of', who: 'Lotte' }]);
    await open.say(MEDIUM, LOTTE);
    const idle = await open.say('12 pouches 11 in wide with Lotte by 5 december');
    expect(replyOf(idle, 'problem').problems).toEqual([
      { code: 'of_batch', problem: { code: 'no_hours', who: 'Lotte' } },
    ]);
    await open.say('hello', { ...OWEN, slackTeamId: 'T2' });
    const stranger = await open.say('12 pouches 11 in wide with @Owen by 5 december');
    expect(replyOf(stranger, 'problem').problems).toEqual([{ code: 'not_in_team', said: 'owen', makers: ['Lotte'] }]);
    expect(await open.within((s) => s.batches.openOf('nobody'))).toBeUndefined();
  });

  test('the maker’s own hours are asked for once, by buttons too, and the batch goes on', async () => {
    for (const line of [MEDIUM, '3 hours on weekends']) await open.say(line, OWEN);
    await open.say(MEDIUM);
    const asked = await open.say(TWELVE);
    expect(replyOf(asked, 'question').offers.map(({ button }) => button)).toEqual([
      '2 h on Weekdays',
      '4 h on Weekdays',
    ]);
    expect(sharesOf(await open.press(0))).toEqual({ Nadia: [9, 0], Owen: [3, 0] });
  });

  test('more done than are left is refused, and nothing stored', async () => {
    await both();
    await open.say(TWELVE);
    expect(replyOf(await open.say('done 13'), 'problem').problems).toEqual([
      { code: 'done_outside', given: 13, max: 12 },
    ]);
    expect(replyOf(await open.say('the batch'), 'batch').done).toBe(0);
  });

  test('a batch without a day asks for it', async () => {
    await both();
    expect(replyOf(await open.say('12 pouches 11 in wide with Owen'), 'question').asks).toBeDefined();
    expect(sharesOf(await open.say('by 5 december'))).toEqual({ Nadia: [9, 0], Owen: [3, 0] });
  });
});

describe('one who knits and one who finishes', () => {
  test('finish as a hand calculation has it, and the schedule says who waits', async () => {
    await both();
    const answer = await open.say('4 pouches 11 in wide by 5 december, I knit and Owen finishes');
    const { schedule } = replyOf(answer, 'batch');
    const [knit, finish] = schedule?.makers ?? [];
    const [knitH, finishH] = [(knit?.workS ?? 0) / 4 / 3600, (finish?.workS ?? 0) / 4 / 3600];
    expect(knitH).toBeCloseTo(0.55, 1);
    expect(finishH).toBeCloseTo(1.1, 1);
    // Nadia: .55 and 1.1 and 1.65 h on Tue 10, 2.2 h on Wed 11. Owen: 1.1 and 2.2 h on Sat 14, 3.3 and 4.4 h on Sun 15.
    expect(knit?.days.map(isoOf)).toEqual(['2026-11-10', '2026-11-10', '2026-11-10', '2026-11-11']);
    expect(finish?.days.map(isoOf)).toEqual(['2026-11-14', '2026-11-14', '2026-11-15', '2026-11-15']);
    expect(answer.card.body.join(' ')).toMatch(/Owen waits for no piece; a piece lies up to \d days/);
    expect(sharesOf(await open.say('done 1', OWEN))).toMatchObject({ Owen: [4, 1] });
  });
});

describe('a day for one maker', () => {
  test('is scheduled back from it, in JSON as ISO days', async () => {
    for (const line of [MEDIUM, '2 hours on weekdays']) await open.say(line);
    const answered = await open.say('12 pouches 11 in wide for the fair on Dec 12');
    // Even slowly, 2.3 h a piece: 27.6 h of 2 h a day, back from the end of Fri 11 December.
    expect(asJson(answered, false)).toMatchObject({
      reply: {
        plan: {
          schedule: { readiness: 'in_time', startBy: '2026-11-20', readyBy: '2026-12-11', doneOn: '2026-11-24' },
        },
      },
    });
  });

  test('waits for hours where none were told, and is told right after them', async () => {
    await open.say(MEDIUM);
    const before = replyOf(await open.say('12 pouches 11 in wide by 11 december'), 'plan');
    expect(before.schedule).toBeUndefined();
    expect(before.offers.map(({ button }) => button)).toContain('2 h on Weekdays');
    const after = replyOf(await open.say('2 hours on weekdays'), 'plan');
    expect(after.schedule?.readiness).toBe('in_time');
  });

  test('that is over, or that its month does not have, is left out with the reason', async () => {
    await open.say(MEDIUM);
    const over = await open.say('pouch 11 in wide by 2025-12-12');
    expect(over.card.facts.at(-1)?.text).toContain('that day is over; name one ahead');
    const none = await open.say('pouch 11 in wide by 30 february');
    expect(none.card.facts.at(-1)?.text).toContain('30 February (it has 28 days)');
  });

  test('that is too near names what would make it possible', async () => {
    for (const line of [MEDIUM, '2 hours on weekdays']) await open.say(line);
    const { schedule } = replyOf(await open.say('12 pouches 11 in wide by 13 november'), 'plan');
    expect(schedule?.readiness).toBe('too_late');
    expect(schedule?.ways.map(({ is }) => is)).toEqual(['fewer', 'later', 'more_makers', 'more_hours']);
  });
});
