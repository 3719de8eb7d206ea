import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { blocks } from '../../../../bot/cards/blocks.js';
import { sharingIn } from '../../../../bot/language/sharing.js';
import type { OutboxRow } from '../../../../bot/store/ports.js';
import { pieces } from '../../../../core/index.js';
import { blockFaults } from '../../cards/block-faults.js';
import { type Answer, AT, CHANNEL, replyOf, type Talk, talk } from '../../talk.js';

const NADIA = { user: { slackUserId: 'U1', name: 'Nadia' }, place: 'dm:D1' };
const OWEN = { user: { slackUserId: 'U2', name: 'Owen' }, place: 'dm:D2' };
const LOTTE = { user: { slackUserId: 'U3', name: 'Lotte' }, place: 'dm:D3' };
const SENT = { address: { to: 'post', channel: 'D1' } } as const;
const THREAD = { place: 'thread:C1:17.1', address: CHANNEL };

let open: Talk;
beforeEach(async () => {
  open = await talk();
  await open.say('use inches', OWEN);
  await open.say('use inches', LOTTE);
  await open.say('46 needles, 110 rows, 22 in long, 6 3/4 flat');
  await open.say('rows for a pouch 11 in wide');
});
afterEach(() => open.close());

const posted = async (): Promise<OutboxRow[]> => open.store.outbox.take(AT + 1000, 1000, 90);
const letterTo = async (channel: string): Promise<OutboxRow | undefined> =>
  (await posted()).findLast(({ address }) => address.to === 'post' && address.channel === channel);
const problemOf = (answer: Answer): unknown =>
  replyOf(answer, 'problem').problems.map((one) => (one.code === 'of_share' ? one.problem.code : one.code));
const offersOf = (answer: Answer): string[] => answer.card.offers.map(({ button }) => button);

/** Two plans of Nadia's with Owen, the first with Lotte as well. */
async function sharedTwo(): Promise<void> {
  await open.say('share this with Owen and Lotte');
  await open.say('rows for a cowl 24 in round');
  await open.say('share this with Owen');
}

describe('what is shared with a maker', () => {
  beforeEach(sharedTwo);

  test('is listed to them alone, the last first, each with a way to size it', async () => {
    const answer = await open.say('what is shared with me', { ...OWEN, ...THREAD });
    expect(answer.card.lead).toBe('2 plans shared with you');
    expect(answer.card.body).toEqual(['Cowl by Nadia: 24 in round (61 cm).', 'Pouch by Nadia: 11 in wide (28 cm).']);
    expect(offersOf(answer)).toEqual(["Size Nadia's Cowl", "Size Nadia's Pouch"]);
    expect((await posted()).at(-1)?.address.to).toBe('ephemeral');
    expect((await open.say('what is shared with me', LOTTE)).card.body).toEqual([
      'Pouch by Nadia: 11 in wide (28 cm).',
    ]);
    expect(problemOf(await open.say('what is shared with me'))).toEqual(['nothing_shown']);
  });

  test('is sized by the kind of piece and the owner that are named, and by its button', async () => {
    await open.say('48 needles, 121 rows, 22 in, 7 in flat', OWEN);
    expect(replyOf(await open.say('size the pouch Nadia shared', OWEN), 'plan').plan.label).toBe('Pouch');
    const listed = await open.say('what did Nadia share with me', OWEN);
    expect(listed.card.body[1]).toContain('You sized it.');
    const turn = (await open.conversation(OWEN)).offered.at(-1)?.turn ?? '';
    const pressed = (await open.take({ pick: { turn, index: 0 } }, OWEN)) as Answer;
    expect(replyOf(pressed, 'plan').plan.label).toBe('Cowl');
  });

  test('is shown again as it was sent, by its owner or its piece', async () => {
    const again = await open.say('show me the shared pouch', OWEN);
    expect(again.card.lead).toBe('Nadia shared a plan with you: pouch, 11 in wide (28 cm)');
    expect(offersOf(again)).toEqual(['Size to My Gauge', 'Not Now']);
    expect((await open.say('show me the plan Nadia shared', OWEN)).card.lead).toContain('cowl');
    expect(problemOf(await open.say('what did Lotte share with me', OWEN))).toEqual(['nothing_shown']);
    expect(problemOf(await open.say('what did Zoe share with me', OWEN))).toEqual(['no_such_maker']);
  });
});

