import { describe, expect, test } from 'vitest';
import { weightOf } from '../../../core/gauge/swatches.js';
import { read, rowsIn, tube } from '../samples.js';

const rowsOf = (...measurements: ReturnType<typeof tube>[]) => rowsIn(measurements).flat();
const weights = (...measurements: ReturnType<typeof tube>[]) => rowsOf(...measurements).map((r) => weightOf(r));

// Weights worked by hand from w = 1/(1 + (u/(0.03·x))²), u = 1.6 mm.
describe('a swatch', () => {
  test('weighs the more, the longer it was measured over', () => {
    expect(weights(tube('long', 110, 558.8))).toEqual([expect.closeTo(0.990973, 6)]);
    expect(weights(tube('short', 20, 101.6))).toEqual([expect.closeTo(0.784, 4)]);
  });

  test('counted inside a ruler length weighs less than one read over known rows', () => {
    const counted = tube('counted', 20, 101.6, { rows: { count: 20, overMm: 101.6, how: 'counted' } });
    expect(weights(counted)).toEqual([expect.closeTo(0.6636, 4)]);
  });

  test('converted from another state weighs less by the variance that brings', () => {
    const [reading] = rowsOf(tube('hung', 59, 300));
    if (reading === undefined) throw new Error('no reading');
    expect(weightOf(reading)).toBeCloseTo(0.96936, 5);
    expect(weightOf(reading, 0.01 ** 2)).toBeCloseTo(0.87511, 5);
  });

  test('read in three places is still one observation, as if read over √(Σx²)', () => {
    const places = rowsOf(tube('a', 20, 100), tube('a', 20, 104), tube('a', 20, 102));
    expect(places).toHaveLength(1);
    const squares = 100 ** 2 + 104 ** 2 + 102 ** 2;
    const y = (100 ** 2 * Math.log(5) + 104 ** 2 * Math.log(5.2) + 102 ** 2 * Math.log(5.1)) / squares;
    expect(places[0]?.lengthMm).toBeCloseTo(Math.sqrt(squares), 9);
    expect(places[0]?.y).toBeCloseTo(y, 12);
    expect(places[0]?.errorMm).toBeCloseTo(1.6, 12);
  });

  test('read in two states makes one reading of each', () => {
    const [swatch] = rowsIn([tube('a', 20, 104, { state: 'hanging' }), tube('a', 20, 100)]);
    expect(swatch?.map((r) => r.state)).toEqual(['hanging', 'rested']);
  });

  test('without a count of the kind wanted is passed over', () => {
    expect(rowsOf(tube('a', 1, 1, { rows: undefined, stitches: read(46, 342.9) }))).toEqual([]);
  });
});
