import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { codesOf, MEDIUM, replyOf, type Talk, talk } from '../../talk.js';

const GREY = 'I have 3 balls of grey medium, lot 12, 50 g / 105 m';
const GAUGE = `${MEDIUM}, grey medium yarn`;
const OWEN = { user: { slackUserId: 'U2', name: 'Owen' }, place: 'dm:D2' };

let path: string;
let t: Talk;
beforeEach(async () => {
  path = join(mkdtempSync(join(tmpdir(), 'shelf-')), 'store.sqlite');
  t = await talk(undefined, path);
});
afterEach(async () => {
  await t.close();
  rmSync(join(path, '..'), { recursive: true });
});

const said = (...lines: string[]) => t.sayAll(...lines);

/** What a maker sees on their own shelf and the team's: name, lot, mg or pieces left, of it set aside. */
const onShelf = (who?: typeof OWEN) =>
  t.within(async (s) => {
    const maker = await s.makers.held(who?.user.slackUserId ?? 'U1', '', 0);
    const lots = await s.shelf.of(maker.id);
    return lots.map(({ owner, name, dyeLot, left, aside }) =>
      [owner === '' ? 'team' : '', name, dyeLot, left, aside].filter((part) => part !== '').join(' '),
    );
  });
const lead = async (...lines: string[]) => (await said(...lines)).card.lead;
const codes = async (...lines: string[]) => codesOf(await said(...lines));

