import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Reply, ReplyOf } from '../../../../bot/reply.js';
import type { Value } from '../../../../bot/request.js';
import { AT, MEDIUM, type Talk, talk } from '../../talk.js';

const inches = (n: number): Value & { is: 'length' } => ({ is: 'length', mm: n * 25.4, said: `${n} in` });

let path: string;
let t: Talk;
beforeEach(async () => {
  path = join(mkdtempSync(join(tmpdir(), 'work-')), 'store.sqlite');
  t = await talk(undefined, path);
  await t.say(MEDIUM);
  await t.say('pouch 10.5 to 11 in wide');
});
afterEach(async () => {
  await t.close();
  rmSync(join(path, '..'), { recursive: true });
});

async function reopened(): Promise<void> {
  await t.close();
  t = await talk(undefined, path);
}

function of<K extends Reply['kind']>(reply: Reply, kind: K): ReplyOf<K> {
  if (reply.kind !== kind) throw new Error(`expected ${kind}, got ${JSON.stringify(reply).slice(0, 300)}`);
  return reply as ReplyOf<K>;
}
const standing = async (request: Parameters<Talk['ask']>[0]) => {
  const { rows, stopAt, measureAt } = of(await t.ask(request), 'work').work;
  return { rows, stopAt, measureAt };
};
const codes = async (request: Parameters<Talk['ask']>[0]) =>
  of(await t.ask(request), 'problem').problems.map(({ code }) => code);
const where = () => standing({ kind: 'where' });

describe('the tally', () => {
  test('starts at 0 of the plan’s rows, with the row to measure at', async () => {
    expect(await standing({ kind: 'start' })).toEqual({ rows: 0, stopAt: 106, measureAt: 50 });
  });

  test('counts by one, by ten and to a row, and undo takes back each exactly, after a restart too', async () => {
    await t.ask({ kind: 'start' });
    await t.ask({ kind: 'tally', by: 1 });
    await t.ask({ kind: 'tally', by: 10 });
    expect(await standing({ kind: 'tally', to: 40 })).toEqual({ rows: 40, stopAt: 106, measureAt: 50 });
    await reopened();
    const rows = [];
    for (let i = 0; i < 3; i++) {
      await t.ask({ kind: 'undo', redo: false });
      rows.push((await where()).rows);
    }
    expect(rows).toEqual([11, 1, 0]);
    await t.ask({ kind: 'undo', redo: true });
    expect((await where()).rows).toBe(1);
  });

  test('never goes below 0, past ten million or to half a row, and stores nothing then', async () => {
    await t.ask({ kind: 'start' });
    expect(await codes({ kind: 'tally', by: -1 })).toEqual(['count_outside']);
    expect(await codes({ kind: 'tally', to: 10_000_000 })).toEqual(['count_outside']);
    expect(await codes({ kind: 'tally', to: 4.5 })).toEqual(['count_not_whole']);
    expect(await where()).toMatchObject({ rows: 0 });
  });

  test('needs work on the machine', async () => {
    expect(await codes({ kind: 'tally', by: 1 })).toEqual(['no_work']);
    expect(await codes({ kind: 'where' })).toEqual(['no_work']);
  });

  test('started twice is the same work, and another plan asks what became of it', async () => {
    await t.ask({ kind: 'start' });
    await t.ask({ kind: 'tally', by: 10 });
    expect((await standing({ kind: 'start' })).rows).toBe(10);
    await t.say('tube 22 in long');
    const question = of(await t.ask({ kind: 'start' }), 'question');
    expect(question.offers.map(({ request }) => request.kind)).toEqual(['finish', 'give_up']);
    await t.ask({ kind: 'give_up' });
    expect((await standing({ kind: 'start' })).stopAt).toBe(110);
  });

  test('a button pressed after its work has ended counts nothing', async () => {
    const { work } = of(await t.ask({ kind: 'start' }), 'work');
    await t.ask({ kind: 'give_up' });
    expect(await codes({ kind: 'tally', workId: work.id, by: 1 })).toEqual(['no_work']);
  });

  test('keeps pieces on two machines apart', async () => {
    await t.ask({ kind: 'start' });
    await t.say('60 needles, 90 rows, 18 in, 8 in flat');
    await t.say('tube 20 in long on the 60');
    await t.ask({ kind: 'start' });
    await t.ask({ kind: 'tally', by: 5, on: { needles: 46 } });
    await t.ask({ kind: 'tally', by: 7, on: { needles: 60 } });
    expect((await standing({ kind: 'where', on: { needles: 46 } })).rows).toBe(5);
    expect((await standing({ kind: 'where', on: { needles: 60 } })).rows).toBe(7);
  });
});

