import { describe, expect, test } from 'vitest';
import { type Buying, purchases } from '../../../core/yarn/buying.js';
import { chanceEnough, leastBalls } from '../../../core/yarn/enough.js';
import type { PutUp } from '../../../core/yarn/put-up.js';
import { valueIn, yarnProblems } from './samples.js';

/** Balls of 50 g and 105 m: 6.20 each, ten for 56.00. */
const grey = (more: Partial<PutUp> = {}): PutUp => ({
  ball: { massG: 50, lengthM: 105 },
  lot: '',
  currency: 'EUR',
  packs: [
    { count: 1, minor: 620 },
    { count: 10, minor: 5600 },
  ],
  ...more,
});
const cone = (more: Partial<PutUp> = {}): PutUp => ({
  ball: { massG: 500, lengthM: 1050 },
  lot: '',
  currency: 'EUR',
  packs: [{ count: 1, minor: 5400 }],
  ...more,
});
const bought = (asked: Buying) => valueIn(purchases(asked));

const twelve = { lengthM: 1598.59, cv: 0.03 };

describe('what to buy', () => {
  test('of one put-up is as many balls as are enough, in the packs that cost least', () => {
    const { cheapest } = bought({ need: twelve, putUps: [grey()] });
    const least = leastBalls(twelve, 105);
    expect(cheapest).toMatchObject({ balls: least.balls, chance: least.chance, currency: 'EUR' });
    expect(least.balls).toBe(17);
    // A pack of ten and seven balls: 56.00 + 7·6.20 = 99.40.
    expect(cheapest.minor).toBe(5600 + 7 * 620);
    expect(cheapest.lines.flatMap(({ packs }) => packs.map(({ pack, count }) => [count, pack.count]))).toEqual([
      [1, 10],
      [7, 1],
    ]);
    expect(cheapest).toMatchObject({ lengthM: 17 * 105, massG: 17 * 50, lots: [''] });
    // Sixteen joins with two ends of 15 cm.
    expect(cheapest.joinsM).toBeCloseTo(4.8, 9);
  });

  test('of several put-ups is the cheapest mix, and is never less sure than was asked', () => {
    for (const sure of [0.5, 0.8, 0.95, 0.99]) {
      const { cheapest } = bought({ need: twelve, putUps: [grey(), cone()], sure });
      expect(cheapest.chance).toBeGreaterThanOrEqual(sure);
      expect(cheapest.minor).toBe(cheapestByTrying(twelve, [620, 5600], sure));
    }
  });

  test('is cheapest of all lots, and of one lot where one holds enough', () => {
    const putUps = [
      grey({ lot: '11', stock: 12, packs: [{ count: 1, minor: 500 }] }),
      grey({ lot: '12', stock: 30 }),
      cone({ lot: '13', stock: 1, packs: [{ count: 1, minor: 6500 }] }),
    ];
    const { cheapest, oneLot } = bought({ need: twelve, putUps });
    expect(cheapest.lots).toEqual(['11', '12']);
    // Twelve of lot 11 at 5.00 and five of lot 12 at 6.20.
    expect(cheapest.minor).toBe(12 * 500 + 5 * 620);
    expect(oneLot).toMatchObject({ lots: ['12'], minor: 5600 + 7 * 620 });
  });

  test('takes balls of several sizes from one lot', () => {
    const putUps = [cone({ lot: '12', stock: 1 }), grey({ lot: '12', stock: 10 }), grey({ lot: '13', stock: 10 })];
    const { oneLot } = bought({ need: twelve, putUps });
    expect(oneLot?.lines.map(({ putUp, balls }) => [putUp.ball.massG, balls])).toEqual([
      [500, 1],
      [50, 7],
    ]);
  });

  test('has no lot of its own where none holds enough', () => {
    const putUps = [grey({ lot: '11', stock: 10 }), grey({ lot: '12', stock: 10 })];
    const { cheapest, oneLot } = bought({ need: twelve, putUps });
    expect(cheapest.lots).toEqual(['11', '12']);
    expect(oneLot).toBeUndefined();
  });

  test('is of the lot that it must match', () => {
    const putUps = [grey({ lot: '11', packs: [{ count: 1, minor: 500 }] }), grey({ lot: '12' })];
    const { cheapest, oneLot } = bought({ need: twelve, putUps, lot: '12' });
    expect(cheapest.lots).toEqual(['12']);
    expect(oneLot).toEqual(cheapest);
  });
});

describe('what cannot be bought', () => {
  test('is a lot that is not on sale', () => {
    const putUps = [grey({ lot: '11' }), grey({ lot: '12' })];
    expect(yarnProblems(purchases({ need: twelve, putUps, lot: '13' }))).toEqual([
      { code: 'unknown_lot', given: '13', lots: ['11', '12'] },
    ]);
  });

  test('is more than there is, in all lots or in the one that it must match', () => {
    const putUps = [grey({ lot: '11', stock: 10 }), grey({ lot: '12', stock: 5 })];
    expect(yarnProblems(purchases({ need: twelve, putUps }))).toMatchObject([
      { code: 'not_enough_for_sale', mostM: 15 * 105 },
    ]);
    expect(yarnProblems(purchases({ need: twelve, putUps, lot: '12' }))).toMatchObject([
      { code: 'not_enough_for_sale', mostM: 5 * 105 },
    ]);
  });

  test('is what has no currency or is asked for too surely', () => {
    expect(yarnProblems(purchases({ need: twelve, putUps: [grey({ currency: '' })] }))).toMatchObject([
      { code: 'no_currency' },
    ]);
    expect(yarnProblems(purchases({ need: twelve, putUps: [grey()], sure: 1 }))).toMatchObject([
      { code: 'sureness_out_of_range' },
    ]);
  });
});

describe('what joins balls that are there', () => {
  test('is three fewer where three are had, and the last one bought is needed', () => {
    const have = [{ balls: 3, lengthM: 105 }];
    const { cheapest } = bought({ need: twelve, putUps: [grey()], have });
    expect(cheapest).toMatchObject({ balls: 14, chance: leastBalls(twelve, 105).chance });
    expect(leastBalls(twelve, 105, 0.95, have)).toEqual({ balls: 14, chance: cheapest.chance });
    expect(chanceEnough(twelve, [...have, { balls: 13, lengthM: 105 }])).toBeLessThan(0.95);
  });

  test('is one ball where little is wanting, and refused with what is short where too few are for sale', () => {
    const have = [{ balls: 16, lengthM: 105 }];
    expect(bought({ need: twelve, putUps: [grey()], have }).cheapest.balls).toBe(1);
    const few = purchases({ need: twelve, putUps: [grey({ stock: 3 })], have: [{ balls: 3, lengthM: 105 }] });
    expect(yarnProblems(few)).toMatchObject([{ code: 'not_enough_for_sale', mostM: 315 }]);
  });
});

/** The least cost of any balls and cones that are enough, by trying all of them: ten balls as a pack. */
function cheapestByTrying(need: typeof twelve, [one = 0, ten = 0]: readonly number[], sure: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (let cones = 0; cones <= 3; cones++) {
    for (let balls = 0; balls <= 40; balls++) {
      const mix = [
        { balls: cones, lengthM: 1050 },
        { balls, lengthM: 105 },
      ];
      if (chanceEnough(need, mix) < sure) continue;
      least = Math.min(least, cones * 5400 + Math.floor(balls / 10) * ten + (balls % 10) * one);
    }
  }
  return least;
}
