import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Reply, ReplyOf } from '../../../../bot/reply.js';
import type { GaugeAsk, Value } from '../../../../bot/request.js';
import { printed, type Words } from '../../../../core/index.js';
import { AT, MEDIUM, type Talk, talk } from '../../talk.js';

const inches = (n: number): Value => ({ is: 'length', mm: n * 25.4, said: `${n} in` });
const grams = (g: number): Value => ({ is: 'mass', g, said: `${g} g` });
const rows = (count: number, over: Value): GaugeAsk['rows'] => ({ count, over, how: 'read' });
const text = (words: readonly Words[]) => words.map((w) => printed(w, { units: 'in' })).join(' ');

let t: Talk;
beforeEach(async () => {
  t = await talk();
  await t.say(`${MEDIUM}, medium yarn`);
});
afterEach(() => t.close());

const record = (gauge: Partial<GaugeAsk>) => t.ask({ kind: 'record_gauge', gauge: { on: {}, ...gauge } });
function of<K extends Reply['kind']>(reply: Reply, kind: K): ReplyOf<K> {
  if (reply.kind !== kind) throw new Error(`expected ${kind}, got ${JSON.stringify(reply).slice(0, 300)}`);
  return reply as ReplyOf<K>;
}
const codes = (reply: Reply) => of(reply, 'problem').problems.map(({ code }) => code);
const profiles = () => t.within(async (s) => s.profiles.of((await s.makers.held('U1', '', AT)).id));
const measured = async () => {
  const [first] = await profiles();
  return t.within((s) => s.measurements.of(first?.id ?? ''));
};

