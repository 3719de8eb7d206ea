import { afterEach, beforeEach, expect, test } from 'vitest';
import { plainText } from '../../../../bot/cards/plain-text.js';
import { codesOf, MEDIUM, POUCH, replyOf, type Talk, talk } from '../../talk.js';

let open: Talk;
beforeEach(async () => {
  open = await talk();
  await open.sayAll(MEDIUM, POUCH, 'start', '+40');
});
afterEach(() => open.close());

const worksOf = () => open.within(async (bound) => bound.works.open((await bound.makers.held('U1', 'Nadia', 1)).id));

test('work that unravelled is given up and its plan is at row 0 again', async () => {
  const [before] = await worksOf();
  const answer = await open.say('it unravelled, start over');
  expect(plainText(answer.card)).toMatch(
    /^Row 0 of 109: 109 to go\nThe one at row 40 is given up; it teaches nothing\./,
  );
  const [after, ...others] = await worksOf();
  expect(others).toEqual([]);
  expect([after?.planId, after?.rows, after?.id === before?.id]).toEqual([before?.planId, 0, false]);
});

test('undo takes it back whole, and it can be put back', async () => {
  const [before] = await worksOf();
  await open.say('the cat got it, starting again');
  expect(plainText((await open.say('undo')).card)).toMatch(/^Taken back: starting the pouch again\n.*row 40 of 109/s);
  expect(await worksOf()).toEqual([before]);
  await open.say('put it back');
  expect((await worksOf()).map(({ rows }) => rows)).toEqual([0]);
});

test('with nothing on the machine there is nothing to start over', async () => {
  await open.say('give it up');
  expect(codesOf(await open.say('start over'))).toEqual(['no_work']);
});

test('thanks while a question is open puts it again', async () => {
  await open.sayAll('flat panel');
  const reply = replyOf(await open.say('lovely, thanks'), 'answer');
  expect(reply.examples).toContain('never mind');
});

test('a thing of no kind names the nearest that is, and stores nothing', async () => {
  const { card } = await open.say('a pair of socks for size 8');
  expect(plainText(card).split('\n')).toEqual([
    'I cannot work out socks',
    'That takes a heel and a toe, and all I count are straight rows. The nearest I can size: wrist or leg warmers.',
    'Nothing was stored.',
    'You can say: wrist warmers 18 cm long for a hand of 18.5 cm, help.',
  ]);
});

test('a thing that nobody knows keeps its size while its kind is asked, and is named', async () => {
  const { card } = await open.say('rows for a tea towel 12 in');
  expect(card.lead).toBe('Which kind of piece is the tea towel?');
  await open.say('flat panel');
  const { ask } = replyOf(await open.say('6 in wide'), 'plan');
  expect([ask.piece, ask.values.length]).toMatchObject(['flat-panel', { said: '12 in' }]);
});
