import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { type Answer, codesOf, MEDIUM, POUCH, replyOf, type Talk, talk } from '../../talk.js';

let open: Talk;
beforeEach(async () => {
  open = await talk();
  await open.say(MEDIUM);
});
afterEach(() => open.close());

const plan = async (text: string) => replyOf(await open.say(text), 'plan');
const assumed = (answer: { card: { facts: readonly { label: string; text: string }[] } }) =>
  answer.card.facts.find(({ label }) => label === 'Assumed')?.text;

test('a plan that waited for its gauge comes out as one asked for after it', async () => {
  const fresh = await talk();
  await fresh.say('rows for a pouch 11 in wide');
  const waited = replyOf(await fresh.say(MEDIUM), 'plan').plan;
  const asked = replyOf(await fresh.say('rows for a pouch 11 in wide'), 'plan').plan;
  expect(waited.landing).toEqual(asked.landing);
  await fresh.close();
});

test('no yarn is told while the needles are not known', async () => {
  const fresh = await talk();
  await fresh.say('20 rows x 14 sts over 10 cm');
  expect(replyOf(await fresh.say('pouch 11 in wide'), 'plan').plan.yarn).toBeUndefined();
  await fresh.close();
});

test.each(['my gauge on the 46', 'my gauge for the medium yarn', 'show gauge for the 48'])(
  '"%s" looks the gauge up and leaves the plan alone',
  async (words) => {
    await open.say('pouch 11 in wide');
    const { subject, planId } = await open.conversation();
    const { exchanges } = await open.say(words);
    expect(exchanges.map(({ request }) => request.kind)).toEqual(['show_gauge']);
    expect(await open.conversation()).toMatchObject({ subject, planId });
  },
);

describe('a machine without rows of its own', () => {
  test('borrows them, and keeps the stitch width that was measured on it', async () => {
    await open.say('40 needles, 5 in flat');
    const answer = await open.say('pouch 9 in wide');
    const { plan: made } = replyOf(answer, 'plan');
    expect(made.needles).toBe(40);
    expect(assumed(answer)).toContain('your gauge on the 46 holds here within 3%');
    // 39 half stitches of 2 x 127 mm / 40.
    expect(made.sizes.find(({ id }) => id === 'height')?.expectedMm).toBeCloseTo(123.825, 6);
  });

  test('borrows as well when it was only named', async () => {
    await open.say('needles 60');
    expect((await plan('pouch 9 in wide')).plan.needles).toBe(60);
  });
});