describe('stock', () => {
  test('is set, added to and taken from, in balls or by weight', async () => {
    expect(await lead(GREY)).toBe('On the shelf: grey medium, lot 12: 3 balls (150 g)');
    expect(await lead('bought 2 more of lot 12')).toBe(
      'Added 2 balls (100 g). Now grey medium, lot 12: 5 balls (250 g)',
    );
    expect(await lead('used 1 1/2 balls of grey medium')).toBe(
      'Taken off: 1.5 balls (75 g). Now grey medium, lot 12: 3.5 balls (175 g)',
    );
    expect(await lead('38 g left of lot 12')).toBe('On the shelf: grey medium, lot 12: 0.8 balls (38 g)');
    expect(await onShelf()).toEqual(['grey medium 12 38000 0']);
  });

  test('of a yarn whose ball is unknown asks what a ball holds, once, and goes on from there', async () => {
    const asked = await said('I have 3 balls of oat');
    expect(replyOf(asked, 'question').asks.figures).toContainEqual({ is: 'text', text: 'oat' });
    expect(await onShelf()).toEqual([]);
    expect(await lead('50 g')).toBe('How long is the yarn in a ball of oat?');
    expect(await lead('105 m')).toBe('On the shelf: oat: 3 balls (150 g)');
    expect(await lead('bought 2 balls of oat, lot 7')).toBe('Added 2 balls (100 g). Now oat, lot 7: 2 balls (100 g)');
  });

  test('takes the yarn used last where none is named, and a part of a name for the whole, and says so', async () => {
    await said(GAUGE, '50 g / 105 m');
    expect((await said('I have 3 of lot 12')).card.facts).toEqual([
      { label: 'Assumed', text: 'of grey medium, the yarn used last; a ball holds what it did before.' },
    ]);
    expect((await said('used 1 ball of grey')).card.facts).toEqual([
      { label: 'Assumed', text: 'grey read as grey medium; grey medium, lot 12, the only one.' },
    ]);
    expect(await onShelf()).toEqual(['grey medium 12 100000 0']);
  });

  test('of several things in one message is told whole', async () => {
    const { card } = await said('I have 3 balls of oat wool, lot 7, 50 g / 105 m, and 2 of lot 8, and 24 rings');
    expect(card.lead).toBe('On the shelf: 24 rings');
    expect(card.facts).toEqual([
      { label: 'Assumed', text: 'of oat wool, the only yarn on the shelf; a ball holds what it did before.' },
      {
        label: 'Recorded on the way',
        text: 'On the shelf: oat wool, lot 7: 3 balls (150 g); On the shelf: oat wool, lot 8: 2 balls (100 g).',
      },
    ]);
    expect(card.body).toContain('A new lot beside lot 7: two lots may differ in colour, so I keep them apart.');
  });

  test('keeps lots apart: a new one beside another, and what comes without a lot', async () => {
    await said(GREY);
    expect((await said('I have 2 of lot 11')).card.body).toContain(
      'A new lot beside lot 12: two lots may differ in colour, so I keep them apart.',
    );
    expect((await said('bought 4 more balls of grey medium')).card.body).toContain(
      'Kept apart from lot 11 and 12, since no lot was named.',
    );
    expect(await onShelf()).toEqual(['grey medium 200000 0', 'grey medium 11 100000 0', 'grey medium 12 150000 0']);
  });

  test('asks which lot where there are several, and takes "lot 11" or "11" for an answer', async () => {
    await said(GREY, 'I have 2 of lot 11');
    expect(await lead('used 20 g of grey medium')).toBe('Which lot of grey medium is it?');
    expect(await lead('lot 11')).toBe('Taken off: 0.4 balls (20 g). Now grey medium, lot 11: 1.6 balls (80 g)');
    expect(await lead('used 20 g of grey medium', '12')).toBe(
      'Taken off: 0.4 balls (20 g). Now grey medium, lot 12: 2.6 balls (130 g)',
    );
    await said('no grey medium left');
    expect(await onShelf()).toEqual(['grey medium 11 0 0', 'grey medium 12 0 0']);
  });

  test('of the team is seen and taken by all; a maker’s own is seen by them alone and taken first', async () => {
    await said(GREY, '2 balls of grey medium for the team, lot 9');
    expect(await onShelf(OWEN)).toEqual(['team grey medium 9 100000 0']);
    expect((await t.say('my shelf', OWEN)).card.lead).toBe('Your shelf is empty');
    await t.say('used 1 ball of grey medium', OWEN);
    await said('used 1 ball of grey medium');
    expect(await onShelf()).toEqual(['grey medium 12 100000 0', 'team grey medium 9 50000 0']);
  });

  test('never goes below nothing, and names what there is', async () => {
    await said(GREY);
    expect(await lead('used 4 balls of lot 12')).toBe('Grey medium, lot 12 holds 3 balls (150 g)');
    expect(await codes('used 20 g of lot 99')).toEqual(['not_on_shelf']);
    expect(await codes('used 3 rings')).toEqual(['not_on_shelf']);
    await said('used 3 balls of lot 12');
    expect(await codes('gave away lot 12')).toEqual(['shelf_too_low']);
    expect(await onShelf()).toEqual(['grey medium 12 0 0']);
  });

  test.each([
    ['I have half a zip', ['count_not_whole']],
    ['bought 0 rings', ['amount_outside']],
    ['bought 100,000 balls of grey, 50 g / 105 m', ['amount_outside']],
    ['I have 3 balls of grey, 0 g / 105 m', ['amount_outside']],
    ['I have 3 balls of grey, 50 g / 0 m', ['amount_outside']],
    ['0 g / 0 m', ['amount_outside', 'amount_outside']],
    ['1000 g / 1 m', ['count_outside']],
    ['bought 4 balls of grey, 50 g / 105 m, at €6.505', ['price_too_fine']],
    ['bought 4 balls of grey, 50 g / 105 m, at 9000000 euros', ['amount_outside']],
    ['2.5 balls for 10', ['count_not_whole']],
    ['I have 3 balls', ['no_yarn_named']],
  ])('that cannot be is named, and nothing is stored: "%s"', async (text, wanted) => {
    if (wanted.join() !== 'no_yarn_named') await said(GAUGE);
    expect(await codes(text)).toEqual(wanted);
    expect(await onShelf()).toEqual([]);
  });

  test('counts notions by name, their size in whatever place', async () => {
    await said('I have 6 zips 8 in at 1.20', 'bought 4 8 in zips', 'used a zip');
    expect(await onShelf()).toEqual(['zips 8 in 9 0']);
    expect(await lead('24 rings')).toBe('On the shelf: 24 rings');
  });

  test('is taken back and put in again exactly, its price and its ball too', async () => {
    await said(GREY, 'bought 2 of lot 12 at €7');
    const priceOf = () => t.within(async (s) => (await s.shelf.of((await s.makers.held('U1', '', 0)).id))[0]?.price);
    expect(await priceOf()).toEqual({ minor: 700, currency: 'EUR' });
    expect((await said('undo')).card.body).toEqual(['On the shelf: grey medium, lot 12: 3 balls (150 g).']);
    expect(await priceOf()).toBeUndefined();
    await said('put it back');
    expect(await priceOf()).toEqual({ minor: 700, currency: 'EUR' });
    await said('undo', 'undo');
    expect(await onShelf()).toEqual(['grey medium 12 0 0']);
  });

  test('is put right by the figure that was meant, and undo brings the first back', async () => {
    await said(GREY, 'bought 2 of lot 12 at 6.50');
    expect(await lead('no, 4')).toBe('Added 4 balls (200 g). Now grey medium, lot 12: 7 balls (350 g)');
    await said('undo');
    expect(await onShelf()).toEqual(['grey medium 12 250000 0']);
    await said('put it back', 'that was 5 balls');
    expect(await onShelf()).toEqual(['grey medium 12 400000 0']);
  });

  test('that was used since is not taken back from under the work', async () => {
    await said(GREY, 'bought 2 of lot 12');
    await t.say('used 4 balls of lot 12', { place: 'dm:D9' });
    expect(await codes('undo')).toEqual(['moved_on']);
    expect(await codes('no, 1')).toEqual(['moved_on']);
    expect(await onShelf()).toEqual(['grey medium 12 50000 0']);
  });

  test('survives a restart', async () => {
    await said(GREY);
    await t.close();
    t = await talk(undefined, path);
    expect((await said('my shelf')).card.body).toEqual([
      'Grey medium: lot 12, 3 balls (150 g). 50 g and 105 m a ball.',
    ]);
  });
});

