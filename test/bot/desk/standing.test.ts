import { afterEach, beforeEach, expect, test } from 'vitest';
import { plainText } from '../../../bot/cards/plain-text.js';
import { seenBy } from '../../../bot/seen-by.js';
import { CHANNEL, MEDIUM, POUCH, replyOf, type Talk, talk } from '../talk.js';

let open: Talk;
beforeEach(async () => {
  open = await talk();
});
afterEach(() => open.close());

const answered = async (text: string) => plainText((await open.say(text)).card).split('\n');

test('what is not understood of a new maker leads to a piece, a gauge and help', async () => {
  expect(await answered('banana')).toEqual([
    'I did not understand "banana"',
    'I read sizes of pieces, and what you have measured.',
    'Nothing was stored.',
    'You can say: "rows for a pouch 11 in wide", "110 rows in 22 in, 46 needles, 6 3/4 flat", "help".',
  ]);
});

test('while a question is open it is put again with its examples, and stays open', async () => {
  await open.say(POUCH);
  const { pending } = await open.conversation();
  expect(await answered('banana')).toEqual([
    'I did not understand "banana"',
    'I am still asking: Which piece have you measured?',
    'Nothing was stored.',
    'You can say: "46 needles, 110 rows, 22 in long, 6 3/4 flat", "5 rows to the inch", "never mind".',
  ]);
  expect((await open.conversation()).pending).toEqual(pending);
});

test('with a gauge and no plan it leads to a piece of theirs', async () => {
  await open.say(MEDIUM);
  expect((await answered('banana')).slice(1)).toEqual([
    'I have your gauge, so a piece and its size will do.',
    'Nothing was stored.',
    'You can say: rows for a pouch 11 in wide, help.',
  ]);
});

test('with a plan in hand it leads to what can be done with that', async () => {
  await open.sayAll(MEDIUM, POUCH);
  expect((await answered('banana')).slice(1)).toEqual([
    'Your pouch is still here.',
    'Nothing was stored.',
    'You can say: start, steps, make it 12 in wide, help.',
  ]);
});

test('with a piece on the machine it leads to a row and a length', async () => {
  await open.sayAll(MEDIUM, POUCH, 'start', '+40');
  expect((await answered('banana')).slice(1)).toEqual([
    'The pouch on the 46 is at row 40: count on, or tell me a length.',
    'Nothing was stored.',
    'You can say: +1, row 45, 8 in hanging, where am i.',
  ]);
});

test('words that would change a plan are told that there is none, and those of work that nothing is on the machine', async () => {
  expect((await answered('bit wider')).slice(0, 3)).toEqual([
    'There is no plan here yet that this could change',
    'You said "bit wider".',
    'Tell me the piece and its size first.',
  ]);
  expect((await answered('25 more')).slice(0, 2)).toEqual([
    'Nothing is on the machine that this could be of',
    'You said "25 more".',
  ]);
});

test('in a channel it is seen by the asker alone once it tells of their work or gauge', async () => {
  const to = { to: 'ephemeral', channel: 'C1', user: 'U1', threadTs: undefined };
  expect(seenBy([replyOf(await open.say('banana'), 'problem')], CHANNEL, 'U1')).toBe(CHANNEL);
  await open.say(MEDIUM);
  expect(seenBy([replyOf(await open.say('banana'), 'problem')], CHANNEL, 'U1')).toEqual(to);
});
