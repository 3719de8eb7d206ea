import { afterEach, expect, test } from 'vitest';
import { taken } from '../../bot/turn.js';
import { echoed } from './echoed.js';
import { type Journey, journey } from './harness.js';
import { DIRECT, directMessage, MAKER, opened, TEAM } from './payloads.js';

let bot: Journey;
afterEach(() => bot.close());

const AGENT = ['chat:write', 'assistant:write'];
const slow: typeof echoed = async (turn, surroundings) => {
  await new Promise((resolve) => setTimeout(resolve, 1150));
  return echoed(turn, surroundings);
};

test('Messages is given prompts from what the maker has in hand', async () => {
  bot = await journey(taken, undefined, AGENT);
  const first = bot.api.expects('assistant.threads.setSuggestedPrompts');
  expect(await bot.send(opened('messages'))).toEqual({ status: 200, text: '' });
  expect(await first).toMatchObject({
    channel_id: DIRECT,
    prompts: [{ message: 'record a gauge' }, { message: 'rows for a pouch 11 in wide' }, { message: 'help' }],
  });
  for (const text of ['110 rows in 22 in, 46 needles, 6 3/4 in flat', 'pouch 11 in wide', 'start', 'pouch 8 in wide']) {
    bot.api.expects('chat.postMessage');
    await bot.send(directMessage(text));
    await bot.settled();
  }
  const then = bot.api.expects('assistant.threads.setSuggestedPrompts');
  await bot.send(opened('messages'));
  expect((await then).prompts).toEqual([
    { title: 'Where am I?', message: 'where am i' },
    { title: 'Start the pouch', message: 'start' },
    { title: 'What would help?', message: 'what would help' },
    { title: 'My gauge', message: 'my gauge' },
  ]);
});

test('an answer that takes over a second is shown as being worked on, and then as done', async () => {
  bot = await journey(slow, undefined, AGENT);
  const said = directMessage('hello');
  const statuses = [bot.api.expects('agents.sessions.setStatus'), bot.api.expects('agents.sessions.setStatus')];
  bot.api.expects('chat.postMessage');
  expect(await bot.send(said)).toEqual({ status: 200, text: '' });
  const thread = { channel_id: DIRECT, thread_ts: said.event.ts };
  expect(await Promise.all(statuses)).toEqual([
    expect.objectContaining({ ...thread, status: 'processing' }),
    expect.objectContaining({ ...thread, status: 'active' }),
  ]);
  await bot.settled();
});

test('a workspace whose Slack refuses the agent view is answered as ever', async () => {
  bot = await journey(slow, undefined, AGENT);
  for (const _ of ['processing', 'active'])
    bot.api.expects('agents.sessions.setStatus', { body: { ok: false, error: 'not_allowed' } });
  const post = bot.api.expects('chat.postMessage');
  await bot.send(directMessage('hello'));
  expect(await post).toMatchObject({ text: 'heard: hello' });
  await bot.settled();
  await new Promise((resolve) => setTimeout(resolve, 50));
});

test('without the scope neither prompts nor a status are tried', async () => {
  bot = await journey(slow);
  await bot.send(opened('messages'));
  const post = bot.api.expects('chat.postMessage');
  await bot.send(directMessage('hello'));
  expect(await post).toMatchObject({ text: 'heard: hello' });
});

const held = () => bot.store.within(TEAM, (bound) => bound.makers.held(MAKER, '', 1));

async function met(user: Record<string, unknown>) {
  bot = await journey(echoed, undefined, ['users:read']);
  const asked = bot.api.expects('users.info', { body: { ok: true, user } });
  for (const text of ['hello', 'again']) {
    bot.api.expects('chat.postMessage');
    await bot.send(directMessage(text));
    await bot.settled();
  }
  expect(await asked).toMatchObject({ user: MAKER });
}

test('the name and the time zone of a new maker are those of their Slack profile, asked for once', async () => {
  await met({ id: MAKER, tz: 'Europe/Amsterdam', profile: { display_name: 'Nadia' } });
  await expect.poll(held).toMatchObject({ name: 'Nadia', timeZone: 'Europe/Amsterdam' });
});

test('a time zone that is none is left', async () => {
  await met({ id: MAKER, tz: 'Mars/Olympus', profile: { real_name: 'Nadia' } });
  await expect.poll(held).toMatchObject({ name: 'Nadia', timeZone: 'UTC' });
});

test('a name and a time zone that the maker has given stay', async () => {
  bot = await journey(echoed, undefined, ['users:read']);
  await bot.store.within(TEAM, async (bound) => {
    const maker = await bound.makers.held(MAKER, 'Nadja', 1);
    await bound.makers.setTimeZone(maker.id, 'Europe/Vienna');
  });
  const user = { id: MAKER, tz: 'Europe/Amsterdam', profile: { display_name: 'Nadia' } };
  bot.api.expects('users.info', { body: { ok: true, user } });
  bot.api.expects('chat.postMessage');
  await bot.send(directMessage('hello'));
  await bot.settled();
  const isFirst = () =>
    bot.store.within(TEAM, async (bound) => bound.introductions.first((await bound.makers.held(MAKER, '', 1)).id, 1));
  await expect.poll(isFirst).toBe(false);
  expect(await held()).toMatchObject({ name: 'Nadja', timeZone: 'Europe/Vienna' });
});
