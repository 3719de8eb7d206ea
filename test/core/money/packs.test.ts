import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cheapestPacks, type Pack } from '../../../core/money/packs.js';

const one: Pack = { count: 1, minor: 120 };
const ten: Pack = { count: 10, minor: 900 };

describe('the cheapest packs, at 1.20 each and ten for 9', () => {
  test.each([
    [0, 0, [0, 0]],
    [7, 840, [7, 0]],
    [8, 900, [0, 1]],
    [12, 1140, [2, 1]],
    [18, 1800, [0, 2]],
  ])('for %s cost %s', (needed, minor, packs) => {
    expect(cheapestPacks(needed, [one, ten])).toMatchObject({ minor, packs });
  });
});

test('of purchases as cheap, the one with least over is taken', () => {
  expect(
    cheapestPacks(3, [
      { count: 8, minor: 300 },
      { count: 3, minor: 300 },
    ]),
  ).toEqual({ minor: 300, count: 3, packs: [0, 1] });
});

/** Every way to buy at least so many, one pack at a time. */
function cheapest(needed: number, packs: readonly Pack[]): number {
  if (needed <= 0) return 0;
  return Math.min(...packs.map(({ count, minor }) => minor + cheapest(needed - count, packs)));
}

test('no purchase of up to 9 is cheaper, and what is bought holds and costs what is said', () => {
  const pack = fc.record({ count: fc.integer({ min: 1, max: 6 }), minor: fc.integer({ min: 0, max: 500 }) });
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 9 }), fc.array(pack, { minLength: 1, maxLength: 3 }), (needed, packs) => {
      const found = cheapestPacks(needed, packs);
      expect(found.minor).toBe(cheapest(needed, packs));
      const sum = (of: (pack: Pack) => number) => packs.reduce((all, p, i) => all + of(p) * (found.packs[i] ?? 0), 0);
      expect(sum((p) => p.minor)).toBe(found.minor);
      expect(sum((p) => p.count)).toBe(found.count);
      expect(found.count).toBeGreaterThanOrEqual(needed);
    }),
    { seed: 12, numRuns: 300 },
  );
});
