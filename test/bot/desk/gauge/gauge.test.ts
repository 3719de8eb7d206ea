import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { AT, kindsOf, MEDIUM, POUCH, replyOf, type Talk, talk } from '../../talk.js';

let open: Talk;
beforeEach(async () => {
  open = await talk();
});
afterEach(() => open.close());

const measured = async () => {
  const { measured } = (await open.kept()) as { measured: { rows?: object; stitches?: object }[][] };
  return measured.flat();
};

describe('a measured piece', () => {
  test('is kept with its needles, its state, and what was said', async () => {
    const answer = await open.say(`${MEDIUM}, hanging`);
    expect(answer.card.lead).toBe(
      'Recorded: 110 rows in 22 in, 46 needles, 6 3/4 flat, hanging'.replace('6 3/4', '6 3/4 in'),
    );
    expect(await measured()).toMatchObject([
      {
        state: 'hanging',
        form: 'tube',
        rows: { count: 110, overMm: expect.closeTo(558.8, 6), how: 'read' },
        stitches: { count: 23, overMm: expect.closeTo(171.45, 6), how: 'read' },
      },
    ]);
  });

  test('as a rate counts as read over 4 in, and the answer says so', async () => {
    const answer = await open.say('5 rows and 3.4 sts to the inch');
    expect(answer.card.lead).toBe('Recorded: 5 rows, 3.4 sts to the inch, rested');
    expect(answer.card.facts.at(-1)?.text).toMatch(/^a rate counts as read over 4 in;/);
    expect(await measured()).toMatchObject([
      { rows: { count: 20, overMm: 101.6 }, stitches: { count: expect.closeTo(13.6, 6), overMm: 101.6 } },
    ]);
  });

  test('of a flat panel has its own needles for stitches, and the machine keeps its own', async () => {
    await open.say(MEDIUM);
    await open.say('panel 20 needles, 60 rows in 12 in, 6 in wide');
    expect((await measured()).at(-1)).toMatchObject({
      form: 'panel',
      stitches: { count: 20, overMm: expect.closeTo(152.4, 6) },
    });
    expect(replyOf(await open.say(POUCH), 'plan').plan.needles).toBe(46);
  });

  test('several in one message are several pieces, on one card', async () => {
    const answer = await open.say('110 rows in 22 in, 60 rows in 12.2 in');
    expect(kindsOf(answer)).toEqual(['gauge', 'gauge']);
    expect(answer.card.lead).toBe('Recorded: 60 rows in 12.2 in, rested');
    expect(answer.card.facts).toContainEqual({
      label: 'Recorded on the way',
      text: '110 rows in 22 in, rested.',
    });
    expect(await measured()).toHaveLength(2);
  });

  test('read in two states is one piece, kept, named and taken back as one', async () => {
    await open.say(MEDIUM);
    const before = await measured();
    const answer = await open.say('60 rows were 12 1/2 hanging and now 12 rested');
    expect(answer.card.lead).toBe('Recorded: 60 rows in 12 1/2 in hanging, then 60 rows in 12 in, rested');
    expect(answer.card.facts).toContainEqual({ label: 'How sure', text: expect.stringContaining('2 pieces') });
    const readings = (await measured()).slice(1) as { swatch: string; state: string }[];
    expect(readings.map(({ state }) => state)).toEqual(['hanging', 'rested']);
    expect(new Set(readings.map(({ swatch }) => swatch)).size).toBe(1);
    await open.say('undo');
    expect(await measured()).toEqual(before);
    await open.say('put it back');
    expect(await measured()).toHaveLength(3);
  });

  test('joins the machine and yarn used last, and says so', async () => {
    await open.say(`${MEDIUM} in the grey medium yarn`);
    const answer = await open.say('60 rows in 12 in');
    expect(answer.card.facts.at(-1)).toEqual({
      label: 'Assumed',
      text: 'same machine and yarn as last time; measured at rest.',
    });
    expect(replyOf(answer, 'gauge').gauge).toMatchObject({ machine: { needles: 46 }, yarn: { name: 'grey medium' } });
  });

  test('on another needle count starts another machine', async () => {
    await open.say(MEDIUM);
    await open.say('24 needles, 60 rows in 12 in');
    expect(
      replyOf(await open.say('my gauge'), 'gauges')
        .gauges.map(({ machine }) => machine.needles)
        .sort(),
    ).toEqual([24, 46]);
  });

  test('tells what it buys the plan in hand', async () => {
    await open.say(MEDIUM);
    await open.say(POUCH);
    const { buys } = replyOf(await open.say('80 rows in 16 in, 6 3/4 flat'), 'gauge');
    expect(buys).toMatchObject({ label: 'pouch', rows: 109 });
    expect(buys?.now).toBeGreaterThan(buys?.was ?? 1);
  });
});

describe('an unusual figure', () => {
  test('is asked about before it is stored, and stored once it is said to be right', async () => {
    await open.say(MEDIUM);
    await open.say('60 rows in 12 in');
    const before = await measured();
    const question = await open.say('60 rows in 30 in');
    expect(question.card.lead).toBe('Is that right: 60 rows in 30 in, rested?');
    expect(await measured()).toEqual(before);
    expect((await open.say('yes')).card.lead).toBe('Recorded: 60 rows in 30 in, rested');
    expect(await measured()).toHaveLength(3);
  });

  test('can be taken back by never minding it, and by saying what it should have been', async () => {
    await open.say(MEDIUM);
    await open.say('60 rows in 12 in');
    await open.say('60 rows in 30 in');
    await open.say('never mind');
    expect(await measured()).toHaveLength(2);
    await open.say('60 rows in 30 in');
    expect((await open.say('60 rows in 13 in')).card.lead).toBe('Recorded: 60 rows in 13 in, rested');
    expect(await measured()).toHaveLength(3);
  });

  test('is confirmed by its button as well, and a yes means nothing afterwards', async () => {
    await open.say(MEDIUM);
    await open.say('60 rows in 12 in');
    await open.say('60 rows in 30 in');
    expect((await open.press(0)).card.lead).toBe('Recorded: 60 rows in 30 in, rested');
    expect((await open.say('yes')).card.lead).toBe('I did not understand "yes"');
  });
});

describe('needles alone', () => {
  test('tell of a machine, and what it made is asked for', async () => {
    expect((await open.say('my machine has 46 needles')).card.lead).toBe('Noted: the 46, 46 needles');
    await open.say('110 rows in 22 in, 6 3/4 flat');
    expect(replyOf(await open.say(POUCH), 'plan').plan.needles).toBe(46);
  });
});

describe('my gauge', () => {
  test('without any asks for one', async () => {
    expect((await open.say('my gauge')).card.lead).toBe('Which piece have you measured?');
  });

  test('lists every machine and yarn, the surest first', async () => {
    await open.say('24 needles, 20 rows in 4 in', { at: AT + 1 });
    await open.say(MEDIUM, { at: AT + 2 });
    await open.say('80 rows in 16 in', { at: AT + 3 });
    const { gauges } = replyOf(await open.say('my gauge'), 'gauges');
    expect(gauges.map(({ machine, gauge }) => [machine.needles, gauge.pieces])).toEqual([
      [46, 2],
      [24, 1],
    ]);
  });
});
