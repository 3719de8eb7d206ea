import { afterEach, beforeEach, expect, test } from 'vitest';
import { taken } from '../../bot/turn.js';
import { type Journey, journey } from './harness.js';
import {
  BOT,
  directMessage,
  globalShortcut,
  MAKER,
  messageShortcut,
  RESPONSE_URL,
  type ShownView,
  submission,
} from './payloads.js';

let bot: Journey;
beforeEach(async () => {
  bot = await journey(taken);
});
afterEach(() => bot.close());

async function say(text: string) {
  const post = bot.api.expects('chat.postMessage');
  await bot.send(directMessage(text));
  const posted = await post;
  await bot.settled();
  return posted;
}

async function sizeFrom(message: Record<string, unknown>) {
  const answer = bot.api.expectsResponse(RESPONSE_URL);
  expect(await bot.send(messageShortcut(message))).toEqual({ status: 200, text: '' });
  const answered = await answer;
  await bot.settled();
  return answered;
}

test('the size in a message is planned on the own gauge of the one who asks, and shown to them alone', async () => {
  await say('110 rows in 22 in, 46 needles, 6 3/4 in flat');
  const answer = await sizeFrom({ text: 'who can knit me a pouch 10.5 to 11 in wide? <!channel>' });
  expect(answer).toMatchObject({ response_type: 'ephemeral', replace_original: false });
  expect(answer.text).toMatch(/^Knit 106 rows/);
});

test('what its writer measured is not recorded for the one who asks', async () => {
  const answer = await sizeFrom({ text: '110 rows in 22 in, 46 needles, 6 3/4 in flat' });
  expect(answer.text).toMatch(/^I find no piece with a size in that message/);
  expect((await say('my gauge')).text).toMatch(/^Which piece have you measured/);
});

test('a size beside something else is planned, and the rest named as not done', async () => {
  await say('110 rows in 22 in, 46 needles, 6 3/4 in flat');
  const answer = await sizeFrom({ text: '5 rows to the inch, and a pouch 11 in wide' });
  expect(answer.text).toMatch(/^Knit \d+ rows/);
  expect(answer.text).toContain('The rest of the message was not done.');
});

test('the units of its writer do not become those of the one who asks', async () => {
  await say('110 rows in 22 in, 46 needles, 6 3/4 in flat');
  await sizeFrom({ text: 'pouch 28 cm wide' });
  expect((await say('pouch 11 wide')).text).toContain('11 read in inches');
});

test.each([
  ['a message without text', { text: '' }, /^Tell me a piece and its size/],
  ['a picture alone', { text: undefined, files: [{}] }, /^Tell me a piece and its size/],
  ['a message deleted since', { subtype: 'tombstone', text: 'This message was deleted.' }, /^Tell me a piece/],
  ['a message of another app', { bot_id: 'B1', text: 'pouch 11 in wide' }, /^An app wrote that message/],
  ['an answer of my own', { bot_id: BOT.botId, user: BOT.userId, text: 'Knit 9' }, /^An app wrote that message/],
  ['40,000 characters', { text: 'pouch 11 in wide '.repeat(2400).slice(0, 40_000) }, /^That is longer than I can read/],
  ['small talk', { text: 'see you at lunch' }, /^I (?:find no piece|did not)/],
  ['a size of nothing named', { text: 'can you make me one 11 in wide?' }, /^Which piece is it for/],
  ['a command', { text: 'undo' }, /^I find no piece with a size/],
])('%s is answered in words, and stores nothing', async (_, message, words) => {
  await say('110 rows in 22 in, 46 needles, 6 3/4 in flat');
  expect((await sizeFrom(message)).text).toMatch(words);
  expect((await say('undo')).text).toMatch(/^Taken back: 110 rows/);
});

test('a shortcut that Slack delivers twice is answered once', async () => {
  const used = messageShortcut({ text: 'pouch 11 in wide' });
  bot.api.expectsResponse(RESPONSE_URL);
  for (let i = 0; i < 2; i++) {
    expect((await bot.send(used)).status).toBe(200);
    await bot.settled();
  }
});

test('Record Gauge opens the form, whose answer goes to the direct message', async () => {
  const open = bot.api.expects('views.open');
  expect(await bot.send(globalShortcut('record_gauge'))).toEqual({ status: 200, text: '' });
  const { view } = await open;
  const post = bot.api.expects('chat.postMessage');
  const typed = { rows: '110', length: '22 in', flatWidth: '6 3/4 in', 'bench.needles': '46' };
  expect(await bot.send(submission(view as ShownView, typed))).toEqual({ status: 200, text: '' });
  expect(await post).toMatchObject({ channel: MAKER, text: expect.stringMatching(/^Recorded: 110 rows in 22 in/) });
});

test('where no form opens, Record Gauge says in the direct message what to measure and how to say it', async () => {
  bot.api.expects('views.open', { body: { ok: false, error: 'expired_trigger_id' } });
  const post = bot.api.expects('chat.postMessage');
  expect(await bot.send(globalShortcut('record_gauge'))).toEqual({ status: 200, text: '' });
  expect(await post).toMatchObject({ channel: MAKER, text: expect.stringMatching(/^Which piece have you measured/) });
});
