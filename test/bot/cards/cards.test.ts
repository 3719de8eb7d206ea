import { describe, expect, test } from 'vitest';
import { blocks } from '../../../bot/cards/blocks.js';
import { apology, type Card } from '../../../bot/cards/index.js';
import { plainText } from '../../../bot/cards/plain-text.js';
import type { Reply } from '../../../bot/reply.js';
import { percentOf, printedChance } from '../../../core/units/chance.js';
import { codesOf } from '../talk.js';
import { blockFaults, textsOf } from './block-faults.js';
import { replayed, shown } from './samples.js';

const SHOWN = await shown();
const APOLOGY = apology('K7Q2XX');
const CARDS: { title: string; card: Card }[] = [
  ...SHOWN.map(({ talk, text, answer }) => ({ title: `${talk}: ${text.slice(0, 60)}`, card: answer.card })),
  { title: 'an apology', card: APOLOGY },
];

/** Every kind of reply; one forgotten here does not compile. */
const KINDS: Record<Reply['kind'], true> = {
  answer: true,
  batch: true,
  buy: true,
  correction: true,
  cost: true,
  counts: true,
  finished: true,
  gauge: true,
  gauges: true,
  help: true,
  helps: true,
  hours: true,
  logged: true,
  machines: true,
  pieces: true,
  plan: true,
  problem: true,
  question: true,
  rates: true,
  shelf: true,
  sizes: true,
  sold: true,
  steps: true,
  stocked: true,
  time: true,
  work: true,
  yarn_left: true,
};

/** Numbers as shown, sorted; steps are numbered by the list in blocks and by hand in plain text. */
const numbersIn = (text: string): string[] =>
  text
    .replace(/^\d+\. /gm, '')
    .match(/\d+(?:[./]\d+)*/g)
    ?.sort() ?? [];

test('the talks show every kind of reply, and every problem but those that no typed request can bring', () => {
  const replies = SHOWN.flatMap(({ answer }) => answer.exchanges.map(({ reply }) => reply));
  expect([...new Set(replies.map(({ kind }) => kind))].sort()).toEqual(Object.keys(KINDS).sort());
  const codes = replies.flatMap((reply) => (reply.kind === 'problem' ? reply.problems.map(({ code }) => code) : []));
  expect([...new Set(codes)].sort()).toEqual(
    [
      'amount_outside',
      'bad_hours',
      'closure_too_long',
      'contents_too_big',
      'count_not_whole',
      'count_outside',
      'done_outside',
      'empty_window',
      'length_not_positive',
      'length_out_of_range',
      'needles_set_it',
      'no_batch',
      'no_clock',
      'no_reminders',
      'no_plan_yet',
      'no_such_zone',
      'no_yarn_named',
      'not_a_length',
      'not_in_team',
      'not_on_shelf',
      'not_whole',
      'nothing_to_remind',
      'nothing_to_undo',
      'of_cost',
      'of_stripes',
      'of_share',
      'of_time',
      'of_yarn',
      'price_too_fine',
      'ring_too_big',
      'says_too_little',
      'shelf_too_low',
      'spacing_outside',
      'timed_already',
      'too_many_needles',
      'unread',
      'wrong_kind',
    ].sort(),
  );
});

