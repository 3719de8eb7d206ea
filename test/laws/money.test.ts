import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bill, eachOf, type Overhead } from '../../core/costing/bill.js';
import { earnedAnHour } from '../../core/costing/earnings.js';
import type { Item, Price } from '../../core/costing/item.js';
import { priceForMargin, saleAt } from '../../core/costing/price.js';
import { dividedBy } from '../../core/money/apportioned.js';
import { decimalOf, minorOf } from '../../core/money/currency.js';
import { made } from '../core/costing/samples.js';
import { FIXED } from './asking.js';

/** Of no, two and three decimals. */
const currency = fc.constantFrom('JPY', 'EUR', 'KWD');
const minor = fc.integer({ min: 0, max: 100_000 });
const upTo = (max: number) => fc.double({ min: 0, max, noNaN: true });

const price = (currency: string): fc.Arbitrary<Price> =>
  fc.oneof(
    fc.record({
      is: fc.constant('rate' as const),
      currency: fc.constant(currency),
      minor,
      per: fc.constantFrom(1, 105),
    }),
    fc.record({
      is: fc.constant('packs' as const),
      currency: fc.constant(currency),
      packs: fc.array(fc.record({ count: fc.integer({ min: 1, max: 12 }), minor }), { minLength: 1, maxLength: 3 }),
    }),
  );

const item = (currency: string): fc.Arbitrary<Item> =>
  fc.record({
    id: fc.string(),
    is: fc.constantFrom('material' as const, 'time' as const),
    quantity: upTo(12),
    once: fc.boolean(),
    price: price(currency),
  });

const overhead: fc.Arbitrary<Overhead> = fc.oneof(
  fc.constant({ is: 'none' as const }),
  fc.record({ is: fc.constant('percent_of_prime' as const), percent: upTo(200) }),
);

const asked = currency.chain((code) =>
  fc.tuple(fc.array(item(code), { minLength: 1, maxLength: 6 }), overhead, fc.integer({ min: 1, max: 12 })),
);

const sum = (parts: readonly number[]): number => parts.reduce((all, part) => all + part, 0);

test('the parts of 10,000 bills sum to their totals to the last minor unit', () => {
  fc.assert(
    fc.property(asked, ([items, overhead, pieces]) => {
      const found = made(bill(items, overhead, pieces));
      expect(sum(found.lines.map((line) => line.minor))).toBe(found.primeMinor);
      expect(found.primeMinor + (found.overheadMinor ?? 0)).toBe(found.costMinor);
      const each = eachOf(found);
      expect(each).toHaveLength(pieces);
      expect(sum(each)).toBe(found.costMinor);
      expect(Math.max(...each) - Math.min(...each)).toBeLessThanOrEqual(1);
      expect([found.costMinor, ...each].every((n) => Number.isSafeInteger(n) && !Object.is(n, -0))).toBe(true);
    }),
    { ...FIXED, numRuns: 10_000 },
  );
});

test('an amount divided by shares sums to itself, and no part is a whole unit off its share', () => {
  const shares = fc.array(upTo(1000), { minLength: 1, maxLength: 9 }).filter((all) => sum(all) > 0.001);
  fc.assert(
    fc.property(minor, shares, (amount, shares) => {
      const parts = dividedBy(amount, shares);
      expect(sum(parts)).toBe(amount);
      for (const [i, part] of parts.entries())
        expect(Math.abs(part - (amount * (shares[i] ?? 0)) / sum(shares))).toBeLessThan(1 + 1e-9);
    }),
    FIXED,
  );
});

const fees = (currency: string) =>
  fc.record({ percent: upTo(20), fixed: fc.record({ currency: fc.constant(currency), minor: fc.nat(100) }) });
const sold = currency.chain((code) =>
  fc.record({ cost: fc.record({ currency: fc.constant(code), minor }), fees: fees(code), percent: upTo(70) }),
);

describe('a price for a margin', () => {
  test('leaves that margin, within what rounding the price moves it', () => {
    fc.assert(
      fc.property(sold, ({ cost, fees, percent }) => {
        const price = made(priceForMargin(cost, percent, fees));
        if (price.minor < 1) return;
        const sale = made(saleAt(cost, price, fees));
        expect(Math.abs(sale.marginPercent - percent)).toBeLessThanOrEqual(50 / price.minor + 1e-9);
      }),
      FIXED,
    );
  });

  test('is what cost, fees and rest sum to', () => {
    fc.assert(
      fc.property(sold, minor, ({ cost, fees }, price) => {
        const sale = made(saleAt(cost, { ...cost, minor: price + 1 }, fees));
        expect(cost.minor + sale.feeMinor + sale.leftMinor).toBe(sale.priceMinor);
      }),
      FIXED,
    );
  });
});

test('an hour never earns less at a higher price', () => {
  fc.assert(
    fc.property(asked, minor, minor, ([items, overhead, pieces], price, more) => {
      const timed: Item[] = [...items, { id: 'work', is: 'time', quantity: 1.25, price: undefined }];
      const found = made(bill(timed, overhead, pieces));
      const at = (minor: number): number =>
        made(earnedAnHour(found, { currency: found.currency, minor }, { percent: 6.5 })).anHourMinor;
      expect(at(price + more + 1)).toBeGreaterThanOrEqual(at(price + 1));
    }),
    FIXED,
  );
});

test('an amount prints and reads back as itself, in any currency', () => {
  fc.assert(
    fc.property(currency, fc.integer({ min: -10_000_000, max: 10_000_000 }), (currency, minor) => {
      expect(minorOf(Number(decimalOf({ currency, minor })), currency)).toBe(minor);
    }),
    FIXED,
  );
});
