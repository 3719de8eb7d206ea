import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { MEDIUM, replyOf, type Talk, talk } from '../../talk.js';

const GAUGE = `${MEDIUM}, grey medium yarn`;
const POUCH = 'pouch 11 in wide';

let t: Talk;
beforeEach(async () => {
  t = await talk();
});
afterEach(() => t.close());

const said = (...lines: string[]) => t.sayAll(...lines);
const yarnOf = async (...lines: string[]) => {
  const { yarn } = replyOf(await said(...lines), 'plan').plan;
  if (yarn === undefined) throw new Error('a plan without yarn');
  return yarn;
};
const facts = (answer: Awaited<ReturnType<typeof said>>) =>
  Object.fromEntries(answer.card.facts.map(({ label, text }) => [label, text]));

describe('a plan knows of its yarn', () => {
  test('nothing but gauge at first; its ball tells the grams', async () => {
    expect(await yarnOf(GAUGE, POUCH)).toMatchObject({ source: 'gauge', cv: expect.closeTo(0.2, 2), massG: undefined });
    const { lengthM, massG } = await yarnOf('50 g / 100 m', POUCH);
    expect(massG).toBeCloseTo(lengthM / 2, 9);
  });

  test('the ball of the shelf will do, where none was told of the yarn', async () => {
    const { lengthM, massG } = await yarnOf(GAUGE, 'I have 3 balls of grey medium, lot 12, 50 g / 100 m', POUCH);
    expect(massG).toBeCloseTo(lengthM / 2, 9);
  });

  test('a swatch weighed, once however often it was read; rows inside a ruler are no whole swatch', async () => {
    const once = await yarnOf(`${GAUGE}, weighs 61 g`, POUCH);
    expect(once.loop.gPerStitch?.value).toBeCloseTo(61 / (46 * 110), 9);
    expect(once).toMatchObject({ source: 'gauge', massCv: expect.closeTo(0.02, 2) });
    const again = await yarnOf('the same one, now 21 in', POUCH);
    expect(again.loop.gPerStitch).toEqual(once.loop.gPerStitch);
    const other = await talk();
    await other.say('46 needles, 5 rows to the inch, 6 3/4 in flat, weighs 61 g');
    const { plan } = replyOf(await other.say(POUCH), 'plan');
    expect(plan.yarn?.massG).toBeUndefined();
    await other.close();
  });

  test('yarn unravelled, alone and with what was weighed', async () => {
    const drawn = await yarnOf(GAUGE, '46 stitches unravelled to 1.15 m', POUCH);
    expect(drawn.source).toBe('unravelled');
    expect(drawn.loop.sources).toContainEqual({ from: 'unravelled', mm: 25, cv: 0.03 });
    expect((await yarnOf('50 g / 100 m', 'weighed 61 g', POUCH)).source).toBe('combined');
  });
});

describe('the yarn card', () => {
  test('leads with length, grams and balls, then the parts, how sure, and the other unit', async () => {
    const answer = await said(GAUGE, '50 g / 100 m', 'weighed 61 g', POUCH, 'how much yarn?');
    expect(answer.card.lead).toBe('About 135 yd of yarn for one pouch, 62 g (2.2 oz): 2 balls of 50 g');
    expect(facts(answer)).toMatchObject({
      Yarn: '135 yd (123 m): rows 132 yd, graft 1.2 yd and seams and tails 1.3 yd. Waste yarn, apart: 12 yd, yours to use again.',
      'How sure':
        'give or take 2%, from what you weighed. 2 balls of 50 g hold 219 yd: enough, nearly certain (over 95%).',
    });
    expect((await said('in metres')).card.lead).toBe(
      'About 123 m of yarn for one pouch, 62 g (2.2 oz): 2 balls of 50 g',
    );
    expect((await said('yarn for 20')).card.lead).toMatch(/^About \d+ yd of yarn for 20 of them, 1232 g/);
  });

  test('by gauge alone says what would make it surer, and says so of grams that were weighed', async () => {
    expect(facts(await said(GAUGE, POUCH, 'how much yarn?'))['How sure']).toBe(
      'give or take 20%, from gauge alone. A swatch of 20 g or more, weighed, would make it about 2%.',
    );
    expect(facts(await said('weighed 61 g', 'how much yarn?'))['How sure']).toBe(
      'give or take 20%, from gauge alone; the grams give or take 2%, from what you weighed. What a ball weighs and holds would make the length as sure.',
    );
  });
});

describe('what is weighed is learned from', () => {
  const DONE = [GAUGE, '50 g / 100 m', POUCH, 'start', '109'];

  test('a swatch, and the card tells the stitch and the plan in hand before and after', async () => {
    const answer = await said(GAUGE, '50 g / 100 m', POUCH, 'weighed 61 g');
    expect(facts(answer).Yarn).toBe(
      'ten stitches take 9 1/2 in, from what you weighed, give or take 2%. A pouch like it takes about 135 yd (62 g), give or take 2%; it was about 150 yd (68 g), give or take 20%.',
    );
  });

  test('a finished piece: its plan gives the stitches, seams and tails apart', async () => {
    const answer = await said(...DONE, 'done, 11, used 63 g');
    const { now, was } = replyOf(answer, 'finished').yarn;
    expect(was?.source).toBe('gauge');
    const told = now?.loop.sources.find(({ from }) => from === 'weighed');
    // 63 g of 500 tex are 126 m; of them seams and tails were cut, the rest is 109·46 stitches and 46 grafted.
    expect(told?.mm).toBeCloseTo((126_000 - 1000 * (was?.parts.seamsM ?? 0)) / (110 * 46), 6);
    expect(facts(answer).Yarn).toContain('ten stitches take 9 3/4 in');
  });

  test('the rows that were knitted count, where they were others than the plan’s', async () => {
    const mmOf = async (text: string): Promise<number> => {
      const own = await talk();
      for (const line of DONE) await own.say(line);
      const { yarn } = replyOf(await own.say(text), 'finished');
      await own.close();
      return yarn.now?.loop.sources.find(({ from }) => from === 'weighed')?.mm ?? 0;
    };
    const [all, fewer] = [await mmOf('done, 11, used 63 g'), await mmOf('done, 100 rows, 10, used 63 g')];
    expect(fewer / all).toBeCloseTo((110 * 46) / (101 * 46), 2);
  });

  test('a cone before and after: with the piece, or of the one done last', async () => {
    const asked = await said(...DONE, 'the cone was 212 g before and 150 after');
    expect(replyOf(asked, 'question').because.figures).toContainEqual(expect.anything());
    expect(replyOf(await said('11'), 'finished').massG).toBe(62);
    const again = await said('cone 212 before, 149 g now');
    expect(again.card.lead).toBe('Weighed: pouch, 63 g');
    const { now } = replyOf(again, 'finished').yarn;
    expect(now?.loop.sources.filter(({ from }) => from === 'weighed')).toHaveLength(1);
    expect((await said('undo')).card.lead).toBe('Taken back: weighed pouch');
  });

  test('a cone that grew is no weight', async () => {
    const answer = await said(...DONE, 'cone 150 g before, 160 g now');
    expect(answer.card.lead).toBe('Weight: I read 150 g before, 160 g now');
  });
});
