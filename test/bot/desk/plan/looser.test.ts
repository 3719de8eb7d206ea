import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { plainText } from '../../../../bot/cards/plain-text.js';
import { MEDIUM, POUCH, type Talk, talk } from '../../talk.js';

let open: Talk;
beforeEach(async () => {
  open = await talk();
  await open.say(MEDIUM);
  await open.say(POUCH);
});
afterEach(() => open.close());

const text = async (line: string): Promise<string> => plainText((await open.say(line)).card);

describe('looser knitting', () => {
  // Rows of 5.08 mm and 5 % more are 5.334 mm: 22 in of them are 104.8, so 105 with the graft; 23 stitches less one of
  // 7.454 mm and 5 % more lie 172.2 mm flat.
  test('takes fewer rows for the same width, and the needles then make it taller', async () => {
    expect(await text('5% looser')).toContain('5% looser: 104 rows, 11 in wide and 6 7/8 in tall.');
  });

  test('is told for 5 and 10% where no change was named, and stores nothing', async () => {
    open.written();
    const told = await text('tighter');
    expect(told).toMatch(/5% tighter: 115 rows.*\n10% tighter: 121 rows/);
    expect(open.written().filter((table) => table === 'plan' || table === 'measurement')).toEqual([]);
  });

  test('beyond what stitches bear is refused with what they do', async () => {
    expect(await text('25% looser')).toContain('Tension: I read 25%\nIt must be between 1 and 10%.');
  });
});

describe('"in cm" with a plan in hand', () => {
  test('says it again in centimetres, and so every answer about it from then on', async () => {
    expect(await text('in cm')).toContain('Pouch: about 28 cm wide and 17 cm tall (11 by 6 5/8 in).');
    expect(await text('two of them')).toContain('Pouch: about 28 cm wide');
  });

  test('keeps the plan, and a new one leads with what is typed for it', async () => {
    const { planId } = await open.conversation();
    await open.say('in cm');
    expect((await open.conversation()).planId).toBe(planId);
    expect(await text('cowl 24 in round')).toContain('about 24 in round');
  });
});
