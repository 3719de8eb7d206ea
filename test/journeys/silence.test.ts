import { afterEach, beforeEach, expect, test } from 'vitest';
import { type Journey, journey } from './harness.js';
import { BOT, command, directMessage, mention, press } from './payloads.js';

let bot: Journey;
beforeEach(async () => {
  bot = await journey();
});
afterEach(() => bot.close());

const NOW = String(Date.now() / 1000);
const EDIT = { edited: { user: 'U1', ts: NOW } };
const said = (text: string, more = {}) => ({ type: 'message', user: 'U1', ts: NOW, text, ...more });
const edit = (message: object, previous_message: object) => ({
  subtype: 'message_changed',
  message,
  previous_message,
});

const UNANSWERED: [string, Record<string, unknown>][] = [
  ['a direct message of another bot', directMessage('hello', { bot_id: 'B1', user: 'U1' })],
  ['a message with the subtype bot_message', directMessage('hello', { bot_id: 'B1', subtype: 'bot_message' })],
  ['a direct message of its own', directMessage('hello', { user: BOT.userId, bot_id: BOT.botId })],
  ['a mention by another bot', mention('hello', { bot_id: 'B1' })],
  ['an edit', directMessage('', { subtype: 'message_changed', message: { text: 'hello' } })],
  ['a link preview', directMessage('', { subtype: 'message_changed', message: said('hat') })],
  ['an edit that changes no word', directMessage('', edit(said('hat', EDIT), said('hat')))],
  ['an edit of an old message', directMessage('', edit(said('cowl', { ...EDIT, ts: '1.2' }), said('hat')))],
  ['an edit of a card of mine', directMessage('', edit(said('cowl', { ...EDIT, bot_id: BOT.botId }), said('hat')))],
  ['a deletion', directMessage('', { subtype: 'message_deleted' })],
  ['a message in a channel', directMessage('hello', { channel: 'C1', channel_type: 'channel' })],
  ['a shortcut', { type: 'shortcut', callback_id: 'unknown', user: { id: 'U1' }, team: { id: 'T1' } }],
  ['a form', { type: 'view_submission', view: { callback_id: 'unknown' }, user: { id: 'U1' }, team: { id: 'T1' } }],
  ['a form closed', { type: 'view_closed', view: { callback_id: 'unknown' }, user: { id: 'U1' }, team: { id: 'T1' } }],
];

test.each(UNANSWERED)('%s is acknowledged and not answered', async (_, body) => {
  expect(await bot.send(body)).toEqual({ status: 200, text: '' });
  await bot.settled();
  expect(await bot.store.outbox.nextAt()).toBeUndefined();
});

test('a command that is not ours is told which ones are', async () => {
  const answer = await bot.send(command('/stitches', ''));
  expect(answer.status).toBe(200);
  expect(JSON.parse(answer.text)).toEqual({
    response_type: 'ephemeral',
    text: 'I answer to /rows, /gauge, /walewright.',
  });
});

test.each([
  ['is not one of ours', { actionId: 'else.0' }],
  ['carries no JSON', { value: 'steps' }],
  ['carries another shape', { value: '{"turn":1}' }],
])('a button that %s reaches the desk as one that leads nowhere', async (_, options) => {
  const answer = bot.api.expectsResponse('https://hooks.slack.com/commands/T0SHED/1/answer');
  expect(await bot.send(press(options))).toEqual({ status: 200, text: '' });
  expect(await answer).toMatchObject({ text: 'pressed:  -1' });
});