describe.each(CARDS)('the card of "$title"', ({ card }) => {
  const made = blocks(card, '0190c3c4-1111-7000-8000-000000000000');
  const plain = plainText(card);

  test('keeps to the limits of blocks, and holds no markup', () => {
    expect(blockFaults(made)).toEqual([]);
  });

  test('says the same numbers in blocks and in plain text', () => {
    expect(numbersIn(textsOf(made).join('\n'))).toEqual(numbersIn(plain));
  });

  test('leads with a line that a phone shows whole', () => {
    expect(card.lead.length).toBeLessThanOrEqual(80);
    expect(card.lead).toBe(card.lead.trim());
    expect(plain.split('\n')[0]).toBe(card.lead);
  });

  test('speaks as we speak', () => {
    expect(plain).not.toMatch(
      /!|\p{Extended_Pictographic}|\b(?:invalid|fail(?:ed|ure)?|errors?|warning|poor|risky)\b/iu,
    );
    expect(plain).not.toMatch(/undefined|NaN|Infinity|\[object|\.\.|,,| {2}|\(\)/);
  });

  test('says every chance in the words of its number', () => {
    for (const [, words, number] of plain.matchAll(/([A-Za-z ]+) \((under 1%|over 95%|\d+%)\)/g)) {
      expect(words?.toLowerCase()).toMatch(new RegExp(`${chanceWords(number ?? '')}$`));
    }
    expect(plain).not.toMatch(/\b(?:0|100)%/);
  });
});

/** The table of the design, by printed number. */
function chanceWords(printed: string): string {
  if (printed === 'under 1%') return 'unlikely';
  const percent = printed === 'over 95%' ? 96 : Number.parseInt(printed, 10);
  if (percent >= 95) return 'nearly certain';
  if (percent >= 80) return 'very likely';
  if (percent >= 60) return 'likely';
  if (percent >= 40) return 'about an even chance';
  return percent >= 20 ? 'less likely than not' : 'unlikely';
}

describe('a chance', () => {
  test.each([
    [0, 'unlikely (under 1%)'],
    [0.004, 'unlikely (under 1%)'],
    [0.194, 'unlikely (19%)'],
    [0.195, 'less likely than not (20%)'],
    [0.395, 'about an even chance (40%)'],
    [0.595, 'likely (60%)'],
    [0.69, 'likely (69%)'],
    [0.795, 'very likely (80%)'],
    [0.944, 'very likely (94%)'],
    [0.95, 'nearly certain (95%)'],
    [0.96, 'nearly certain (over 95%)'],
    [1, 'nearly certain (over 95%)'],
  ])('of %d is %s', (chance, words) => {
    expect(printedChance(chance)).toBe(words);
  });

  test('is never none and never certain, and its word follows the printed number', () => {
    for (let i = 0; i <= 1000; i++) {
      const number = percentOf(i / 1000);
      expect(number).not.toMatch(/^(?:0|100)%$/);
      expect(printedChance(i / 1000)).toBe(`${chanceWords(number)} (${number})`);
    }
  });
});

describe('what a card says can be said', () => {
  const quoted = (text: string): string[] => [...text.matchAll(/"([^"]+)"/g)].flatMap(([, words]) => words ?? []);
  const sayings = (card: Card): string[] => [
    ...card.sayings.map((words) => words.replace(/^"|"$/g, '')),
    ...card.facts
      .filter(({ label }) => ['Try', 'Or', 'Rows', 'Gauge', 'Shelf', 'Time', 'Any time'].includes(label))
      .flatMap(({ text }) => quoted(text)),
  ];
  const phrases = SHOWN.flatMap(({ text, before, answer }) =>
    sayings(answer.card).map((phrase) => ({ phrase, card: answer.card.lead, lines: [...before, text] })),
  );

  test('and every question offers answers', () => {
    const questions = SHOWN.filter(({ answer }) => answer.exchanges.at(-1)?.reply.kind === 'question');
    expect(questions.length).toBeGreaterThan(5);
    for (const { answer } of questions) expect(sayings(answer.card).length).toBeGreaterThan(0);
  });

  test.each(phrases)('"$phrase" is understood after "$card"', async ({ phrase, lines }) => {
    const open = await replayed(lines);
    const answer = await open.say(phrase);
    const refused = answer.exchanges.at(-1)?.reply.kind === 'problem';
    await open.close();
    expect(refused ? codesOf(answer) : []).not.toContain('unread');
  });

  const buttons = SHOWN.flatMap(({ text, before, answer: { card } }) =>
    card.offers.flatMap(({ say, button }, i) =>
      say ? [{ say, button, i, card: card.lead, lines: [...before, text] }] : [],
    ),
  );

  test.each(buttons)('"$say" does what $button does after "$card"', async ({ say, i, lines }) => {
    const [typed, pressed] = await Promise.all([replayed(lines), replayed(lines)]);
    expect((await typed.say(say)).card.lead).toBe((await pressed.press(i)).card.lead);
    await Promise.all([typed.close(), pressed.close()]);
  });
});

describe('an apology', () => {
  test('names the reference, and that nothing was stored', () => {
    expect(plainText(APOLOGY)).toBe(
      'That went wrong on my side; nothing was stored\nSay it again, or quote K7Q2XX to whoever runs me.',
    );
  });
});
