import { afterEach, beforeEach, expect, test } from 'vitest';
import { taken } from '../../bot/turn.js';
import { type Journey, journey } from './harness.js';
import { DIRECT, directMessage, MAKER, opened, pressOnHome } from './payloads.js';
import type { Fields } from './slack-api.js';

let bot: Journey;
beforeEach(async () => {
  bot = await journey(taken);
});
afterEach(() => bot.close());

type View = { type: string; blocks: { type: string; elements?: { value: string; text: { text: string } }[] }[] };
const viewOf = ({ view }: Fields) => view as View & Record<string, unknown>;
const buttonOf = ({ blocks }: View, label: string): string =>
  blocks.flatMap(({ elements = [] }) => elements).find(({ text }) => text?.text === label)?.value ?? '';

async function visit() {
  const page = bot.api.expects('views.publish');
  expect(await bot.send(opened('home'))).toEqual({ status: 200, text: '' });
  return viewOf(await page);
}

async function say(text: string): Promise<Fields> {
  const post = bot.api.expects('chat.postMessage');
  await bot.send(directMessage(text));
  const posted = await post;
  await bot.settled();
  return posted;
}

test('a maker who opens Home is published a page of their own, with their direct message in it', async () => {
  const published = bot.api.expects('views.publish');
  expect(await bot.send(opened('home'))).toEqual({ status: 200, text: '' });
  expect(await published).toMatchObject({ user_id: MAKER, view: { type: 'home', private_metadata: DIRECT } });
  expect(JSON.stringify(await published)).toContain('Three things to try');
});

test('a tally pressed on Home counts, and shows on Home alone', async () => {
  for (const text of ['110 rows in 22 in, 46 needles, 6 3/4 in flat', 'pouch 11 in wide', 'start']) await say(text);
  const view = await visit();
  await bot.settled();
  const next = bot.api.expects('views.publish');
  expect(await bot.send(pressOnHome(buttonOf(view, '+10 Rows'), view))).toEqual({ status: 200, text: '' });
  expect(JSON.stringify(viewOf(await next).blocks)).toContain('row 10 of');
});

test('a request pressed on Home is answered in the direct message', async () => {
  const view = await visit();
  const post = bot.api.expects('chat.postMessage');
  await bot.send(pressOnHome(buttonOf(view, 'Record a Gauge'), view));
  expect(await post).toMatchObject({ channel: DIRECT, text: expect.stringMatching(/^Which piece have you measured/) });
});

test('undo on Home takes back what the maker last said in the direct message', async () => {
  for (const text of ['110 rows in 22 in, 46 needles, 6 3/4 in flat', 'pouch 11 in wide', 'start']) await say(text);
  const old = bot.api.expects('chat.update');
  await say('+10');
  await old;
  const view = await visit();
  await bot.settled();
  const post = bot.api.expects('chat.postMessage');
  const next = bot.api.expects('views.publish');
  await bot.send(pressOnHome(buttonOf(view, 'Undo'), view));
  expect((await post).text).toMatch(/^Taken back: row 10/);
  expect(JSON.stringify(viewOf(await next).blocks)).toContain('row 0 of');
});

test('words in the direct message bring Home up to date', async () => {
  await visit();
  await bot.settled();
  const next = bot.api.expects('views.publish');
  await say('110 rows in 22 in, 46 needles, 6 3/4 in flat');
  expect(JSON.stringify(viewOf(await next).blocks)).toContain('Gauges, to 4');
});

test.each([
  ['no JSON', 'gone'],
  ['no request', '{"request":{"kind":"fly"}}'],
  ['nothing', ''],
])('a button of Home that carries %s is answered in words', async (_, value) => {
  const post = bot.api.expects('chat.postMessage');
  expect((await bot.send(pressOnHome(value, { type: 'home', private_metadata: DIRECT }))).status).toBe(200);
  expect((await post).text).toMatch(/^That card has moved on/);
});

test('a workspace whose app has no Home tab is told by the log which line of the manifest is missing', async () => {
  bot.api.expects('views.publish', { body: { ok: false, error: 'not_enabled' } });
  await bot.send(opened('home'));
  await bot.settled();
  expect(bot.logged()).toContain('home_tab_enabled');
});
