import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { blocks } from '../../../../bot/cards/blocks.js';
import type { OutboxRow } from '../../../../bot/store/ports.js';
import { blockFaults } from '../../cards/block-faults.js';
import { type Answer, AT, codesOf, replyOf, type Talk, talk } from '../../talk.js';

const NADIA = { user: { slackUserId: 'U1', name: 'Nadia' }, place: 'dm:D1' };
const OWEN = { user: { slackUserId: 'U2', name: 'Owen' }, place: 'dm:D2' };
const LOTTE = { user: { slackUserId: 'U3', name: 'Lotte' }, place: 'dm:D3' };
const SENT = { address: { to: 'post', channel: 'D1' } } as const;

/** 5 rows to the inch on 46 needles; 5 1/2 on 48 needles with stitches as wide: 6 3/4 in · 48/46 = 7.0435 in. */
const FIVE = '46 needles, 110 rows, 22 in long, 6 3/4 flat';
const FIVE_AND_A_HALF = '48 needles, 121 rows, 22 in long, 178.904 mm flat';

let open: Talk;
beforeEach(async () => {
  open = await talk();
  await open.say('use inches', OWEN);
  await open.say(FIVE);
  await open.say('rows for a pouch 11 in wide');
});
afterEach(() => open.close());

const posted = async (): Promise<OutboxRow[]> => open.store.outbox.take(AT + 1000, 1000, 50);
const share = (words = 'share this with Owen'): Promise<Answer> => open.say(words, SENT);
/** The card that reached someone else, by whom it was sent to. */
const letterTo = async (channel: string): Promise<OutboxRow | undefined> =>
  (await posted()).findLast(({ address }) => address.to === 'post' && address.channel === channel);
const problemOf = (answer: Answer): unknown =>
  replyOf(answer, 'problem').problems.map((one) => (one.code === 'of_share' ? one.problem.code : one.code));

