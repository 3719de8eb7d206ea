import { describe, expect, test } from 'vitest';
import { asPacks, byCount, checkedPutUps, type PutUp } from '../../../core/yarn/put-up.js';
import { valueIn, yarnProblems } from './samples.js';

const SINGLE = { count: 1, minor: 120 };
const TEN = { count: 10, minor: 900 };
const grey: PutUp = {
  ball: { massG: 50, lengthM: 105 },
  lot: '12',
  currency: 'EUR',
  packs: [{ count: 1, minor: 620 }],
};

describe('packs', () => {
  // 1.20 each, ten for 9.00: 12 cost 11.40, 18 cost 18.60 as such; two tens for 18.00 hold 20.
  test('come to each number at the least price', () => {
    const cheapest = byCount([SINGLE, TEN], 20);
    expect([7, 10, 12, 18, 20].map((balls) => cheapest[balls]?.minor)).toEqual([840, 900, 1140, 1860, 1800]);
    expect(byCount([TEN], 20)[7]).toBeUndefined();
  });

  test('are told apart, the largest first', () => {
    expect(asPacks([SINGLE, TEN], 23)).toEqual([
      { pack: TEN, count: 2 },
      { pack: SINGLE, count: 3 },
    ]);
    expect(() => asPacks([TEN], 7)).toThrow('no packs');
  });
});

describe('what is on sale', () => {
  const problemsOf = (more: Partial<PutUp>, ...others: PutUp[]) =>
    yarnProblems(checkedPutUps([{ ...grey, ...more }, ...others]));

  test('has one currency', () => {
    expect(valueIn(checkedPutUps([grey, { ...grey, lot: '13' }]))).toEqual({ currency: 'EUR' });
    expect(problemsOf({}, { ...grey, currency: 'GBP' })).toEqual([
      { code: 'mixed_currencies', currencies: ['EUR', 'GBP'] },
    ]);
    expect(problemsOf({ currency: '' })).toEqual([{ code: 'no_currency', minor: 620 }]);
  });

  test('is no ball of 0 g or 0 m, and no thread or rope', () => {
    expect(problemsOf({ ball: { massG: 0, lengthM: 105 } })).toEqual([{ code: 'empty_ball', massG: 0, lengthM: 105 }]);
    expect(problemsOf({ ball: { massG: 50, lengthM: 0 } })).toEqual([{ code: 'empty_ball', massG: 50, lengthM: 0 }]);
    expect(problemsOf({ ball: { massG: 50, lengthM: 10_000 } })).toMatchObject([
      { code: 'tex_out_of_range', givenTex: 5 },
    ]);
    expect(problemsOf({ ball: { massG: 500, lengthM: 10 } })).toMatchObject([
      { code: 'tex_out_of_range', givenTex: 50_000 },
    ]);
  });

  test('is counted and priced in whole numbers, priced above 0', () => {
    expect(problemsOf({ packs: [{ count: 1, minor: 6.2 }] })).toEqual([
      { code: 'not_whole', field: 'price', given: 6.2, min: 1 },
    ]);
    expect(problemsOf({ packs: [{ count: 0, minor: 620 }] })).toMatchObject([{ field: 'pack', given: 0 }]);
    expect(problemsOf({ stock: -1 })).toMatchObject([{ field: 'stock', given: -1 }]);
    expect(valueIn(checkedPutUps([{ ...grey, stock: 0 }]))).toEqual({ currency: 'EUR' });
  });

  test('is something', () => {
    expect(yarnProblems(checkedPutUps([]))).toEqual([{ code: 'nothing_for_sale' }]);
    expect(yarnProblems(checkedPutUps([{ ...grey, packs: [] }]))).toEqual([{ code: 'nothing_for_sale' }]);
  });
});
