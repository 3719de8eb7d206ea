import { v7 } from 'uuid';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { plainText } from '../../../bot/cards/plain-text.js';
import { AT, codesOf, MEDIUM, POUCH, replyOf, type Talk, talk } from '../talk.js';

const DAY_MS = 86_400_000;
const THREAD = { place: 'thread:C1:1.2', address: { to: 'post', channel: 'C1', threadTs: '1.2' } } as const;
const OWEN = { slackUserId: 'U2', name: 'Owen' };

let open: Talk;
beforeEach(async () => {
  open = await talk();
});
afterEach(() => open.close());

/** A button of a card made at `madeAt`, which no talk knows any more, pressed at `at`. */
const pressOld = (madeAt: number, at: number) =>
  open.take({ pick: { turn: v7({ msecs: madeAt }), index: 0 } }, { at }).then((answer) => {
    if (answer.status !== 'answered') throw new Error(answer.status);
    return answer;
  });

test('an old button brings the plan as it is now, and says from which day its card is', async () => {
  await open.sayAll(MEDIUM, POUCH, 'make it 12');
  const answer = await pressOld(AT - 3 * DAY_MS, AT + 3_600_000);
  const { text } = { text: plainText(answer.card) };
  expect(text).toMatch(/^Knit \d+ rows on 46 needles/);
  expect(text).toContain('That card is from Friday 6 November and the plan has moved on. Here it is now.');
  expect(text).toContain('12 in wide');
});

test('a card of the same day is said to be from earlier today', async () => {
  await open.sayAll(MEDIUM, POUCH);
  expect(plainText((await pressOld(AT - 60_000, AT + 3_600_000)).card)).toContain('That card is from earlier today');
});

test('a tally pressed the morning after, when the talk is forgotten, counts nothing and shows the work with new buttons', async () => {
  await open.sayAll(MEDIUM, POUCH, 'start', '+10');
  const answer = await pressOld(AT, AT + DAY_MS);
  const { work, offers } = replyOf(answer, 'work');
  expect(work.rows).toBe(10);
  expect(plainText(answer.card)).toContain('That card is from Monday 9 November, and nothing was counted.');
  expect(offers.map(({ button }) => button)).toEqual(['+1 Row', '+10 Rows', 'Undo']);
});

test('the last plan is found once the talk about it is forgotten, and can be started', async () => {
  await open.sayAll(MEDIUM, POUCH);
  const at = AT + 2 * DAY_MS;
  expect(plainText((await pressOld(AT, at)).card)).toContain('Here it is now.');
  expect(replyOf(await open.say('start', { at: at + 1 }), 'work').became).toBe('started');
});

test('without a plan or work an old button says to ask again, and so does one that names no time', async () => {
  expect(codesOf(await pressOld(AT - DAY_MS, AT + 1))).toEqual(['unread']);
  await open.sayAll(MEDIUM, POUCH);
  const answer = await open.take({ pick: { turn: 'gone', index: 0 } });
  expect(answer.status === 'answered' && answer.card.lead).toBe('That card has moved on');
});

test("a button on another maker's card in a thread offers its size, and nothing else of it", async () => {
  const nadia = [`${MEDIUM}, grey medium yarn`, POUCH];
  for (const text of nadia) await open.say(text, THREAD);
  const { turn } = (await open.conversation(THREAD)).offered.at(-1) ?? { turn: '' };
  const pressed = { ...THREAD, user: OWEN };
  const answer = await open.take({ pick: { turn, index: 0 } }, pressed);
  if (answer.status !== 'answered') throw new Error(answer.status);
  const text = plainText(answer.card);
  expect(text).toMatch(/^This is Nadia's plan\. Size it to your own gauge\?\nThe pouch, 11 in wide \(28 cm\)\./);
  expect(text).not.toMatch(/109|108|107|46|grey/);
  expect(await open.within((bound) => bound.works.open('U1'))).toEqual([]);
  await open.say('48 needles, 121 rows, 22 in long, 7 in flat', pressed);
  const offered = (await open.conversation(pressed)).offered.find(({ choices }) => choices[0]?.kind === 'plan');
  const sized = await open.take({ pick: { turn: offered?.turn ?? '', index: 0 } }, pressed);
  expect(sized.status === 'answered' && sized.card.lead).toMatch(/^Knit 120 rows on 48 needles/);
});

test("a button on another maker's card that is of no plan says whose it is", async () => {
  await open.say(MEDIUM, THREAD);
  const { turn } = (await open.conversation(THREAD)).offered.at(-1) ?? { turn: '' };
  const answer = await open.take({ pick: { turn, index: 0 } }, { ...THREAD, user: OWEN });
  expect(answer.status === 'answered' && plainText(answer.card)).toMatch(/^This is Nadia's card\nIts buttons are for/);
});

test('a card of another place or workspace is not found', async () => {
  for (const text of [MEDIUM, POUCH]) await open.say(text, THREAD);
  const { turn } = (await open.conversation(THREAD)).offered.at(-1) ?? { turn: '' };
  for (const more of [{ place: 'thread:C1:9.9' }, { slackTeamId: 'T2' }, { place: 'dm:D2' }]) {
    const answer = await open.take({ pick: { turn, index: 0 } }, { ...THREAD, user: OWEN, ...more });
    expect(answer.status === 'answered' && answer.card.lead).toBe('That card has moved on');
  }
});