describe('a follow-up', () => {
  test('changes what it names and keeps the rest, and the card opens with what changed', async () => {
    await open.say('3 pouches 11 in wide');
    const answer = await open.say('make it 12');
    expect(answer.card.body[0]).toBe('Changed: width, 12 in.');
    expect(replyOf(answer, 'plan').ask).toMatchObject({
      copies: 3,
      values: { width: { mm: expect.closeTo(304.8, 6) } },
    });
  });

  test('to a closure takes the width away, and to a width the closure, and says so', async () => {
    await open.say(POUCH);
    expect(Object.keys((await plan('with a 9 in zip')).ask.values)).toEqual(['closure']);
    const answer = await open.say('make it 12 wide');
    expect(Object.keys(replyOf(answer, 'plan').ask.values)).toEqual(['width']);
    expect(answer.card.body[0]).toContain('closure no longer asked for');
  });

  test('of both at once is checked together', async () => {
    await open.say(POUCH);
    expect(codesOf(await open.say('9 in wide with a 12 in zip'))).toEqual(['closure_too_long']);
  });

  test('"make it 12" keeps the half-width last stated', async () => {
    await open.say('pouch 10 1/2 to 11 in wide');
    const answer = await open.say('make it 12');
    expect(answer.card.body[0]).toBe('Changed: width, 12 in, give or take 1/4 in.');
    const { ask } = replyOf(answer, 'plan');
    expect(ask.values.width).toMatchObject({
      is: 'window',
      loMm: expect.closeTo(298.45, 6),
      hiMm: expect.closeTo(311.15, 6),
    });
  });

  test.each([
    ['make it 10½ to 11"', 'width, 10½ to 11"'],
    ['make it 28', 'width, 28 in'],
    ['make it 28 cm', 'width, 28 cm'],
    ['make it 11 in ± 1/8', 'width, 11 in ± 1/8'],
    ['no rings', 'ring, none'],
    ['two of them', 'how many, 2'],
    ['on the 48', 'machine, the 48'],
    ['by friday', 'the day, by friday'],
  ])('"%s" is echoed as "%s"', async (text, changed) => {
    await open.say(POUCH);
    expect((await open.say(text)).card.body[0]).toBe(`Changed: ${changed}.`);
  });

  test.each<[string, object]>([
    ['no rings', { values: { width: {}, ring: { mm: 0 } } }],
    ['two of them', { copies: 2 }],
    ['on the 48', { on: { machine: '48', needles: 48 } }],
    ['6 1/2 tall', { values: { width: {}, height: { mm: expect.closeTo(165.1, 6) } } }],
    ['by friday', { due: { day: '2026-11-13' } }],
  ])('"%s" is one', async (text, ask) => {
    await open.say(POUCH);
    expect((await plan(text)).ask).toMatchObject(ask);
  });

  test('follows another, and a new full request starts afresh', async () => {
    await open.say(POUCH);
    await open.say('no rings');
    await open.say('two of them');
    expect((await plan('make it 12')).ask).toMatchObject({ copies: 2, values: { ring: { mm: 0 } } });
    expect(Object.keys((await plan('pouch 9 in wide')).ask.values)).toEqual(['width']);
  });

  test('that cannot be leaves the plan as it was', async () => {
    await open.say(POUCH);
    expect(codesOf(await open.say('20 in tall'))).toEqual(['needles_set_it']);
    expect(Object.keys((await plan('make it 12')).ask.values)).toEqual(['width']);
  });
});

describe('a machine without a gauge of its own', () => {
  test('borrows that of another, and says so under Assumed with a wider chance', async () => {
    const own = await plan(POUCH);
    const answer = await open.say('on the 48');
    const borrowed = replyOf(answer, 'plan');
    expect(assumed(answer)).toContain('your gauge on the 46 holds here within 3%');
    expect(borrowed.plan.needles).toBe(48);
    expect(borrowed.plan.landing.chance).toBeLessThan(own.plan.landing.chance);
  });

  test('has one of its own once it is measured, and borrows no more', async () => {
    await open.say(POUCH);
    await open.say('48 needles, 100 rows in 22 in');
    const answer = await open.say('pouch 11 in wide on the 48');
    expect(assumed(answer)).not.toContain('holds here');
    expect(replyOf(answer, 'plan').plan.rows).toBe(99);
  });
});