describe('a reading of the work', () => {
  beforeEach(() => t.ask({ kind: 'start' }));

  // Worked independently: row 60 at 320.04 mm at rest, stop with 102 rows in the piece, .9884.
  test('moves the stop row and the tally, and undo restores both', async () => {
    const { plan, stopBefore } = of(
      await t.ask({ kind: 'reading', row: 60, length: inches(12.6), state: 'rested' }),
      'correction',
    );
    expect([plan.rows, stopBefore]).toEqual([101, 106]);
    expect(plan.work?.stop.chance).toBeCloseTo(0.9884, 4);
    expect(await where()).toMatchObject({ rows: 60, stopAt: 101 });
    await t.ask({ kind: 'undo', redo: false });
    expect(await where()).toMatchObject({ rows: 0, stopAt: 106 });
    await t.ask({ kind: 'undo', redo: true });
    expect(await where()).toMatchObject({ rows: 60, stopAt: 101 });
  });

  test('without a row is at the row of the tally, and hangs unless said otherwise or last time', async () => {
    await t.ask({ kind: 'tally', to: 60 });
    const hung = of(await t.ask({ kind: 'reading', length: inches(12.6) }), 'correction');
    expect(hung.read.reading).toEqual({ row: 60, lengthMm: expect.closeTo(320.04, 9), state: 'hanging' });
    expect(hung.plan.work?.stop.chance).toBeCloseTo(0.5753, 4);
    await t.ask({ kind: 'reading', row: 70, length: inches(14.5), state: 'rested' });
    const again = of(await t.ask({ kind: 'reading', row: 80, length: inches(16.6) }), 'correction');
    expect(again.read.reading.state).toBe('rested');
  });

  test('at row 0 asks for the row, and the answer goes on', async () => {
    const question = of(await t.ask({ kind: 'reading', length: inches(12.6) }), 'question');
    expect(question.asks.parts.join()).toContain('Which row');
    const { card } = await t.say('60');
    expect(card.body.join()).toContain('Read: row 60, 12.6 in, hanging');
  });

  test('twice what is expected is asked about, with the row it would fit, and stored only when it is right', async () => {
    const doubt = of(await t.ask({ kind: 'reading', row: 30, length: inches(13) }), 'question');
    expect(doubt.offers.map(({ button }) => button)).toEqual(['It Is Right', 'Row 65']);
    expect(await where()).toMatchObject({ rows: 0 });
    const right = doubt.offers[0]?.request;
    if (right === undefined) throw new Error('nothing offered');
    of(await t.ask(right), 'correction');
    expect(await where()).toMatchObject({ rows: 30 });
  });

  test('shorter than an earlier one is asked about', async () => {
    await t.ask({ kind: 'reading', row: 50, length: inches(10), state: 'rested' });
    const doubt = of(await t.ask({ kind: 'reading', row: 60, length: inches(9), state: 'rested' }), 'question');
    expect(doubt.because.parts.join()).toContain('cannot get shorter');
  });

  test.each([
    [{ row: 0.5, length: inches(12) }, 'count_not_whole'],
    [{ row: 10_000_000, length: inches(12) }, 'count_outside'],
    [{ row: 60, length: inches(-1) }, 'length_not_positive'],
    [{ row: 60, length: { is: 'mass', g: 270, said: '270 g' } as const }, 'not_a_length'],
  ])('%j is refused', async (reading, code) => {
    expect(await codes({ kind: 'reading', ...reading })).toEqual([code]);
    expect(await where()).toMatchObject({ rows: 0, stopAt: 106 });
  });

  test('put right replaces the one before, and undo brings that back', async () => {
    await t.ask({ kind: 'reading', row: 60, length: inches(12.6), state: 'rested' });
    const { plan } = of(await t.ask({ kind: 'correct', value: inches(12) }), 'correction');
    expect(plan.work?.stop.rows).toBe(106);
    expect(await where()).toMatchObject({ rows: 60, stopAt: 106 });
    await t.ask({ kind: 'undo', redo: false });
    expect(await where()).toMatchObject({ rows: 60, stopAt: 101 });
    await t.ask({ kind: 'undo', redo: true });
    expect(await where()).toMatchObject({ rows: 60, stopAt: 106 });
  });

  test('gives way to the maker’s own stop row', async () => {
    await t.ask({ kind: 'reading', row: 60, length: inches(12.6), state: 'rested' });
    expect(await standing({ kind: 'set_stop', rows: 106 })).toMatchObject({ stopAt: 106 });
    await t.ask({ kind: 'undo', redo: false });
    expect(await where()).toMatchObject({ stopAt: 101 });
  });
});