describe('what a maker shares', () => {
  beforeEach(sharedTwo);

  test('is listed with who has sized it, and withdrawn by its piece or by its button', async () => {
    await open.say('48 needles, 121 rows, 22 in, 7 in flat', OWEN);
    await open.say('size the pouch Nadia shared', OWEN);
    const listed = await open.say('what have I shared');
    expect(listed.card.body).toEqual([
      'Cowl, 24 in round (61 cm): Owen has not sized it yet.',
      'Pouch, 11 in wide (28 cm): Lotte has not sized it yet; Owen has sized it.',
    ]);
    expect(offersOf(listed)).toEqual(['Withdraw the Cowl', 'Withdraw the Pouch', 'Withdraw All']);
    expect((await open.press(1)).card.lead).toBe('Withdrawn from Owen and Lotte');
    expect((await open.say('what have I shared')).card.lead).toBe('You share 1 plan');
    await open.say('undo');
    expect((await open.say('withdraw the pouch from Lotte')).card.lead).toBe('Withdrawn from Lotte');
  });

  test('is all withdrawn at once after one question with its count, and put back by undo', async () => {
    const asked = await open.say('unshare everything');
    expect(asked.card.lead).toBe('Withdraw all 3 shares?');
    expect(asked.card.body[0]).toContain('the pouch from Owen, the pouch from Lotte, the cowl from Owen');
    expect((await open.say('what have I shared')).card.lead).toBe('You share 2 plans');
    await open.say('withdraw all my shares');
    expect((await open.say('yes')).card.lead).toBe('Withdrawn from Owen and Lotte');
    expect(problemOf(await open.say('what have I shared'))).toEqual(['nothing_shared']);
    expect(problemOf(await open.say('what is shared with me', LOTTE))).toEqual(['nothing_shown']);
    await open.say('undo');
    expect((await open.say('what have I shared')).card.lead).toBe('You share 2 plans');
    expect((await open.say('withdraw everything from Lotte')).card.lead).toBe('Withdrawn from Lotte');
  });
});

test.each(pieces.map(({ id, label }) => [label.toLowerCase(), id]))(
  'the words beside a listed %s are read',
  (label, id) => {
    expect(sharingIn(`withdraw the ${label}`, pieces)).toEqual({ kind: 'withdraw_share', piece: id });
    expect(sharingIn(`size the ${label} Nadia shared`, pieces)).toEqual({ kind: 'size_share', by: 'Nadia', piece: id });
  },
);

