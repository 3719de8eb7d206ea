import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { pieces, printed, substitution } from '../../../../core/index.js';
import { MEDIUM, POUCH, replyOf, type Talk, talk } from '../../talk.js';

const GREY = 'I have 3 balls of grey medium, lot 12, 50 g / 100 m';

let t: Talk;
beforeEach(async () => {
  t = await talk();
  await t.say(`${MEDIUM}, grey medium yarn`);
});
afterEach(() => t.close());

const textOf = async (line: string) => {
  const { lead, lines } = replyOf(await t.say(line), 'answer');
  return [lead, ...lines].map((words) => printed(words, { units: 'cm' })).join('\n');
};

describe('another yarn', () => {
  test('takes the same length, so another mass, and tells what it changes and what to swatch', async () => {
    await t.say(GREY);
    const { plan } = replyOf(await t.say(POUCH), 'plan');
    if (plan.yarn === undefined) throw new Error('a plan without yarn');
    const { lengthM, cv, loop } = plan.yarn;
    const own = { tex: 500, loopMm: loop.mm, stitchMm: (2 * 171.45) / 46 };
    const other = substitution({ need: { lengthM, cv }, own, ball: { massG: 50, lengthM: 140 } });
    if (!other.ok) throw new Error('no other yarn');
    const before = await t.kept();
    const text = await textOf('can I use oat fine, 50 g / 140 m, instead?');
    // 137 m at 357 tex are 49 g, where 500 tex are 68 g.
    expect(Math.round(other.value.massG)).toBe(Math.round((lengthM * 50) / 140));
    expect(text).toContain(`Oat fine for the pouch: ${other.value.balls} balls of 50 g`);
    expect(text).toContain('49 g of it, where your own yarn takes 68 g');
    expect(text).toContain('Fine yarn is mostly knitted at 23 to 26 stitches over 4 in, and this plan at 14');
    expect(text).toContain('looser than your usual fabric');
    expect(text).toContain('swatch 60 rows first');
    expect(await t.kept()).toEqual(before);
  });

  test('of no known ball is asked about, and is not judged where the own yarn is not known', async () => {
    await t.say(POUCH);
    expect(replyOf(await t.say('can I use oat fine instead?'), 'question').examples).toContain('50 g / 115 yd');
    expect(await textOf('50 g / 140 m')).toContain('cannot say how it will feel');
  });
});

describe('what can I make', () => {
  test('lists the kinds that the free yarn is enough for, that with most yarn first, the rest counted', async () => {
    await t.say(GREY);
    const text = await textOf('what can I make from what I have?');
    const masses = [...text.matchAll(/yd, ([\d.]+) g\.$/gm)].map(([, g]) => Number(g));
    expect(masses.length).toBe(10);
    expect(masses).toEqual([...masses].sort((a, b) => b - a));
    const [, named = 0] = /enough for (\d+) kinds/.exec(text) ?? [];
    const [, more = 0] = /And (\d+) more/.exec(text) ?? [];
    expect(masses.length + Number(more)).toBe(Number(named));
    const [, tooMuch = 0] = /Too little for (\d+)/.exec(text) ?? [];
    const [, unsized = ''] = /tell me one: (.*)\./.exec(text) ?? [];
    expect(Number(named) + Number(tooMuch) + unsized.split(', ').length).toBe(pieces.length);
  });

  test('counts what is set aside as gone, and less makes fewer', async () => {
    await t.say(GREY);
    await t.say(POUCH);
    await t.say('start');
    expect(await textOf('what can I make from what I have?')).toContain('82 g of grey medium is enough');
    expect(await textOf('what can I make with 1 g of grey medium?')).toContain('enough for none');
  });

  test('asks how much there is where the shelf holds none', async () => {
    expect(replyOf(await t.say('what can I make?'), 'question').examples).toContain('80 g');
    await t.say('80 g');
    expect(await textOf('50 g / 100 m')).toContain('80 g of grey medium is enough');
  });
});
