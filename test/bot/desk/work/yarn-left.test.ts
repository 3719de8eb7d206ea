import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { lasting, yarnToComeM } from '../../../../core/index.js';
import { codesOf, MEDIUM, POUCH, replyOf, type Talk, talk } from '../../talk.js';

const BALL = '50 g / 100 m';

let t: Talk;
beforeEach(async () => {
  t = await talk();
  await t.say(MEDIUM);
});
afterEach(() => t.close());

const left = async (...lines: string[]) => {
  for (const line of lines.slice(0, -1)) await t.say(line);
  return replyOf(await t.say(lines.at(-1) ?? ''), 'yarn_left');
};

describe('"38 g left, how many rows?"', () => {
  // By hand: 46 stitches of √(19·7.4543·5.08) mm are 1.23388 m, .61694 g at 500 tex; graft 1.446 m and
  // seam 2.5·279.4 + 300 mm are 2.4445 m, 1.2222 g.
  // (38 − 1.2222)/.61694 = 59.61; by gauge alone, 20 %: 59.61·e^(−1.645·.2) = 42.9.
  test('asks once what a ball holds; of 500 tex it makes 59 rows, and 42 for sure', async () => {
    await t.say(POUCH);
    expect(replyOf(await t.say('38 g left, how many rows?'), 'question').asks.parts.join('')).toContain('ball');
    const shown = await left(BALL);
    expect([shown.expected, shown.promised, shown.lasts, shown.joinBy]).toEqual([59, 42, false, 42]);
    expect(shown.yarn.perRow).toBeCloseTo(0.61694, 4);
    expect(shown.yarn.toCome).toBeCloseTo(1.2222, 3);
  });

  test('is what core makes of the plan and the rows done', async () => {
    const { plan, yarn, at, stopAt, ...shown } = await left(POUCH, 'start', 'row 54', '38 g left', BALL);
    const { loop } = plan.yarn ?? {};
    if (loop === undefined) throw new Error('a plan without yarn');
    const toCome = (yarnToComeM(plan.steps, loop.mm, 46 * plan.rows, true) * 500) / 1000;
    const perRow = (46 * loop.mm * 500) / 1e6;
    expect([at, stopAt]).toEqual([54, 109]);
    const { chance, ...rows } = lasting({ left: 38, toCome, perRow, cv: loop.cv }, 54, 109);
    expect(shown).toMatchObject(rows);
    expect(shown.chance).toBeCloseTo(chance, 9);
  });
});

test('metres need no ball: 40 m are rows of 1.234 m less 2.4 m for tails', async () => {
  const shown = await left(POUCH, '40 m left, is that enough?');
  expect([shown.unit, shown.expected]).toEqual(['m', Math.floor((40 - 2.4445) / 1.23388)]);
});

test('what does not last still makes a smaller piece, of as many rows as are promised', async () => {
  const { reach, promised, plan } = await left(POUCH, '90 m left, is that enough?');
  expect(reach?.rows).toBe(promised);
  expect((reach?.hiMm ?? 0) - (reach?.loMm ?? 0)).toBeCloseTo(plan.landing.hiMm - plan.landing.loMm, 6);
  const smaller = replyOf(await t.press(0), 'plan').plan;
  expect(smaller.rows).toBe(promised);
});

test('stripes that meet reach whole repeats only', async () => {
  const lines = ['cowl 24 in round in stripes of 4 red 2 cream', 'make it 25', 'make it meet'];
  const { reach } = await left(...lines, '100 m left, is that enough?');
  expect((reach?.rowsInPiece ?? 1) % 6).toBe(0);
});

test('without a number the shelf tells, else the amount is asked for', async () => {
  await t.say(`${MEDIUM}, grey medium yarn`);
  await t.say(POUCH);
  expect(replyOf(await t.say('will it last?'), 'question').asks.parts.join('')).toBe('How much yarn is left?');
  expect((await left('100 m')).yarn.left).toBe(100);
  await t.say(`I have 3 balls of grey medium, lot 12, ${BALL}`);
  expect(await left('will it last?')).toMatchObject({ from: 'shelf', yarn: { left: 150 }, lasts: true });
  const aside = await left('start', 'row 10', 'will it last?');
  expect([aside.from, aside.at, Math.round(aside.yarn.left)]).toEqual(['shelf', 0, 150]);
});

test('balls are weighed by what one holds', async () => {
  await t.say(POUCH);
  await t.say('are 2 balls enough?');
  expect(await left(BALL)).toMatchObject({ from: 'told', unit: 'g', yarn: { left: 100 }, lasts: true });
});

test('half a ball left is no price of a ball', async () => {
  await t.say(`${MEDIUM}, grey medium yarn`);
  await t.say(`grey medium is ${BALL}`);
  expect(codesOf(await t.say('half a ball left'))).not.toEqual([]);
});

test('without a plan, or with more than any cone holds, nothing is said of rows', async () => {
  expect(codesOf(await t.say('38 g left, how many rows?'))).toEqual(['no_plan_yet']);
  await t.say(POUCH);
  expect(codesOf(await t.say('90 km left, how many rows?'))).not.toEqual([]);
});