describe('a plan shared back', () => {
  beforeEach(async () => {
    await open.say('48 needles, 121 rows, 22 in, 7 in flat', OWEN);
    await open.say('share this with Owen');
    await open.say('size it to my gauge', OWEN);
  });

  test('goes to whoever shared it, its size alone', async () => {
    await open.say('share it back', { ...OWEN, ...SENT });
    const { text } = (await letterTo('U1'))?.body ?? {};
    expect(text).toMatch(/^Owen shared a plan with you: pouch, 11 in wide \(28 cm\)\n/);
    expect(text).not.toMatch(/120|48/);
  });

  test('with rows is asked about first, as are rows told before the piece is finished', async () => {
    for (const words of ['share it back with my rows', 'tell Nadia my rows']) {
      replyOf(await open.say(words, OWEN), 'question');
      await open.say('yes', { ...OWEN, ...SENT });
      expect((await letterTo('U1'))?.body.text).toMatch(/Owen's own: \d+ rows on 48 needles\./);
    }
  });

  test('is refused for a plan of one’s own', async () => {
    expect(problemOf(await open.say('share it back'))).toEqual(['nobody_to_share_back']);
  });
});

describe('words that go along with a share', () => {
  test('stand on the card as letters, on one line, whatever they are', async () => {
    const told = await open.say('share this with Owen: <!channel> *two*\n`of` <@U3> these', SENT);
    const note = '<!channel> *two* `of` <@U3> these';
    expect(told.card.body).toContain(`With your note: "${note}"`);
    const letter = await letterTo('U2');
    expect(letter?.body.text).toContain(`Nadia says: "${note}"`);
    expect(JSON.stringify(letter?.body.blocks)).not.toMatch(/mrkdwn|"type":"user"|broadcast/);
    expect(blockFaults(letter?.body.blocks as never)).toEqual([]);
  });

  test('are cut after 300 characters, and said to be', async () => {
    const told = await open.say(`share this with Owen: ${'ab '.repeat(120)}end`, SENT);
    expect(told.card.body).toContain('Your note was longer; its first 300 characters went along.');
    expect((await letterTo('U2'))?.body.text).toMatch(/says: "(?:ab ){100}"/);
    expect(blockFaults(blocks(told.card, 'turn') as never)).toEqual([]);
  });

  test('wait with the share for what is asked first', async () => {
    await open.say('share this with Owen, with my rows: same size?');
    await open.say('yes', SENT);
    expect((await letterTo('U2'))?.body.text).toContain('Nadia says: "same size?"');
    await open.say('cowl and share it with Owen: for the market');
    await open.say('24 in round', SENT);
    expect((await letterTo('U2'))?.body.text).toContain('Nadia says: "for the market"');
  });
});

describe('a share with nobody in particular', () => {
  test.each(['share with everyone', 'share this with the team', 'share it with everybody'])('%s', async (words) => {
    expect(problemOf(await open.say(words))).toEqual(['with_everyone']);
    const answer = await open.say(words, { ...NADIA, ...THREAD });
    expect(answer.card.sayings).toContain('post this here');
    const turn = (await open.conversation({ ...NADIA, ...THREAD })).offered.at(-1)?.turn ?? '';
    const pressed = (await open.take({ pick: { turn, index: 0 } }, { ...NADIA, ...THREAD })) as Answer;
    expect(pressed.card.lead).toBe('Shared with this channel: the pouch');
  });

  test.each(['share this with Owen, with my rows', 'unshare everything'])(
    'what is asked about %s is for the asker alone',
    async (words) => {
      await open.say('share this with Owen and Lotte');
      replyOf(await open.say(words, { ...NADIA, ...THREAD }), 'question');
      expect((await posted()).at(-1)?.address).toMatchObject({ to: 'ephemeral', user: 'U1' });
    },
  );

  test('of another piece than the one in hand is refused, and of that one is not', async () => {
    const refused = await open.say('share the cowl with Owen');
    expect(problemOf(refused)).toEqual(['another_piece']);
    expect(refused.card.lead).toBe('The plan in hand is the pouch, not a cowl');
    expect((await open.say('share the pouch with Owen')).card.lead).toBe('Shared with Owen: the pouch');
  });

  test('named twice is shared once', async () => {
    expect((await open.say('share this with Owen and @Owen')).card.lead).toBe('Shared with Owen: the pouch');
  });
});

describe('why a plan differs from the one it was sized from', () => {
  const why = async (words: string): Promise<Answer['card']> => (await open.say(words, OWEN)).card;

  beforeEach(() => open.say('48 needles, 121 rows, 22 in long, 178.904 mm flat', OWEN));

  test('is told by both makers’ figures where the owner’s rows were shown', async () => {
    await open.say('share this with Owen, with my rows');
    await open.say('yes');
    await open.say('size it to my gauge', OWEN);
    const taller = await why('why is mine taller');
    expect(taller.lead).toBe("Yours is 6 7/8 in tall, Nadia's 6 5/8 in");
    expect(taller.body.join(' ')).toContain('your tube has 48 needles against 46');
    expect(taller.body.join(' ')).toContain('The plan leaves that side open, so 6 7/8 in tall is within it.');
    expect((await why('why do I need more rows')).lead).toBe('You knit 120 rows, Nadia 109');
    expect((await why('why are ours different')).body.join(' ')).toContain('9% closer (4.6 mm against 5.1 mm)');
  });

  test('is told from one’s own side alone where they were not, or are no more', async () => {
    await open.say('share this with Owen');
    await open.say('size it to my gauge', OWEN);
    const alone = await why('why is mine taller');
    expect(alone.lead).toBe('Nadia shows no rows, so I tell your side only');
    expect(alone.body[0]).toBe('Yours: 120 rows on 48 needles, 6 7/8 in tall.');
    expect(alone.body.join(' ')).not.toMatch(/109|46/);
    await open.say('share this with Owen, with my rows');
    await open.say('yes');
    await open.say('withdraw it');
    expect(await why('why is mine taller')).toEqual(alone);
  });

  test('needs a plan that someone shared', async () => {
    expect(problemOf(await open.say('why is mine taller'))).toEqual(['nothing_beside']);
  });
});

describe('a plan shared in a channel', () => {
  test('is known as shared where it was made, and changed from there', async () => {
    await open.say('share this with Owen', { ...NADIA, ...THREAD });
    expect((await open.say('make the pouch 12 in wide')).card.body.join(' ')).toContain(
      'Shared as it was before with Owen',
    );
    expect((await open.say('send the change')).card.lead).toMatch(/^Sent to Owen: pouch, 12 in wide/);
    expect((await open.say('how is the pouch doing')).card.lead).toBe('The pouch: nothing finished and told yet');
  });
});
