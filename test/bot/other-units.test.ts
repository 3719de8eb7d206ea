import { afterEach, beforeEach, expect, test } from 'vitest';
import { MEDIUM, POUCH, type Talk, talk } from './talk.js';

let open: Talk;
beforeEach(async () => {
  open = await talk();
  await open.sayAll(MEDIUM, POUCH);
});
afterEach(() => open.close());

const asks = async (text: string): Promise<boolean> =>
  (await open.say(text)).card.body.some((line) => line.startsWith('You typed centimetres three times running.'));

test('the third request in a row in another unit asks once whether to switch', async () => {
  expect(await asks('make it 28 cm')).toBe(false);
  expect(await asks('make it 29 cm')).toBe(false);
  const { card } = await open.say('make it 30 cm');
  expect(card.body).toContain(
    'You typed centimetres three times running. Shall I read your bare numbers so? Say "use cm".',
  );
  expect(card.sayings).toContain('use cm');
  expect(card.offers.at(-1)).toMatchObject({ button: 'Use Centimetres', request: { kind: 'set_units', units: 'cm' } });
  for (const text of ['make it 31 cm', 'make it 32 cm', 'make it 33 cm', 'make it 34 cm'])
    expect(await asks(text), text).toBe(false);
  expect(await open.kept()).toMatchObject({ maker: { units: 'in' } });
});

test('the button switches, and so do the words', async () => {
  await open.sayAll('make it 28 cm', 'make it 29 cm', 'make it 30 cm');
  const offered = (await open.conversation()).offered.at(-1)?.choices.length ?? 0;
  await open.press(offered - 1);
  expect(await open.kept()).toMatchObject({ maker: { units: 'cm' } });
});

test('a request in the maker’s own unit begins the count anew; one without a unit leaves it', async () => {
  await open.sayAll('make it 28 cm', 'make it 29 cm', 'make it 12 in');
  expect(await asks('make it 28 cm')).toBe(false);
  expect(await asks('steps')).toBe(false);
  expect(await asks('make it 29 cm')).toBe(false);
  expect(await asks('make it 30 cm')).toBe(true);
});

test('a maker whose unit nobody knows is not asked', async () => {
  const other = await talk();
  const { card } = await other.sayAll('pouch 28 cm wide', 'pouch 29 cm wide', 'pouch 30 cm wide', 'pouch 31 cm wide');
  expect(card.body.join(' ')).not.toContain('three times running');
  await other.close();
});

test('metres of yarn are no reason to ask', async () => {
  const ball = 'can I use red wool 50 g / 120 m instead?';
  for (const text of [ball, ball, ball]) expect(await asks(text), text).toBe(false);
});
