import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { normalBelow } from '../../../../core/stats/normal.js';
import { CHANNEL, codesOf, MEDIUM, replyOf, type Talk, talk } from '../../talk.js';

const GAUGE = `${MEDIUM}, weighs 61 g, grey medium yarn`;
const POUCH = 'pouch 11 in wide';
const PRICED = 'how many balls at 6.50 for 50 g / 100 m?';

let t: Talk;
beforeEach(async () => {
  t = await talk();
});
afterEach(() => t.close());

const said = (...lines: string[]) => t.sayAll(...lines);
const bought = async (...lines: string[]) => replyOf(await said(...lines), 'buy');
const factOf = (answer: Awaited<ReturnType<typeof said>>, label: string) =>
  answer.card.facts.find((fact) => fact.label === label)?.text;

/** Φ(ln(L/Q)/√(cv² + 0.02² + 0.02²·Σnb²/L²)) for balls alike in each of several heaps. */
function chanceOf(needM: number, cv: number, heaps: readonly [balls: number, ballM: number][]): number {
  const heldM = heaps.reduce((sum, [balls, ballM]) => sum + balls * ballM, 0);
  const squares = heaps.reduce((sum, [balls, ballM]) => sum + balls * ballM ** 2, 0);
  return normalBelow(Math.log(heldM / needM) / Math.sqrt(cv ** 2 + 0.02 ** 2 + (0.02 ** 2 * squares) / heldM ** 2));
}

describe('from a weighed gauge to balls', () => {
  test('each number on the way is that of its formula', async () => {
    await said(GAUGE, POUCH);
    const first = await bought(PRICED);
    // 61 g of 500 tex are 122 m in 46·110 stitches; gauge says √(19·7.454·5.08) = 26.82 mm, give or take 20 %.
    const weighedMm = 122_000 / (46 * 110);
    const gaugeMm = Math.sqrt(19 * ((2 * 171.45) / 46) * (558.8 / 110));
    const weighedCv = Math.hypot(0.02, 1 / (Math.sqrt(12) * 61));
    const [w, g] = [weighedCv ** -2, 0.2 ** -2];
    const loopMm = Math.exp((w * Math.log(weighedMm) + g * Math.log(gaugeMm)) / (w + g));
    expect(weighedMm).toBeCloseTo(24.11, 2);
    expect(first.one.loop.mm).toBeCloseTo(loopMm, 9);
    expect(first.one.loop.cv).toBeCloseTo((w + g) ** -0.5, 9);
    // 109 rows of 46 and the row that grafts, 110·46 stitches, and what tails and seams take beside them.
    expect(first.one.stitches).toBeCloseTo(110 * 46, 6);
    const cutM = first.one.parts.seamsM + first.one.parts.trimM + first.one.parts.cordM + first.one.parts.fringeM;
    expect(first.need.lengthM).toBeCloseTo((110 * 46 * loopMm) / 1000 + cutM, 6);
    expect(first.more).toMatchObject({ balls: 2, lengthM: 200, price: { minor: 1300, currency: '' } });
    expect(first.more?.chance).toBeCloseTo(chanceOf(first.need.lengthM, first.need.cv, [[2, 100]]), 9);
    expect(chanceOf(first.need.lengthM, first.need.cv, [[1, 100]])).toBeLessThan(0.95);

    await said('I have 3 of lot 12');
    const enough = await bought('how many balls?');
    expect([enough.more, enough.held?.lot.dyeLot, enough.held?.lengthM]).toEqual([undefined, '12', 300]);
    expect(enough.held?.chance).toBeCloseTo(chanceOf(first.need.lengthM, first.need.cv, [[3, 100]]), 9);

    const many = await bought('balls for 20');
    const { lengthM, cv } = many.need;
    expect(lengthM).toBeCloseTo(20 * first.need.lengthM, 6);
    expect(cv).toBeCloseTo(first.need.cv, 12);
    const balls = many.more?.balls ?? 0;
    const with12 = (more: number) =>
      chanceOf(lengthM, cv, [
        [3, 100],
        [more, 100],
      ]);
    expect(many.more?.chance).toBeCloseTo(with12(balls), 9);
    expect([with12(balls) >= 0.95, with12(balls - 1) < 0.95]).toEqual([true, true]);
    expect(many.more?.price?.minor).toBe(balls * 650);
    expect(many.anew.balls).toBe(balls + 3);
  });

  test('a swatch weighed changes what is bought, and by gauge alone that is offered', async () => {
    const { need, weighed, more } = await bought(`${MEDIUM}, grey medium yarn`, POUCH, 'balls for 20', '50 g / 100 m');
    expect(need.cv).toBeGreaterThan(0.15);
    expect(weighed?.balls).toBeLessThan(more?.balls ?? 0);
    expect((await bought('weighed 61 g', 'how many balls?')).weighed).toBeUndefined();
  });
});

