import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { MEDIUM, POUCH, replyOf, type Talk, talk } from '../../talk.js';

let open: Talk;
beforeEach(async () => {
  open = await talk();
  await open.say(MEDIUM);
});
afterEach(() => open.close());

describe('a follow-up that tells a size beside the one in hand', () => {
  test.each([
    ['1 in wider', 'Changed: width, 12 in.'],
    ['2 cm narrower', 'Changed: width, 10 1/4 in.'],
    ['10% bigger', 'Changed: width, 12 1/8 in.'],
    ['twice as wide', 'Changed: width, 22 in.'],
  ])('"%s" changes it by so much', async (words, changed) => {
    await open.say(POUCH);
    expect((await open.say(words)).card.body[0]).toBe(changed);
  });

  test('keeps how much the size may differ', async () => {
    await open.say('pouch 10 to 12 in wide');
    const { ask } = replyOf(await open.say('1 in wider'), 'plan');
    expect(ask.values.width).toEqual({
      is: 'window',
      loMm: expect.closeTo(11 * 25.4),
      hiMm: expect.closeTo(13 * 25.4),
    });
  });

  test('asks by how much, and for a size never told says so; neither changes anything', async () => {
    await open.say(POUCH);
    expect((await open.say('a bit wider')).card.lead).toBe('How much wider?');
    expect((await open.say('1 in taller')).card.lead).toBe('You told me no height yet');
    expect((await open.conversation()).subject?.values).toMatchObject({ width: { mm: 279.4 } });
  });

  test('is refused like any size where nothing would be left', async () => {
    await open.say(POUCH);
    expect((await open.say('12 in narrower')).card.lead).toBe('Width: I read -1 in');
  });
});

describe('a size out of its range', () => {
  test.each([
    ['hat for a 3 m head', '30 cm', 'yes'],
    ['cowl 60 mm round', '60 cm', '60 cm'],
    ['cowl 60 mm round', '60 cm', 'the first'],
    ['pouch 110 in wide', '11 in', 'make it 11 in'],
  ])('"%s" is offered as %s, which "%s" takes', async (words, meant, taken) => {
    const refused = await open.say(words);
    expect(refused.card.body).toContain(`What would work. ${meant}, if that is what you meant.`);
    expect(refused.card.sayings).toEqual([meant]);
    expect((await open.say(taken)).exchanges[0]?.request).toMatchObject({ kind: 'plan' });
  });

  test('in a unit that was taken is offered in the other', async () => {
    await open.say('use cm');
    expect((await open.say('hat for a 22 head')).card.sayings).toEqual(['22 in']);
  });

  test('that no slip explains is offered as nothing', async () => {
    expect((await open.say('pouch 0.1 in wide')).card.sayings).toEqual([]);
  });
});

test('what the needles make of a finished piece is the size suggested for the answer', async () => {
  for (const line of [POUCH, 'start', 'row 109']) await open.say(line);
  expect((await open.say('done')).card.sayings[0]).toBe('11 in');
});

test('a piece on the machine stays as it was begun when its plan is changed, and the card says so', async () => {
  for (const line of [POUCH, 'start', 'row 40']) await open.say(line);
  expect((await open.say('make it 12 wide')).card.body[1]).toBe(
    'On the machine the pouch stays as it was begun: row 40, stop at 109. To knit to the change, say "give it up", "start" and "row 40".',
  );
  for (const line of ['give it up', 'start']) await open.say(line);
  expect((await open.say('row 40')).card.lead).toBe('Row 40 of 119: 79 to go');
});

test('where none of several sizes can be made, it is said of which the reasons are', async () => {
  const answer = await open.say('hats for heads of 20, 22 and 24 in');
  expect(answer.card.facts.map(({ text }) => text).join()).toContain(
    'told of the first, 20 in; none of the 3 sizes can be made',
  );
});

test('the piece in hand named again is changed, and keeps what else was said of it', async () => {
  await open.say('pouch 11 in wide, lined, 6 in tall');
  const answer = await open.say('make the pouch 12 wide');
  expect(answer.card.body[0]).toBe('Changed: width, 12 in.');
  expect(Object.keys(replyOf(answer, 'plan').ask.values).sort()).toEqual(['height', 'lining', 'width']);
});

test('a maker without a gauge is told how to knit one, and the plan waits on', async () => {
  const fresh = await talk();
  await fresh.say('rows for a pouch 11 in wide');
  expect((await fresh.say('how do I measure?')).card.lead).toBe('Knit one tube and measure it: that is your gauge');
  expect(replyOf(await fresh.say(MEDIUM), 'plan').plan.rows).toBe(109);
  await fresh.close();
});
