import { afterEach, describe, expect, test } from 'vitest';
import type { Bound } from '../../bot/store/ports.js';
import { AT, CHANNEL, codesOf, type Fault, kindsOf, MEDIUM, POUCH, replyOf, type Talk, talk } from './talk.js';

let open: Talk[] = [];
async function opened(fault?: Fault): Promise<Talk> {
  const made = await talk(fault);
  open.push(made);
  return made;
}
afterEach(async () => {
  await Promise.all(open.map((made) => made.close()));
  open = [];
});

/** Tables that every turn writes, whatever it comes to. */
const EVERY_TURN = ['conversation', 'delivery', 'maker', 'workspace'];

describe('a request that waits', () => {
  test('for a gauge is resumed by it, and leads with what was first asked', async () => {
    const { say } = await opened();
    expect(replyOf(await say(POUCH), 'question').asks.parts.join()).toContain('measured');
    const answer = await say(MEDIUM);
    expect(kindsOf(answer)).toEqual(['gauge', 'plan']);
    expect(answer.card.lead).toMatch(/^Knit 109 rows on 46 needles/);
    expect(answer.card.facts.map(({ label }) => label)).toContain('Recorded on the way');
  });

  test('asks for the unit once, and knows it from then on', async () => {
    const { say, conversation } = await opened();
    expect((await say('pouch 28 wide')).card.lead).toBe('Is 28 in inches or in centimetres?');
    expect((await say('cm')).card.lead).toBe('Which piece have you measured?');
    await say('40 needles, 60 rows, 27 long, 14.5 flat');
    const { ask } = replyOf(await say('tube 50 long'), 'plan');
    expect(ask.values.length).toMatchObject({ is: 'length', mm: 500 });
    expect((await conversation()).pending).toBeUndefined();
  });

  test('takes the unit that is typed anywhere as the maker’s own', async () => {
    const { say } = await opened();
    await say('110 rows in 22 in');
    expect(replyOf(await say('pouch 11 wide'), 'plan').ask.values.width).toMatchObject({ mm: 279.4 });
  });

  test('survives questions for piece, unit, gauge, needles and length in turn', async () => {
    const { say, press } = await opened();
    expect((await say('how many rows for 11')).card.lead).toBe('Which piece is it for?');
    expect((await say('a pouch')).card.lead).toBe('Is 11 in inches or in centimetres?');
    expect((await press(0)).card.lead).toBe('Which piece have you measured?');
    expect((await say('6 3/4 flat')).card.lead).toBe('How many needles made that flat width?');
    const still = await say('46');
    expect(kindsOf(still)).toEqual(['gauge', 'question']);
    expect((await say('110 rows')).card.lead).toBe('How long do those 110 rows measure?');
    const answer = await say('22');
    expect(kindsOf(answer)).toEqual(['gauge', 'plan']);
    const { plan, ask } = replyOf(answer, 'plan');
    expect(ask.values.width).toMatchObject({ mm: 279.4 });
    expect({ rows: plan.rows, needles: plan.needles }).toEqual({ rows: 109, needles: 46 });
  });

  test('is run when a record typed with it raised a question and that is answered', async () => {
    const { say } = await opened();
    expect((await say('110 rows, rows for a pouch 11 in wide')).card.lead).toBe('Which piece have you measured?');
    expect((await say('110 rows')).card.lead).toBe('How long do those 110 rows measure?');
    expect(kindsOf(await say('22 in'))).toEqual(['gauge', 'plan']);
  });

  test('gives way to another full request in the message that brings its gauge', async () => {
    const { say } = await opened();
    await say(POUCH);
    const answer = await say(`${MEDIUM}, a tube 22 in long`);
    expect(kindsOf(answer)).toEqual(['gauge', 'plan']);
    expect(replyOf(answer, 'plan').plan.piece).toBe('plain-tube');
  });

  test('takes a follow-up while it waits', async () => {
    const { say } = await opened();
    await say(POUCH);
    expect((await say('make it 12')).card.body[0]).toBe('Changed: width, 12 in.');
    expect(replyOf(await say(MEDIUM), 'plan').ask.values.width).toMatchObject({ mm: expect.closeTo(304.8, 6) });
  });

  test('is dropped by "never mind", and lapses after a day', async () => {
    const { say } = await opened();
    await say(POUCH);
    expect((await say('never mind')).card.lead).toBe('Dropped');
    expect(kindsOf(await say(MEDIUM))).toEqual(['gauge']);

    const other = await opened();
    await other.say(POUCH, { at: AT });
    expect(kindsOf(await other.say(MEDIUM, { at: AT + 25 * 3_600_000 }))).toEqual(['gauge']);
  });
});

test('two plans in one message stand on one card, the last leading and the other told in brief', async () => {
  const { say } = await opened();
  await say(MEDIUM);
  const answer = await say('pouch 11 in wide and a tube 22 in long');
  expect(kindsOf(answer)).toEqual(['plan', 'plan']);
  expect(answer.card.lead).toMatch(/^Knit 110 rows on 46 needles/);
  const also = answer.card.facts.find(({ label }) => label === 'Also')?.text;
  expect(also).toMatch(/^knit 109 rows on 46 needles\. Pouch: about 11 in wide/);
  expect(also).toContain('between 10 3/4 and 11 1/4 in wide');
  expect(also).toContain('kept for a ring at each side');
});

