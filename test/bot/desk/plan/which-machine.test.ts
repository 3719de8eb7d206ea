import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { AT, codesOf, MEDIUM, replyOf, type Talk, talk } from '../../talk.js';

let open: Talk;
beforeEach(async () => {
  open = await talk();
});
afterEach(() => open.close());

/** 46 needles make a tube 6 3/4 in flat, 48 of the same stitches 7 in; nothing is measured on the 40. */
const THREE = ['needles 40', '48 needles, 80 rows in 16 in, 7 1/16 in flat', MEDIUM];
const say = async (...lines: string[]) => {
  for (const line of lines.slice(0, -1)) await open.say(line);
  return open.say(lines.at(-1) ?? '');
};
const factOf = (answer: { card: { facts: readonly { label: string; text: string }[] } }, label: string) =>
  answer.card.facts.find((fact) => fact.label === label)?.text;

describe('of three machines', () => {
  beforeEach(async () => {
    await say(...THREE);
  });

  test('the one whose needles come nearest leads, and why; each has its rows, its size in both units and its gauge', async () => {
    const answer = await open.say('which machine for a tube 22 in long and 165 to 180 mm wide');
    const { ranked } = replyOf(answer, 'machines');
    expect(ranked.map(({ bench }) => bench.needles)).toEqual([46, 48, 40]);
    expect(answer.card.lead).toMatch(/^The 46 suits it best: .*, likely \(62%\)$/);
    expect(answer.card.body).toEqual(['Needles set the flat width, not rows; about 46 would be right in this gauge.']);
    expect(factOf(answer, 'The 46')).toMatch(
      /^110 rows, .* long; 6 3\/4 in \(17 cm\) wide flat, most likely 6 3\/8 to 7 1\/4 in, likely \(62%\) to be between 165 and 180 mm\. Its own gauge, 1 piece\.$/,
    );
    expect(factOf(answer, 'The 48')).toContain('about an even chance (4');
    expect(factOf(answer, 'The 40')).toMatch(
      /your 40 needles make 5 7\/8 in, not 6 1\/2 to 7 1\/8 in; unlikely \(\d+%\) even so/,
    );
  });

  test('each that can make it has a button that plans it there, and the words do the same', async () => {
    await open.say('which machine for a pouch 11 in wide and 6 3/4 in tall');
    const spoken = replyOf(await open.say('on the 48'), 'plan');
    expect(spoken.ask.on).toEqual({ machine: '48', needles: 48, yarn: '' });
    expect(Object.keys(spoken.ask.values)).toEqual(['width', 'height']);
    const again = await open.say('which machine?');
    const i = again.card.offers.findIndex((offer) => offer.button === 'On the 46');
    expect(replyOf(await open.press(i), 'plan').plan.needles).toBe(46);
  });

  test('a piece asked about is in hand from then on, and nothing is stored', async () => {
    open.written();
    const answer = await open.say('which machine for a pouch 11 in wide');
    expect(open.written()).not.toContain('plan');
    expect(answer.card.foot).toEqual(['Best first. Nothing was stored.']);
    expect(replyOf(await open.say('make it 12'), 'plan').ask.values).toMatchObject({
      width: { mm: expect.closeTo(304.8, 6) },
    });
  });

  test('a gauge of its own is surer than a borrowed one, where rows alone decide', async () => {
    const answer = await open.say('which machine for a scarf 60 in long');
    const { ranked } = replyOf(answer, 'machines');
    expect(ranked.at(-1)?.bench).toMatchObject({ needles: 40, borrowedFrom: 'the 46' });
    expect(factOf(answer, 'The 40')).toContain('Gauge of the 46, taken to hold here within 3%.');
  });

  test('the plan in hand stays what it is', async () => {
    await open.say('pouch 11 in wide on the 48');
    const before = await open.conversation();
    const answer = await open.say('can i make it on another machine');
    expect(replyOf(answer, 'machines').ask.values).toEqual(before.subject?.values);
    const after = await open.conversation();
    expect([after.subject, after.planId]).toEqual([before.subject, before.planId]);
    expect((await open.say('on the 46')).card.body[0]).toBe('Changed: machine, the 46.');
  });

  test('none that makes it says what would', async () => {
    const answer = await open.say('which machine for a pouch 11 in wide and 12 in tall');
    expect(answer.card.lead).toBe('None of your machines makes this pouch as asked');
    expect(answer.card.body[0]).toMatch(/about 8\d needles or a flat panel of 4\d needles in one layer would/);
    expect(replyOf(answer, 'machines').ranked.every(({ outcome }) => !outcome.ok)).toBe(true);
  });

  test('a size that is missing, out of range or without a unit is told as for a plan, and the question stays', async () => {
    expect((await open.say('which machine for a pouch')).card.lead).toBe('How wide should the pouch be?');
    expect(replyOf(await open.say('11 in'), 'machines').ask.values).toMatchObject({ width: { mm: 279.4 } });
    expect((await open.conversation()).pending).toBeUndefined();
    expect(codesOf(await open.say('which machine for a pouch 400 in wide'))).toEqual(['length_out_of_range']);
    await open.say('which machine for a pouch');
    expect(replyOf(await open.say('11 by 6 3/4'), 'machines').ask.values).toMatchObject({ height: { mm: 171.45 } });
  });

  test('the piece can follow the question', async () => {
    expect((await open.say('which machine for 11 in wide')).card.lead).toBe('Which piece is it for?');
    expect(replyOf(await open.say('a pouch'), 'machines').label).toBe('Pouch');
  });

  test('one without needles is named with what to tell', async () => {
    await open.within(async ({ makers, profiles }) => {
      const { id } = await makers.held('U1', 'Nadia', AT);
      await profiles.opened(id, { name: 'old blue', needles: undefined }, '', '', AT);
    });
    const answer = await open.say('which machine for a pouch 11 in wide');
    expect(replyOf(answer, 'machines').untold).toMatchObject([{ name: 'old blue' }]);
    expect(factOf(answer, 'The old blue')).toContain('tell me its needles');
  });
});