describe('what is asked of the same plan before', () => {
  test('stays: how many, how sure, the reserve', async () => {
    await said(GAUGE, POUCH, PRICED, 'balls for 20', 'be 90% sure');
    const kept = await bought('with a reserve for repairs');
    expect(kept).toMatchObject({ sure: 0.9, reserve: 0.05, what: '20 of them' });
    expect(kept.need.lengthM).toBeCloseTo(20 * 1.05 * kept.one.lengthM, 6);
    expect(await bought('pouch 12 in wide', 'how many balls?')).toMatchObject({
      sure: 0.95,
      reserve: 0,
      what: 'one pouch',
    });
  });

  test('a put-up told with the question is kept for its yarn, and undo takes it back', async () => {
    await said(GAUGE, POUCH, PRICED);
    const putUps = () =>
      t.within(async ({ makers, yarns, putUps: sold }) => {
        const maker = await makers.held('U1', '', 0);
        const [yarn] = await yarns.of(maker.id);
        return [yarn?.tex, (await sold.of(yarn?.id ?? '')).map(({ ball, price }) => [ball.massG, price?.minor])];
      });
    expect(await putUps()).toEqual([500, [[50, 650]]]);
    await said('undo');
    expect(await putUps()).toEqual([undefined, []]);
    expect(replyOf(await said('how many balls?'), 'question').examples).toContain('50 g / 115 yd');
  });

  test('of a yarn without a name a put-up is kept in the talk alone', async () => {
    await said(MEDIUM, POUCH, PRICED);
    expect((await bought('balls for 2')).more).toMatchObject({ balls: 4, price: { minor: 2600 } });
  });
});

describe('several ways to buy', () => {
  test('the cheapest of one lot leads, a cheaper mix of two kinds is told beside it', async () => {
    const mixed = 'how many balls at €6.20, ten for €56 or €11.50 for 100 g / 200 m';
    await said(GAUGE, POUCH, '50 g / 100 m');
    const answer = await said('balls for 5', mixed);
    const { more, mixed: cheaper } = replyOf(answer, 'buy');
    expect(more?.lines.map(({ ball, balls }) => [ball.massG, balls])).toEqual([[50, 7]]);
    expect([more?.price, cheaper?.price]).toEqual([
      { minor: 4340, currency: 'EUR' },
      { minor: 4070, currency: 'EUR' },
    ]);
    expect(factOf(answer, 'Cheaper')).toBe(
      '1 ball of 50 g and 3 balls of 100 g, €40.70, where the dye lots may differ in colour.',
    );
    expect(factOf(answer, 'Assumed')).toContain('prices without a currency are in EUR from now on');
  });

  test('a lot is completed in balls like its own, and its fellows are not counted', async () => {
    await said(GAUGE, POUCH, 'I have 1 ball of grey medium, lot 12, 50 g / 100 m', 'I have half a ball of lot 7');
    const answer = await said('how many balls at €11.50 for 100 g / 200 m?');
    expect(answer.card.lead).toBe('Buy 1 ball of 50 g, of lot 12');
    expect(answer.card.body).toContain(
      'If lot 12 is not to be had, buy 1 ball of 100 g, €11.50, all of one new lot: two lots may differ in colour.',
    );
    expect(answer.card.body).toContain('Not counted, since lots may differ in colour: lot 7, 0.5 balls (25 g).');
  });

  test('what is set aside for the plan in hand counts for it, and for no other', async () => {
    await said(GAUGE, POUCH, 'I have 3 balls of grey medium, lot 12, 50 g / 100 m', 'start');
    expect((await bought('how many balls?')).held?.massG).toBe(150);
    expect((await bought('tube 22 in long', 'how many balls?')).held?.massG).toBeLessThan(100);
  });

  test('of all sizes in hand together', async () => {
    await said(GAUGE, 'pouches with 6, 8 and 10 in zips');
    expect(await bought('how many balls at €6.50 for 50 g / 100 m?')).toMatchObject({ what: 'all 3 sizes' });
  });
});