describe('a record', () => {
  test('keeps its weight, unravelled yarn, note and day', async () => {
    await record({
      rows: rows(60, inches(12.2)),
      mass: grams(38),
      unravelled: { stitches: 46, over: inches(49) },
      note: 'after oiling',
      day: { day: '2026-11-03', said: 'on 3 november' },
    });
    expect((await measured()).at(-1)).toMatchObject({
      massG: 38,
      unravelled: { stitches: 46, lengthMm: expect.closeTo(1244.6, 6) },
      note: 'after oiling',
      day: Date.parse('2026-11-03') / 86_400_000,
      needles: 46,
    });
  });

  test('of another tension is another gauge, and the plan follows the one used last', async () => {
    const { gauge } = of(await record({ rows: rows(60, inches(11)), on: { tension: '5' } }), 'gauge');
    expect([gauge.tension, gauge.gauge.pieces]).toEqual(['5', 1]);
    expect((await profiles()).map(({ tension }) => tension)).toEqual(['5', '']);
    const { card } = await t.say('pouch 11 in wide');
    expect(card.foot.join()).toContain('tension 5');
  });

  // ln(12.05/12.6) is −4.5 %; one pair against the wide default leaves 84 % of it.
  test('of the same piece in another state makes a pair, and says how the fabric changes', async () => {
    await record({ rows: rows(60, inches(12.6)), state: 'hanging' });
    const { notes, gauge } = of(await record({ rows: rows(60, inches(12.05)), same: true }), 'gauge');
    expect(gauge.gauge.pieces).toBe(2);
    expect(text(notes)).toMatch(/draws in by about 3\.\d% in length/);
  });

  test('figure for figure like one that is in is asked about, and stored only as a new piece', async () => {
    await record({ rows: rows(60, inches(12.2)) });
    const question = of(await record({ rows: rows(60, inches(12.2)) }), 'question');
    expect(question.offers.map(({ button }) => button)).toEqual(['A New One', 'The Same Piece']);
    expect(await measured()).toHaveLength(2);
    const [anew] = question.offers;
    if (anew) await t.ask(anew.request);
    expect(await measured()).toHaveLength(3);
  });

  test('unusual for the category of its yarn is flagged and kept', async () => {
    const { notes } = of(
      await record({ rows: rows(60, inches(12.2)), weight: { category: 2, said: 'category 2' } }),
      'gauge',
    );
    expect(text(notes)).toContain('Unusual for fine yarn (2)');
    expect((await profiles())[0]?.yarn.category).toBe(2);
  });

  test('of the yarn alone is noted', async () => {
    const { lead } = of(await record({ weight: { tex: 500, said: '200 m per 100 g' } }), 'answer');
    expect(text([lead])).toBe('Noted: medium, 200 m per 100 g');
    expect((await profiles())[0]?.yarn.tex).toBe(500);
  });

  test.each([
    ['a mass in inches', { rows: rows(60, inches(12)), mass: inches(3) }, 'not_a_weight'],
    ['a length in grams', { rows: rows(60, grams(270)) }, 'not_a_length'],
    ['no rows', { rows: rows(0, inches(12)) }, 'count_outside'],
    ['ten million rows', { rows: rows(10_000_000, inches(12)) }, 'count_outside'],
    ['a category the standard does not have', { weight: { category: 9, said: 'category 9' } }, 'count_outside'],
    ['a day to come', { rows: rows(60, inches(12)), day: { day: '2026-12-24', said: '24 december' } }, 'day_ahead'],
    [
      'a day before its yarn came',
      {
        rows: rows(60, inches(12)),
        day: { day: '2026-10-03', said: '3 october' },
        weight: { since: { day: '2026-11-01', said: '1 november' }, said: 'bought 1 november' },
      },
      'before_yarn',
    ],
  ] as const)('with %s is refused and stores nothing', async (_, gauge, code) => {
    const before = await t.kept();
    expect(codes(await record(gauge))).toEqual([code]);
    expect(await t.kept()).toEqual(before);
  });

  test('put right replaces the figure nearest to the one said, and undo brings the old one back', async () => {
    const pitch = async () => (await measured()).at(-1);
    const { insteadOf, recorded } = of(await t.ask({ kind: 'correct', value: inches(21.5), was: 22 }), 'gauge');
    expect(text([recorded])).toContain('110 rows in 21.5 in');
    expect(insteadOf).toContain('110 rows in 22 in');
    expect(await pitch()).toMatchObject({ rows: { count: 110, overMm: 546.1 }, stitches: { count: 23 } });
    await t.ask({ kind: 'correct', value: { is: 'count', count: 108, said: '108 rows' } });
    expect((await pitch())?.rows).toMatchObject({ count: 108, overMm: 546.1 });
    expect(await measured()).toHaveLength(1);
    await t.ask({ kind: 'undo', redo: false });
    await t.ask({ kind: 'undo', redo: false });
    expect((await pitch())?.rows).toMatchObject({ count: 110, overMm: 558.8 });
  });

  test('is not put right by a figure of something else', async () => {
    expect(codes(await t.ask({ kind: 'correct', value: inches(200) }))).toEqual(['nothing_to_correct']);
    expect(await measured()).toHaveLength(1);
  });
});

describe('looking at what was measured', () => {
  test('lists the pieces of a gauge, the newest first', async () => {
    await record({ rows: rows(60, inches(12.2)) });
    const { measurements } = of(await t.ask({ kind: 'show_pieces', on: {} }), 'pieces');
    expect(measurements.map((m) => m.rows?.count)).toEqual([60, 110]);
  });

  test('one named by its figures is taken back and put back', async () => {
    await record({ rows: rows(60, inches(12.2)) });
    of(await t.ask({ kind: 'take_back', said: 'the 60 rows' }), 'answer');
    expect(await measured()).toHaveLength(1);
    await t.ask({ kind: 'undo', redo: false });
    expect(await measured()).toHaveLength(2);
  });

  test('several that hold the figure are asked about, and none is named', async () => {
    await record({ rows: rows(60, inches(12.2)) });
    await record({ rows: rows(60, inches(12)) });
    const { offers } = of(await t.ask({ kind: 'take_back', said: '60' }), 'question');
    expect(offers).toHaveLength(2);
    expect(codes(await t.ask({ kind: 'take_back', said: 'the 77' }))).toEqual(['no_such_piece']);
    expect(await measured()).toHaveLength(3);
  });
});
