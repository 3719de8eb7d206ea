import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { taken } from '../../bot/turn.js';
import { viewFaults } from '../bot/cards/block-faults.js';
import { type Journey, journey } from './harness.js';
import {
  BOT,
  CHANNEL,
  command,
  DIRECT,
  directMessage,
  MAKER,
  mention,
  press,
  RESPONSE_URL,
  type ShownView,
  submission,
} from './payloads.js';

const OWEN = 'U0OWEN1234';
const OWEN_DIRECT = 'D0OWEN';
const BESIDE_ONE = 2;

let bot: Journey;
beforeEach(async () => {
  bot = await journey(taken);
});
afterEach(() => bot.close());

/** Sends words, and resolves with every post they bring. */
async function posts(body: Record<string, unknown>, number = 1) {
  const expected = Array.from({ length: number }, () => bot.api.expects('chat.postMessage'));
  expect(await bot.send(body)).toEqual({ status: 200, text: '' });
  await bot.settled();
  return Promise.all(expected);
}

const fromOwen = (text: string) => directMessage(text, { user: OWEN, channel: OWEN_DIRECT });

type Button = { action_id: string; value: string };
const buttonsOf = ({ blocks }: Record<string, unknown>): Button[] =>
  (blocks as { type: string; elements?: Button[] }[]).find(({ type }) => type === 'actions')?.elements ?? [];

const pressedBy = (user: string, channel: string, { action_id, value }: Button) => ({
  ...press({ channel, actionId: action_id, value }),
  user: { id: user, username: 'owen', name: 'owen', team_id: 'T0SHED' },
});

async function planned(): Promise<void> {
  await posts(directMessage('110 rows in 22 in, 46 needles, 6 3/4 in flat'));
  await posts(directMessage('rows for a pouch 11 in wide'));
}

test('a co-maker mentioned gets the plan in a direct message, and its button sizes it where they never spoke', async () => {
  await planned();
  const both = await posts(directMessage(`share this with <@${OWEN}>`), BESIDE_ONE);
  const card = both.find(({ channel }) => channel === OWEN);
  expect(both.find(({ channel }) => channel === DIRECT)?.text).toMatch(
    new RegExp(`^Shared with <@${OWEN}>: the pouch`),
  );
  expect(card?.text).toMatch(/^<@U0NADIA> shared a plan with you: pouch, 11 in wide/);
  expect(JSON.stringify(card?.blocks)).toContain('{"type":"user","user_id":"U0NADIA"');
  expect(card?.text).not.toMatch(/\d{3}|46/);

  const [size] = buttonsOf(card ?? {});
  expect(Object.keys(JSON.parse(size?.value ?? '{}'))).toEqual(['turn', 'index']);
  const [asked] = await posts(pressedBy(OWEN, OWEN_DIRECT, size as Button));
  expect(asked).toMatchObject({ channel: OWEN_DIRECT, text: expect.stringMatching(/^Which piece have you measured/) });
  const [sized] = await posts(fromOwen('48 needles, 121 rows, 22 in long, 178.904 mm flat'));
  expect(sized?.text).toMatch(/^Knit 120 rows on 48 needles/);
});

test('a plan posted in a channel shows its size there, and its button answers the one who presses alone', async () => {
  await planned();
  const whisper = bot.api.expects('chat.postEphemeral');
  const shown = bot.api.expects('chat.postMessage');
  await bot.send(mention('post this here'));
  await bot.settled();
  expect((await whisper).text).toMatch(/^Shared with this channel/);
  const card = await shown;
  expect(card).toMatchObject({ channel: CHANNEL, text: expect.stringContaining('pouch, 11 in wide') });
  const answer = bot.api.expectsResponse(RESPONSE_URL);
  await bot.send(pressedBy(OWEN, CHANNEL, buttonsOf(card)[0] as Button));
  expect((await answer).text).toMatch(/^Which piece have you measured/);
});

test('the bot itself, mentioned in a command, is nobody to share with', async () => {
  const answer = bot.api.expectsResponse(RESPONSE_URL);
  await bot.send(command('/walewright', `share this with <@${BOT.userId}>`));
  expect((await answer).text).toMatch(/^Who should have it/);
});

