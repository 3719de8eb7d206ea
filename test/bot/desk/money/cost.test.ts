import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { plainText } from '../../../../bot/cards/plain-text.js';
import { CHANNEL, codesOf, MEDIUM, replyOf, type Talk, talk } from '../../talk.js';

const RATES = 'my time is €16 an hour; packing 0.85; overhead 1.50 an hour; card fee 1.7%';
const GREY = 'grey is 50 g / 105 m at 6.20, ten for 56';

let t: Talk;
beforeEach(async () => {
  t = await talk();
});
afterEach(() => t.close());

const said = (...lines: string[]) => t.sayAll(...lines);
const costOf = async (...lines: string[]) => replyOf(await said(...lines), 'cost');
const text = async (line: string): Promise<string> => plainText((await t.say(line)).card);

describe('what a pouch costs, by hand', () => {
  // 102 minutes at the usual pace, told to three minutes: 1.7 hours.
  const HOURS = 1.7;

  test('is yarn by the metre, notions, packing, time and overhead, each line rounded once', async () => {
    const { bill, minutes } = await costOf(
      MEDIUM,
      RATES,
      GREY,
      'zips are 1.20 each, ten for 9',
      'rings are 0.25 each',
      'pouch 11 in wide',
      'cost',
    );
    expect(minutes).toBe(102);
    const minor = Object.fromEntries(bill.lines.map((line) => [line.id, line.minor]));
    const yarn = bill.lines.find(({ id }) => id === 'yarn')?.quantity ?? 0;
    expect(minor).toEqual({
      yarn: Math.round((yarn / 105) * 620),
      closure: 120,
      rings: 50,
      packing: 85,
      time: Math.round(HOURS * 1600),
    });
    expect(bill.overheadMinor).toBe(255);
    expect(bill.costMinor).toBe(Object.values(minor).reduce((a, b) => a + b, 0) + 255);
    expect(bill.leftOut).toEqual([]);
  });

  test('leaves out what has no price, and says so', async () => {
    const { bill } = await costOf(MEDIUM, RATES, 'pouch 11 in wide', 'cost');
    expect(bill.leftOut.map(({ id }) => id)).toEqual(['yarn', 'closure', 'rings']);
    // 0.85, 1.7 h of 16.00 and of 1.50.
    expect(bill.costMinor).toBe(85 + 2720 + 255);
    expect(await text('cost')).toContain(
      'Left out: the yarn, closure and 2 rings, since I know no price; tax: rules differ by place, ask an adviser.',
    );
  });

  test('at 48.00 leaves what the fee of 1.7% and the cost do not take; an hour earns the rest but for overhead', async () => {
    const { sale } = await costOf(MEDIUM, RATES, 'pouch 11 in wide', 'cost at 48');
    // 4800 - 82 (81.6) - 3060; (4800 - 81.6 - 85 - 255) / 1.7 = 2575.5.
    expect(sale).toMatchObject({ feeMinor: 82, leftMinor: 1658, anHour: { minor: 2576, currency: 'EUR' } });
  });

  test('price at 40% margin is (cost + 0)/(1 - 0.4 - 0.017)', async () => {
    const { wanted } = await costOf(MEDIUM, RATES, 'pouch 11 in wide', 'price at 40% margin');
    expect(wanted?.price).toEqual({ currency: 'EUR', minor: Math.round(3060 / 0.583) });
  });

  test('of twelve buys packs of ten where those are cheaper, and whole balls', async () => {
    const { bill, balls } = await costOf(
      MEDIUM,
      RATES,
      GREY,
      'zips are 1.20 each, ten for 9',
      'pouch 11 in wide',
      'cost of 12',
    );
    // Twelve zips: ten for 9.00 and two at 1.20.
    expect(bill.lines.find(({ id }) => id === 'closure')?.minor).toBe(1140);
    const tens = Math.floor((balls ?? 0) / 10);
    const ones = (balls ?? 0) % 10;
    expect(bill.lines.find(({ id }) => id === 'yarn')?.minor).toBe(
      Math.min(tens * 5600 + ones * 620, (tens + 1) * 5600),
    );
  });

  test('the stall is paid by the sale that covers it', async () => {
    const { stall } = await costOf(MEDIUM, RATES, 'the stall is 90', 'pouch 11 in wide', 'break even at 48');
    // Each sale leaves 4800 - 81.6 - 3060 = 1658.4; 9000 / 1658.4 = 5.4.
    expect(stall).toEqual({ minor: 9000, pieces: 6 });
  });
});

test('yarn told in two currencies is not added up as one', async () => {
  await said(MEDIUM, RATES, 'grey is 50 g / 105 m at €6.20', 'grey is 50 g / 105 m, ten for £30', 'pouch 11 in wide');
  expect(replyOf(await t.say('cost of 12'), 'problem').problems).toMatchObject([
    { code: 'of_cost', problem: { code: 'mixed_currencies', currencies: ['EUR', 'GBP'] } },
  ]);
});

test('an amount told before its currency is worth as many of its units', async () => {
  await said(MEDIUM, 'my time is 16 an hour', 'prices in yen', 'pouch 11 in wide');
  // 1.7 h of ¥16 are 27.2.
  expect((await costOf('cost')).bill.lines).toMatchObject([{ id: 'time', minor: 27 }]);
});

test('twelve take the time that the time card tells for twelve', async () => {
  const { minutes } = await costOf(MEDIUM, RATES, 'pouch 11 in wide', 'cost of 12');
  const { time } = replyOf(await t.say('how long for 12?'), 'time');
  expect(Math.abs(minutes - time.timing.whole.medianS / 60)).toBeLessThanOrEqual(1.5);
});

