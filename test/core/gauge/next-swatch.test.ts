import { describe, expect, test } from 'vitest';
import { chanceAfterSwatches } from '../../../core/gauge/next-swatch.js';
import { FOLDED_RING, ONE_SWATCH, THREE_SWATCHES, WINDOW } from '../samples.js';

const LONG = ONE_SWATCH.weight;
const chanceWith = (row: typeof ONE_SWATCH, weight: number) => chanceAfterSwatches(WINDOW, FOLDED_RING, row, weight);

// Worked independently: the closed form, an integral over the new value, and simulation with a refit.
describe('the chance to expect after more swatches of 558.8 mm', () => {
  test.each([
    ['now', 0, 0.3865, 0.5332],
    ['one', LONG, 0.43835, 0.5473],
    ['two', 2 * LONG, 0.4608, 0.5563],
    ['ten', 10 * LONG, 0.5007, 0.5802],
    ['without end', Number.POSITIVE_INFINITY, 0.51857, 0.59673],
  ])('%s', (_, weight, fromOne, fromThree) => {
    expect(chanceWith(ONE_SWATCH, weight)).toBeCloseTo(fromOne, 4);
    expect(chanceWith(THREE_SWATCHES, weight)).toBeCloseTo(fromThree, 4);
  });
});