describe('two makers', () => {
  test('who take the last ball of the team at once: one gets it, the other is told', async () => {
    await said('1 ball of grey for the team, lot 9, 50 g / 105 m');
    const take = (more?: typeof OWEN) => t.say("used a ball of the team's grey", more);
    const answers = await Promise.all([take(), take(OWEN)]);
    expect(answers.map(({ card }) => card.lead).toSorted()).toEqual(
      [
        "Taken off: 1 ball (50 g). Now the team's grey, lot 9: none left",
        "The team's grey, lot 9 holds nothing",
      ].toSorted(),
    );
    expect(await onShelf()).toEqual(['team grey 9 0 0']);
  });

  test('who start at once on the last of a lot: the second is told what is left for them', async () => {
    await said(GAUGE, '2 balls of grey medium for the team, lot 9, 50 g / 105 m', 'pouch 11 in wide');
    for (const line of [GAUGE, 'pouch 11 in wide']) await t.say(line, OWEN);
    const notes = [(await said('start')).card.body[0], (await t.say('start', OWEN)).card.body[0]];
    expect(notes).toEqual([
      "Set aside: 65 g of the team's grey medium, lot 9 (35 g left).",
      "Set aside: 35 g of the team's grey medium, lot 9, all it has free. This takes about 65 g: it will not be from one lot.",
    ]);
    expect(await onShelf()).toEqual(['team grey medium 9 100000 100000']);
  });
});

describe('prices', () => {
  test('without a currency are kept as numbers, and said so; the first currency typed becomes the maker’s', async () => {
    await said(GAUGE, '50 g / 105 m');
    expect((await said('6.50 a ball')).card.body).toEqual([
      '6.50 a ball.',
      'No currency named, so I keep the number alone: say "prices in euros", or in yours.',
    ]);
    expect((await said('£6.20 a ball, ten for £56')).card.body).toEqual(['£6.20 a ball; 10 balls for £56.00.']);
    expect((await said('7 a ball')).card.body).toEqual(['£7.00 a ball.']);
    await said('undo', 'undo');
    expect((await said('7 a ball')).card.body?.[0]).toBe('7.00 a ball.');
  });

  test('in dollars ask which, unless the maker’s are some', async () => {
    await said(GAUGE, '50 g / 105 m');
    expect(await lead('$5 a ball')).toBe('Which currency is $5 in?');
    expect((await said('canadian dollars')).card.body).toEqual(['CA$5.00 a ball.']);
    expect((await said('$6 a ball')).card.body).toEqual(['CA$6.00 a ball.']);
    expect((await said('€6 a ball')).card.body).toEqual(['€6.00 a ball.']);
  });

  test('are in the currency that is set, from the same message on, and undo gives back what was before', async () => {
    await said(GAUGE, '50 g / 105 m');
    expect((await said('prices in yen. 500 a ball')).card.body).toEqual(['¥500 a ball.']);
    expect(await lead('prices in dollars')).toBe('Which dollars?');
    expect((await t.press(0)).card.lead).toBe('From now on I read prices in USD');
    await said('undo');
    expect((await said('600 a ball')).card.body).toEqual(['¥600 a ball.']);
  });

  test('of the same ball and as many take the place of those before, and undo brings them back', async () => {
    await said(GAUGE, '50 g / 105 m', '€6 a ball', '€7 a ball, ten for €60');
    const sold = () =>
      t.within(async (s) => {
        const [yarn] = await s.yarns.of((await s.makers.held('U1', '', 0)).id);
        return (await s.putUps.of(yarn?.id ?? '')).map(({ balls, price }) => [balls, price?.minor]);
      });
    expect(await sold()).toEqual([
      [1, 700],
      [10, 6000],
    ]);
    await said('undo');
    expect(await sold()).toEqual([[1, 600]]);
  });

  test('and what a ball holds tell the yarn’s count too', async () => {
    await said(GAUGE, '50 g / 100 m');
    const tex = () => t.within(async (s) => (await s.profiles.of((await s.makers.held('U1', '', 0)).id))[0]?.yarn.tex);
    expect(await tex()).toBe(500);
    await said('undo');
    expect(await tex()).toBeUndefined();
  });
});

