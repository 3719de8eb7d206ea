import { afterEach, beforeEach, expect, test } from 'vitest';
import { taken } from '../../bot/turn.js';
import { type Journey, journey } from './harness.js';
import { command, DIRECT, directMessage, MAKER, press, RESPONSE_URL } from './payloads.js';
import type { Fields } from './slack-api.js';

let bot: Journey;
beforeEach(async () => {
  bot = await journey(taken);
});
afterEach(() => bot.close());

type Button = { action_id: string; value: string; text: { text: string }; accessibility_label?: string };
const buttonsOf = ({ blocks }: Fields): Button[] =>
  (blocks as { type: string; elements?: Button[] }[]).find(({ type }) => type === 'actions')?.elements ?? [];

/** A command, and the answer that the asker alone sees. */
async function answered(name: string, words: string): Promise<Fields> {
  const answer = bot.api.expectsResponse(RESPONSE_URL);
  expect(await bot.send(command(name, words))).toEqual({ status: 200, text: '' });
  const card = await answer;
  await bot.settled();
  expect(card).toMatchObject({ response_type: 'ephemeral', replace_original: false });
  return card;
}

async function pressed(card: Fields, label: string, more: { channel?: string; isEphemeral?: boolean } = {}) {
  const button = buttonsOf(card).find(({ text }) => text.text === label);
  if (button === undefined) throw new Error(`no button ${label} among ${buttonsOf(card).map(({ text }) => text.text)}`);
  const { action_id: actionId, value } = button;
  expect(await bot.send(press({ actionId, value, isEphemeral: true, ...more }))).toEqual({ status: 200, text: '' });
}

async function planned(): Promise<Fields> {
  await answered('/gauge', '110 rows in 22 in, 46 needles, 6 3/4 in flat');
  return answered('/rows', 'pouch 11 in wide');
}

test('/gauge records and /rows plans for the asker alone, until the size is posted in the channel', async () => {
  const plan = await planned();
  expect(plan.text).toMatch(/^Knit 109 rows on 46 needles/);
  expect(plan.text).toContain('post this here');
  const whisper = bot.api.expectsResponse(RESPONSE_URL);
  const shown = bot.api.expectsResponse(RESPONSE_URL);
  await pressed(plan, 'Post Here');
  await bot.settled();
  const both = await Promise.all([whisper, shown]);
  const post = both.find(({ response_type: type }) => type === 'in_channel');
  expect(both.find(({ response_type: type }) => type === 'ephemeral')?.text).toMatch(/^Shared with this channel/);
  expect(post?.text).toMatch(/^.* shared a plan: pouch, 11 in wide/i);
  expect(post?.text).not.toMatch(/109|46/);
});

test('words do what Post Here does', async () => {
  await planned();
  const posts = [bot.api.expectsResponse(RESPONSE_URL), bot.api.expectsResponse(RESPONSE_URL)];
  await bot.send(command('/walewright', 'post this here'));
  await bot.settled();
  expect((await Promise.all(posts)).map(({ response_type: type }) => type).sort()).toEqual(['ephemeral', 'in_channel']);
});

test('Start Knitting from a command puts the row counter into the direct message, where it goes on', async () => {
  const plan = await planned();
  const answer = bot.api.expectsResponse(RESPONSE_URL);
  const post = bot.api.expects('chat.postMessage');
  await pressed(plan, 'Start Knitting');
  await bot.settled();
  expect((await answer).text).toMatch(/^Started, and counted in our direct message/);
  const counter = await post;
  expect(counter).toMatchObject({ channel: MAKER, text: expect.stringMatching(/^Row 0 of 109: 109 to go/) });
  expect(buttonsOf(counter).map(({ accessibility_label: spoken }) => spoken)).toEqual([
    'Add one row, to row 1',
    'Add ten rows, to row 10',
  ]);
  const updated = bot.api.expects('chat.update');
  await pressed(counter, '+10 Rows', { channel: DIRECT, isEphemeral: false });
  const now = await updated;
  await bot.settled();
  expect(now.text).toMatch(/^Row 10 of 109/);
  const undone = bot.api.expects('chat.postMessage');
  await pressed(now, 'Undo', { channel: DIRECT, isEphemeral: false });
  await bot.settled();
  expect((await undone).text).toMatch(/^Taken back: row 10/);
});

test('undo of a start from a command takes the work off the machine again', async () => {
  const plan = await planned();
  const answer = bot.api.expectsResponse(RESPONSE_URL);
  bot.api.expects('chat.postMessage');
  await pressed(plan, 'Start Knitting');
  await bot.settled();
  expect((await answered('/walewright', 'undo')).text).toMatch(/^Taken back: start of the pouch/);
  expect((await answer).text).toContain('Pouch on the 46: 109 rows.');
  const tally = bot.api.expects('chat.postMessage');
  await bot.send(directMessage('tally'));
  expect((await tally).text).toMatch(/^Nothing is on the machine/);
});

test('a command given in a direct message has no channel to post to', async () => {
  await answered('/gauge', '110 rows in 22 in, 46 needles, 6 3/4 in flat');
  const answer = bot.api.expectsResponse(RESPONSE_URL);
  await bot.send({ ...command('/rows', 'pouch 11 in wide'), channel_id: DIRECT });
  expect(buttonsOf(await answer).map(({ text }) => text.text)).not.toContain('Post Here');
});

test('40,000 characters and pings in a command are answered in words, to the asker alone', async () => {
  const long = await answered('/rows', `${'<!channel> pouch '.repeat(2400)}`.slice(0, 40_000));
  expect(long.text).toMatch(/^That is longer than I can read/);
  expect(long.text).not.toContain('<!channel>');
});

test('commands without words say what can be said', async () => {
  expect((await answered('/rows', '')).text).toMatch(/^Tell me what a piece must measure/);
  expect((await answered('/gauge', '')).text).toMatch(/^Which piece have you measured/);
  await planned();
  expect((await answered('/gauge', '')).text).toMatch(/^Your gauge: the 46/);
});