describe('a plan', () => {
  test('says what a bare number was read as', async () => {
    expect(assumed(await open.say('pouch 11 wide'))).toContain('11 read in inches');
    expect(assumed(await open.say('pouch 11 in wide'))).not.toContain('read in');
  });

  test('is for one piece, and the text gives the total of several', async () => {
    const one = await plan(POUCH);
    const answer = await open.say('3 pouches 11 in wide');
    expect(replyOf(answer, 'plan').plan).toMatchObject({ rows: one.plan.rows, pieces: 3, yarn: one.plan.yarn });
    expect(answer.card.facts.find(({ label }) => label === 'Yarn')?.text).toContain('for all 3 about');
  });

  test('is asked for its size when none is said, and takes any of the sizes that would do', async () => {
    expect((await open.say('pouch')).card.lead).toBe('How wide should the pouch be?');
    expect((await plan('with a 9 in zip')).ask.values).toMatchObject({ closure: {} });
    await open.say('a tube');
    expect((await plan('22')).ask).toMatchObject({
      piece: 'plain-tube',
      values: { length: { mm: expect.closeTo(558.8, 6) } },
    });
  });

  test('needs a stitch width for a panel, and goes on once that is told', async () => {
    const other = await talk();
    await other.say('5 rows to the inch');
    expect((await other.say('panel 8 in wide, 12 in long')).card.lead).toBe('How wide does your knitting come out?');
    expect(replyOf(await other.say('46 needles, 6 3/4 in flat'), 'plan').plan.piece).toBe('flat-panel');
    await other.close();
  });

  test.each([
    ['by 5 december', 'Ready by Saturday 5 December 2026 (you said "by 5 december").'],
    [
      'for saturday',
      'Ready by Friday 13 November 2026, the day before Saturday 14 November (you said "for saturday").',
    ],
  ])('%s says when it must be ready, and what was said', async (due, line) => {
    expect((await open.say(`pouch 11 in wide ${due}`)).card.body).toContain(line);
  });

  test.each([
    ['by 11 may 2020', 'I could not use "by 11 may 2020 (that day is over; name one ahead)".'],
    ['by 31 november', 'I could not use "31 November (it has 30 days)".'],
    ['by smarch 12th', 'I could not use "smarch", "12th".'],
  ])('names the day in "%s" as left out', async (due, text) => {
    for (const request of [`pouch 11 in wide ${due}`, `pouch 9 in wide with a 12 in zip ${due}`]) {
      const { card } = await open.say(request);
      expect(card.facts.at(-1)).toEqual({ label: 'Left out', text });
    }
  });

  test.each([
    ['pouch 10.5 to 11 in wide', '10.5 and 11 in wide'],
    ['pouch 10½-11" wide', '10½ and 11 in wide'],
    ['pouch 272 to 281 mm wide', '272 and 281 mm wide'],
    ['pouch 27,2 to 28,1 cm wide', '27,2 and 28,1 cm wide'],
    ['pouch 28 cm wide', '27.5 and 28.5 cm wide'],
    ['pouch 11 wide', '10 3/4 and 11 1/4 in wide'],
    ['pouch ten to eleven inches wide', '10 and 11 in wide'],
  ])('"%s" has its limits as they were typed, or in the unit typed: %s', async (text, limits) => {
    expect((await open.say(text)).card.facts[0]?.text).toContain(`to end between ${limits}.`);
  });

  test('leads with the unit of its own sizes, and so does a follow-up to it', async () => {
    expect((await open.say('pouch 28 cm wide')).card.body[0]).toMatch(/^Pouch: about 28 cm wide/);
    expect((await open.say('two of them')).card.body[1]).toMatch(/^Pouch: about 28 cm wide/);
    expect((await open.say(POUCH)).card.body[0]).toMatch(/^Pouch: about 11 in wide/);
  });

  test.each([
    ['pouch 22 in around', '22 in around read as 11 in flat'],
    ['pouch at least 11 in wide', 'at least 11 in read as 11 to 11 1/4 in'],
    ['pouch 11 by 6.5', '11 and 6.5 read in inches'],
  ])('"%s" says what was made of the words', async (text, read) => {
    expect(assumed(await open.say(text))).toContain(read);
  });
});

test('a refusal says what it made of the words', async () => {
  const { card } = await open.say('tube 20 in around and 22 long');
  expect(card.facts).toEqual([{ label: 'Assumed', text: '20 in around read as 10 in flat.' }]);
});

describe('the question for a size', () => {
  test('says what it sets, and what would do instead', async () => {
    expect((await open.say('pouch')).card.body[0]).toBe(
      'That sets the rows; nothing else can. You can tell me the closure or the contents instead.',
    );
    await open.say('panel');
    expect((await open.say('12 in')).card.body[0]).toBe(
      'That sets the needles; rows cannot change it. You can tell me the number of needles instead.',
    );
  });
});

