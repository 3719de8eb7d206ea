import { afterEach, beforeEach, expect, test } from 'vitest';
import { plainText } from '../../../bot/cards/plain-text.js';
import { GLOSSARY } from '../../../bot/glossary.js';
import { codesOf, MEDIUM, POUCH, replyOf, type Talk, talk } from '../talk.js';

let open: Talk;
beforeEach(async () => {
  open = await talk();
});
afterEach(() => open.close());

const lines = async (text: string) => plainText((await open.say(text)).card).split('\n');

test('a term is told in a plain sentence, and where it matters in the plan in hand', async () => {
  const [lead, means, ...others] = await lines("what's grafting");
  expect([lead, others]).toEqual(['Grafting', ['You can say: help.']]);
  expect(means).toMatch(/^Joining live stitches/);
  await open.sayAll(MEDIUM, POUCH);
  expect((await lines("what's grafting"))[2]).toMatch(/^In your pouch: Graft 46 pairs of stitches/);
});

test('every word of the glossary is of one term, and is read as that', async () => {
  const words = GLOSSARY.flatMap(({ words: all }) => all);
  expect(new Set(words).size).toBe(words.length);
  for (const { words: all, means } of GLOSSARY)
    for (const word of all) {
      const answer = replyOf(await open.say(`what does ${word} mean`), 'answer');
      expect([word, answer.lines[0]?.figures[0]]).toEqual([word, expect.objectContaining({ text: means })]);
    }
});

test('a term that nobody knows is not invented', async () => {
  expect(codesOf(await open.say('what is flurbing'))).toEqual(['unread']);
});

test('how a part is done is told by the steps of the plan in hand, of the work in hand without one', async () => {
  expect(codesOf(await open.say('how do I put the zip in'))).toEqual(['no_plan_yet']);
  await open.sayAll(MEDIUM, POUCH);
  const told = await lines('how do I put the zip in');
  expect(told[0]).toBe('How to put the zip in: your pouch');
  expect(told[1]).toMatch(/^Pin the closed 8 in/);
  expect((await lines('how do I gather the top'))[0]).toBe('Your pouch has no such step');
});