describe('of one machine', () => {
  beforeEach(async () => {
    await open.say(MEDIUM);
  });

  test('it is said to be the one, with what other needles would do', async () => {
    const sized = await open.say('which machine for a pouch 11 in wide and 6 3/4 tall');
    expect(sized.card.lead).toMatch(
      /^The 46 is the one machine I know: 6 5\/8 in tall, about an even chance \(\d+%\)$/,
    );
    expect(sized.card.sayings).toContain('on 47 needles');
    const free = await open.say('which machine for a pouch 11 in wide');
    expect(free.card.body).toEqual([
      'On other needles the rows stay 109 in this gauge; each needle changes the height by about 1/8 in.',
    ]);
    const panel = await open.say('which machine for a panel 8 in wide and 12 in long');
    expect(panel.card.body).toEqual(['It takes 27 needles, so any machine of 29 or more would do.']);
  });

  test('that cannot make it is refused as a plan on it is', async () => {
    const asked = codesOf(await open.say('which machine for a pouch 11 in wide and 12 in tall'));
    expect(asked).toEqual(codesOf(await open.say('pouch 11 in wide and 12 in tall')));
  });
});

test('without a plan, a gauge or needles, what is missing is asked for, and the answer follows it', async () => {
  expect(codesOf(await open.say('which machine?'))).toEqual(['no_plan_yet']);
  expect((await open.say('which machine for a pouch 11 in wide')).card.lead).toBe('Which piece have you measured?');
  expect((await open.say('5 rows to the inch')).card.lead).toBe(
    'Needles decide it, and I know those of no machine yet',
  );
  await open.say(MEDIUM);
  expect(replyOf(await open.say('which machine for a pouch 11 wide'), 'machines').ranked).toHaveLength(1);
});