describe('two counters that disagree', () => {
  const COUNTS = [
    { name: 'machine', rows: 64 },
    { name: 'hand counter', rows: 62 },
  ];
  beforeEach(() => t.ask({ kind: 'start' }));

  test('are both kept, and the work goes on from the smaller', async () => {
    const { work, verdict } = of(await t.ask({ kind: 'lost_count', counts: COUNTS }), 'counts');
    expect([work.rows, verdict]).toEqual([62, undefined]);
    const entries = await t.within(async (s) => s.works.tally(work.id));
    expect(entries.at(-1)).toMatchObject({ kind: 'lost', rows: 62, said: 'machine 64, hand counter 62' });
  });

  test('are weighed by a length, which answers the question that waits', async () => {
    await t.ask({ kind: 'reading', row: 40, length: inches(8.02), state: 'rested' });
    await t.ask({ kind: 'lost_count', counts: COUNTS });
    const { card } = await t.say('12 3/4 in');
    expect(card.body.join(' ')).toMatch(/is about 6\d rows, most likely/);
    expect(await standing({ kind: 'tally', to: 64, settles: true })).toMatchObject({ rows: 64 });
  });

  test('without counts are told from the length alone', async () => {
    const { verdict } = of(
      await t.ask({ kind: 'lost_count', counts: [], length: inches(12.6), state: 'rested' }),
      'counts',
    );
    expect(verdict?.rows.expected).toBeCloseTo(63, 0);
  });
});

describe('a finished piece', () => {
  beforeEach(() => t.ask({ kind: 'start' }));
  const measured = () =>
    t.within(async (s) => {
      const maker = await s.makers.held('U1', '', AT);
      const [profile] = await s.profiles.of(maker.id);
      return profile === undefined ? [] : s.measurements.of(profile.id);
    });

  test('becomes a measurement of its rows, with its hanging reading as a pair', async () => {
    await t.ask({ kind: 'reading', row: 60, length: inches(12.6), state: 'hanging' });
    const reply = of(
      await t.ask({ kind: 'finish', sizes: [{ value: inches(10.875) }, { value: inches(6.75) }], rows: 106 }),
      'finished',
    );
    expect(reply).toMatchObject({ rows: 106, paired: true, stateAssumed: true });
    expect(reply.next?.chance).toBeGreaterThan(reply.was?.chance ?? 1);
    const [, hung, finished] = await measured();
    expect(hung).toMatchObject({ state: 'hanging', rows: { count: 60, overMm: expect.closeTo(320.04, 9) } });
    expect(finished).toMatchObject({
      state: 'rested',
      rows: { count: 53.5, overMm: expect.closeTo(276.225, 9) },
      swatch: hung?.swatch,
    });
    expect(finished?.stitches).toMatchObject({ count: 22.5, overMm: expect.closeTo(171.45, 9) });
    expect(await codes({ kind: 'where' })).toEqual(['no_work']);
  });

  test('undone is on the machine again and taught nothing', async () => {
    await t.ask({ kind: 'reading', row: 60, length: inches(12.6), state: 'rested' });
    await t.ask({ kind: 'finish', sizes: [{ value: inches(10.875) }] });
    await t.ask({ kind: 'undo', redo: false });
    expect(await where()).toMatchObject({ rows: 60, stopAt: 101 });
    expect(await measured()).toHaveLength(1);
  });

  test('without a size is asked for it, and can be measured later', async () => {
    const question = of(await t.ask({ kind: 'finish', sizes: [] }), 'question');
    const later = question.offers[0]?.request;
    if (later === undefined) throw new Error('nothing offered');
    expect(of(await t.ask(later), 'finished').size).toBeUndefined();
    expect(await measured()).toHaveLength(1);
  });

  test('keeps its weight, and refuses a length for one', async () => {
    const mass: Value = { is: 'mass', g: 66, said: '66 g' };
    expect(await codes({ kind: 'finish', sizes: [{ value: inches(10.875) }], mass: inches(3) })).toEqual([
      'not_a_weight',
    ]);
    const reply = of(await t.ask({ kind: 'finish', sizes: [{ value: inches(10.875) }], mass }), 'finished');
    expect(reply.massG).toBe(66);
    expect((await measured()).at(-1)).toMatchObject({ massG: 66, needles: 46 });
  });

  test('far from what it should be is asked about first', async () => {
    of(await t.ask({ kind: 'finish', sizes: [{ value: inches(15) }] }), 'question');
    expect(await measured()).toHaveLength(1);
    expect(await where()).toMatchObject({ rows: 0 });
  });

  test('put right is measured once', async () => {
    await t.ask({ kind: 'finish', sizes: [{ value: inches(10.875) }] });
    of(await t.ask({ kind: 'correct', value: inches(10.75) }), 'finished');
    expect(await measured()).toHaveLength(2);
    expect((await measured()).at(-1)?.rows?.overMm).toBeCloseTo(273.05, 9);
  });
});

