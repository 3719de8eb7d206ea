import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cheapest, type Ware } from '../../../core/yarn/cheapest.js';
import { byCount } from '../../../core/yarn/put-up.js';
import { integerProgram } from './solver.js';

const ware = (size: number, minor: number, stock?: number): Ware => ({ size, packs: [{ count: 1, minor }], stock });

const holds = (wares: readonly Ware[], pieces: readonly number[]): number =>
  wares.reduce((all, { size }, i) => all + size * (pieces[i] ?? 0), 0);
const costs = (wares: readonly Ware[], pieces: readonly number[]): number =>
  wares.reduce((all, { packs }, i) => all + (byCount(packs, pieces[i] ?? 0).at(-1)?.minor ?? Number.NaN), 0);

describe('the cheapest pieces', () => {
  test('are those that hold most, of several as cheap', () => {
    expect(cheapest([ware(50, 600), ware(100, 600)], 90)).toEqual([0, 1]);
    expect(cheapest([ware(95, 600), ware(100, 600)], 90)).toEqual([0, 1]);
  });

  // 1.20 each, ten for 9.00: eight are dearer than ten.
  test('are a larger pack where that costs less', () => {
    const tens: Ware = {
      size: 1,
      packs: [
        { count: 1, minor: 120 },
        { count: 10, minor: 900 },
      ],
    };
    expect([7, 8, 12, 18].map((need) => cheapest([tens], need))).toEqual([[7], [10], [12], [20]]);
    expect(cheapest([{ ...tens, stock: 9 }], 8)).toEqual([8]);
  });

  test('are within their stock, and none where all of them are too few', () => {
    expect(cheapest([ware(100, 500, 2), ware(100, 900)], 350)).toEqual([2, 2]);
    expect(cheapest([ware(100, 500, 2), ware(100, 900, 1)], 350)).toBeUndefined();
    expect(cheapest([{ size: 1, packs: [{ count: 10, minor: 900 }], stock: 9 }], 1)).toBeUndefined();
    expect(cheapest([], 1)).toBeUndefined();
  });

  test('leave out what has no price', () => {
    expect(cheapest([{ size: 100, packs: [] }, ware(50, 450)], 90)).toEqual([0, 2]);
  });

  test('hold a need that sums of decimals just come to', () => {
    expect(cheapest([ware(0.1, 1)], 0.3)).toEqual([3]);
    expect(cheapest([ware(109.728, 650)], 5 * 109.728)).toEqual([5]);
  });
});

/** Shops of one to six wares of any length, some in packs, some few; a need of up to thirty balls. */
const shop = fc.record({
  wares: fc.array(
    fc.record({
      size: fc.integer({ min: 20, max: 400 }),
      minor: fc.integer({ min: 100, max: 2000 }),
      pack: fc.option(
        fc.record({ count: fc.integer({ min: 2, max: 10 }), percent: fc.integer({ min: 70, max: 105 }) }),
      ),
      stock: fc.option(fc.integer({ min: 0, max: 12 }), { nil: undefined }),
    }),
    { minLength: 1, maxLength: 6 },
  ),
  need: fc.integer({ min: 1, max: 3000 }),
});
type Shop = typeof shop extends fc.Arbitrary<infer S> ? S : never;

const waresOf = ({ wares }: Shop): Ware[] =>
  wares.map(({ size, minor, pack, stock }) => ({
    size,
    stock,
    packs: [
      { count: 1, minor },
      ...(pack
        ? [{ count: pack.count, minor: Math.max(1, Math.round((pack.count * minor * pack.percent) / 100)) }]
        : []),
    ],
  }));

test('cost what an exact integer program says, on 500 random shops', { timeout: 120_000 }, async () => {
  const leastCost = await integerProgram();
  let impossible = 0;
  fc.assert(
    fc.property(shop, (one) => {
      const wares = waresOf(one);
      const pieces = cheapest(wares, one.need);
      const least = leastCost(wares, one.need);
      if (pieces === undefined) {
        impossible += 1;
        expect(least).toBeUndefined();
        return;
      }
      expect(holds(wares, pieces)).toBeGreaterThanOrEqual(one.need);
      wares.forEach(({ stock }, i) => {
        expect(pieces[i]).toBeLessThanOrEqual(stock ?? Number.POSITIVE_INFINITY);
      });
      expect(costs(wares, pieces)).toBe(least);
    }),
    { seed: 20_240_229, numRuns: 500 },
  );
  expect(impossible).toBeGreaterThan(5);
  expect(impossible).toBeLessThan(250);
});