describe('work', () => {
  /** What a pouch takes in balls of 50 g and 105 m, in mg. */
  let need: number;
  const started = async (...before: string[]) => {
    const { plan } = replyOf(await said(GAUGE, ...before, 'pouch 11 in wide'), 'plan');
    need = Math.round(((plan.yarn?.lengthM ?? 0) * 1000 * 50) / 105);
    return said('start');
  };

  test('has its yarn set aside from the smallest lot that holds it all, the maker’s own first', async () => {
    const answer = await started(
      GREY,
      'I have 2 of lot 13',
      'I have 1 of lot 14',
      '2 balls of grey medium for the team, lot 9',
      'I have 200 g of oat',
    );
    expect(answer.card.body[0]).toBe('Set aside: 65 g of grey medium, lot 13 (35 g left).');
    expect(await onShelf()).toContain(`grey medium 13 100000 ${need}`);
  });

  test('takes the largest lot where none is enough, and says that it will not do', async () => {
    const answer = await started(GREY, '38 g left of lot 12', 'I have 20 g of lot 13');
    expect(answer.card.body[0]).toBe(
      'Set aside: 38 g of grey medium, lot 12, all it has free. This takes about 65 g: it will not be from one lot.',
    );
    const done = await said('done, 10 7/8 by 6 3/4, weighs 66 g');
    expect(done.card.body).toContain(
      'Off the shelf: 38 g of grey medium, lot 12; nothing left. The other 28 g came from elsewhere: say "used 20 g of lot 7" for that.',
    );
    expect(await onShelf()).toEqual(['grey medium 12 0 0', 'grey medium 13 20000 0']);
  });

  test('in a yarn that is not on the shelf says and changes nothing', async () => {
    const answer = await started('I have 3 balls of oat, 50 g / 105 m');
    expect(answer.card.body).toEqual(['Pouch on the 46. Measure at row 50, 50 on.']);
    expect(await onShelf()).toEqual(['oat 150000 0']);
  });

  test('takes off what the piece weighs, else what was expected, and weighing it later puts that right', async () => {
    await started(GREY);
    await said('done, later');
    expect(await onShelf()).toEqual([`grey medium 12 ${150_000 - need} 0`]);
    await said('done, 10 7/8 by 6 3/4, weighs 66 g');
    expect(await onShelf()).toEqual(['grey medium 12 84000 0']);
    await said('undo');
    expect(await onShelf()).toEqual([`grey medium 12 ${150_000 - need} 0`]);
    await said('undo');
    expect(await onShelf()).toEqual([`grey medium 12 150000 ${need}`]);
    await said('undo');
    expect(await onShelf()).toEqual(['grey medium 12 150000 0']);
    await said('put it back', 'put it back', 'put it back');
    expect(await onShelf()).toEqual(['grey medium 12 84000 0']);
  });

  test('that was weighed wrong is put right on the shelf too', async () => {
    await started(GREY);
    await said('done, 10 7/8 by 6 3/4, weighs 66 g', 'that was 56 g');
    expect(await onShelf()).toEqual(['grey medium 12 94000 0']);
  });

  test('given up frees its yarn, and what was used can be said', async () => {
    await started(GREY);
    expect((await said('give it up')).card.body[0]).toBe(
      'Free again: grey medium, lot 12, 3 balls (150 g). If yarn was used, say "used 20 g".',
    );
    await said('used 20 g');
    expect(await onShelf()).toEqual(['grey medium 12 130000 0']);
    await said('undo', 'undo');
    expect(await onShelf()).toEqual([`grey medium 12 150000 ${need}`]);
  });

  test('keeps its yarn: no less can be set or taken while it is on the machine', async () => {
    await started(GREY);
    const low = await said('38 g left of lot 12');
    expect(codesOf(low)).toEqual(['shelf_too_low']);
    expect(low.card.body[0]).toBe(
      'Of it 1.3 balls (65 g) is set aside for work; that is free once the piece is done or given up.',
    );
    expect(await codes('used 2 balls of lot 12')).toEqual(['shelf_too_low']);
    expect(await lead('gave away lot 12')).toBe(
      'Taken off: 1.7 balls (85 g). Now grey medium, lot 12: 1.3 balls (65 g)',
    );
  });

  test('says whether there are rings enough, and takes them off when it is done', async () => {
    expect((await started(GREY, 'I have 3 rings')).card.body).toContain('Rings on the shelf: 3; this takes 2.');
    await said('done, 10 7/8 by 6 3/4');
    expect(await onShelf()).toContain('rings 1 0');
    const next = await said('pouch 11 in wide', 'start');
    expect(next.card.body).toContain('Rings on the shelf: 1; this takes 2, so 1 short.');
    await said('done, 10 7/8 by 6 3/4', 'yes');
    expect(await onShelf()).toContain('rings 1 0');
  });
});

