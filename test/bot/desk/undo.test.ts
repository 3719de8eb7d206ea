import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
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
    const undone = await open.say('undo');
    expect(undone.card.lead).toBe('Taken back: 80 rows in 18 in, rested');
    expect(undone.card.body).toEqual(['Measured now for the 46: 1 piece.']);
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

describe('undo of a follow-up', () => {
  const plan = async () => {
    const { subject, planId, pending } = await open.conversation();
    return { subject, planId, pending };
  };

  test('takes back the edit and not what was set before it, and "put it back" restores it exactly', async () => {
    await open.say(MEDIUM);
    await open.say('use inches');
    await open.say(POUCH);
    const before = await plan();
    await open.say('make it 12');
    const after = await plan();
    const undone = await open.say('undo');
    expect(undone.card.lead).toBe('Taken back: width, 12 in');
    expect(undone.card.body).toEqual(['Your pouch now: width 11 in; 109 rows on 46 needles.']);
    expect(await plan()).toEqual(before);
    expect((await kept()).units).toBe('in');
    const back = await open.say('put it back');
    expect(back.card.lead).toBe('Back: width, 12 in');
    expect(back.card.body).toEqual(['Your pouch now: width 12 in; 119 rows on 46 needles.']);
    expect(await plan()).toEqual(after);
  });

  test('walks through edits, measurements and units in the order they were made, both ways', async () => {
    await open.say(MEDIUM);
    await open.say(POUCH);
    const said = ['two of them', '80 rows in 16 in', 'no rings', 'use cm', 'on the 48', 'for saturday'];
    const states = [await plan()];
    for (const text of said) {
      await open.say(text);
      states.push(await plan());
    }
    for (const state of states.slice(0, -1).reverse()) {
      await open.say('undo');
      expect(await plan()).toEqual(state);
    }
    for (const state of states.slice(1)) {
      await open.say('put it back');
      expect(await plan()).toEqual(state);
    }
  });

  test('is exact after a restart', async () => {
    const folder = await mkdtemp(join(tmpdir(), 'undo-'));
    const path = join(folder, 'kept.sqlite');
    const first = await talk(undefined, path);
    await first.say(MEDIUM);
    await first.say(POUCH);
    const { subject, planId } = await first.conversation();
    await first.say('make it 10 1/2 to 11');
    await first.close();
    const second = await talk(undefined, path);
    expect((await second.say('undo')).card.lead).toBe('Taken back: width, 10 1/2 to 11 in');
    expect(await second.conversation()).toMatchObject({ subject, planId });
    await second.close();
    const third = await talk(undefined, path);
    expect((await third.say('put it back')).card.lead).toBe('Back: width, 10 1/2 to 11 in');
    await third.close();
    await rm(folder, { recursive: true });
  });

  test('that changed what waits for an answer asks as before', async () => {
    await open.say('use inches');
    await open.say(POUCH);
    const before = await plan();
    await open.say('make it 12');
    expect((await open.say('undo')).card.body).toEqual(['What I asked before it is open again.']);
    expect(await plan()).toEqual(before);
    expect(replyOf(await open.say(MEDIUM), 'plan').plan.rows).toBe(109);
  });

  test('that raised a question drops the question, and is one change once it is answered', async () => {
    await open.say(MEDIUM);
    await open.say(POUCH);
    const before = await plan();
    await open.say('in silk yarn');
    await open.say('80 rows in 18 in');
    expect((await open.say('undo')).card.lead).toMatch('Taken back: 80 rows in 18 in');
    expect((await open.say('undo')).card.lead).toBe('Taken back: yarn, silk');
    expect(await plan()).toEqual(before);
  });

  test('brings back the machine used before it', async () => {
    await open.say('48 needles, 100 rows in 22 in');
    await open.say(MEDIUM);
    await open.say(POUCH);
    await open.say('on the 48');
    await open.say('undo');
    expect(replyOf(await open.say('60 rows in 12.2 in'), 'gauge').gauge.machine.needles).toBe(46);
  });

  test('that was refused, or changed nothing, is nothing to take back', async () => {
    await open.say(MEDIUM);
    await open.say(POUCH);
    await open.say('20 in tall');
    await open.say('make it 11 in');
    expect((await open.say('undo')).card.lead).toBe('Taken back: the pouch');
  });

  test('of a new plan brings the plan before it in hand again, and the measurements stay', async () => {
    await open.say(MEDIUM);
    await open.say(POUCH);
    const before = await plan();
    await open.say('tube 22 in long');
    expect((await open.say('undo')).card.lead).toBe('Taken back: the tube');
    expect(await plan()).toEqual(before);
    expect((await open.say('put it back')).card.lead).toBe('Back: the tube');
  });

  test('stands behind the button of the card that made it', async () => {
    await open.say(MEDIUM);
    await open.say(POUCH);
    const { card } = await open.say('make it 12');
    expect((await open.press(card.offers.findIndex(({ button }) => button === 'Undo'))).card.lead).toBe(
      'Taken back: width, 12 in',
    );
  });
});