describe('what would help', () => {
  test('is worked out for the plan in hand, best first', async () => {
    const { remedies } = of(await t.ask({ kind: 'what_helps' }), 'helps');
    expect(remedies.map(({ is }) => is)).toEqual(['measure_at_rest', 'pair', 'measure_hanging', 'swatch']);
  });

  test('for work that was read leaves out what comes too late for it', async () => {
    await t.ask({ kind: 'start' });
    await t.ask({ kind: 'reading', row: 40, length: inches(8), state: 'hanging' });
    const { remedies } = of(await t.ask({ kind: 'what_helps' }), 'helps');
    expect(remedies.map(({ is }) => is)).toEqual(['measure_at_rest']);
  });
});

describe('a piece is only ever itself', () => {
  test('started on a borrowed gauge it is on its own machine, and teaches that one', async () => {
    await t.say('a machine with 60 needles');
    await t.say('pouch 10.5 to 11 in wide on the 60');
    await t.ask({ kind: 'start' });
    expect((await standing({ kind: 'where', on: { needles: 60 } })).rows).toBe(0);
    expect(await codes({ kind: 'where', on: { needles: 46 } })).toEqual(['no_work']);
    await t.ask({ kind: 'finish', sizes: [{ value: inches(10.875) }] });
    const { gauges } = of(await t.ask({ kind: 'show_gauge', on: {} }), 'gauges');
    expect(gauges.map(({ machine, gauge }) => [machine.needles, gauge.pieces]).sort()).toEqual([
      [46, 1],
      [60, 1],
    ]);
  });

  test('a question about it is answered for it, whatever is on the machine by then', async () => {
    await t.ask({ kind: 'start' });
    const doubt = of(await t.ask({ kind: 'reading', row: 30, length: inches(13) }), 'question');
    await t.ask({ kind: 'give_up' });
    await t.say('tube 22 in long');
    await t.ask({ kind: 'start' });
    const right = doubt.offers[0]?.request;
    if (right === undefined) throw new Error('nothing offered');
    expect(await codes(right)).toEqual(['no_work']);
    expect((await where()).rows).toBe(0);
  });

  test('done and to be measured later, it is measured later', async () => {
    await t.ask({ kind: 'start' });
    await t.ask({ kind: 'reading', row: 60, length: inches(12.6), state: 'hanging' });
    await t.ask({ kind: 'finish', sizes: [], unmeasured: true });
    const later = of(await t.ask({ kind: 'finish', sizes: [{ value: inches(10.875) }] }), 'finished');
    expect(later).toMatchObject({ paired: true, label: 'Pouch' });
    expect(await codes({ kind: 'finish', sizes: [{ value: inches(10.875) }] })).toEqual(['no_work']);
  });

  test('a panel is finished over its own needles', async () => {
    await t.say('panel on 40 needles 12 in long');
    await t.ask({ kind: 'start' });
    await t.ask({ kind: 'finish', sizes: [{ value: inches(12) }, { value: inches(11.7) }] });
    const [profile] = await t.within(async (s) => s.profiles.of((await s.makers.held('U1', '', AT)).id));
    const last = (await t.within((s) => s.measurements.of(profile?.id ?? ''))).at(-1);
    expect(last).toMatchObject({ form: 'panel', needles: 40, stitches: { count: 40 } });
  });

  test('undone when its machine holds another says that it has moved on, and changes nothing', async () => {
    await t.ask({ kind: 'start' });
    await t.ask({ kind: 'give_up' });
    await t.within(async (s) => {
      const maker = await s.makers.held('U1', '', AT);
      const plan = await s.plans.latest(maker.id);
      if (plan === undefined) throw new Error('no plan');
      const { profileId, id } = plan;
      await s.works.start({ id: 'elsewhere', makerId: maker.id, planId: id, profileId, stopAt: 9, at: AT });
    });
    expect(await codes({ kind: 'undo', redo: false })).toEqual(['moved_on']);
    expect((await where()).stopAt).toBe(9);
  });

  test('is judged by the tension it was started at', async () => {
    await t.ask({ kind: 'start' });
    await t.ask({
      kind: 'record_gauge',
      gauge: { on: { tension: '8' }, rows: { count: 60, over: inches(14), how: 'read' } },
    });
    const { plan } = of(await t.ask({ kind: 'reading', row: 60, length: inches(12), state: 'rested' }), 'correction');
    expect(plan.work?.standing?.longer).toBeCloseTo(0, 6);
  });
});