describe('the form that shares', () => {
  /** The form behind the button of an answer to "share this". */
  async function opened(): Promise<ShownView> {
    await planned();
    const [asked] = await posts(directMessage('share this'));
    expect(asked?.text).toMatch(/^Who should have it/);
    const open = bot.api.expects('views.open');
    await bot.send(pressedBy(MAKER, DIRECT, buttonsOf(asked ?? {})[0] as Button));
    const { view } = await open;
    expect(viewFaults(view as Record<string, unknown>)).toEqual([]);
    return view as ShownView;
  }

  test('picks people, who get the size alone in their direct messages', async () => {
    const view = await opened();
    const both = await posts(submission(view, { to: OWEN }), BESIDE_ONE);
    expect(both.find(({ channel }) => channel === OWEN)?.text).toMatch(
      /^Nadia shared a plan with you: pouch, 11 in wide/,
    );
    expect(both.find(({ channel }) => channel === OWEN)?.text).not.toMatch(/109|46/);
    expect(both.find(({ channel }) => channel === DIRECT)?.text).toMatch(/^Shared with <@U0OWEN1234>: the pouch/);
    expect(await bot.send(submission(view, { to: OWEN }))).toEqual({ status: 200, text: '' });
    expect(await bot.store.outbox.nextAt()).toBeUndefined();
  });

  test('shares rows without asking again, since what they tell stands beside the choice', async () => {
    const both = await posts(submission(await opened(), { to: OWEN, show: 'rows' }), BESIDE_ONE);
    expect(both.find(({ channel }) => channel === OWEN)?.text).toContain('109 rows on 46 needles');
  });

  test.each([
    ['nobody', '', /Who should have it/],
    ['the bot itself', BOT.userId, /Who should have it/],
    ['oneself', MAKER, /yours already/],
  ])('says beside its field that %s cannot be chosen, and stores nothing', async (_, to, says) => {
    const view = await opened();
    const { errors } = JSON.parse((await bot.send(submission(view, { to }))).text);
    expect(errors.to).toMatch(says);
    expect(await bot.store.outbox.nextAt()).toBeUndefined();
  });

  test('opens from a command, answers the asker alone there, and does not open without a plan', async () => {
    const none = bot.api.expectsResponse(RESPONSE_URL);
    await bot.send(command('/walewright', 'share form'));
    expect((await none).text).toMatch(/^There is no plan/);
    await bot.settled();
    await planned();
    const open = bot.api.expects('views.open');
    await bot.send(command('/walewright', 'share form'));
    const { view } = await open;
    const answer = bot.api.expectsResponse(RESPONSE_URL);
    const [letter] = await posts(submission(view as ShownView, { to: OWEN }));
    expect(letter).toMatchObject({ channel: OWEN });
    expect(await answer).toMatchObject({ response_type: 'ephemeral', text: expect.stringMatching(/^Shared with/) });
  });
});

test('from the first word to a shared plan: greeted, measured, planned and shared, then sized by the co-maker', async () => {
  const [hello] = await posts(directMessage('hi'));
  expect(hello?.text).toMatch(/^Tell me what a piece must measure/);
  const [question] = await posts(directMessage('pouch 11 in wide'));
  expect(question?.text).toMatch(/^Which piece have you measured/);
  const [plan] = await posts(directMessage('110 rows in 22 in, 46 needles, 6 3/4 in flat'));
  expect(plan?.text).toMatch(/^Knit 109 rows on 46 needles/);
  const shared = await posts(directMessage(`share this with <@${OWEN}>, with my rows`));
  expect(shared[0]?.text).toMatch(/^Share your rows and needles with <@U0OWEN1234> too/);
  const both = await posts(directMessage('yes'), BESIDE_ONE);
  const letter = both.find(({ channel }) => channel === OWEN);
  expect(letter?.text).toContain("<@U0NADIA>'s own: 109 rows on 46 needles.");
  await posts(fromOwen('48 needles, 121 rows, 22 in long, 178.904 mm flat'));
  const [sized] = await posts(pressedBy(OWEN, OWEN_DIRECT, buttonsOf(letter ?? {})[0] as Button));
  expect(sized).toMatchObject({ channel: OWEN_DIRECT, text: expect.stringMatching(/^Knit 120 rows on 48 needles/) });
  expect(sized?.text).toContain("Beside <@U0NADIA>'s: 109 rows on 46 needles");
  const [results] = await posts(directMessage('how did it land'));
  // His press told his name; words in a direct message tell none.
  expect(results?.text).toContain('Owen: sized it.');
});

test('what is typed mentions nobody, whatever characters are in it', async () => {
  await posts(directMessage('110 rows in 22 in, 46 needles, 6 3/4 in flat'));
  const [shown] = await posts(directMessage('share this with \uFDD0U0OWEN1234\uFDD1'));
  expect(shown?.text).not.toContain('<@');
  expect(JSON.stringify(shown?.blocks)).not.toContain('"user"');
});