describe('what cannot be bought', () => {
  test.each([
    ['how many balls for 0 g / 100 m', 'amount_outside'],
    ['how many balls at 5 for 1 g / 200 m', 'tex_out_of_range'],
    ['how many balls at 5 for 5 kg / 100 m', 'tex_out_of_range'],
    ['how many balls at 0 for 50 g / 100 m', 'not_whole'],
    ['how many balls at 6.505 euros for 50 g / 100 m', 'price_too_fine'],
    ['how many balls of lot 7?', 'unknown_lot'],
    ['be 100% sure', 'sureness_out_of_range'],
  ])('"%s" is %s, and nothing is kept', async (text, code) => {
    await said(GAUGE, POUCH, 'I have 1 ball of grey medium, lot 12, 50 g / 100 m');
    const before = await t.kept();
    const answer = await said(text);
    const codes = replyOf(answer, 'problem').problems.map((one) =>
      one.code === 'of_yarn' ? one.problem.code : one.code,
    );
    expect(codes).toEqual([code]);
    expect(await t.kept()).toEqual(before);
  });

  test('prices in two currencies are not compared', async () => {
    await said(GAUGE, POUCH);
    expect(codesOf(await said('how many balls at €6 for 50 g / 100 m or USD 7 for 100 g / 200 m'))).toEqual([
      'of_yarn',
    ]);
  });

  test('without a plan, or before its width is known', async () => {
    expect(codesOf(await said('how many balls?'))).toEqual(['no_plan_yet']);
    await said('5 rows to the inch', POUCH);
    expect(codesOf(await said('how many balls at €6 for 50 g / 100 m'))).toEqual(['no_stitch_gauge']);
  });

  test('a currency that several have is asked for once', async () => {
    await said(GAUGE, POUCH);
    expect(replyOf(await said('how many balls at $6 for 50 g / 100 m'), 'question').examples[0]).toBe('USD');
    expect((await bought('USD')).more?.price).toEqual({ minor: 1200, currency: 'USD' });
  });
});

test('in a channel what to buy is shown to the asker alone', async () => {
  const there = { place: 'thread:C1:1', address: CHANNEL };
  for (const line of [GAUGE, POUCH, PRICED]) await t.say(line, there);
  const rows = await t.store.outbox.take(Date.parse('2026-11-09T11:00:00Z'), 1000, 10);
  expect(rows.at(-1)?.address).toMatchObject({ to: 'ephemeral', user: 'U1' });
});

test('for stripes it is said that balls are counted as if of one colour', async () => {
  const answer = await said(MEDIUM, POUCH, 'stripes of 4 red 2 white', PRICED);
  expect(factOf(answer, 'Assumed')).toContain('for stripes count whole balls of each colour');
});
