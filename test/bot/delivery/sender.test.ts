import nock from 'nock';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { failure } from '../../../bot/delivery/failure.js';
import { sender } from '../../../bot/delivery/sender.js';
import type { Address } from '../../../bot/store/ports.js';

beforeEach(() => nock.disableNetConnect());
afterEach(() => {
  nock.cleanAll();
  nock.enableNetConnect();
});

const row = (address: Address, text = 'Knit 106 rows') => ({
  workspaceId: 'w',
  slackTeamId: 'T1',
  id: 'card',
  address,
  body: { text, blocks: [{ type: 'divider' }] },
  attempts: 1,
  expires: 1,
});

function posts() {
  return {
    chat: {
      postMessage: vi.fn(async () => ({ ts: '1.2' })),
      postEphemeral: vi.fn(async () => ({ message_ts: '1.3' })),
      update: vi.fn(async () => ({ ok: true })),
    },
    views: { publish: vi.fn(async () => ({ ok: true })) },
  };
}

test('a post says its text without formatting or previews, and its timestamp comes back', async () => {
  const slack = posts();
  expect(await sender(slack)(row({ to: 'post', channel: 'C1', threadTs: '1.1' }))).toBe('1.2');
  expect(slack.chat.postMessage.mock.calls).toEqual([
    [
      {
        channel: 'C1',
        thread_ts: '1.1',
        text: 'Knit 106 rows',
        blocks: [{ type: 'divider' }],
        mrkdwn: false,
        unfurl_links: false,
        unfurl_media: false,
      },
    ],
  ]);
});

test('what a maker typed cannot ping a channel through the text', async () => {
  const slack = posts();
  await sender(slack)(row({ to: 'post', channel: 'C1' }, 'I read <!channel> & more'));
  expect(slack.chat.postMessage).toHaveBeenCalledWith(
    expect.objectContaining({ text: 'I read &lt;!channel&gt; &amp; more' }),
  );
});

test('an answer for one person is posted so that no other sees it', async () => {
  const slack = posts();
  expect(await sender(slack)(row({ to: 'ephemeral', channel: 'C1', user: 'U1' }))).toBeUndefined();
  expect(slack.chat.postEphemeral).toHaveBeenCalledWith(expect.objectContaining({ channel: 'C1', user: 'U1' }));
  expect(slack.chat.postMessage).not.toHaveBeenCalled();
});

const URL_OF_COMMAND = 'https://hooks.slack.com/commands/T1/1/a';

test.each([
  [404, {}, { kind: 'lasting', why: 'HTTP 404' }],
  [500, {}, { kind: 'passing', why: 'HTTP 500' }],
  [429, { 'retry-after': '7' }, { kind: 'limited', why: 'rate limit', retryAfterMs: 7000 }],
  [429, {}, { kind: 'passing', why: 'HTTP 429' }],
])('a response url that answers %i with %j is a failure of its kind', async (status, headers, kind) => {
  nock('https://hooks.slack.com').post('/commands/T1/1/a').reply(status, '', headers);
  const error: unknown = await sender(posts())(row({ to: 'response', url: URL_OF_COMMAND })).catch((thrown) => thrown);
  expect(failure(error)).toEqual(kind);
});

test('a page goes to the Home of its maker, with the direct message in which its buttons answer', async () => {
  const slack = posts();
  expect(await sender(slack)(row({ to: 'home', user: 'U1', channel: 'D1' }))).toBeUndefined();
  expect(slack.views.publish.mock.calls).toEqual([
    [{ user_id: 'U1', view: { type: 'home', blocks: [{ type: 'divider' }], private_metadata: 'D1' } }],
  ]);
});

const CARD = { to: 'card', channel: 'D1', ts: '1.5' } as const;

test('a card made anew is the same message, its text escaped', async () => {
  const slack = posts();
  expect(await sender(slack)(row(CARD, 'Row <2>'))).toBe('1.5');
  const body = { text: 'Row &lt;2&gt;', blocks: [{ type: 'divider' }] };
  expect(slack.chat.update.mock.calls).toEqual([[{ ...body, channel: 'D1', ts: '1.5' }]]);
  expect(slack.chat.postMessage).not.toHaveBeenCalled();
});

test('a card that was deleted meanwhile is posted as a new one; another fault is a failure', async () => {
  const slack = posts();
  slack.chat.update.mockRejectedValueOnce({ data: { error: 'message_not_found' } });
  expect(await sender(slack)(row(CARD))).toBe('1.2');
  slack.chat.update.mockRejectedValueOnce({ data: { error: 'ratelimited' } });
  await expect(sender(slack)(row(CARD))).rejects.toEqual({ data: { error: 'ratelimited' } });
});

test('a card that is gone, or of which no message is known, is posted into the thread it belongs to', async () => {
  const slack = posts();
  slack.chat.update.mockRejectedValueOnce({ data: { error: 'message_not_found' } });
  await sender(slack)(row({ ...CARD, threadTs: '1.1' }));
  await sender(slack)(row({ to: 'again', channel: 'D1', threadTs: '1.1', row: 'r1' }));
  expect(slack.chat.postMessage.mock.calls).toMatchObject([[{ thread_ts: '1.1' }], [{ thread_ts: '1.1' }]]);
});