describe('a plan shared with a co-maker', () => {
  test('reaches them as a direct message with the size, and without a count of the owner', async () => {
    const told = await share();
    expect(told.card.lead).toBe('Shared with Owen: the pouch');
    const letter = await letterTo('U2');
    expect(letter?.body.text).toMatch(/^Nadia shared a plan with you: pouch, 11 in wide \(28 cm\)\n/);
    expect(letter?.body.text).not.toMatch(/\b(?:109|110|46|22|6 3\/4)\b/);
    expect(blockFaults(letter?.body.blocks as never)).toEqual([]);
  });

  test('11 in wide at 5 rows/in is 120 rows at 5 1/2, 121 with the graft, where its owner knits 109', async () => {
    expect(replyOf(await open.say('make it 11'), 'plan').plan.rows).toBe(109);
    await share();
    await open.say(FIVE_AND_A_HALF, OWEN);
    const { plan } = replyOf(await open.say('size it to my gauge', OWEN), 'plan');
    expect([plan.rows, plan.graftRows, plan.needles]).toEqual([120, 1, 48]);
  });

  test('on 48 needles in place of 46 the flat tube grows by 48/46, the finished height by 47/45', async () => {
    const own = replyOf(await open.say('make it 11'), 'plan').plan;
    await share();
    await open.say(FIVE_AND_A_HALF, OWEN);
    const { plan } = replyOf(await open.say('size it to my gauge', OWEN), 'plan');
    const height = ({ sizes }: typeof plan): number => sizes.find(({ id }) => id === 'height')?.expectedMm ?? 0;
    expect((plan.tube?.flatWidthMm ?? 0) / (own.tube?.flatWidthMm ?? 1)).toBeCloseTo(48 / 46, 4);
    expect(height(plan) / height(own)).toBeCloseTo(47 / 45, 4);
  });

  test('is made and shared in one message', async () => {
    const told = await open.say('pouch 10 in wide, share it with @Owen', SENT);
    expect(told.exchanges.map(({ reply }) => reply.kind)).toEqual(['plan', 'answer']);
    expect((await letterTo('U2'))?.body.text).toMatch(/^Nadia shared a plan with you: pouch, 10 in wide \(25.5 cm\)\n/);
  });

  test.each([
    ['pouch and share it with Owen', ['11 in wide'], '11 in wide'],
    ['a pouch 10, 11 and 12 in wide and share it with Owen', ['the second'], '11 in wide'],
    ['pouch on the 40 and share it with Owen', ['11 in wide', '40 needles, 110 rows, 22 in, 6 in flat'], '11 in wide'],
  ])('goes on once what its plan lacks is told: %s', async (words, told, size) => {
    const asked = await open.say(words, SENT);
    expect(replyOf(asked, 'question').kind).toBe('question');
    expect(await letterTo('U2')).toBeUndefined();
    for (const text of told) await open.say(text, SENT);
    expect((await letterTo('U2'))?.body.text).toMatch(new RegExp(`^Nadia shared a plan with you: pouch, ${size} `));
  });

  test('waits with its plan, said so, and is dropped with it for another', async () => {
    const asked = await open.say('cowl and share it with Owen', SENT);
    expect(asked.card.body).toContain('Once that is told I go on with the rest.');
    await open.say('pouch 11 in wide', SENT);
    await open.say('cowl and share it with Owen', SENT);
    await open.say('never mind', SENT);
    await open.say('cowl 24 in round', SENT);
    expect(await letterTo('U2')).toBeUndefined();
  });

  test('waits for the gauge of a maker who has none, and is sized by itself once that is told', async () => {
    await share();
    expect(replyOf(await open.say('size it to my gauge', OWEN), 'question').because.parts.join('')).toContain(
      'needles',
    );
    const sized = replyOf(await open.say(FIVE_AND_A_HALF, OWEN), 'plan');
    expect(sized.plan.rows).toBe(120);
    expect((await open.say('results')).card.body).toContain('Owen: sized it.');
  });

  test('is sized by its button, pressed where the maker never spoke before', async () => {
    await share();
    const blocks = (await letterTo('U2'))?.body.blocks as { elements?: { value?: string }[] }[];
    const value = blocks.flatMap(({ elements = [] }) => elements).find((one) => one.value)?.value ?? '';
    const pick = JSON.parse(value);
    expect(Object.keys(pick)).toEqual(['turn', 'index']);
    const pressed = (await open.take({ pick }, { ...OWEN, place: 'dm:D9' })) as Answer;
    expect(pressed.exchanges[0]?.request.kind).toBe('size_share');
    expect(problemOf((await open.take({ pick }, LOTTE)) as Answer)).toEqual(['nothing_shown']);
  });

  test('is taken back by undo, put back, and shown no more once withdrawn', async () => {
    await share();
    await open.say('undo');
    expect(problemOf(await open.say('size it to my gauge', OWEN))).toEqual(['nothing_shown']);
    await open.say('put it back');
    expect((await open.say('take back the share with Owen')).card.lead).toBe('Withdrawn from Owen');
    expect(problemOf(await open.say('size it to my gauge', OWEN))).toEqual(['nothing_shown']);
    await open.say('undo');
    expect(replyOf(await open.say('size it to my gauge', OWEN), 'question').kind).toBe('question');
  });

  test('tells who withdrew it to one who presses its button', async () => {
    await share();
    const turn = `share:${(await open.within(async (s) => s.shares.of((await s.makers.named('Nadia'))[0]?.id ?? '')))[0]?.id}`;
    await open.say('withdraw it');
    const answer = (await open.take({ pick: { turn, index: 0 } }, OWEN)) as Answer;
    expect(answer.card.lead).toBe('Nadia has withdrawn that plan');
  });
});

