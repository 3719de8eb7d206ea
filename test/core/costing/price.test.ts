import { describe, expect, test } from 'vitest';
import { marginOfMarkup, markupOfMargin, priceForMargin, priceForMarkup, saleAt } from '../../../core/costing/price.js';
import { retailFrom, wholesaleFrom } from '../../../core/costing/wholesale.js';
import { eur, made, wrong } from './samples.js';

const COST = eur(1840);
const FEES = { percent: 6.5, fixed: eur(30) };

// Worked by hand: (18.40 + 0.30)/(1 − 0.40 − 0.065) = 34.953; (18.40·1.4 + 0.30)/0.935 = 27.872.
describe('a piece that costs 18.40, with fees of 6.5 % and 0.30', () => {
  test('sells at 34.95 for a margin of 40 %', () => {
    expect(made(priceForMargin(COST, 40, FEES))).toEqual(eur(3495));
    expect(made(saleAt(COST, eur(3495), FEES))).toMatchObject({ feeMinor: 257, leftMinor: 1398 });
    expect(made(saleAt(COST, eur(3495), FEES)).marginPercent).toBeCloseTo(39.995, 3);
  });

  test('sells at 27.87 for a markup of 40 %: markup is not margin', () => {
    expect(made(priceForMarkup(COST, 40, FEES))).toEqual(eur(2787));
  });

  test('leaves less than nothing at 15.00', () => {
    const sale = made(saleAt(COST, eur(1500), FEES));
    expect(sale).toMatchObject({ priceMinor: 1500, feeMinor: 128, leftMinor: -468 });
    expect(sale.marginPercent).toBeLessThan(0);
  });
});

test('without fees the price is cost/(1 − margin): 30.67', () => {
  expect(made(priceForMargin(COST, 40))).toEqual(eur(3067));
});

test('a price in a currency without decimals is a whole one', () => {
  expect(made(priceForMargin({ currency: 'JPY', minor: 1840 }, 40))).toEqual({ currency: 'JPY', minor: 3067 });
});

describe('a price is refused', () => {
  test('where margin and fee take it all, with the margin that must stay above', () => {
    expect(wrong(priceForMargin(COST, 93.5, FEES))).toEqual([
      { code: 'price_has_no_room', marginPercent: 93.5, feePercent: 6.5, belowPercent: 93.5 },
    ]);
    expect(wrong(priceForMargin(COST, 100)).map((p) => p.code)).toEqual(['price_has_no_room']);
    expect(priceForMargin(COST, 93.4, FEES).ok).toBe(true);
  });

  test('for margins, markups and fees out of range, and a cost below nothing', () => {
    expect(wrong(priceForMargin(COST, -1)).map((p) => p.code)).toEqual(['figure_out_of_range']);
    expect(wrong(priceForMarkup(COST, Number.NaN)).map((p) => p.code)).toEqual(['figure_out_of_range']);
    expect(wrong(priceForMarkup(COST, 40, { percent: 100 })).map((p) => p.code)).toEqual(['figure_out_of_range']);
    expect(wrong(saleAt(eur(-1), eur(0))).map((p) => 'what' in p && p.what)).toEqual(['cost', 'price']);
  });

  test('in two currencies', () => {
    expect(wrong(saleAt(COST, { currency: 'USD', minor: 4000 }, FEES)).map((p) => p.code)).toEqual([
      'mixed_currencies',
    ]);
    expect(wrong(priceForMargin(COST, 40, { percent: 2, fixed: { currency: 'GBP', minor: 20 } }))).toEqual([
      { code: 'mixed_currencies', currencies: ['EUR', 'GBP'] },
    ]);
  });
});

describe('a shop', () => {
  test('that keeps half sells at twice what it paid, and paid half of what it sells at', () => {
    expect(made(retailFrom(eur(2400), 50))).toEqual(eur(4800));
    expect(made(wholesaleFrom(eur(4800), 50))).toEqual(eur(2400));
  });

  test('cannot keep the whole price', () => {
    expect(wrong(retailFrom(eur(2400), 100)).map((p) => p.code)).toEqual(['price_has_no_room']);
    expect(wrong(wholesaleFrom(eur(0), 101)).map((p) => p.code)).toEqual([
      'figure_out_of_range',
      'figure_out_of_range',
    ]);
  });
});

test('markup and margin turn into each other', () => {
  expect(marginOfMarkup(25)).toBe(20);
  expect(markupOfMargin(75)).toBe(300);
});
