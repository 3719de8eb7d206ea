import { describe, expect, test } from 'vitest';
import { ballTex, countOf, texOf, type YarnCountSystem } from '../../../core/yarn/count.js';
import { valueIn, yarnProblems } from './samples.js';

const SYSTEMS: YarnCountSystem[] = [
  'tex',
  'denier',
  'metric',
  'cotton',
  'worsted',
  'woollen_run',
  'woollen_skein',
  'linen',
  'm_per_100_g',
  'm_per_50_g',
  'yd_per_oz',
  'yd_per_lb',
];

describe('a yarn count', () => {
  test.each(SYSTEMS)('in %s comes back from tex as it was', (system) => {
    expect(valueIn(texOf(countOf(500, system), system))).toBeCloseTo(500, 9);
  });

  test('of a ball is its grams to the 1000 m', () => {
    expect(valueIn(ballTex({ massG: 50, lengthM: 100 }))).toBe(500);
    expect(countOf(500, 'm_per_50_g')).toBe(100);
  });

  test('finer than thread or coarser than rope is named', () => {
    const range = { code: 'tex_out_of_range', minTex: 20, maxTex: 20_000 };
    expect(yarnProblems(texOf(5, 'tex'))).toEqual([{ ...range, givenTex: 5 }]);
    expect(yarnProblems(texOf(50_000, 'tex'))).toEqual([{ ...range, givenTex: 50_000 }]);
    expect(yarnProblems(texOf(2, 'm_per_100_g'))).toEqual([{ ...range, givenTex: 50_000 }]);
  });

  test('of 0, or of no number, is none', () => {
    expect(yarnProblems(texOf(0, 'metric'))).toEqual([{ code: 'count_not_above_zero', given: 0 }]);
    expect(yarnProblems(texOf(Number.NaN, 'tex'))).toMatchObject([{ code: 'count_not_above_zero' }]);
    expect(yarnProblems(ballTex({ massG: 0, lengthM: 100 }))).toEqual([{ code: 'empty_ball', massG: 0, lengthM: 100 }]);
  });
});
