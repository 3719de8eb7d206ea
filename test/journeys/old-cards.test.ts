import { v7 } from 'uuid';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { taken } from '../../bot/turn.js';
import { type Journey, journey } from './harness.js';
import { CHANNEL, DIRECT, directMessage, mention, press, RESPONSE_URL } from './payloads.js';

const OWEN = { user: { id: 'U0OWEN', username: 'owen', name: 'owen', team_id: 'T0SHED' } };

let bot: Journey;
beforeEach(async () => {
  bot = await journey(taken);
});
afterEach(() => bot.close());

type Button = { action_id: string; value: string; text: { text: string } };
const buttonsOf = ({ blocks }: Record<string, unknown>): Button[] =>
  (blocks as { type: string; elements?: Button[] }[]).find(({ type }) => type === 'actions')?.elements ?? [];

async function post(body: Record<string, unknown>) {
  const posted = bot.api.expects('chat.postMessage');
  await bot.send(body);
  const card = await posted;
  await bot.settled();
  return card;
}

test('an old button in a direct message is answered with the plan as it is now', async () => {
  for (const text of ['110 rows in 22 in, 46 needles, 6 3/4 in flat', 'pouch 11 in wide'])
    await post(directMessage(text));
  const value = JSON.stringify({ turn: v7({ msecs: Date.parse('2025-11-09T12:00:00Z') }), index: 0 });
  const card = await post(press({ channel: DIRECT, value }));
  expect(card.text).toMatch(/^Knit 109 rows/);
  expect(card.text).toContain('That card is from Sunday 9 November 2025 and the plan has moved on. Here it is now.');
});

test("a button on another maker's card in a thread is answered to the presser alone, with its size to make one's own", async () => {
  const root = mention('110 rows in 22 in, 46 needles, 6 3/4 in flat');
  const threadTs = String(root.event.ts);
  bot.api.expects('chat.postEphemeral');
  await bot.send(root);
  await bot.settled();
  const plan = await post(mention('pouch 11 in wide', { thread_ts: threadTs }));
  expect(plan).toMatchObject({ channel: CHANNEL, thread_ts: threadTs });
  const [start] = buttonsOf(plan);
  const by = (button?: Button, isEphemeral = false) => {
    const made = press({ threadTs, actionId: button?.action_id ?? '', value: button?.value ?? '', isEphemeral });
    return { ...made, ...OWEN, container: { ...made.container, thread_ts: threadTs } };
  };
  const offered = bot.api.expectsResponse(RESPONSE_URL);
  expect(await bot.send(by(start))).toEqual({ status: 200, text: '' });
  const card = await offered;
  await bot.settled();
  expect(card).toMatchObject({
    response_type: 'ephemeral',
    text: expect.stringMatching(/^This is .*'s plan\. Size it to/),
  });
  expect(card.text).not.toContain('109');
  const asked = bot.api.expectsResponse(RESPONSE_URL);
  await bot.send(by(buttonsOf(card)[0], true));
  expect((await asked).text).toMatch(/^Which piece have you measured/);
});