test('a shelf tells its yarns by name with their lots, then notions, and what the other shelf holds', async () => {
  await said(
    GREY,
    'bought 2 balls of grey medium, lot 7, at €6.50',
    'I have 38 g of oat',
    'I have 6 zips 8 in at €1.20',
    '24 rings',
    '4 balls of grey medium for the team, lot 9',
  );
  const { card } = await said('my shelf');
  expect([card.lead, ...card.body]).toEqual([
    'On your shelf: 2 yarns and 2 notions',
    'Grey medium: lot 12, 3 balls (150 g); lot 7, 2 balls (100 g), €6.50 a ball. 50 g and 105 m a ball.',
    'Oat: 38 g.',
    'Notions: 24 rings, 6 zips 8 in (€1.20 each).',
    'The team shelf holds more: say "team shelf".',
  ]);
  expect((await said('team shelf')).card.body).toEqual([
    'Grey medium: lot 9, 4 balls (200 g). 50 g and 105 m a ball.',
    'Your own shelf holds more: say "my shelf".',
  ]);
});

test('gauge is told in a channel to the one who asks alone', async () => {
  const thread = { place: 'thread:C1:1.5', address: { to: 'post', channel: 'C1', threadTs: '1.5' } } as const;
  for (const line of [GAUGE, 'my gauge', 'my measurements', 'pouch 11 in wide', 'why']) await t.say(line, thread);
  const rows = await t.store.outbox.take(Number.MAX_SAFE_INTEGER / 2, 1, 9);
  expect(rows.map(({ address }) => address.to)).toEqual(['ephemeral', 'ephemeral', 'ephemeral', 'post', 'ephemeral']);
});

test('what a shelf holds is told in a channel to the one who asks alone', async () => {
  const thread = { place: 'thread:C1:1.5', address: { to: 'post', channel: 'C1', threadTs: '1.5' } } as const;
  const alone = { to: 'ephemeral', channel: 'C1', user: 'U1', threadTs: '1.5' };
  for (const line of [GREY, 'my shelf', 'used 9 balls of lot 12', 'used 1 ball of lot 99']) await t.say(line, thread);
  for (const line of [GAUGE, 'pouch 11 in wide']) await t.say(line);
  for (const line of ['start', 'row 5', 'done, later', 'thanks']) await t.say(line, thread);
  await t.say('my shelf', { address: { to: 'post', channel: 'D1' } });
  const rows = await t.store.outbox.take(Number.MAX_SAFE_INTEGER / 2, 1, 9);
  const posted = rows.map(({ address }) => address);
  expect(posted).toEqual([
    alone,
    alone,
    alone,
    alone,
    alone,
    thread.address,
    alone,
    thread.address,
    { to: 'post', channel: 'D1' },
  ]);
});
