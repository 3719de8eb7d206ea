import { afterEach, beforeEach, expect, test } from 'vitest';
import { type Journey, journey } from './harness.js';
import { directMessage } from './payloads.js';

let bot: Journey;
beforeEach(async () => {
  bot = await journey();
});
afterEach(() => bot.close());

test('the challenge of a url verification is echoed', async () => {
  const answer = await bot.send({ type: 'url_verification', challenge: 'the-challenge' });
  expect(answer.status).toBe(200);
  expect(JSON.parse(answer.text)).toEqual({ challenge: 'the-challenge' });
});

test('a request signed with another secret gets 401 and stores nothing', async () => {
  expect(await bot.send(directMessage('hello'), { secret: 'another' })).toEqual({ status: 401, text: '' });
  expect(await bot.store.outbox.nextAt()).toBeUndefined();
});

test('a request signed over five minutes ago gets 401 and stores nothing', async () => {
  const timestamp = Math.floor(Date.now() / 1000) - 301;
  expect(await bot.send(directMessage('hello'), { timestamp })).toEqual({ status: 401, text: '' });
  expect(await bot.store.outbox.nextAt()).toBeUndefined();
});
