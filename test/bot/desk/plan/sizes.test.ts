import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { plainText } from '../../../../bot/cards/plain-text.js';
import { Conversation } from '../../../../bot/conversation.js';
import { PlanAsk } from '../../../../bot/request.js';
import { type Answer, codesOf, kindsOf, replyOf, type Talk, talk } from '../../talk.js';

const GAUGE = '52 needles, 120 rows, 56.6 cm long, 19.5 cm flat, grey medium';
const HEADBANDS = 'headbands for heads of 48, 52 and 56 cm';

let open: Talk;
beforeEach(async () => {
  open = await talk();
});
afterEach(() => open.close());

const rowsOf = (answer: Answer): (number | undefined)[] =>
  replyOf(answer, 'sizes').sizes.map(({ outcome }) => (outcome.ok ? outcome.value.rows : undefined));
const factOf = ({ card }: Answer, label: string): string | undefined =>
  card.facts.find((fact) => fact.label === label)?.text;

describe('several sizes', () => {
  beforeEach(async () => {
    await open.say(GAUGE);
  });

  test('come to the rows that each comes to alone', async () => {
    const together = rowsOf(await open.say(HEADBANDS));
    const alone: number[] = [];
    for (const cm of [48, 52, 56])
      alone.push(replyOf(await open.say(`headband for a ${cm} cm head`), 'plan').plan.rows);
    expect(together).toEqual(alone);
  });

  test('store nothing but the talk, until one is chosen', async () => {
    open.written();
    await open.say(HEADBANDS);
    expect(open.written()).toEqual(['conversation', 'delivery', 'maker']);
    expect((await open.conversation()).planId).toBeUndefined();
    await open.say('the second');
    expect(open.written()).toContain('plan');
  });

  test('lead with their rows, and tell of each in a row of one table in both units', async () => {
    const { card } = await open.say(HEADBANDS);
    expect(card.lead).toBe('Headbands for heads of 48, 52 and 56 cm: 90, 98 and 106 rows');
    expect(card.table?.columns).toEqual(['Head', 'Rows', 'Comes out', 'Chance', 'Yarn']);
    expect(card.table?.rows[1]).toEqual([
      '52 cm (20 1/2 in)',
      '98',
      '46.5 cm round (18 3/8 in)',
      'Likely (74%)',
      '134 m',
    ]);
    expect(card.body).toContain(
      'All on 52 needles, each about 19.5 cm tall (7 5/8 in). The graft adds one row to each.',
    );
  });

  test('say the yarn of all together, as much as their parts', async () => {
    const one = await open.say(HEADBANDS);
    const each = replyOf(one, 'sizes').sizes.map(({ outcome }) =>
      outcome.ok ? (outcome.value.yarn?.lengthM ?? 0) : 0,
    );
    const all = each.reduce((sum, metres) => sum + metres, 0);
    expect(factOf(one, 'Yarn')).toContain(`for all 3 sizes about ${Math.round(all)} m`);
    const two = await open.say('two of each');
    expect(two.card.body[0]).toBe('Changed: how many, 2 of each.');
    expect(factOf(two, 'Yarn')).toContain(`for 2 of each size about ${Math.round(2 * all)} m`);
    expect((await open.say('yarn for all')).card.lead).toMatch(/^About \d+ m of yarn for 2 of each size$/);
  });

  test('add up the notions that all of them take, and tell those that they differ in size by size', async () => {
    const pouches = await open.say('pouches with 6, 8 and 10 in zips');
    const own = 'by size, a closure of 6, 8 and 10 in (15, 20 and 25 cm)';
    expect(factOf(pouches, 'Notions')).toBe(`for all 3 sizes, 6 rings, 1 in kept for each; ${own}.`);
    await open.say('two of each');
    const asked = await open.say('notions for all');
    expect(asked.card.lead).toBe('Notions for 2 of each size');
    expect(factOf(asked, 'Notions')).toMatch(/^for 2 of each size, 12 rings/);
  });

  test('say once what is assumed of all, and of whom the rest is', async () => {
    const text = factOf(await open.say('hats for baby to adult'), 'Assumed') ?? '';
    expect(text.match(/36% of the head deep/g)).toHaveLength(1);
    expect(text).toContain('3 months, 6 months and 1 year: 3, 9 and 14% less round');
    expect(text).toContain('sizes of children by the published medians of their age');
  });

  test('name the years that no table holds, where sizes go from children to adults', async () => {
    const gap = '5 to 17 years: no published table; give the girth of the head.';
    expect((await open.say('hats for baby to adult')).card.body).toContain(gap);
    expect((await open.say('hats for babies, toddlers and adults')).card.body).not.toContain(gap);
  });

  test('tell of one that cannot be made why, beside the others', async () => {
    const { card } = await open.say('hats for 48 and 56 cm heads');
    expect(card.lead).toBe('Hats for heads of 48 and 56 cm: 47 rows; 1 cannot be made');
    expect(card.table?.rows[1]).toEqual([
      '56 cm (22 in)',
      '–',
      'Girth: your 52 needles make 39 cm, not 42 to 57 cm. Rows cannot change that; about 67 needles or 2 flat panels of 36 needles joined and sewn up would.',
      '–',
      '–',
    ]);
    const chosen = await open.say('the second');
    expect(codesOf(chosen)).toEqual(['needles_set_it']);
    expect(kindsOf(await open.say('the first'))).toEqual(['plan']);
  });

  test('that can none be made are the problem of the first, and its way out is that of all', async () => {
    expect(codesOf(await open.say('hats for women and men'))).toEqual(['needles_set_it']);
    expect(rowsOf(await open.say('the first'))).toEqual([106, 108]);
  });

  test('of a length that is missing are asked for it once, and keep waiting together', async () => {
    expect((await open.say('leg warmers for women and men')).card.lead).toBe('How long should they be?');
    expect(replyOf(await open.say('35 cm'), 'sizes').sizes.map(({ name }) => name)).toEqual(['women', 'men']);
  });

  test('beside another piece in one message are told in brief', async () => {
    const { card } = await open.say(`${HEADBANDS} and a cowl 60 cm round`);
    expect(card.lead).toBe('Knit 126 rows on 52 needles');
    expect(card.facts).toContainEqual({
      label: 'Also',
      text: 'headband, 48 cm 90 rows; 52 cm 98 rows; 56 cm 106 rows.',
    });
  });
});

