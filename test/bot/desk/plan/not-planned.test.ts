import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { codesOf, MEDIUM, replyOf, type Talk, talk } from '../../talk.js';

/** Stitches of 7.45 mm on all three: flat tubes of 5 7/8, 6 3/4 and 8 3/4 in. */
const THREE = ['60 needles, 80 rows in 16 in, 8 13/16 in flat', '40 needles, 80 rows in 16 in, 5 7/8 in flat', MEDIUM];

let open: Talk;
beforeEach(async () => {
  open = await talk();
  for (const line of THREE) await open.say(line);
});
afterEach(() => open.close());

const ways = (answer: Awaited<ReturnType<Talk['say']>>): string =>
  answer.card.body.find((line) => line.startsWith('What would work')) ?? '';

describe('a size that the needles do not make', () => {
  test('is offered on the machine that fits, then as the needles make it, then from panels: three at most', async () => {
    const answer = await open.say('pouch 11 in wide and 8 1/2 in tall');
    expect(codesOf(answer)).toEqual(['needles_set_it']);
    expect(answer.card.body[0]).toBe(
      'Rows cannot change that; about 59 needles or a flat panel of 31 needles in one layer would. Not by tension: stitches would be 29% looser, and beyond about 10% they lose their shape.',
    );
    expect(ways(answer)).toMatch(
      /^What would work\. First: on the 60, about 8 5\/8 in tall, .*%\)\. Second: 6 5\/8 in, as the needles make it\. Third: a flat panel of 31 needles in one layer\.$/,
    );
    expect(replyOf(await open.say('on the 60'), 'plan')).toMatchObject({
      ask: { piece: 'pouch', on: { machine: '60', needles: 60 } },
      plan: { needles: 60, shortfalls: [] },
    });
  });

  test.each(['on the 60', 'ok, on the 60', 'use the 60', 'plan it on the 60 please', 'the first'])(
    'goes to that machine by "%s", whatever plan was in hand before',
    async (words) => {
      await open.say('scarf 60 in long');
      await open.say('pouch 11 in wide and 8 1/2 in tall');
      const { ask } = replyOf(await open.say(words), 'plan');
      expect([ask.piece, ask.on.needles]).toEqual(['pouch', 60]);
    },
  );

  test('is a follow-up on the other machine where it was one', async () => {
    await open.say('pouch 11 in wide');
    await open.say('8 1/2 in tall');
    const answer = await open.say('on the 60');
    expect(answer.card.body[0]).toBe('Changed: height, 8 1/2 in; machine, the 60.');
    await open.say('undo');
    expect((await open.conversation()).subject?.values).toEqual({ width: expect.anything() });
  });

  test('from panels is a plan of panels as long as the rows of the piece', async () => {
    await open.say('2 pouches 11 in wide and 12 in tall');
    const { plan, ask } = replyOf(await open.say('the second'), 'plan');
    expect(plan).toMatchObject({ needles: 43, rows: 110, parts: 1, pieces: 2 });
    expect(ask.on.machine).toBe('46');
  });

  test('takes panels joined where one is too narrow', async () => {
    const answer = await open.say('tube 22 in long and 12 in wide');
    expect(answer.card.body[0]).toContain('2 flat panels of 43 needles joined and sewn up');
    expect(replyOf(await open.say('the second'), 'plan').plan).toMatchObject({ needles: 43, parts: 2 });
  });

  test('leads to no other machine once the tension reaches it, but is told of one that would fit', async () => {
    const answer = await open.say('pouch 11 in wide and 6 1/8 in tall');
    expect(answer.card.body[0]).toContain('Rows cannot change that; about 43 needles would, or stitches 7% tighter.');
    expect(replyOf(answer, 'plan').elsewhere).toBeUndefined();
    const fitting = await open.say('pouch 11 in wide and 5 1/2 to 6 1/2 in tall');
    expect(replyOf(fitting, 'plan').elsewhere).toBeDefined();
    expect(fitting.card.body[1]).toMatch(/^On the 40 it would fit: about 5 3\/4 in tall, .*%\)\.$/);
    expect(replyOf(await open.say('on the 40'), 'plan').plan.shortfalls).toEqual([]);
  });
});

test('a panel of too many needles is offered on the machine that has them', async () => {
  const answer = await open.say('panel 15 in wide, 12 in long');
  expect(codesOf(answer)).toEqual(['too_many_needles']);
  expect(answer.card.body[0]).toContain('A machine of 53 needles or more would take it.');
  expect(ways(answer)).toContain('First: on the 60, about 15 in wide');
  expect(replyOf(await open.say('on the 60'), 'plan').plan).toMatchObject({ needles: 51 });
});

test('a setting stays with its machine', async () => {
  await open.say('46 needles, 110 rows in 22 in, 6 3/4 in flat at tension 5');
  expect(replyOf(await open.say('pouch 11 in wide'), 'plan').ask.on.tension).toBe('5');
  expect(replyOf(await open.say('on the 60'), 'plan').ask.on.tension).toBeUndefined();
});
