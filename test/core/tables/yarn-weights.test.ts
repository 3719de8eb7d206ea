import { describe, expect, test } from 'vitest';
import { unusualFor, YARN_WEIGHTS, yarnWeightNamed, yarnWeightsFor } from '../../../core/tables/yarn-weights.js';

const namesFor = (stitches: number) => yarnWeightsFor(stitches).map((w) => w.name);
const medium = YARN_WEIGHTS[4];

describe('the yarn weights that stitches over 4 in fit', () => {
  test('are one or two for every whole number to 40, and together leave no gap', () => {
    const several = Array.from({ length: 40 }, (_, i) => i + 1).filter((stitches) => namesFor(stitches).length !== 1);
    expect(several).toEqual([23, 24]);
    expect(namesFor(23)).toEqual(['Fine', 'Light']);
  });

  test('are those of the nearest whole number', () => {
    expect(namesFor(20.4)).toEqual(['Medium']);
    expect(namesFor(20.6)).toEqual(['Light']);
    expect(namesFor(0.3)).toEqual(['Jumbo']);
  });

  test('are none over 40', () => {
    expect(namesFor(41)).toEqual([]);
  });
});

describe('a yarn weight', () => {
  test.each(YARN_WEIGHTS.map((w) => [w.name, w] as const))('%s is found by its number and by its name', (name, w) => {
    expect(yarnWeightNamed(`${w.number}`)).toBe(w);
    expect(yarnWeightNamed(` ${name.toUpperCase()} `)).toBe(w);
  });

  test('is not found by the trade name of a yarn, part of a name or a number that is none', () => {
    for (const words of ['worsted', 'super', '8', '4.5', '']) expect(yarnWeightNamed(words)).toBeUndefined();
  });
});

// Worked by hand: 16·.75 = 12 and 20·1.25 = 25 are the last that pass; 26/20 − 1 = .3, 1 − 8/16 = .5.
describe('stitches unusual for a yarn, as medium is 16 to 20 over 4 in', () => {
  test('are more than a quarter beyond the nearer end', () => {
    expect(unusualFor(medium, 26)).toEqual({ beyond: expect.closeTo(0.3, 12), end: 20 });
    expect(unusualFor(medium, 8)).toEqual({ beyond: 0.5, end: 16 });
  });

  test('are not those inside, nor up to a quarter outside', () => {
    for (const stitches of [12, 16, 18, 20, 25]) expect(unusualFor(medium, stitches)).toBeUndefined();
  });

  test('are never too few for the last category, 6 or fewer', () => {
    expect(unusualFor(YARN_WEIGHTS[7], 0.5)).toBeUndefined();
    expect(unusualFor(YARN_WEIGHTS[7], 9)).toEqual({ beyond: 0.5, end: 6 });
  });
});
