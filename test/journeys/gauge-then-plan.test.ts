import { afterEach, beforeEach, expect, test } from 'vitest';
import { taken } from '../../bot/turn.js';
import { type Journey, journey } from './harness.js';
import { command, DIRECT, directMessage, press, RESPONSE_URL } from './payloads.js';

let bot: Journey;
beforeEach(async () => {
  bot = await journey(taken);
});
afterEach(() => bot.close());

async function answerTo(text: string) {
  const post = bot.api.expects('chat.postMessage');
  expect(await bot.send(directMessage(text))).toEqual({ status: 200, text: '' });
  await bot.settled();
  return post;
}

test('a maker who gives a gauge and then a size in a direct message is told the rows', async () => {
  const recorded = await answerTo('110 rows in 22 in, 46 needles, 6 3/4 in flat');
  expect(recorded).toMatchObject({ channel: DIRECT, text: expect.stringMatching(/^Recorded/) });
  const plan = await answerTo('rows for a pouch 10.5 to 11 in wide');
  expect(plan.text).toContain('Knit 106 rows');
  expect(JSON.stringify(plan.blocks)).toContain('Knit 106');
});

test('a gauge given in a direct message serves a command in a channel', async () => {
  await answerTo('110 rows in 22 in, 46 needles, 6 3/4 in flat');
  const answer = bot.api.expectsResponse(RESPONSE_URL);
  await bot.send(command('/rows', 'pouch 10.5 to 11 in wide'));
  expect((await answer).text).toContain('Knit 106 rows');
});

test('several sizes are posted as one table, and a button of it makes one of them a plan', async () => {
  await answerTo('110 rows in 22 in, 46 needles, 6 3/4 in flat');
  const sizes = await answerTo('pouches for 6, 8 and 10 in closures');
  const posted = sizes.blocks as { type: string; rows?: { text: string }[][]; elements?: Record<string, string>[] }[];
  const tables = posted.filter(({ type }) => type === 'table');
  expect(tables.map(({ rows }) => rows?.map(([first]) => first?.text))).toEqual([
    ['Closure', '6 in (15 cm)', '8 in (20.5 cm)', '10 in (25.5 cm)'].map((text) =>
      text.replaceAll(/(?<=\d) /g, '\u00a0'),
    ),
  ]);
  const button = posted.find(({ type }) => type === 'actions')?.elements?.[1];
  const post = bot.api.expects('chat.postMessage');
  await bot.send(press({ channel: DIRECT, actionId: button?.action_id ?? '', value: button?.value ?? '' }));
  expect((await post).text).toMatch(/^Knit \d+ rows.*\nChanged: closure, 8 in\./);
});

test('the first button of a plan does what it says, for the one who presses it', async () => {
  await answerTo('110 rows in 22 in, 46 needles, 6 3/4 in flat');
  const plan = await answerTo('rows for a pouch 10.5 to 11 in wide');
  const actions = (plan.blocks as { type: string; elements: { action_id: string; value: string }[] }[]).find(
    ({ type }) => type === 'actions',
  );
  const button = actions?.elements[0];
  const post = bot.api.expects('chat.postMessage');
  await bot.send(press({ channel: DIRECT, actionId: button?.action_id ?? '', value: button?.value ?? '' }));
  expect((await post).text).toMatch(/^Row 0 of 106: 106 to go/);
});

test('rows counted by the buttons of a card are counted on it, and no card is added', async () => {
  await answerTo('110 rows in 22 in, 46 needles, 6 3/4 in flat');
  await answerTo('rows for a pouch 10.5 to 11 in wide');
  let card = await answerTo('start');
  for (const rows of [10, 20]) {
    const elements = (card.blocks as { type: string; elements: Record<string, string>[] }[]).find(
      ({ type }) => type === 'actions',
    )?.elements;
    const ten = elements?.find(({ value }) => value?.includes('"index":1'));
    const update = bot.api.expects('chat.update');
    await bot.send(press({ channel: DIRECT, actionId: ten?.action_id ?? '', value: ten?.value ?? '' }));
    card = await update;
    expect(card).toMatchObject({ channel: DIRECT, ts: '1762600000.000100' });
    expect(card.text).toMatch(new RegExp(`^Row ${rows} of 106`));
    await bot.settled();
  }
});

test('a button that leads nowhere is answered in words', async () => {
  const answer = bot.api.expectsResponse(RESPONSE_URL);
  await bot.send(press({ actionId: 'else.0' }));
  expect((await answer).text).toMatch(/\w/);
});
