import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { codesOf, MEDIUM, POUCH, replyOf, type Talk, talk } from '../talk.js';

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
    expect(replyOf(await open.say(words), 'gauges').gauges.length).toBe(1);
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

  test('to a closure takes the width away, and to a width the closure', async () => {
    await open.say(POUCH);
    expect(Object.keys((await plan('with a 9 in zip')).ask.values)).toEqual(['closure']);
    expect(Object.keys((await plan('make it 12 wide')).ask.values)).toEqual(['width']);
  });

  test('of both at once is checked together', async () => {
    await open.say(POUCH);
    expect(codesOf(await open.say('9 in wide with a 12 in zip'))).toEqual(['closure_too_long']);
  });

  test('"make it 12" keeps the half-width last stated', async () => {
    await open.say('pouch 10 1/2 to 11 in wide');
    const { ask } = await plan('make it 12');
    expect(ask.values.width).toMatchObject({
      is: 'window',
      loMm: expect.closeTo(298.45, 6),
      hiMm: expect.closeTo(311.15, 6),
    });
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

  test('by a day says so, and a day that is over is left out', async () => {
    const answer = await open.say('pouch 11 in wide by 5 december');
    expect(answer.card.body.join(' ')).toContain('Ready by Saturday 5 December 2026 (you said "by 5 december").');
    const over = await open.say('pouch 11 in wide by 11 may 2020');
    expect(over.card.facts.at(-1)).toEqual({ label: 'Left out', text: 'I could not use "by 11 may 2020".' });
  });
});

describe('steps', () => {
  test('are those of the plan in hand, and say when the gauge has moved on', async () => {
    expect(codesOf(await open.say('steps'))).toEqual(['no_plan_yet']);
    await open.say(POUCH);
    const fresh = await open.say('steps');
    expect(fresh.card.lead).toBe('Steps for the pouch, 109 rows on 46 needles');
    expect(fresh.card.steps.join(' ')).toContain('The graft makes row 110');
    await open.say('46 needles, 110 rows in 23 in');
    const moved = await open.say('steps');
    expect(moved.card.body[0]).toBe('Your gauge has moved on since: it was 109 rows then.');
  });
});
