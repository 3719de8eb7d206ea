import { expect, test } from 'vitest';
import { type Answer, MEDIUM, POUCH, talk } from '../talk.js';

const PRICES = ['my time is 16 an hour', 'grey medium is 50 g / 105 m at 6.20'];

async function lastCard(...lines: string[]): Promise<Answer['card']> {
  const { sayAll, close } = await talk();
  const { card } = await sayAll(...lines);
  await close();
  return card;
}

/** The brief answers that a message had beside the one that leads. */
async function also(...lines: string[]): Promise<{ lead: string; also: string[] }> {
  const card = await lastCard(...lines);
  return { lead: card.lead, also: card.facts.flatMap(({ label, text }) => (label === 'Also' ? [text] : [])) };
}

test('every answer of a message is told: the last leads, those before it stand in brief', async () => {
  const { lead, also: brief } = await also(MEDIUM, ...PRICES, POUCH, 'how long does it take and what does it cost?');
  expect(lead).toMatch(/^One pouch costs at least \d+\.\d\d$/);
  expect(brief).toEqual([
    expect.stringMatching(/^About 1 h .* for one pouch\. 8 times in 10 between .*Assumed: the usual pace/),
  ]);
});

test('what was undone is named, though what was asked next leads', async () => {
  const { lead, also: brief } = await also(MEDIUM, POUCH, 'make it 13', 'undo and make it 12 wide');
  expect(lead).toMatch(/^Knit 119 rows/);
  expect(brief).toEqual([expect.stringMatching(/^Taken back: .*13/)]);
});

test('a gauge asked for beside a cost is told row by row', async () => {
  const { also: brief } = await also(MEDIUM, ...PRICES, POUCH, 'my gauge and what does it cost');
  expect(brief).toEqual([expect.stringMatching(/^Your gauge: the 46\. .*The 46: 20 \(19\.5\) rows/)]);
});

test('a plan before a cost tells the yarn that was asked for with it', async () => {
  const { also: brief } = await also(
    MEDIUM,
    ...PRICES,
    'rows for a pouch 11 wide, how much yarn and what does it cost?',
  );
  expect(brief).toEqual([expect.stringMatching(/^knit 109 rows on 46 needles\. .*Yarn: about 150 yd/)]);
});

test('a piece done before another is started is told, and so is that it was stored when the start cannot be', async () => {
  const { lead, also: brief } = await also(MEDIUM, POUCH, 'start', 'done, 10 7/8, start another');
  expect(lead).toMatch(/^Row 0 of 1\d\d/);
  expect(brief).toEqual([expect.stringMatching(/^Done, and inside: 10 7\/8 in wide\./)]);
});

test('what was stored before a refusal is never said to be nothing', async () => {
  const card = await lastCard(MEDIUM, POUCH, 'start', 'row 40, what does it cost?');
  expect(card.lead).toBe('I know no price yet');
  expect(card.body).not.toContain('Nothing was stored.');
});

test('steps asked for before a cost stay a list', async () => {
  const card = await lastCard(MEDIUM, ...PRICES, POUCH, 'steps and what does it cost');
  expect(card.lead).toMatch(/^One pouch costs/);
  expect(card.steps.length).toBeGreaterThan(5);
});

test('a cost without prices hides no time asked for with it', async () => {
  const { lead, also: brief } = await also(MEDIUM, POUCH, 'time and cost');
  expect(lead).toBe('I know no price yet');
  expect(brief).toEqual([expect.stringMatching(/^About 1 h .* for one pouch\./)]);
});

test('a hint that quotes what to say stands beside the words it is about', async () => {
  const { facts } = await lastCard(MEDIUM, 'pouch 11 in wide in stripes');
  expect(facts.at(-1)?.text).toBe('I could not use "stripes": say it as "stripes of 4 red 2 cream".');
});

test('where no yarn is left, what the rest takes is told', async () => {
  const card = await lastCard(MEDIUM, POUCH, 'start', 'row 40', 'I ran out of yarn');
  expect(card.lead).toMatch(/^69 rows to go: about \d+ yd of yarn more$/);
  expect(card.sayings).toEqual(['how many more balls do I need', 'where am I']);
});

test('a cost asked of several sizes asks which, whatever is on the machine', async () => {
  const card = await lastCard(MEDIUM, ...PRICES, POUCH, 'start', 'pouch 11 x 6 and 12 x 7, and what do they cost?');
  expect(card.lead).toMatch(/^Which/);
});
