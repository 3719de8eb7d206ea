import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { codesOf, MEDIUM, replyOf, type Talk, talk } from '../../talk.js';

/** 24 in round at 110 rows in 22 in is 120 rows, of which the graft makes one. */
const COWL = 'cowl 24 in round in stripes of 4 red 2 cream';

let t: Talk;
beforeEach(async () => {
  t = await talk();
  await t.say(MEDIUM);
});
afterEach(() => t.close());

const planned = async (...lines: string[]) => {
  for (const line of lines.slice(0, -1)) await t.say(line);
  const { plan, stripes } = replyOf(await t.say(lines.at(-1) ?? ''), 'plan');
  if (stripes === undefined) throw new Error('a plan without stripes');
  return { plan, stripes };
};
const total = (of: readonly number[]): number => of.reduce((sum, one) => sum + one, 0);

describe('stripes of a ring', () => {
  test('of 4 and 2 rows are 80 red and 39 cream by hand, and the graft is the last row of the last stripe', async () => {
    const { plan, stripes } = await planned(COWL);
    expect([plan.rows, plan.landing.rowsInPiece]).toEqual([119, 120]);
    expect(stripes.colours.map(({ colour, rows }) => [colour, rows])).toEqual([
      ['red', 80],
      ['cream', 39],
    ]);
    expect([stripes.graftColour, stripes.meeting.isWhole, stripes.ends]).toEqual(['cream', true, 80]);
  });

  test.each([
    COWL,
    'cowl 24 in round in stripes of 7 red, 4 cream, 1 oat',
    'cowl 24 in round in stripes of 2 cm in red and white',
    'leg warmers 14 in round and 12 in long, 4 red 2 cream',
  ])('keep every row and all the yarn of "%s"', async (text) => {
    const { plan, stripes } = await planned(text);
    expect(total(stripes.colours.map(({ rows }) => rows))).toBe(plan.rows);
    const rowsM = total(stripes.colours.map((colour) => colour.rowsM)) * plan.parts;
    expect(Math.abs(rowsM - (plan.yarn?.parts.rowsM ?? 0))).toBeLessThan(0.001);
    expect(total(stripes.colours.map(({ graftM }) => graftM)) * plan.parts).toBeCloseTo(
      plan.yarn?.parts.graftM ?? 0,
      3,
    );
  });

  test('that do not meet are offered to, and then the rows with the graft are whole repeats', async () => {
    const first = await planned('cowl 24 in round in stripes of 7 red 4 cream');
    expect(first.stripes.meeting).toMatchObject({ isWhole: false, add: 1, drop: 10 });
    const { plan, stripes } = await planned('make it meet');
    expect(stripes.meeting.isWhole).toBe(true);
    expect({ rows: plan.rows, chance: plan.landing.chance }).toEqual(first.stripes.met);
    expect((await planned('make it 26')).plan.landing.rowsInPiece % 11).toBe(0);
  });
});

describe('stripes by length', () => {
  test('are whole rows of the gauge: 1 in of five rows, 2 in of ten', async () => {
    const { stripes } = await planned('cowl 24 in round', '1 in rust, 2 in oat');
    expect(stripes.repeat).toEqual([
      { colour: 'rust', rows: 5 },
      { colour: 'oat', rows: 10 },
    ]);
  });

  test('keep the rows they began with while they are knitted, whatever is measured meanwhile', async () => {
    await planned('cowl 24 in round in stripes of 4 in rust, 2 in oat', 'make it 25');
    await t.say('start');
    await t.say('46 needles, 110 rows, 20 in long, 6 3/4 flat');
    expect((await t.say('row 3')).card.body.join()).toContain('Rust is on, to row 20; then oat, in 17 rows.');
  });
});

test('the tally tells the colour and the next change, and the steps the rows of each', async () => {
  await planned(COWL);
  expect((await t.say('steps')).card.facts).toContainEqual(
    expect.objectContaining({ text: expect.stringContaining('Red to 4, cream to 6, red to 10') }),
  );
  await t.say('start');
  expect((await t.say('row 31')).card.body.join()).toContain('Red is on, to row 34; then cream, in 3 rows.');
  expect((await t.say('row 34')).card.body.join()).toContain('Change to cream now, to row 36');
  expect((await t.say('row 119')).card.body.join()).toContain('Graft in cream.');
});

test('a panel shows no jog, a tube does', async () => {
  const textOf = async (line: string) => JSON.stringify((await t.say(line)).card.facts);
  expect(await textOf('panel 8 in wide and 12 in long, 4 red 2 cream')).not.toContain('In the round');
  expect(await textOf(COWL)).toContain('In the round');
});

test('stripes can be taken away, and undo brings them back', async () => {
  await planned(COWL);
  expect(replyOf(await t.say('no stripes'), 'plan').stripes).toBeUndefined();
  await t.say('undo');
  expect((await planned('make it 25')).stripes.repeatRows).toBe(6);
});

test('half rows, stripes taller than the piece and too many colours are refused, and change nothing', async () => {
  await planned(COWL);
  const before = await t.kept();
  for (const text of ['stripes of 2.5 red 3 white', 'stripes of 400 red 3 white', 'even stripes of 40 colours'])
    expect(codesOf(await t.say(text))).toEqual(['of_stripes']);
  expect(await t.kept()).toEqual(before);
});
