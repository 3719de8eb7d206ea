import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { codesOf, MEDIUM, POUCH, replyOf, type Talk, talk } from '../talk.js';

let open: Talk;
beforeEach(async () => {
  open = await talk();
});
afterEach(() => open.close());

type Kept = { maker: { units?: string }; measured: object[][] };
const kept = async () => {
  const { maker, measured } = (await open.kept()) as Kept;
  return { units: maker.units, measured };
};

describe('undo', () => {
  test('takes back the last measurement, names it, and "put it back" restores it to the letter', async () => {
    await open.say(MEDIUM);
    const one = await kept();
    await open.say('80 rows in 18 in');
    const two = await kept();
    expect((await open.say('undo')).card.lead).toBe('Taken back: 80 rows in 18 in, rested');
    expect(await kept()).toEqual(one);
    expect((await open.say('put it back')).card.lead).toBe('Back: 80 rows in 18 in, rested');
    expect(await kept()).toEqual(two);
  });

  test('walks back through everything stored in this talk and forward again', async () => {
    const states = [await kept()];
    for (const text of [MEDIUM, '80 rows in 16 in', 'use cm']) {
      await open.say(text);
      states.push(await kept());
    }
    const units = ({ units }: { units: unknown }) => units;
    const pieces = ({ measured }: { measured: object[][] }) => measured.flat().length;
    for (const state of states.slice(0, -1).reverse()) {
      await open.say('undo');
      expect(pieces(await kept())).toBe(pieces(state));
    }
    expect(codesOf(await open.say('undo'))).toEqual(['nothing_to_undo']);
    for (const state of states.slice(1)) {
      await open.say('put it back');
      expect(pieces(await kept())).toBe(pieces(state));
    }
    expect(units(await kept())).toBe('cm');
    expect(codesOf(await open.say('put it back'))).toEqual(['nothing_to_undo']);
  });

  test('forgets what was taken back once something new is stored', async () => {
    await open.say(MEDIUM);
    await open.say('undo');
    await open.say('80 rows in 17 in');
    expect(codesOf(await open.say('put it back'))).toEqual(['nothing_to_undo']);
  });

  test('gives back the unit that was before', async () => {
    await open.say('use inches');
    await open.say('use cm');
    await open.say('undo');
    expect((await kept()).units).toBe('in');
  });

  test('of a measurement brings back the plan that stood on the others', async () => {
    await open.say(MEDIUM);
    const before = replyOf(await open.say(POUCH), 'plan').plan;
    await open.say('80 rows in 17 in');
    expect(replyOf(await open.say(POUCH), 'plan').plan.rows).not.toBe(before.rows);
    await open.say('undo');
    expect(replyOf(await open.say(POUCH), 'plan').plan).toEqual(before);
  });

  test('without anything stored says so', async () => {
    expect((await open.say('undo')).card.lead).toBe('There is nothing here to take back');
    expect((await open.say('put it back')).card.lead).toBe('Nothing has been taken back here');
  });
});
