import { afterEach, expect, test } from 'vitest';
import type { SlackParts } from '../../bot/slack/app.js';
import { echoed } from './echoed.js';
import { type Journey, journey } from './harness.js';
import { command, directMessage, press, RESPONSE_URL } from './payloads.js';

let bot: Journey;
afterEach(() => bot.close());

/** A store that goes down when the card of the first turn is already queued. */
function downOnce(): SlackParts['taken'] {
  let isDown = true;
  return async (turn, surroundings) => {
    if (!isDown) return echoed(turn, surroundings);
    isDown = false;
    await surroundings.store.within(turn.slackTeamId, async (bound) => {
      await bound.deliveries.claim(turn.key, turn.at);
      await bound.outbox.add(
        'card',
        { to: 'post', channel: 'D1' },
        { text: '', blocks: [] },
        turn.at,
        turn.at + 60_000,
      );
      throw new Error('disk full');
    });
  };
}

test('an event that the store refuses gets 500, leaves nothing, and is answered when Slack repeats it', async () => {
  bot = await journey(downOnce());
  const said = directMessage('hello');
  expect(await bot.send(said)).toEqual({ status: 500, text: '' });
  expect(await bot.store.outbox.nextAt()).toBeUndefined();
  const post = bot.api.expects('chat.postMessage');
  expect(await bot.send(said, { headers: { 'x-slack-retry-num': '1' } })).toEqual({ status: 200, text: '' });
  expect(await post).toMatchObject({ text: 'heard: hello' });
});

test('a command that the store refuses is acknowledged with an apology to the asker', async () => {
  bot = await journey(downOnce());
  const answer = await bot.send(command('/rows', 'hat'));
  expect(answer.status).toBe(200);
  expect(JSON.parse(answer.text)).toMatchObject({
    response_type: 'ephemeral',
    text: expect.stringContaining('nothing was stored'),
  });
  expect(bot.logged()).toContain('disk full');
});

test('a button that the store refuses is not acknowledged, so that the presser sees it', async () => {
  bot = await journey(downOnce());
  expect((await bot.send(press())).status).toBe(500);
});

test('a rate limit is waited for as told and the card posted once', async () => {
  bot = await journey();
  bot.api.expects('chat.postMessage', { status: 429, headers: { 'retry-after': '1' } });
  const began = Date.now();
  await bot.send(directMessage('hello'));
  const second = bot.api.expects('chat.postMessage');
  expect(await second).toMatchObject({ text: 'heard: hello' });
  expect(Date.now() - began).toBeGreaterThanOrEqual(990);
  await bot.settled();
  expect(await bot.store.outbox.nextAt()).toBeUndefined();
});

test('a passing fault of Slack is tried again', async () => {
  bot = await journey();
  bot.api.expects('chat.postMessage', { status: 503 });
  bot.api.expects('chat.postMessage', { body: { ok: false, error: 'internal_error' } });
  const third = bot.api.expects('chat.postMessage');
  await bot.send(directMessage('hello'));
  expect(await third).toMatchObject({ text: 'heard: hello' });
});

test('a missing scope is logged by name, with where it belongs, and the card given up', async () => {
  bot = await journey();
  bot.api.expects('chat.postMessage', { body: { ok: false, error: 'missing_scope', needed: 'chat:write' } });
  await bot.send(directMessage('my own words'));
  await bot.settled();
  expect(bot.logged()).toContain('add \\"chat:write\\" to oauth_config.scopes.bot');
  expect(bot.logged()).not.toContain('my own words');
  expect(await bot.store.outbox.nextAt()).toBeUndefined();
});

test('an expired response url is given up', async () => {
  bot = await journey();
  bot.api.expectsResponse(RESPONSE_URL, { status: 404 });
  await bot.send(command('/rows', 'hat'));
  await bot.settled();
  expect(bot.logged()).toContain('HTTP 404');
  expect(await bot.store.outbox.nextAt()).toBeUndefined();
});
