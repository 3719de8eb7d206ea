import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { taken } from '../../bot/turn.js';
import { type Journey, journey } from './harness.js';
import { CHANNEL, DIRECT, directMessage, type Envelope, MAKER, mention, press } from './payloads.js';
import type { Fields } from './slack-api.js';

let bot: Journey;
beforeEach(async () => {
  bot = await journey(taken);
});
afterEach(() => bot.close());

const POSTED = '1762700001.000200';
const GAUGE = '110 rows in 22 in, 46 needles, 6 3/4 in flat';
const PIECES = 'the pieces behind the 46';
const POUCH = 'rows for a pouch 10.5 to 11 in wide';

let said = 0;
/** A time stamp of a message sent so many minutes ago; each its own. */
const stamp = (minutesAgo = 0) => (Date.now() / 1000 - 60 * minutesAgo + ++said / 1000).toFixed(6);

const message = (text: string, minutesAgo = 0, more: Fields = {}) =>
  directMessage(text, { ts: stamp(minutesAgo), ...more });

const edit = ({ event }: Envelope, text: string) =>
  directMessage('', {
    subtype: 'message_changed',
    message: { ...event, text, edited: { user: MAKER, ts: stamp() } },
    previous_message: event,
  });

const deletion = ({ event }: Envelope) =>
  directMessage('', { subtype: 'message_deleted', previous_message: event, deleted_ts: event.ts });

/** Sends what is to be answered by this call of Slack's, and resolves with what that was sent. */
async function answerTo(body: Fields, method: 'chat.postMessage' | 'chat.update' = 'chat.postMessage') {
  const call = bot.api.expects(method);
  expect(await bot.send(body)).toEqual({ status: 200, text: '' });
  await bot.settled();
  return call;
}
const say = async (text: string) => (await answerTo(message(text))).text as string;

/** Says it, then edits it: the answer to the edit, on the same card. */
async function corrected(text: string, ...to: string[]) {
  const first = message(text);
  await answerTo(first);
  let card: Fields = {};
  for (const words of to) card = await answerTo(edit(first, words), 'chat.update');
  return { first, card, text: card.text as string };
}

const leadOf = (text: string) => text.split('\n')[0];

/** The buttons of a card, by what they say. */
function button({ blocks }: Fields, label: string) {
  const elements = (blocks as { type: string; elements?: Record<string, never>[] }[]).flatMap(({ type, elements }) =>
    type === 'actions' ? (elements ?? []) : [],
  );
  const found = elements.find(({ text }) => (text as unknown as { text: string }).text === label);
  if (found === undefined) throw new Error(`no button says ${label}`);
  const { action_id: actionId, value } = found as unknown as { action_id: string; value: string };
  return press({ channel: DIRECT, actionId, value });
}

