import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { plainText } from '../../bot/cards/plain-text.js';
import { type Answer, AT, MEDIUM, POUCH, type Talk, talk } from './talk.js';

let [edited, plain]: Talk[] = [];
beforeEach(async () => {
  [edited, plain] = [await talk(), await talk()];
});
afterEach(() => Promise.all([edited?.close(), plain?.close()]));

const ts = (AT / 1000).toFixed(6);
const textOf = ({ card }: Answer) =>
  plainText({ ...card, body: card.body.filter((line) => !/^Read again/.test(line)) });

/** Says `first` and edits it in one talk, says the edited words alone in another: what each answers, then and after. */
async function bothWays(before: readonly string[], first: string, words: string, after: readonly string[]) {
  if (edited === undefined || plain === undefined) throw new Error('two talks were opened');
  for (const text of before) for (const one of [edited, plain]) await one.say(text);
  await edited.say(first, { message: { ts, became: 'sent' } });
  const answers = [[await edited.say(words, { message: { ts, became: 'edited' } })], [await plain.say(words)]];
  for (const text of after) for (const [i, one] of [edited, plain].entries()) answers[i]?.push(await one.say(text));
  return answers.map((said) => said.map(textOf));
}

const BENCH = [MEDIUM, 'I have 3 balls of grey, lot 12, 50 g, 105 m', '5 balls of oat', POUCH, 'start'];
const AFTER = [
  'my gauge',
  'my shelf',
  'where am I',
  'my rates',
  'my hours',
  'stop the clock',
  'undo',
  'put it back',
  'undo',
  'undo',
];

describe('a message that was edited is answered as if it had been sent as it now reads', () => {
  test.each([
    '80 rows in 16 in',
    '80 rows in 33 cm',
    '80 rows in 16 in on the 52',
    '80 rows in 16 in, 70 rows in 14 in',
    'no, 23 in',
    'drop the 110',
    'use cm',
    'make it 12',
    'cowl 22 to 24 in',
    'two of them in stripes of 4 red 2 cream',
    'pouches for 6, 8 and 10 in closures',
    'row 40',
    'lost count, the machine says 30, the hand counter 32',
    'row 50, 12 in hanging',
    'stop at 100',
    'done, 11',
    'give up',
    'bought 4 more of grey, lot 12, at 6.50',
    'used 20 g of grey',
    'my time is 18 an hour',
    'took 85 minutes',
    'start the clock',
    '2 hours on weekdays',
    'my time zone is Europe/Berlin',
    'how many balls at 6.50 for 50 g / 105 m?',
    'what does it cost',
    'help',
    'fnord',
    '70 rows in 14 in, pouch 400 in wide',
  ])('where it was "%s"', async (first) => {
    const [now, alone] = await bothWays(BENCH, first, 'pouch 12 in wide', AFTER);
    expect(now).toEqual(alone);
  });

  test('where its unit was the first one typed', async () => {
    const [now, alone] = await bothWays([], 'rows for a cowl 60 cm round', 'rows for a pouch 11 wide', ['in', MEDIUM]);
    expect(now?.[0]).toMatch(/^Is 11 in inches or in centimetres\?/);
    expect(now).toEqual(alone);
  });
});

test('an edit of what was changed since from another place fails, and all stays', async () => {
  if (edited === undefined) throw new Error('a talk was opened');
  for (const text of BENCH) await edited.say(text);
  await edited.say('stop at 100', { message: { ts, became: 'sent' } });
  await edited.say('stop at 98', { place: 'command:C1' });
  const answer = await edited.say('stop at 101', { message: { ts, became: 'edited' } });
  expect(answer.card.lead).toMatch(/that has moved on since$/);
  expect(answer.card.body[0]).toMatch(/what your message did before still stands\.$/);
  expect((await edited.say('where am I')).card.lead).toContain('of 98');
});

test('an edit that comes before the message it is of is answered, and the message itself no more', async () => {
  if (edited === undefined) throw new Error('a talk was opened');
  await edited.say(MEDIUM, { message: { ts, became: 'sent' } });
  const later = (AT / 1000 + 1).toFixed(6);
  const answer = await edited.say('80 rows in 16 in', { message: { ts: later, became: 'edited' } });
  expect(answer.card.lead).toMatch(/^Recorded: 80 rows in 16 in/);
  expect(answer.card.body.join()).not.toContain('Read again');
  const late = await edited.take({ text: '80 rows in 18 in' }, { message: { ts: later, became: 'sent' } });
  expect(late.status).toBe('seen');
});
