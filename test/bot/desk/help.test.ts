import { afterEach, beforeEach, expect, test } from 'vitest';
import { plainText } from '../../../bot/cards/plain-text.js';
import { seenBy } from '../../../bot/seen-by.js';
import { CHANNEL, MEDIUM, replyOf, type Talk, talk } from '../talk.js';

let open: Talk;
beforeEach(async () => {
  open = await talk();
});
afterEach(() => open.close());

async function help() {
  const answer = await open.say('help');
  return { text: plainText(answer.card), reply: replyOf(answer, 'help') };
}

test('help speaks of the machines, yarns and pieces of the one who asks, and of the row they are at', async () => {
  await open.say(MEDIUM);
  await open.say('48 needles, 80 rows in 16 in, 7 1/16 in flat');
  await open.say('I have 100 g of oat fine');
  await open.say('cowl 24 in round');
  await open.say('start');
  await open.say('+10');
  const { text } = await help();
  expect(text).toMatch(/^Next for you, Nadia: row 10 of \d+\nRows: "a cowl 62 cm round",/);
  expect(text).toContain('"on the 46"');
  expect(text).toContain('"I have 3 balls of oat fine, lot 12"');
});

test('help for a maker without work or yarn says what can be said all the same', async () => {
  await open.say(MEDIUM);
  const { text } = await help();
  expect(text).toMatch(/^What I can do for you, Nadia\nRows: "rows for a pouch 11 in wide",/);
  expect(text).not.toContain('At the machine');
  expect(text).toContain("I can't see your machine");
});

test('a name that could not be typed in an example is left out of help', async () => {
  await open.within(async (bound) => {
    const maker = await bound.makers.held('U1', 'Nadia', 1);
    await bound.profiles.opened(maker.id, { name: '<!channel> "x"', needles: 46 }, '', '', 1);
    await bound.profiles.opened(maker.id, { name: '48', needles: 48 }, '', '', 2);
  });
  expect((await help()).text).not.toContain('channel');
});

test('in a channel help is seen by the asker alone once it tells of their work, and by all on a first visit', async () => {
  const to = { to: 'ephemeral', channel: 'C1', user: 'U1', threadTs: undefined };
  expect(seenBy([(await help()).reply], CHANNEL, 'U1')).toBe(CHANNEL);
  await open.say(MEDIUM);
  expect(seenBy([(await help()).reply], CHANNEL, 'U1')).toEqual(to);
});

test('how to record a gauge is told in the unit of the one who asks, and leaves an open question open', async () => {
  await open.say('use cm');
  await open.say('pouch 28 cm wide');
  const { pending } = await open.conversation();
  const answer = await open.say('record a gauge');
  expect(plainText(answer.card)).toContain('40 needles, 60 rows, 27 cm long, 14.5 flat');
  expect((await open.conversation()).pending).toEqual(pending);
  expect(pending).toBeDefined();
});
