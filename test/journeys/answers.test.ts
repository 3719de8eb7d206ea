import { afterEach, beforeEach, expect, test } from 'vitest';
import { type Journey, journey } from './harness.js';
import { CHANNEL, command, DIRECT, directMessage, mention, press, RESPONSE_URL } from './payloads.js';

let bot: Journey;
beforeEach(async () => {
  bot = await journey();
});
afterEach(() => bot.close());

test('a mention is answered in its thread, without the mention and without formatting', async () => {
  const post = bot.api.expects('chat.postMessage');
  const said = mention('pouch 10.5 &lt; 11 in');
  expect(await bot.send(said)).toEqual({ status: 200, text: '' });
  expect(await post).toMatchObject({
    channel: CHANNEL,
    thread_ts: said.event.ts,
    text: 'heard: pouch 10.5 &lt; 11 in',
    blocks: [],
    mrkdwn: 'false',
    unfurl_links: 'false',
    unfurl_media: 'false',
  });
});

test('a mention inside a thread is answered in that thread', async () => {
  const post = bot.api.expects('chat.postMessage');
  await bot.send(mention('hello', { thread_ts: '1762600000.000100' }));
  expect(await post).toMatchObject({ channel: CHANNEL, thread_ts: '1762600000.000100' });
});

test('a direct message is answered on the main line', async () => {
  const post = bot.api.expects('chat.postMessage');
  await bot.send(directMessage('hello'));
  expect(await post).not.toHaveProperty('thread_ts');
  expect(await post).toMatchObject({ channel: DIRECT, text: 'heard: hello' });
});

test('a direct message with a file or in a thread is answered', async () => {
  const posts = [bot.api.expects('chat.postMessage'), bot.api.expects('chat.postMessage')];
  await bot.send(directMessage('see this', { subtype: 'file_share', files: [] }));
  await bot.settled();
  await bot.send(directMessage('and here', { thread_ts: '1762600000.000100' }));
  const [file, thread] = await Promise.all(posts);
  expect(file).toMatchObject({ text: 'heard: see this' });
  expect(thread).toMatchObject({ text: 'heard: and here', thread_ts: '1762600000.000100' });
});

test.each(['/rows', '/gauge', '/walewright'])(
  '%s is acknowledged empty and answered to the asker alone',
  async (name) => {
    const answer = bot.api.expectsResponse(RESPONSE_URL);
    expect(await bot.send(command(name, 'hat for <@U1|lotte>'))).toEqual({ status: 200, text: '' });
    expect(await answer).toEqual({
      response_type: 'ephemeral',
      replace_original: false,
      text: 'heard: hat for @U1',
      blocks: [],
    });
  },
);

test('a button in a channel is answered to the presser alone', async () => {
  const answer = bot.api.expectsResponse(RESPONSE_URL);
  expect(await bot.send(press())).toEqual({ status: 200, text: '' });
  expect(await answer).toMatchObject({ response_type: 'ephemeral', text: 'pressed: turn-1 0' });
});

test('a button in a direct message is answered there', async () => {
  const post = bot.api.expects('chat.postMessage');
  await bot.send(press({ channel: DIRECT }));
  expect(await post).toMatchObject({ channel: DIRECT, text: 'pressed: turn-1 0' });
});

test('a delivery that Slack repeats is acknowledged again and answered once', async () => {
  const said = directMessage('hello');
  bot.api.expects('chat.postMessage');
  await bot.send(said);
  await bot.settled();
  const headers = { 'x-slack-retry-num': '1', 'x-slack-retry-reason': 'http_timeout' };
  expect(await bot.send(said, { headers })).toEqual({ status: 200, text: '' });
  await bot.settled();
  expect(await bot.store.outbox.nextAt()).toBeUndefined();
});
