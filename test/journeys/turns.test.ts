import { afterEach, beforeEach, expect, test } from 'vitest';
import type { Turn } from '../../bot/turn.js';
import { type Journey, journey } from './harness.js';
import { CHANNEL, command, DIRECT, directMessage, MAKER, mention, press, RESPONSE_URL, TEAM } from './payloads.js';

const THREAD = '1762500000.000300';

let bot: Journey;
let turns: Turn[];
beforeEach(async () => {
  turns = [];
  bot = await journey(async (turn) => void turns.push(turn));
});
afterEach(() => bot.close());

test('a command is a turn of the asker in that channel, keyed by its trigger', async () => {
  const said = command('/gauge', 'my gauge');
  await bot.send(said);
  expect(turns).toEqual([
    {
      key: `command:${said.trigger_id}`,
      slackTeamId: TEAM,
      place: `command:${CHANNEL}`,
      user: { slackUserId: MAKER, name: 'nadia' },
      at: expect.closeTo(Date.now(), -4),
      input: { text: 'my gauge' },
      command: '/gauge',
      address: { to: 'response', url: RESPONSE_URL },
    },
  ]);
});

test('an event is keyed by its id, and its sender named by id since Slack gives no name', async () => {
  const said = directMessage('hello');
  await bot.send(said);
  expect(turns).toMatchObject([
    { key: `event:${said.event_id}`, slackTeamId: TEAM, user: { slackUserId: MAKER, name: '' } },
  ]);
});

test('each thread is a place of its own, and so is the main line of a direct message', async () => {
  const root = mention('hello');
  await bot.send(root);
  await bot.send(mention('more', { thread_ts: THREAD }));
  await bot.send(directMessage('hello'));
  await bot.send(directMessage('more', { thread_ts: THREAD, subtype: 'thread_broadcast' }));
  expect(turns.map(({ place }) => place)).toEqual([
    `thread:${CHANNEL}:${root.event.ts}`,
    `thread:${CHANNEL}:${THREAD}`,
    `dm:${DIRECT}`,
    `thread:${DIRECT}:${THREAD}`,
  ]);
});

test('in a channel shared with another workspace a turn belongs to the one that installed the bot', async () => {
  const shared = { ...mention('hello'), team_id: 'T0OTHER' };
  await bot.send(shared);
  expect(turns).toMatchObject([{ slackTeamId: TEAM }]);
});

test('a press without a team belongs to the workspace of the token', async () => {
  await bot.send({ ...press(), team: null, user: { id: MAKER, username: 'nadia' } });
  expect(turns).toMatchObject([{ slackTeamId: TEAM, user: { slackUserId: MAKER, name: 'nadia' } }]);
});
