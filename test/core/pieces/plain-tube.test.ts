import { describe, expect, test } from 'vitest';
import { plainTube } from '../../../core/pieces/plain-tube.js';
import { printed } from '../../../core/units/print.js';
import { say } from '../../../core/words.js';
import { between, mm, planOf } from '../samples.js';

// Worked by hand: √(545·575)/5.08 = 110.197; 12143 ≤ 110·111 = 12210.
describe('a tube of 545 to 575 mm', () => {
  test('is 110 rows: 558.8 mm, and 171.45 mm flat on 46 needles', () => {
    const made = planOf(plainTube, { length: between(545, 575) });
    expect(made).toMatchObject({ rows: 110, graftRows: 0 });
    expect(made.sizes.map((s) => s.expectedMm)).toEqual([expect.closeTo(558.8, 9), expect.closeTo(171.45, 9)]);
  });

  test('on 48 needles is 178.9 mm flat, its rows unchanged', () => {
    const made = planOf(plainTube, { length: between(545, 575) }, { needles: 48 });
    expect(made.rows).toBe(110);
    expect(made.sizes[1]?.expectedMm).toBeCloseTo(178.9, 1);
  });

  test('of two layers has the area of its stitches', () => {
    const { sizes, rows } = planOf(plainTube, { length: between(545, 575) });
    const [lengthMm = 0, widthMm = 0] = sizes.map((s) => s.expectedMm ?? 0);
    expect(2 * lengthMm * widthMm).toBeCloseTo(46 * rows * (342.9 / 46) * 5.08, 6);
  });
});

describe('the ends of a tube', () => {
  const castOff = (id: string) =>
    planOf(plainTube, { length: mm(558.8), ends: { is: 'choice', id } }).steps.find((s) => s.driver === 'cast_off');

  test('cast off take every stitch at both ends', () => {
    expect(castOff('cast_off')?.count).toBe(92);
  });

  test('left live take none', () => {
    expect(castOff('live')).toBeUndefined();
  });
});

describe('a tube whose ends are shut flat', () => {
  const shut = (id: string) => planOf(plainTube, { length: between(545, 575), ends: { is: 'choice', id } });

  // √(545·575)/5.08 = 110.197: of 109.5 and 110.5 rows the nearer in logs, since 12143 > 109.5·110.5 = 12099.75.
  test('at one end is half a row longer than it is cranked', () => {
    const made = shut('one_shut');
    expect([made.rows, made.graftRows]).toEqual([110, 0.5]);
    expect(made.sizes[0]?.expectedMm).toBeCloseTo(110.5 * 5.08, 9);
  });

  test('at both is a row longer, grafted in two halves', () => {
    const made = shut('shut');
    expect([made.rows, made.graftRows]).toEqual([109, 1]);
    expect(made.sizes[0]?.expectedMm).toBeCloseTo(558.8, 9);
    expect(made.steps.find((s) => s.id === 'shut')?.count).toBe(46);
    expect(made.steps.find((s) => s.id === 'take_out_waste')?.count).toBe(10);
  });

  // (46/2)·26.823·1.05 + 150 = 797.8 mm.
  test('leaves a tail of half the needles for each shut end', () => {
    const tails = (id: string) =>
      shut(id)
        .steps.flatMap((s) => s.yarn ?? [])
        .flatMap((y) => y.lengthMm ?? []);
    expect(tails('shut')).toEqual([expect.closeTo(797.8, 1), expect.closeTo(797.8, 1)]);
    expect(tails('one_shut')).toEqual([150, expect.closeTo(797.8, 1)]);
    expect(tails('live')).toEqual([150, 150]);
  });

  test('on an odd number of needles takes two loops as one', () => {
    const made = planOf(plainTube, { length: mm(558.8), ends: { is: 'choice', id: 'shut' } }, { needles: 45 });
    const step = made.steps.find((s) => s.id === 'shut');
    expect(step?.count).toBe(2 * 22);
    expect(printed(step?.say ?? say``, { units: 'in' })).toMatch(/22 pairs.*take the odd loop together with the last/);
  });

  test.each([
    ['live', 'both ends left live on waste yarn'],
    ['one_shut', 'one end shut flat, the first left live on waste yarn'],
    ['shut', 'both ends shut flat'],
    ['cast_off', 'cast off ends, which roll a little'],
  ])('says what becomes of the others: %s', (id, said) => {
    expect(shut(id).assumed.map((words) => printed(words, { units: 'in' }))).toContain(said);
  });

  // 2·558.8·171.45 = 46·110·7.4543·5.08 = 191,612 mm².
  test('has the area of its stitches, the grafted half rows among them', () => {
    const [lengthMm = 0, widthMm = 0] = shut('shut').sizes.map((s) => s.expectedMm ?? 0);
    expect(2 * lengthMm * widthMm).toBeCloseTo(46 * (109 + 1) * (342.9 / 46) * 5.08, 6);
  });
});
