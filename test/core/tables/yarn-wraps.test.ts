import { describe, expect, test } from 'vitest';
import { yarnWeightsWrapped } from '../../../core/tables/yarn-wraps.js';

const numbers = (wraps: number): number[] => yarnWeightsWrapped(wraps).map(({ number }) => number);

describe('wraps to the inch', () => {
  test('name each category that they may be of', () => {
    expect(numbers(12)).toEqual([2, 3, 4]);
    expect(numbers(14)).toEqual([1, 2, 3]);
    expect(numbers(30)).toEqual([0, 1]);
    expect(numbers(7)).toEqual([5]);
  });

  test('are taken as whole ones', () => {
    expect(numbers(4.4)).toEqual([7]);
    expect(numbers(4.6)).toEqual([6]);
    expect(numbers(60)).toEqual([0]);
    expect(numbers(0.4)).toEqual([]);
  });
});
