import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { CHANCE_WORDS } from '../../../../core/index.js';
import { codesOf, MEDIUM, POUCH, replyOf, type Talk, talk } from '../../talk.js';

let open: Talk;
beforeEach(async () => {
  open = await talk();
  await open.sayAll(MEDIUM, POUCH);
});
afterEach(() => open.close());

describe('a word for a chance', () => {
  test('is told as a count of 100 made like the piece in hand, with the rows at its edges', async () => {
    const { card } = await open.say("what's the chance?");
    expect(card.lead).toBe('Less likely than not: 20 to 39 times in 100');
    expect(card.body.join(' ')).toBe(
      'Of 100 made like your pouch, with 109 rows, I would expect about 36 to come to 10 3/4 to 11 1/4 in, the others a little over or under. At the edges, row 107 would most likely give 10 3/4 in, row 111 would give 11 1/4 in.',
    );
  });

  test('other than that of the plan is told beside it', async () => {
    const { card } = await open.say("what's an even chance");
    expect(card.lead).toBe('About an even chance: as often as not, 40 to 59 times in 100');
    expect(card.body[0]).toBe('Your pouch of 109 rows is less likely than not (36%).');
  });

  test.each(CHANCE_WORDS.map(({ word }) => word))(
    '"%s" is explained by that word, with a plan and without',
    async (word) => {
      const alone = await talk();
      for (const { say } of [open, alone]) {
        const { card, exchanges } = await say(`what does ${word} mean`);
        expect(exchanges[0]?.request).toEqual({ kind: 'explain_chance', word });
        expect(card.lead.toLowerCase()).toContain(`${word}: `);
      }
      await alone.close();
    },
  );

  test('the words take up every whole per cent once', () => {
    const all = CHANCE_WORDS.flatMap(({ fromPercent, toPercent }) => [fromPercent, toPercent]).reverse();
    expect(all).toEqual([19, 0, 39, 20, 59, 40, 79, 60, 94, 80, 100, 95]);
  });
});

describe('a count of the maker’s own', () => {
  test('is set beside the one of the plan, with what each would give', async () => {
    const { card } = await open.say('I always do 125');
    expect(card.lead).toBe('Your 125 rows or 109: you choose');
    expect(card.body).toEqual([
      'Your 125 rows would come out near 12 5/8 in: unlikely (2%).',
      '109 rows would come out near 11 in: less likely than not (36%).',
      'What did one of yours with 125 rows measure? A finished piece outranks any argument.',
    ]);
  });

  test('may be told beside that of the plan', async () => {
    const more = await open.say('2 rows more this time');
    expect(more.card.lead).toBe('Your 111 rows or 109: you choose');
    const fewer = await open.say('next one same but 2 fewer rows');
    expect(fewer.card.lead).toBe('Your 107 rows or 109: you choose');
    const none = await open.say('120 rows less this time');
    expect(codesOf(none)).toEqual(['count_outside']);
  });

  test('stays once it is chosen, and is called theirs', async () => {
    await open.say('I want 125 rows');
    const started = await open.say('start with 125 rows');
    expect(started.card.lead).toBe('Row 0 of 125: 125 to go');
    expect(started.card.body).toContain('Your count. Mine is 109.');
    expect((await open.say('where am i')).card.lead).toBe('Row 0 of 125: 125 to go');
    await open.say('undo');
    expect((await open.say('start')).card.lead).toBe('Row 0 of 109: 109 to go');
  });

  test('of the work on the machine is chosen as its stop row', async () => {
    await open.sayAll('start', 'row 40', 'I always do 112');
    expect((await open.press(0)).card.lead).toBe('Stop at row 112, as you say');
  });

  test('that is the one of the plan is agreed with', async () => {
    expect((await open.say('my count is 109')).card.lead).toBe('109 rows is my count too');
  });

  test('beyond all rows is refused, and nothing changes', async () => {
    expect(codesOf(await open.say('I always do 99999'))).toEqual(['count_outside']);
    expect(codesOf(await open.say('start with 99999 rows'))).toEqual(['count_outside']);
  });
});

describe('how far off a size may be', () => {
  test('after what would help changes the plan, by words or as much as is offered', async () => {
    await open.say('what would help');
    const { card } = await open.say('1/2 in is fine, it stretches');
    expect(card.body[0]).toBe('Changed: width, 10 1/2 to 11 1/2 in.');
    expect(replyOf(await open.say('make it 11'), 'plan').plan.landing.chance).toBeGreaterThan(0.5);
    expect((await open.say('undo')).card.lead).toMatch(/^Taken back/);
  });

  test('"allow more" takes what would help', async () => {
    const { card } = await open.say('allow more');
    expect(card.body[0]).toMatch(/^Changed: width, 10 \S+ to 11 \S+ in\.$/);
    expect(replyOf(await open.say('what would help'), 'helps').plan.landing.chance).toBeGreaterThanOrEqual(0.6);
  });

  test('that is no give and take of the size is refused', async () => {
    expect(codesOf(await open.say('give or take 11 in'))).toEqual(['length_out_of_range']);
  });
});
