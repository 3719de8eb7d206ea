import { describe, expect, test } from 'vitest';
import { bill, eachOf } from '../../../core/costing/bill.js';
import type { Item, Price } from '../../../core/costing/item.js';
import { COWL, eur, made, wrong } from './samples.js';

const PER_HOUR = { is: 'per_hour', ...eur(150) } as const;
const NONE = { is: 'none' } as const;
const zips: Price = {
  is: 'packs',
  currency: 'EUR',
  packs: [
    { count: 1, minor: 120 },
    { count: 10, minor: 900 },
  ],
};
const zip: Item = { id: 'closure', is: 'material', quantity: 1, price: zips };
const item = (id: string, minor: number, more: Partial<Item> = {}): Item => ({
  id,
  is: 'material',
  quantity: 1,
  price: { is: 'rate', ...eur(minor), per: 1 },
  ...more,
});

// Worked by hand: 182/105·6.20 = 10.7467; 1.32·16 = 21.12; 1.32·1.50 = 1.98.
describe('the bill of a cowl', () => {
  test('rounds each line once and sums the lines as they print', () => {
    const found = made(bill(COWL, PER_HOUR));
    expect(found.lines.map(({ id, minor }) => [id, minor])).toEqual([
      ['yarn', 1075],
      ['packing', 85],
      ['time', 2112],
    ]);
    expect(found).toMatchObject({
      currency: 'EUR',
      primeMinor: 3272,
      overheadMinor: 198,
      costMinor: 3470,
      hours: 1.32,
    });
    expect(found.leftOut).toEqual([]);
  });

  test('takes overhead in per cent of the prime cost: 12.5 % of 32.72 is 4.09', () => {
    expect(made(bill(COWL, { is: 'percent_of_prime', percent: 12.5 }))).toMatchObject({ overheadMinor: 409 });
  });

  test('names what has no price, and is the cost of the rest', () => {
    const unpriced = COWL.map((one) => (one.id === 'yarn' ? { ...one, price: undefined } : one));
    const found = made(bill(unpriced, undefined));
    expect(found).toMatchObject({ costMinor: 85 + 2112, overheadMinor: undefined });
    expect(found.leftOut).toEqual([
      { id: 'yarn', is: 'material' },
      { id: 'overhead', is: 'overhead' },
    ]);
  });

  test('is nothing at all before anything has a price', () => {
    const unpriced = COWL.map((one) => ({ ...one, price: undefined }));
    expect(wrong(bill(unpriced, NONE))).toEqual([{ code: 'nothing_priced', items: ['yarn', 'packing', 'time'] }]);
  });
});

test('three lines of 1.005, 2.005 and 3.005 are rounded to even and sum to 6.00', () => {
  const found = made(
    bill(
      [100.5, 200.5, 300.5].map((q) => item(`${q}`, 1, { quantity: q })),
      NONE,
    ),
  );
  expect(found.lines.map(({ minor }) => minor)).toEqual([100, 200, 300]);
  expect(found.costMinor).toBe(600);
});

describe('the bill of a batch', () => {
  test('buys what is sold whole for all pieces together: 12 closures as ten and two', () => {
    const [line] = made(bill([zip], NONE, 12)).lines;
    expect(line).toMatchObject({ minor: 1140, quantity: 12, purchase: { packs: [2, 1], count: 12 } });
  });

  test('buys whole balls: 12 pieces of 1.74 balls take 20.88, so 21', () => {
    const balls = { ...zip, id: 'yarn', quantity: 1.74, price: { ...zips, packs: [{ count: 1, minor: 620 }] } };
    expect(made(bill([balls], NONE, 12)).lines[0]).toMatchObject({ quantity: 20.88, minor: 21 * 620 });
  });

  test('takes once what is for all of them', () => {
    expect(made(bill([item('stall', 6000, { once: true }), item('packing', 85)], NONE, 12)).costMinor).toBe(
      6000 + 1020,
    );
  });

  test('divides its cost over the pieces to the last minor unit, the first no cheaper', () => {
    expect(eachOf(made(bill([item('stall', 1000, { once: true })], NONE, 3)))).toEqual([334, 333, 333]);
  });
});

describe('a bill refuses', () => {
  test('two currencies, naming both', () => {
    const pounds = item('packing', 85, { price: { is: 'rate', currency: 'GBP', minor: 85, per: 1 } });
    expect(wrong(bill([...COWL, pounds], NONE))).toEqual([{ code: 'mixed_currencies', currencies: ['EUR', 'GBP'] }]);
    expect(wrong(bill(COWL, { ...PER_HOUR, currency: 'USD' }))).toEqual([
      { code: 'mixed_currencies', currencies: ['EUR', 'USD'] },
    ]);
  });

  test('negative prices and quantities, parts of a minor unit, and what is no currency, all at once', () => {
    const found = wrong(
      bill(
        [
          item('yarn', -620),
          item('ring', 1.5),
          item('strap', 1, { quantity: -1 }),
          item('packing', 85, { price: { is: 'rate', currency: 'euro', minor: 85, per: 1 } }),
        ],
        NONE,
      ),
    );
    expect(found.map((p) => [p.code, 'what' in p ? p.what : ''])).toEqual([
      ['figure_out_of_range', 'yarn'],
      ['figure_not_whole', 'ring'],
      ['figure_out_of_range', 'strap'],
      ['not_a_currency', 'packing'],
      ['mixed_currencies', ''],
    ]);
  });

  test('figures that are no numbers, and packs of nothing', () => {
    const nan = item('yarn', 620, { quantity: Number.NaN });
    const none: Item = { ...zip, price: { ...zips, packs: [{ count: 0, minor: 120 }] } };
    const unsold: Item = { ...zip, price: { ...zips, packs: [] } };
    for (const one of [nan, none, unsold]) {
      expect(wrong(bill([one], NONE)).map((p) => p.code)).toEqual(['figure_out_of_range']);
    }
  });

  test('overhead by the hour where no time is on the bill', () => {
    expect(wrong(bill([item('yarn', 620)], PER_HOUR))).toEqual([{ code: 'no_hours', what: 'overhead' }]);
  });

  test('overhead below nothing, and no pieces', () => {
    expect(wrong(bill(COWL, { is: 'percent_of_prime', percent: -1 })).map((p) => p.code)).toEqual([
      'figure_out_of_range',
    ]);
    expect(wrong(bill(COWL, NONE, 0)).map((p) => p.code)).toEqual(['figure_out_of_range']);
    expect(wrong(bill(COWL, NONE, 1.5))).toEqual([{ code: 'figure_not_whole', what: 'pieces', given: 1.5 }]);
  });

  test('more in all than can be meant', () => {
    const two = { ...zip, quantity: 2 };
    expect(wrong(bill([two], NONE, 100_000))).toEqual([
      { code: 'figure_out_of_range', what: 'closure', given: 200_000, min: 0, max: 100_000 },
    ]);
    expect(bill([{ ...two, once: true }], NONE, 100_000).ok).toBe(true);
  });
});
