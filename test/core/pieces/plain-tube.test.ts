import { describe, expect, test } from 'vitest';
import { plainTube } from '../../../core/pieces/plain-tube.js';
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