describe('an edit of the last message', () => {
  test('is answered on the card of the first answer, which says so', async () => {
    await say(GAUGE);
    const { card, text } = await corrected(POUCH, 'rows for a pouch 11.5 to 12 in wide');
    expect(card).toMatchObject({ channel: DIRECT, ts: POSTED });
    expect(leadOf(text)).toMatch(/^Knit 116 rows/);
    expect(text).toContain('Read again after your edit.');
    expect(JSON.stringify(card.blocks)).toContain('Read again after your edit.');
    expect(text).not.toContain('Changed');
  });

  test('of a count keeps its row counter on the card, with its buttons', async () => {
    await say(GAUGE);
    await say(POUCH);
    await say('start');
    bot.api.expects('chat.update');
    const { card, text } = await corrected('+10', '+12');
    expect(leadOf(text)).toBe('Row 12 of 106: 94 to go');
    expect(JSON.stringify(card.blocks)).toContain('+1');
  });

  test('of a plan leaves the one before it as what undo goes back to', async () => {
    await say(GAUGE);
    await say(POUCH);
    await corrected('make it 12', 'make it 13');
    expect(await say('undo')).toContain('Your pouch now: width 10.5 to 11 in; 106 rows');
  });

  test('replaces a measurement, and undo then takes back the new one and no more', async () => {
    await say(GAUGE);
    const { text } = await corrected('80 rows in 18 in', '80 rows in 16 in');
    expect(leadOf(text)).toMatch(/^Recorded: 80 rows in 16 in/);
    const pieces = await say(PIECES);
    expect(pieces).toContain('80 rows in 16 in');
    expect(pieces).not.toContain('18 in');
    expect(await say('undo')).toMatch(/^Taken back: 80 rows in 16 in, rested\nMeasured now for the 46: 1 piece\./);
    expect(await say('put it back')).toMatch(/^Back: 80 rows in 16 in/);
  });

  test('can be edited again, and the last words alone stand', async () => {
    await say(GAUGE);
    const { text } = await corrected('80 rows in 18 in', '80 rows in 17 in', '80 rows in 16 in');
    expect(leadOf(text)).toMatch(/^Recorded: 80 rows in 16 in/);
    const pieces = await say(PIECES);
    expect([...pieces.matchAll(/80 rows in \d+ in/g)].map(String)).toEqual(['80 rows in 16 in']);
  });

  test('puts right words that could not be read, or that failed half way', async () => {
    const unread = await corrected('fnord', GAUGE);
    expect(leadOf(unread.text)).toMatch(/^Recorded: 110 rows/);
    const half = await corrected('80 rows in 16 in, pouch 400 in wide', '80 rows in 16 in, pouch 12 in wide');
    expect(leadOf(half.text)).toMatch(/^Knit \d+ rows/);
    expect(half.text).toContain('Recorded on the way: 80 rows in 16 in');
    expect(await say(PIECES)).toMatch(/^2 measurements/);
  });

  test('that fails leaves what was stored as it was, says so, and can be edited right', async () => {
    await say(GAUGE);
    const { first, text } = await corrected(POUCH, '70 rows in 14 in, pouch 400 in wide');
    expect(text).toContain('which changes nothing: what your message did before still stands');
    expect(text).toContain('The rest of the message was not done.');
    expect(text).not.toContain('Recorded');
    expect(await say(PIECES)).not.toContain('70 rows');
    expect(await say('steps')).toContain('106 rows');
    expect(leadOf((await answerTo(edit(first, 'pouch 12 in wide'))).text as string)).toBe('That edit changes nothing');
  });

  test('that failed can be edited right on the same card', async () => {
    await say(GAUGE);
    const { text } = await corrected(POUCH, 'pouch 400 in wide', 'pouch 12 in wide');
    expect(leadOf(text)).toMatch(/^Knit \d+ rows on 46 needles/);
    expect(await say('undo')).toMatch(/^Taken back: the pouch/);
  });

  test('reads the new words as the first ones were: by the unit, machine and question of then', async () => {
    await say(GAUGE);
    await corrected('60 rows in 27 cm on the 52', '60 rows in 12 in');
    expect(await say(PIECES)).toContain('60 rows in 12 in');
    await say('rows for a pouch');
    const { text } = await corrected('11', '12');
    expect(leadOf(text)).toMatch(/^Knit 11\d rows/);
  });

  test('is answered in the post itself while that waits to be sent', async () => {
    await say(GAUGE);
    bot.api.expects('chat.postMessage', { status: 429, headers: { 'retry-after': '1' } });
    const first = message(POUCH);
    await bot.send(first);
    await bot.settled();
    const posted = bot.api.expects('chat.postMessage');
    await bot.send(edit(first, 'rows for a pouch 11.5 to 12 in wide'));
    expect(leadOf((await posted).text as string)).toMatch(/^Knit 116 rows/);
    await bot.settled();
    expect(await bot.store.outbox.nextAt()).toBeUndefined();
  });

  test('is posted anew where its card is gone', async () => {
    await say(GAUGE);
    const first = message(POUCH);
    await answerTo(first);
    bot.api.expects('chat.update', { body: { ok: false, error: 'message_not_found' } });
    const text = (await answerTo(edit(first, 'pouch 12 in wide'))).text as string;
    expect(leadOf(text)).toMatch(/^Knit \d+ rows/);
  });

  test('acts once, however often Slack tells it', async () => {
    await say(GAUGE);
    const first = message('80 rows in 18 in');
    await answerTo(first);
    const again = edit(first, '80 rows in 16 in');
    await answerTo(again, 'chat.update');
    expect(await bot.send(again)).toEqual({ status: 200, text: '' });
    await bot.settled();
    expect(await say(PIECES)).toMatch(/^2 measurements/);
  });

  test('leaves its buttons to the new card', async () => {
    await say(GAUGE);
    const { card } = await corrected(POUCH, 'rows for a pouch 11.5 to 12 in wide');
    const started = (await answerTo(button(card, 'Start Knitting'))).text as string;
    expect(leadOf(started)).toBe('Row 0 of 116: 116 to go');
  });
});