describe('without a gauge or a unit', () => {
  test('the sizes wait for both, and are answered then', async () => {
    await open.say('pouches 10, 11 and 12 wide');
    expect(kindsOf(await open.say('inches'))).toEqual(['answer', 'question']);
    const answered = await open.say('110 rows in 22 in, 46 needles, 6 3/4 flat');
    expect(rowsOf(answered)).toHaveLength(3);
    expect(factOf(answered, 'Assumed')).toContain('10, 11 and 12 read in inches');
  });
});

describe('a follow-up to several sizes', () => {
  beforeEach(async () => {
    await open.say(GAUGE);
    await open.say(HEADBANDS);
  });

  test.each([
    ['5% smaller', 'ease, 5%', [96, 104, 112]],
    ['10 cm tall', 'height, 10 cm', [90, 98, 106]],
    ['on the 48', 'machine, the 48', [90, 98, 106]],
    ['50, 54 and 58 cm instead', 'sizes, 50 cm, 54 cm, 58 cm', [94, 102, 110]],
  ])('"%s" changes all of them: %s', async (text, changed, rows) => {
    const answer = await open.say(text);
    expect(answer.card.body[0]).toBe(`Changed: ${changed}.`);
    expect(rowsOf(answer)).toEqual(rows);
  });

  test('that says one value of what they differ in takes their place', async () => {
    const answer = await open.say('make it 54 cm');
    expect(replyOf(answer, 'plan').ask.values.head).toMatchObject({ mm: 540 });
    expect(replyOf(answer, 'plan').ask.sizes).toBeUndefined();
  });

  test('that chooses one makes an ordinary plan of it, and undo brings the others back', async () => {
    const { plan } = replyOf(await open.say('steps for 52'), 'plan');
    expect(plan.rows).toBe(98);
    expect((await open.say('undo')).card.body[0]).toBe('Your headband now: sizes 48 cm, 52 cm, 56 cm.');
    expect(rowsOf(await open.say('5% smaller'))).toEqual([96, 104, 112]);
  });

  test('shows the steps that were asked for, of that size alone', async () => {
    const { card } = await open.say('steps for 52');
    expect(plainText(card)).toContain('this is row 99');
  });

  test('"start 52" plans it and casts it on', async () => {
    const answer = await open.say('start 52');
    expect(kindsOf(answer)).toEqual(['plan', 'work']);
    expect(answer.card.lead).toBe('Row 0 of 98: 98 to go');
  });

  test.each(['start', 'steps', 'what would help', 'make it single'])(
    '"%s" asks which of them, and stores nothing',
    async (text) => {
      open.written();
      const answer = await open.say(text);
      expect(answer.card.lead).toBe('Which of the sizes do you mean?');
      expect(open.written()).not.toContain('work');
      expect(replyOf(await open.say('the third'), 'plan').plan.rows).toBe(106);
    },
  );

  test('a plan made before them is not started in their place', async () => {
    await open.say('cowl 60 cm round');
    await open.say(HEADBANDS);
    expect(kindsOf(await open.say('start'))).toEqual(['question']);
  });

  test('a button chooses the size that it names', async () => {
    const { offers } = replyOf(await open.say(HEADBANDS), 'sizes');
    expect(offers.map(({ button }) => button)).toEqual(['48 cm', '52 cm', '56 cm', 'My Gauge']);
    expect(replyOf(await open.press(2), 'plan').plan.rows).toBe(106);
  });
});

test('an ask and a talk from before there were several sizes are read as they were', () => {
  const ask = { piece: 'pouch', copies: 1, values: {}, on: {}, focus: [] };
  expect(PlanAsk.parse(ask)).toEqual(ask);
  expect(Conversation.parse({ v: 1, subject: ask, planId: 'p', offered: [], changes: [] }).subject).toEqual(ask);
});

test('more than twelve sizes are refused with the limit, and twelve are planned', async () => {
  await open.say(GAUGE);
  const upTo = (last: number): string =>
    `headbands for ${Array.from({ length: last - 40 }, (_, i) => 40 + i).join(', ')} and ${last} cm heads`;
  expect(replyOf(await open.say(upTo(51)), 'sizes').sizes).toHaveLength(12);
  const { card } = await open.say(upTo(52));
  expect(card.lead).toBe('I read more than 12 sizes');
  expect(card.body[0]).toMatch(/^I plan up to 12 in one go/);
});