test.each(['wholesale', 'break even', 'price for the pattern'])('"%s" alone asks for what it lacks', async (line) => {
  await said(MEDIUM, RATES, 'pouch 11 in wide');
  expect(codesOf(await t.say(line))).toEqual(['says_too_little']);
});

test('a rate set anew from another place is not taken back by the first', async () => {
  await t.say('my time is €16 an hour');
  await t.say('my time is 18 an hour', { place: 'dm:D9' });
  expect(codesOf(await t.say('undo'))).toEqual(['moved_on']);
});

test('a price right after a cost is one; before it, it is not', async () => {
  await said(MEDIUM, RATES, 'pouch 11 in wide', 'cost');
  expect(replyOf(await t.say('at 52'), 'cost').sale?.priceMinor).toBe(5200);
  await t.say('steps');
  expect((await t.say('at 52')).exchanges.at(-1)?.reply.kind).not.toBe('cost');
});

test.each([
  ['margin 100%', 'price_has_no_room'],
  ['cost at USD 48', 'mixed_currencies'],
  ['zips are €1.20 each, ten for £9', 'mixed_currencies'],
])('"%s" is refused and says how to say it', async (line, code) => {
  await said(MEDIUM, RATES, 'pouch 11 in wide');
  const reply = replyOf(await t.say(line), 'problem');
  expect(reply.problems).toMatchObject([{ code: 'of_cost', problem: { code } }]);
});

test('a rate that cannot be stores nothing', async () => {
  for (const line of ['my time is -5 an hour', 'fees 95%', 'packing €0.855'])
    expect(codesOf(await t.say(line))).toHaveLength(1);
  expect(replyOf(await t.say('my rates'), 'rates').rates).toEqual([]);
});

test('a currency without decimals takes none: 1500 yen an hour', async () => {
  await said(MEDIUM, 'prices in yen', 'my time is 1500 an hour', 'pouch 11 in wide');
  expect(await text('cost')).toContain('One pouch costs at least ¥2,550');
  expect(codesOf(await t.say('packing 85.5'))).toEqual(['price_too_fine']);
});

test('a rate is told anew, and taken back and put in again', async () => {
  await said('my time is €16 an hour', 'my time is 18 an hour');
  const hour = async () => replyOf(await t.say('my rates'), 'rates').rates.map(({ value }) => value.prices[0]?.minor);
  expect(await hour()).toEqual([1800]);
  expect((await t.say('undo')).card.lead).toBe('Taken back: on the rate card, your time');
  expect(await hour()).toEqual([1600]);
  await t.say('undo');
  expect(await hour()).toEqual([]);
  await t.say('put it back');
  expect(await hour()).toEqual([1600]);
});

test('the team has rates for those without their own; no maker sees those of another', async () => {
  const lotte = { user: { slackUserId: 'U2', name: 'Lotte' }, place: 'dm:D2' };
  await said('team rate is €15 an hour', 'my time is 18 an hour');
  const own = async (more = {}) =>
    replyOf(await t.say('my rates', more), 'rates').rates.map(({ value }) => value.prices[0]?.minor);
  expect(await own()).toEqual([1800]);
  expect(await own(lotte)).toEqual([1500]);
});

test('rates and costs are told in a channel to the one who asks alone', async () => {
  await t.say(RATES, { address: CHANNEL });
  await t.say('my rates', { address: CHANNEL });
  const rows = await t.store.outbox.take(Number.MAX_SAFE_INTEGER / 2, 1, 9);
  expect(rows.map(({ address }) => address.to)).toEqual(['ephemeral', 'ephemeral']);
});

test('a pattern is paid by so many copies, or asks so much for so many', async () => {
  await t.say('my time is €16 an hour');
  // 20 h at 16.00 are 320.00: 53.3 copies of 6.00; 12 h are 192.00, over 40 copies 4.80.
  expect(await text('pattern at 6.00, 20 hours')).toContain('At €6.00 the pattern is paid by copy 54');
  expect(await text('price for the pattern, 12 hours, 40 copies')).toContain('Ask €4.80 for the pattern');
});

test('a shop keeps half of its price, or what it was said to keep', async () => {
  await t.say('prices in euros');
  expect(await text('wholesale of 48')).toContain('A shop that sells it at €48.00 pays you €24.00');
  expect(await text('retail from 24 at 40%')).toContain('A shop that buys it at €24.00 sells it at €40.00');
});

describe('a price that cannot pay', () => {
  test('of nothing is refused in words, not in minor units', async () => {
    await said(MEDIUM, RATES, 'pouch 11 in wide');
    expect(await text('cost at 0')).toContain('Price: I read 0');
    expect(await text('cost at 0')).toContain('It must be above 0.');
  });

  test('below what is bought loses by the hour', async () => {
    await said(MEDIUM, RATES, GREY, 'rings are 9 each', 'pouch 11 in wide');
    expect(await text('cost at 5')).toMatch(/^At €5\.00 a pouch loses you at least €\d+\.\d\d an hour/);
  });

  test('and the stall asked for in a question stays as it was', async () => {
    await said(
      MEDIUM,
      RATES,
      'the stall is 60',
      'pouch 11 in wide',
      'how many must I sell to pay for the stall at 48?',
    );
    expect(await text('my rates')).toContain('Stall: €60.00');
  });
});
