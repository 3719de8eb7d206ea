import { expect, test } from 'vitest';
import { MEDIUM, POUCH, talk } from '../../talk.js';

/** What the last of these lines was answered to take for granted. */
async function assumed(...lines: string[]): Promise<string> {
  const { sayAll, close } = await talk();
  const { card } = await sayAll(MEDIUM, POUCH, ...lines);
  await close();
  const fact = card.facts.find(({ label }) => label === 'Assumed')?.text ?? '';
  return [fact, ...card.body.filter((line) => line.startsWith('Assumed: '))].join(' ');
}

test('a reading, a finished size and a tolerance without a unit say the unit they were read in', async () => {
  expect(await assumed('start', 'row 60, 12 1/4')).toContain('12 1/4 read in inches');
  expect(await assumed('start', 'row 60, 12 1/4 in hanging')).toBe('');
  expect(await assumed('start', 'done, 10 7/8')).toContain('10 7/8 read in inches');
  expect(await assumed('start', 'done, 10 7/8 in')).not.toContain('read in');
  expect(await assumed('give or take 1/2')).toContain('1/2 read in inches');
});

test('a weight told alone says of which piece it is', async () => {
  expect(await assumed('swatch weighs 12 g')).toContain('of the piece recorded last, 110 rows in 22 in');
});

test('a yarn that was not named is said where its grams are counted on', async () => {
  const grey = ['110 rows in 22 in, 46 needles, 6 3/4 flat, grey medium', 'grey medium is 50 g / 105 m'];
  expect(await assumed(...grey, 'what can I make with 100 g')).toContain('grey medium, the yarn used last');
});