describe('an edit changes nothing and is told so', () => {
  const NOTHING = 'That edit changes nothing';

  test('once another message was answered', async () => {
    await say(GAUGE);
    const first = message('80 rows in 18 in');
    await answerTo(first);
    await say(POUCH);
    expect(leadOf((await answerTo(edit(first, '80 rows in 16 in'))).text as string)).toBe(NOTHING);
    expect(await say(PIECES)).toContain('80 rows in 18 in');
  });

  test('once a button was pressed', async () => {
    await say(GAUGE);
    const first = message(POUCH);
    await answerTo(button(await answerTo(first), 'Start Knitting'));
    expect(leadOf((await answerTo(edit(first, 'pouch 12 in wide'))).text as string)).toBe(NOTHING);
    expect(await say('why')).toContain('Why 106 rows');
  });

  test('and the last message can still be edited after it', async () => {
    const gauge = message(GAUGE);
    await answerTo(gauge);
    const last = message(POUCH);
    await answerTo(last);
    await answerTo(edit(gauge, '100 rows in 22 in'));
    const text = (await answerTo(edit(last, 'rows for a pouch 11.5 to 12 in wide'), 'chat.update')).text as string;
    expect(leadOf(text)).toMatch(/^Knit 116 rows/);
  });

  test('where it took something back', async () => {
    await say(GAUGE);
    const undo = message('undo');
    await answerTo(undo);
    expect(leadOf((await answerTo(edit(undo, POUCH))).text as string)).toBe(NOTHING);
  });
});

describe('an edit is left in silence', () => {
  test.each([
    ['after 10 minutes', message('80 rows in 18 in', 11), '80 rows in 16 in'],
    ['of no word', message('80 rows in 18 in'), '80 rows in 18 in'],
  ])('%s', async (_, first, words) => {
    await say(GAUGE);
    await answerTo(first);
    expect(await bot.send(edit(first, words))).toEqual({ status: 200, text: '' });
    await bot.settled();
    expect(await say(PIECES)).toContain('80 rows in 18 in');
  });
});

describe('a mention that Slack tells again with its edit', () => {
  const thread = '1762500000.000300';
  const at = (words: string, more: Fields = {}) => mention(words, { ts: stamp(), thread_ts: thread, ...more });
  const told = ({ event }: Envelope, words: string) =>
    at(words, { ts: event.ts, edited: { user: MAKER, ts: stamp() } });

  test('is answered on its card in the thread', async () => {
    await say(GAUGE);
    const first = at(POUCH);
    expect(await answerTo(first)).toMatchObject({ channel: CHANNEL, thread_ts: thread });
    const card = await answerTo(told(first, 'rows for a pouch 11.5 to 12 in wide'), 'chat.update');
    expect(card).toMatchObject({ channel: CHANNEL, ts: POSTED });
    expect(leadOf(card.text as string)).toMatch(/^Knit 116 rows/);
  });

  test('never shows in the thread what is for the maker alone', async () => {
    const first = at(GAUGE);
    const call = bot.api.expects('chat.postEphemeral');
    await bot.send(first);
    await call;
    await bot.settled();
    const again = bot.api.expects('chat.postEphemeral');
    await bot.send(told(first, '110 rows in 21 in, 46 needles, 6 3/4 in flat'));
    expect((await again).text).toContain('Recorded: 110 rows in 21 in');
    await bot.settled();
  });

  test('is read as any other where the edit brought the mention', async () => {
    await say(GAUGE);
    expect(leadOf((await answerTo(told(at(''), POUCH))).text as string)).toMatch(/^Knit 106 rows/);
  });
});

describe('a message deleted', () => {
  test('that recorded something takes nothing back, and its maker is told once what does', async () => {
    await say(GAUGE);
    const first = message('80 rows in 18 in');
    await answerTo(first);
    const text = (await answerTo(deletion(first))).text as string;
    expect(text).toMatch(/^Still here: 80 rows in 18 in, rested\nTo delete a message takes nothing back/);
    expect(await say('undo')).toMatch(/^Taken back: 80 rows in 18 in/);
  });

  test.each([
    ['is not the last', message(GAUGE), POUCH],
    ['recorded nothing', message(POUCH), undefined],
    ['was sent over 10 minutes ago', message(GAUGE, 11), undefined],
  ])('that %s is left in silence', async (_, first, next) => {
    await answerTo(first);
    if (next !== undefined) await say(next);
    expect(await bot.send(deletion(first))).toEqual({ status: 200, text: '' });
    await bot.settled();
    expect(await bot.store.outbox.nextAt()).toBeUndefined();
  });
});