describe('a refused request changes nothing', () => {
  const bad: [text: string, says: RegExp][] = [
    ['pouch -3 in wide', /Width: I read -3 in/],
    ['pouch 0 in wide', /Width: I read 0 in/],
    ['pouch 400 in wide', /Width: I read 400 in/],
    ['pouch 38 g wide', /Width: I read 38 g, which is a weight/],
    ['110 rows in 38 g', /Length: I read 38 g, which is a weight/],
    ['0 rows', /Rows: I read 0/],
    ['10000000 rows in 22 in', /Rows: I read 10000000/],
    ['10 million rows', /I did not understand "10 million"/],
    ['20000 rows in 1 in', /each row under 0.1 mm/],
    ['11 bananas wide', /I did not understand "11 bananas"/],
    ['', /Tell me a piece and its size/],
    ['~!? qx zv '.repeat(400), /I did not understand "qx zv/],
    ['x'.repeat(5000), /longer than I can read/],
    ['😀', /I did not understand "😀"/],
    ['мешок 11 дюймов', /I did not understand "11 дюймов"/],
    ['11 in by 11 in by 11 in', /more sizes than the piece has|I did not understand "11 in by 11 in by 11 in"/],
    ['pouch 11 in by 11 in by 11 in', /more sizes than the piece has: "11 in by 11 in by 11 in"/],
    ['-46 needles', /Needles: I read -46/],
    ['pouch 11 in wide on 0 needles', /Needles: I read 0/],
    ['46.5 needles, 6 3/4 flat', /Needles: I read 46.5/],
    ['1/0 in wide', /I did not understand "1\/0"/],
    ['0/0', /I did not understand "0\/0"/],
    ['5 rows to the inch and 9 rows to the inch', /contradict each other: 5 rows to the inch and 9 rows to the inch/],
    ['pouch 9 in wide with a 12 in zip', /A closure of 12 in does not fit/],
    ['pouch 11 to 10 in wide', /Width: I read 11 in to 10 in/],
    ['pouch 11 in wide and 20 in tall', /Height: your 46 needles make/],
    ['panel 30 in wide, 12 in long', /Needles: a panel would take/],
  ];

  test.each(bad.map(([text, says]) => ({ text, says })))(
    '"$text" is answered by a sentence',
    async ({ text, says }) => {
      const { say, kept, written } = await opened();
      await say(MEDIUM);
      await say(POUCH);
      const before = await kept();
      written();
      const answer = await say(text);
      expect(written().filter((table) => !EVERY_TURN.includes(table))).toEqual([]);
      expect(kindsOf(answer)).toEqual(['problem']);
      expect([answer.card.lead, ...answer.card.body].join(' ')).toMatch(says);
      expect(answer.card.body.at(-1)).toBe('Nothing was stored.');
      const after = (await kept()) as { conversation: { offered: unknown } };
      const { offered } = (before as typeof after).conversation;
      expect({ ...after, conversation: { ...after.conversation, offered } }).toEqual(before);
      expect(replyOf(await say('make it 12'), 'plan').plan.rows).toBe(119);
    },
  );

  test.each(['pouch NaN wide', 'pouch 1/0 in wide'])(
    '"%s" asks for the size and says what it left out',
    async (text) => {
      const { say } = await opened();
      await say(MEDIUM);
      const answer = await say(text);
      expect(answer.card.lead).toBe('How wide should the pouch be?');
      expect(answer.card.facts).toEqual([
        { label: 'Left out', text: expect.stringContaining(text.split(' ')[1] ?? '') },
      ]);
    },
  );

  test('a record that is refused stops what follows it in the message, and says so', async () => {
    const { say } = await opened();
    await say(MEDIUM);
    const answer = await say('0 rows in 22 in, rows for a pouch 11 in wide');
    expect(kindsOf(answer)).toEqual(['problem']);
    expect(answer.card.body).toContain('The rest of the message was not done.');
  });
});

describe('a delivery', () => {
  test('that comes twice acts once', async () => {
    const { take, within } = await opened();
    const first = await take({ text: MEDIUM }, { key: 'event 1' });
    expect(first.status).toBe('answered');
    expect((await take({ text: MEDIUM }, { key: 'event 1' })).status).toBe('seen');
    const counts = await within(async (bound) => {
      const [profile] = await bound.profiles.of((await bound.makers.held('U1', 'Nadia', AT)).id);
      return (await bound.measurements.of(profile?.id ?? '')).length;
    });
    expect(counts).toBe(1);
  });

  const failing =
    (spoil: (bound: Bound) => Partial<Bound>): Fault =>
    (bound) => ({ ...bound, ...spoil(bound) });
  const broken = async (): Promise<never> => {
    throw new Error('the disk is gone');
  };

  test.each<[string, string, Fault]>([
    ['a plan', `${MEDIUM}. ${POUCH}`, failing(({ plans }) => ({ plans: { ...plans, add: broken } }))],
    ['a measurement', MEDIUM, failing(({ measurements }) => ({ measurements: { ...measurements, add: broken } }))],
    ['the talk', MEDIUM, failing(({ conversations }) => ({ conversations: { ...conversations, keep: broken } }))],
  ])('during which storing %s throws is apologised for once, with nothing half stored', async (_what, text, fault) => {
    const { take, kept, store } = await opened(fault);
    const empty = await kept();
    const answer = await take({ text }, { key: 'event 1', address: CHANNEL });
    if (answer.status !== 'apologised') throw new Error(`expected an apology, got ${answer.status}`);
    expect(answer.text).toContain(answer.reference);
    expect(answer.text).toMatch(/^That went wrong on my side; nothing was stored/);
    expect(await kept()).toEqual(empty);
    expect((await take({ text }, { key: 'event 1', address: CHANNEL })).status).toBe('seen');
    const posted = await store.outbox.take(AT + 1000, 60_000, 10);
    expect(posted.map(({ body }) => body.text)).toEqual([answer.text]);
  });

  test('is refused to the door when the store itself is down', async () => {
    const { take } = await opened(failing(() => ({ deliveries: { claim: broken } })));
    await expect(take({ text: MEDIUM })).rejects.toThrow('the disk is gone');
  });
});

describe('what was offered', () => {
  test('is done by its button, by its number in words, and once more after that', async () => {
    const { say, press } = await opened();
    await say(MEDIUM);
    const refused = await say('pouch 9 in wide with a 12 in zip');
    expect(refused.card.offers.map(({ button }) => button)).toEqual([
      'The width this closure needs',
      'A closure of 6 in (15 cm)',
    ]);
    const pressed = await press(1);
    const said = await say('the second');
    expect(replyOf(pressed, 'plan').plan.rows).toBe(replyOf(said, 'plan').plan.rows);
    expect(replyOf(said, 'plan').ask.values.closure).toMatchObject({ mm: expect.closeTo(152.4, 6) });
  });

  test('shows the steps of the plan it stood under, though another plan came after', async () => {
    const { say, press, conversation } = await opened();
    await say(MEDIUM);
    await say(POUCH);
    const turn = (await conversation()).offered.at(-1)?.turn;
    await say('tube 22 in long');
    expect(replyOf(await press(1, turn), 'steps').plan.piece).toBe('pouch');
  });

  test.each([
    ['a card that nobody remembers', 'gone', 0],
    ['a button that the card never had', undefined, 9],
  ])('by %s has moved on', async (_what, turn, index) => {
    const { say, press } = await opened();
    await say(MEDIUM);
    const answer = await press(index, turn);
    expect(codesOf(answer)).toEqual(['unread']);
    expect(answer.card.lead).toBe('That card has moved on');
  });

  test('twenty cards ago is forgotten, and brings the plan as it is now', async () => {
    const { say, press, conversation } = await opened();
    await say(MEDIUM);
    const turn = (await conversation()).offered.at(-1)?.turn;
    for (let i = 0; i < 20; i++) await say(POUCH);
    expect(replyOf(await press(0, turn), 'plan').since).toBeDefined();
  });
});

describe('two makers in one thread', () => {
  const OWEN = { user: { slackUserId: 'U2', name: 'Owen' }, place: 'thread:C1:1' };
  const NADIA = { place: 'thread:C1:1' };

  test('never answer, change or undo each other’s talk', async () => {
    const { say, kept } = await opened();
    await say(POUCH, NADIA);
    const waiting = await kept(NADIA);
    expect(kindsOf(await say('60 needles, 120 rows, 22 in long, 8 in flat', OWEN))).toEqual(['gauge']);
    expect((await say('make it 12', OWEN)).card.lead).toBe('Which piece is it for?');
    expect(await kept(NADIA)).toEqual(waiting);
    expect(replyOf(await say(MEDIUM, NADIA), 'plan').plan.needles).toBe(46);
    expect(replyOf(await say(POUCH, OWEN), 'plan').plan.needles).toBe(60);
    expect((await say('undo', OWEN)).card.lead).toBe('Taken back: the pouch');
    expect((await say('undo', OWEN)).card.lead).toBe('Taken back: 120 rows in 22 in, 60 needles, 8 in flat, rested');
    expect(replyOf(await say('my gauge', NADIA), 'gauges').gauges).toHaveLength(1);
  });

  test('and one maker in two places has two talks and one gauge', async () => {
    const { say } = await opened();
    await say(MEDIUM);
    await say(POUCH);
    expect(codesOf(await say('steps', NADIA))).toEqual(['no_plan_yet']);
    expect(replyOf(await say('tube 22 in long', NADIA), 'plan').plan.rows).toBe(110);
    expect(replyOf(await say('make it 12'), 'plan').plan.piece).toBe('pouch');
  });

  test('nor do two workspaces share a maker of the same id', async () => {
    const { say } = await opened();
    await say(MEDIUM);
    expect((await say(POUCH, { slackTeamId: 'T2' })).card.lead).toBe('Which piece have you measured?');
  });
});
