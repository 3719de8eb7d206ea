import { afterEach, beforeEach, expect, test } from 'vitest';
import { taken } from '../../bot/turn.js';
import { type Journey, journey } from './harness.js';
import {
  CHANNEL,
  DIRECT,
  directMessage,
  mention,
  opened,
  press,
  RESPONSE_URL,
  type ShownView,
  submission,
} from './payloads.js';
import type { Fields } from './slack-api.js';

let bot: Journey;
beforeEach(async () => {
  bot = await journey(taken);
});
afterEach(() => bot.close());

type Button = { action_id: string; value: string; text: { text: string } };
const buttonOf = ({ blocks }: Fields, label: string): Button => {
  const all = (blocks as { type: string; elements?: Button[] }[]).flatMap(({ elements = [] }) => elements);
  const button = all.find(({ text }) => text?.text === label);
  if (button === undefined) throw new Error(`no button ${label}`);
  return button;
};

async function posted(body: Record<string, unknown>): Promise<Fields> {
  const post = bot.api.expects('chat.postMessage');
  expect(await bot.send(body)).toEqual({ status: 200, text: '' });
  const card = await post;
  await bot.settled();
  return card;
}

const MEASURED = { 'bench.needles': '46', rows: '110', length: '22 in', flatWidth: '6 3/4 in' };

test('what is typed in a form that a channel opened is answered to its maker alone, and only once', async () => {
  const root = mention('pouch 11 in wide');
  const threadTs = String(root.event.ts);
  const question = await posted(root);
  expect(question).toMatchObject({ channel: CHANNEL, thread_ts: threadTs });
  const { action_id: actionId, value } = buttonOf(question, 'Fill In a Form');
  const open = bot.api.expects('views.open');
  const pressed = press({ actionId, value, threadTs });
  await bot.send({ ...pressed, container: { ...pressed.container, thread_ts: threadTs } });
  const view = (await open).view as ShownView;
  await bot.settled();
  const answer = bot.api.expectsResponse(RESPONSE_URL);
  expect(await bot.send(submission(view, MEASURED))).toEqual({ status: 200, text: '' });
  expect(await answer).toMatchObject({ response_type: 'ephemeral', text: expect.stringMatching(/^Knit 109 rows/) });
  await bot.settled();
  expect(await bot.send(submission(view, MEASURED))).toEqual({ status: 200, text: '' });
  expect(await bot.store.outbox.nextAt()).toBeUndefined();
});

test("a form button of another maker's question opens no form, and says whose card it is", async () => {
  const root = mention('pouch 11 in wide');
  const threadTs = String(root.event.ts);
  const { action_id: actionId, value } = buttonOf(await posted(root), 'Fill In a Form');
  const pressed = press({ actionId, value, threadTs });
  const answer = bot.api.expectsResponse(RESPONSE_URL);
  await bot.send({
    ...pressed,
    container: { ...pressed.container, thread_ts: threadTs },
    user: { id: 'U0OWEN', username: 'owen', name: 'owen', team_id: 'T0SHED' },
  });
  expect((await answer).text).toMatch(/^This is .*'s card/);
});

test('a row counter deleted meanwhile is posted again, with what was counted', async () => {
  for (const text of ['110 rows in 22 in, 46 needles, 6 3/4 in flat', 'pouch 11 in wide'])
    await posted(directMessage(text));
  const { action_id: actionId, value } = buttonOf(await posted(directMessage('start')), '+10 Rows');
  bot.api.expects('chat.update', { body: { ok: false, error: 'message_not_found' } });
  const again = await posted(press({ actionId, value, channel: DIRECT }));
  expect(again).toMatchObject({ channel: DIRECT, text: expect.stringMatching(/^Row 10 of 109/) });
});

test.each([
  ['a mention', mention, CHANNEL],
  ['a direct message', directMessage, DIRECT],
])('%s of 40,000 characters, or full of pings, is answered in words and pings nobody', async (_, say, channel) => {
  const long = await posted(say('pouch 11 in wide &lt;!channel&gt; '.repeat(1300).slice(0, 40_000)));
  expect(long).toMatchObject({ channel, text: expect.stringMatching(/^That is longer than I can read/) });
  const pings = await posted(say('pouch <!channel> *wide* `11` <!here> bananas'));
  expect(JSON.stringify(pings)).not.toMatch(/<!(?:channel|here)/);
});

test('a visit to Home that the store refuses is not acknowledged, and made when Slack repeats it', async () => {
  const visit = opened('home');
  await bot.store.within('T0SHED', (bound) => bound.makers.held('U0NADIA', 'Nadia', 1));
  const { within } = bot.store;
  bot.store.within = () => Promise.reject(new Error('disk full'));
  expect((await bot.send(visit)).status).toBe(500);
  bot.store.within = within;
  const page = bot.api.expects('views.publish');
  expect(await bot.send(visit, { headers: { 'x-slack-retry-num': '1' } })).toEqual({ status: 200, text: '' });
  expect(JSON.stringify(await page)).toContain('Three things to try');
});