describe('rows go along by choice only', () => {
  test('asked first, knowing what they tell, and a no shares nothing', async () => {
    const asked = await share('share this with Owen, with my rows');
    expect(replyOf(asked, 'question').because.parts.join('')).toContain('gauge can be worked out');
    await open.say('never mind');
    expect(problemOf(await open.say('size it to my gauge', OWEN))).toEqual(['nothing_shown']);
  });

  test('then the holder sees both side by side, and which spacing parts them by how much', async () => {
    await share('share this with Owen, with my rows');
    await open.say('yes', SENT);
    expect((await letterTo('U2'))?.body.text).toContain("Nadia's own: 109 rows on 46 needles.");
    await open.say(FIVE_AND_A_HALF, OWEN);
    const { body } = (await open.say('size it to my gauge', OWEN)).card;
    expect(body).toContainEqual(
      expect.stringMatching(/^Beside Nadia's: 109 rows on 46 needles.*Yours: 120 rows on 48 needles/),
    );
    // 4.62 mm is 1/1.1 of 5.08 mm: 9% less.
    expect(body.join(' ')).toContain('your rows are 9% closer (4.6 mm against 5.1 mm), so you need more');
    expect(body.join(' ')).not.toContain('your stitches are');
  });

  test('a share of the size alone tells the holder nothing of the owner', async () => {
    await share();
    await open.say(FIVE_AND_A_HALF, OWEN);
    expect((await open.say('size it to my gauge', OWEN)).card.body.join(' ')).not.toMatch(/Nadia|109|46/);
  });
});

describe('a change of a shared plan', () => {
  beforeEach(async () => {
    await open.say(FIVE_AND_A_HALF, OWEN);
    await share();
    await open.say('size it to my gauge', OWEN);
    await open.say('start', OWEN);
    await open.say('row 31', OWEN);
  });

  test('reaches holders when the owner sends it, with their own rows then and now', async () => {
    const edited = await open.say('make it 12');
    expect(edited.card.body).toContainEqual(expect.stringContaining('Shared as it was before with Owen'));
    await open.say('send the change', SENT);
    const letter = await letterTo('U2');
    expect(letter?.body.text).toMatch(
      /^Nadia changed the pouch: now 12 in wide \(30.5 cm\)\nIt was 11 in wide \(28 cm\)\./,
    );
    expect(letter?.body.text).toMatch(/On your gauge that is 13[12] rows.*120 rows/);
    expect(letter?.body.text).toMatch(/Your 120 for the new size: unlikely \(.*%\)\./);
    expect(letter?.body.text).toContain('You are at row 31, so nothing is lost either way.');
    expect(letter?.body.text).not.toMatch(/\b(?:119|46 needles)\b/);
  });

  test('is taken or not, as each holder chooses, and the owner sees which', async () => {
    await open.say('make it 12');
    await open.say('send the change');
    expect((await open.say('results')).card.body).toContain('Owen: has the size before.');
    expect((await open.say('keep mine', OWEN)).card.lead).toBe('Kept as you have it');
    expect((await open.say('results')).card.body).toContain('Owen: kept the size before.');
    expect(replyOf(await open.say('take the change', OWEN), 'plan').plan.landing.loMm).toBeCloseTo(12 * 25.4 - 6);
    expect((await open.say('results')).card.body).toContain('Owen: sized it.');
    await open.say('undo', OWEN);
    expect((await open.say('results')).card.body).toContain('Owen: has the size before.');
  });

  test('that was sent is taken back by undo', async () => {
    await open.say('make it 12');
    await open.say('send the change');
    await open.say('undo');
    expect(replyOf(await open.say('take the change', OWEN), 'plan').plan.landing.loMm).toBeCloseTo(11 * 25.4 - 6);
  });

  test('is none where the size is as it was shared', async () => {
    expect(problemOf(await open.say('send the change'))).toEqual(['nothing_changed']);
  });
});

describe('a plan that its holder passes on', () => {
  beforeEach(async () => {
    await open.say(FIVE_AND_A_HALF, OWEN);
    await share('share this with Owen');
    await open.say('hi', LOTTE);
    await share('share this with Lotte');
    await open.say('size it to my gauge', OWEN);
    await open.say('make it 9', OWEN);
    await open.say('share this with Lotte', OWEN);
  });

  test('is theirs: what its first owner shared with the same maker stays as it was', async () => {
    const sizes = await open.within(async (s) => {
      const owners = await Promise.all(
        ['Nadia', 'Owen'].map(async (name) => (await s.makers.named(name))[0]?.id ?? ''),
      );
      return Promise.all(owners.map(async (id) => (await s.shares.of(id)).map(({ ask }) => ask.values.width)));
    });
    expect(sizes[0]).toHaveLength(2);
    expect(sizes[0]?.[1]).toEqual(sizes[0]?.[0]);
    expect(sizes[1]).toEqual([{ is: 'length', mm: 9 * 25.4 }]);
  });

  test('is changed and withdrawn by them alone, and its results come to them', async () => {
    await open.say('make it 8', OWEN);
    expect((await open.say('send the change', OWEN)).card.lead).toMatch(/^Sent to Lotte/);
    await open.say(FIVE, LOTTE);
    await open.say('size it to my gauge', LOTTE);
    await open.say('start', LOTTE);
    await open.say('done, 8', LOTTE);
    expect((await open.say('send the size', LOTTE)).card.lead).toMatch(/^Sent to Owen/);
    expect((await open.say('how did it land', OWEN)).card.body).toContain('Lotte: 8 in, rows not shared.');
    expect((await open.say('how did it land')).card.body.join(' ')).not.toContain('8 in');
    expect((await open.say('withdraw it', OWEN)).card.lead).toBe('Withdrawn from Lotte');
    expect((await open.say('withdraw it')).card.lead).toBe('Withdrawn from Owen and Lotte');
  });
});

describe('results', () => {
  beforeEach(async () => {
    await open.say(FIVE_AND_A_HALF, OWEN);
    await share();
    await open.say('size it to my gauge', OWEN);
    await open.say('start', OWEN);
  });

  test('stay the holder’s until sent; then the size alone, or the rows as well', async () => {
    const done = await open.say('done, 10 7/8', OWEN);
    expect(done.card.body.join(' ')).toContain('Say "send the size"');
    expect((await open.say('how did it land')).card.lead).toBe('The pouch: nothing finished and told yet');
    await open.say('send the size', OWEN);
    const sized = (await open.say('how did it land')).card;
    expect(sized.lead).toMatch(/^The pouch so far: 1 of 1 inside/);
    expect(sized.body).toContain('Owen: 10 7/8 in, rows not shared.');
    expect(sized.body.join(' ')).not.toMatch(/120|48/);
    await open.say('send the size and rows', OWEN);
    expect((await open.say('results')).card.body).toContain('Owen: 10 7/8 in, 120 rows on 48 needles.');
    await open.say('undo', OWEN);
    expect((await open.say('results')).card.body).toContain('Owen: 10 7/8 in, rows not shared.');
  });

  test('say what a written pattern may print, from all rows that were told', async () => {
    await open.say('done, 10 7/8', OWEN);
    await open.say('send the size and rows', OWEN);
    await open.say('start');
    await open.say('done, 11 3/8');
    await open.say('start');
    await open.say('done, 11 1/8');
    const { lead, body } = (await open.say('how did it land')).card;
    expect(lead).toMatch(/^The pouch so far: 2 of 3 inside/);
    expect(body).toContainEqual(expect.stringMatching(/^You: 11 3\/8 in, outside, 109 rows on 46 needles\.$/));
    expect(body).toContainEqual(
      expect.stringMatching(/give the size, 46 to 48 needles and 1\d\d to 120 rows, and "fit the measurement"/),
    );
  });

  test('of a piece made to another size are not kept', async () => {
    await open.say('give it up', OWEN);
    await open.say('make it 9', OWEN);
    await open.say('start', OWEN);
    expect((await open.say('done, 9', OWEN)).card.body.join(' ')).not.toContain('send the size');
    expect(problemOf(await open.say('send the size', OWEN))).toEqual(['no_result']);
  });

  test('are told to the one who shared the plan alone, and before there is one I say what to do', async () => {
    expect(replyOf(await open.say('tell Nadia my rows', OWEN), 'question').asks.parts.join('')).toContain(
      'Share your rows',
    );
    await open.say('never mind', OWEN);
    const early = await open.say('tell Nadia the size', OWEN);
    expect(problemOf(early)).toEqual(['no_result']);
    expect(early.card.body.join(' ')).toContain('Say "done" with its size');
    expect(early.card.sayings).toContain('"share this with Nadia, with my rows"');
    await open.say('done, 10 7/8', OWEN);
    await open.say('hi', LOTTE);
    expect(problemOf(await open.say('tell Lotte my rows', OWEN))).toEqual(['no_result']);
    expect((await open.say('tell Nadia my rows', OWEN)).card.lead).toMatch(/^Sent to Nadia: the size, your rows/);
  });

  test('taken back with the finish that brought them', async () => {
    await open.say('done, 10 7/8', OWEN);
    await open.say('undo', OWEN);
    expect(problemOf(await open.say('send the size', OWEN))).toEqual(['no_result']);
  });
});

describe('a plan posted in a channel', () => {
  const THREAD = { place: 'thread:C1:17.1', address: { to: 'post', channel: 'C1', threadTs: '17.1' } } as const;

  test('shows its size there, and answers each who sizes it alone', async () => {
    await open.say('rows for a pouch 11 in wide', { ...NADIA, ...THREAD });
    await open.say('post this here', { ...NADIA, ...THREAD });
    const rows = await posted();
    const card = rows.find(({ body }) => body.text.startsWith('Nadia shared a plan'));
    expect(card?.address).toEqual({ to: 'post', channel: 'C1', threadTs: '17.1' });
    expect(rows.find(({ body }) => body.text.startsWith('Shared with this channel'))?.address.to).toBe('ephemeral');
    await open.say(FIVE_AND_A_HALF, OWEN);
    await open.say('size it to my gauge', { ...OWEN, ...THREAD });
    const sized = (await posted()).find(({ body }) => body.text.startsWith('Knit 120 rows'));
    expect(sized?.address).toMatchObject({ to: 'ephemeral', user: 'U2' });
  });

  test('is not shared by another maker who speaks in its thread', async () => {
    await open.say('rows for a pouch 11 in wide', { ...NADIA, ...THREAD });
    expect(codesOf(await open.say('share this with Lotte', { ...OWEN, ...THREAD }))).toEqual(['of_share']);
    await open.say('hi', LOTTE);
    expect(codesOf(await open.say('share this with Lotte', { ...OWEN, ...THREAD }))).toEqual(['no_plan_yet']);
  });
});

describe('who cannot be shared with', () => {
  test.each([
    ['share this with me', 'with_oneself'],
    ['share this with Nadia', 'with_oneself'],
    ['share this with @U1', 'with_oneself'],
    ['share this with walewright', 'with_the_bot'],
    ['share this with you', 'with_the_bot'],
    ['share this with Zoe', 'no_such_maker'],
    ['share this with #winter-market', 'in_another_channel'],
    ['post this in <#C1234567|winter-market>', 'in_another_channel'],
    ['share this with <!channel>', 'no_such_maker'],
    ['share this with `*Owen*`', 'no_such_maker'],
    ['share this with Owen and Zoe', 'no_such_maker'],
    ['post this here', 'not_in_a_channel'],
  ])('%s', async (words, code) => {
    expect(problemOf(await share(words))).toEqual([code]);
    expect(await letterTo('U2')).toBeUndefined();
  });

  test('one of two makers of a name, until mentioned', async () => {
    await open.say('hi', { ...LOTTE, user: { slackUserId: 'U3', name: 'owen' } });
    expect(problemOf(await share())).toEqual(['several_makers']);
    await share('share this with @U3');
    expect(await letterTo('U3')).toBeDefined();
  });

  test('a person mentioned who never spoke to the bot is one of the workspace', async () => {
    const told = await share('share this with @U0ZOE12345');
    expect(await letterTo('U0ZOE12345')).toBeDefined();
    const [lead] = blocks(told.card, 'turn');
    expect(JSON.stringify(lead)).toContain('{"type":"user","user_id":"U0ZOE12345","style":{"bold":true}}');
    expect(blockFaults(blocks(told.card, 'turn') as never)).toEqual([]);
  });

  test('a name with markup and pings in it stays letters on both cards', async () => {
    const wild = { ...NADIA, user: { slackUserId: 'U1', name: '<!channel> *N* `x`' } };
    await open.say('share this with Owen', { ...wild, ...SENT });
    const letter = await letterTo('U2');
    expect(letter?.body.text.split('\n')[0]).toContain('<!channel> *N* `x`');
    expect(blockFaults(letter?.body.blocks as never)).toEqual([]);
    expect(JSON.stringify(letter?.body.blocks)).not.toContain('mrkdwn');
  });
});
