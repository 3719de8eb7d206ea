import { afterEach, beforeEach, expect, test } from 'vitest';
import { taken } from '../../bot/turn.js';
import { type Journey, journey } from './harness.js';
import { DIRECT, directMessage, press } from './payloads.js';
import type { Fields } from './slack-api.js';

let bot: Journey;
beforeEach(async () => {
  bot = await journey(taken);
  for (const text of ['110 rows in 22 in, 46 needles, 6 3/4 in flat', 'pouch 11 in wide']) await said(text);
});
afterEach(() => bot.close());

/** Words in the direct message, and the card that answers them, which Slack calls `ts`. */
async function said(text: string, ts = '1762700001.000200'): Promise<Fields> {
  const post = bot.api.expects('chat.postMessage', { body: { ok: true, ts } });
  await bot.send(directMessage(text));
  const card = await post;
  await bot.settled();
  return card;
}

type Button = { action_id: string; value: string; text: { text: string } };
const buttonsOf = ({ blocks }: Fields): Button[] =>
  (blocks as { type: string; elements?: Button[] }[]).find(({ type }) => type === 'actions')?.elements ?? [];

test('a tally asked for again comes to the foot, and the one before it loses its buttons', async () => {
  await said('start', '1.1');
  const update = bot.api.expects('chat.update');
  const again = await said('tally', '2.2');
  expect(buttonsOf(again).map(({ text }) => text.text)).toContain('+1 Row');
  const old = await update;
  expect(old).toMatchObject({
    channel: DIRECT,
    ts: '1.1',
    text: expect.stringMatching(/^This row counter has moved on/),
  });
  expect(buttonsOf(old)).toEqual([]);
});

test('a counter that was pressed is the one that loses its buttons', async () => {
  const [plus] = buttonsOf(await said('start', '1.1'));
  const counted = bot.api.expects('chat.update');
  await bot.send(press({ actionId: plus?.action_id ?? '', value: plus?.value ?? '', channel: DIRECT }));
  const { ts } = await counted;
  await bot.settled();
  const old = bot.api.expects('chat.update');
  await said('row 60', '2.2');
  expect(await old).toMatchObject({ ts });
});

test('a counter deleted meanwhile is not posted anew to say that it has moved on', async () => {
  await said('start', '1.1');
  bot.api.expects('chat.update', { body: { ok: false, error: 'message_not_found' } });
  await said('tally', '2.2');
  expect(await bot.store.outbox.nextAt()).toBeUndefined();
});

test('work that is given up leaves no counter with buttons', async () => {
  await said('start', '1.1');
  const old = bot.api.expects('chat.update');
  await said('give it up', '2.2');
  expect(await old).toMatchObject({ ts: '1.1' });
  await said('start', '3.3');
});