describe('steps', () => {
  const linesOf = (answer: Answer): string[] => answer.card.steps.map((runs) => runs.map(({ text }) => text).join(''));

  test('are those of the plan in hand, and say when the gauge has moved on', async () => {
    expect(codesOf(await open.say('steps'))).toEqual(['no_plan_yet']);
    await open.say(POUCH);
    const fresh = await open.say('steps');
    expect(fresh.card.lead).toBe('Steps for the pouch, 109 rows on 46 needles');
    expect(linesOf(fresh).join(' ')).toContain('this is row 110');
    await open.say('46 needles, 110 rows in 23 in');
    const moved = await open.say('steps');
    expect(moved.card.body[0]).toBe('Your gauge has moved on since: it was 109 rows then.');
  });

  test('mark the words that their checklist keeps, and each offers the other', async () => {
    await open.say('pouch with an 8 in zip');
    const long = await open.say('steps');
    const at = (answer: Answer, words: string) => linesOf(answer).findIndex((line) => line.startsWith(words));
    const graft = at(long, 'Graft 46 pairs');
    expect(long.card.steps[graft]?.filter(({ key }) => key).map(({ text }) => text)).toEqual([
      'Graft 46 pairs',
      'row 107',
      'stop 5 pairs short',
    ]);
    const short = await open.press(0);
    expect(short.card.lead).toBe('Checklist for the pouch, 106 rows on 46 needles');
    expect(linesOf(short)[graft]).toBe('Graft 46 pairs; row 107; stop 5 pairs short');
    expect(linesOf(short)).toEqual(
      expect.arrayContaining(['Crank 5 waste rows', 'Mattress 53 bars', 'Weave in 6 ends', 'Change; leave 57 in']),
    );
    expect(linesOf(await open.press(0))).toEqual(linesOf(long));
  });

  test('are at most 24 for a pouch with a closure and rings', async () => {
    await open.say('pouch with an 8 in zip');
    expect((await open.say('steps')).card.steps.length).toBeLessThanOrEqual(24);
  });

  test('come in either form with a plan that asks for them', async () => {
    expect(linesOf(await open.say('steps for a tube 22 in long'))).toContain('Crank 5 waste rows.');
    expect(linesOf(await open.say('checklist for a tube 22 in long'))).toContain('Crank 5 waste rows');
  });

  test('say how often they are done, of several pieces and of the parts of each', async () => {
    const times = async (text: string) => {
      await open.say(text);
      return (await open.say('steps')).card.body.filter((line) => line.startsWith('These steps'));
    };
    expect(await times('pouch 11 in wide')).toEqual([]);
    expect(await times('12 of them')).toEqual(['These steps make one of 12: do them 12 times.']);
    expect(await times('wrist warmers 7 in long for a hand of 7 in')).toEqual([
      'These steps make one of 2: do them twice.',
    ]);
    expect(await times('12 of them')).toEqual(['These steps make one of 24, 2 for each piece: do them 24 times.']);
  });
});

describe('the notions', () => {
  beforeEach(() => open.say('pouch with an 8 in zip'));
  const factOf = (answer: { card: { facts: readonly { label: string; text: string }[] } }) =>
    answer.card.facts.find(({ label }) => label.startsWith('Notions'));

  test('stand among the facts for one, and added up for several', async () => {
    expect(factOf(await open.say('x1'))).toEqual({
      label: 'Notions',
      text: 'a closure of 8 in (20 cm) and 2 rings, 1 in kept for each.',
    });
    expect(factOf(await open.say('12 of these'))).toEqual({
      label: 'Notions, for all 12',
      text: '12 closures of 8 in (20 cm) and 24 rings, 1 in kept for each.',
    });
  });

  test('lead where they are asked for, and stand nowhere else; the rows come next', async () => {
    const answer = await open.say('what do I need for 12?');
    expect(answer.card.lead).toBe('For 12 of them: 12 closures of 8 in (20 cm) and 24 rings, 1 in kept for each');
    expect(answer.card.body[0]).toBe('Knit 106 rows on 46 needles, and measure at row 50.');
    expect(factOf(answer)).toBeUndefined();
    expect(replyOf(answer, 'plan').ask).toMatchObject({ copies: 12, focus: ['notions'] });
  });

  test('stand above the steps, added up alike', async () => {
    await open.say('both: 2 of them');
    const { card } = await open.say('steps');
    expect(card.body).toContain('At hand, for both: 2 closures of 8 in (20 cm) and 4 rings, 1 in kept for each.');
  });

  test('of a piece that takes none are said to be none', async () => {
    expect((await open.say('notions for 3 cowls 24 in round')).card.lead).toBe('Nothing but yarn for 3 of them');
  });
});
