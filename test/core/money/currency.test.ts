import { describe, expect, test } from 'vitest';
import { decimalOf, isCurrency, minorDigits, minorOf } from '../../../core/money/currency.js';

describe('an amount in minor units', () => {
  test.each([
    [3495, 'EUR', '34.95'],
    [5, 'USD', '0.05'],
    [-5, 'GBP', '-0.05'],
    [1200, 'JPY', '1200'],
    [1005, 'KWD', '1.005'],
    [0, 'BHD', '0.000'],
  ])('of %s in %s is %s', (minor, currency, decimal) => {
    expect(decimalOf({ currency, minor })).toBe(decimal);
  });

  test.each([
    [1.2, 'EUR', 120],
    [1.005, 'TND', 1005],
    [18, 'JPY', 18],
    [19.99, 'USD', 1999],
  ])('comes of %s %s typed, as %s', (amount, currency, minor) => {
    expect(minorOf(amount, currency)).toBe(minor);
  });

  test('is not known where the amount is finer than the currency', () => {
    expect(minorOf(1.205, 'EUR')).toBeUndefined();
    expect(minorOf(0.5, 'JPY')).toBeUndefined();
  });
});

test('a currency is three capital letters, with two decimals unless the standard says otherwise', () => {
  expect(['EUR', 'eur', 'EURO', '€'].map(isCurrency)).toEqual([true, false, false, false]);
  expect(['EUR', 'ISK', 'OMR', 'CLF'].map(minorDigits)).toEqual([2, 0, 3, 4]);
});
