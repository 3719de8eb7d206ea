import { subscribe, unsubscribe } from 'node:diagnostics_channel';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { echoed } from './echoed.js';
import { type Journey, journey } from './harness.js';
import { command, DIRECT, directMessage, mention, press, RESPONSE_URL } from './payloads.js';

let bot: Journey;
let order: string[] = [];
const acknowledged = () => void order.push('acknowledged');

beforeEach(async () => {
  bot = await journey(
    async (turn, surroundings) => {
      await echoed(turn, surroundings);
      order.push('committed');
    },
    () => order.push('delivery woken'),
  );
  order = [];
  subscribe('http.server.response.finish', acknowledged);
});
afterEach(async () => {
  unsubscribe('http.server.response.finish', acknowledged);
  await bot.close();
});

test.each([
  ['mention', mention('hello')],
  ['direct message', directMessage('hello')],
  ['button', press({ channel: DIRECT })],
])('a %s is committed, then acknowledged, and only then posted', async (_, body) => {
  bot.api.expects('chat.postMessage').then(() => order.push('posted'));
  await bot.send(body);
  await bot.settled();
  expect(order).toEqual(['committed', 'acknowledged', 'delivery woken', 'posted']);
});

test('a command is committed, then acknowledged, and only then posted', async () => {
  bot.api.expectsResponse(RESPONSE_URL).then(() => order.push('posted'));
  await bot.send(command('/rows', 'hat'));
  await bot.settled();
  expect(order).toEqual(['committed', 'acknowledged', 'delivery woken', 'posted']);
});
