import { decimalOf, type Money, minorDigits, minorOf } from '../core/index.js';
import type { Price } from './store/ports.js';

/** No amount typed is larger, in whole units. */
export const MOST_AMOUNT = 1_000_000;

/** No currency was ever named: amounts are numbers alone. The code of ISO 4217 for that. */
export const NO_CURRENCY = 'XXX';

/** A price as it is counted with: one without a currency is in the maker's own, where that has units so fine. */
export function moneyOf({ minor, currency }: Price, own: string | undefined): Money {
  if (currency !== '') return { minor, currency };
  const unnamed = { minor, currency: NO_CURRENCY };
  const inOwn = own === undefined ? undefined : minorOf(Number(decimalOf(unnamed)), own);
  return own === undefined || inOwn === undefined ? unnamed : { minor: inOwn, currency: own };
}

/** Money in words. */
export const printedMoney = ({ minor, currency }: Money): string =>
  printedPrice({ minor, currency: currency === NO_CURRENCY ? '' : currency });

/** A price in words: `€6.50`, `¥500`, and `6.50` without a currency. */
export function printedPrice({ minor, currency }: Price): string {
  const digits = minorDigits(currency);
  const style = currency === '' ? {} : { style: 'currency' as const, currency };
  return new Intl.NumberFormat('en', { ...style, minimumFractionDigits: digits, maximumFractionDigits: digits })
    .format(minor / 10 ** digits)
    .replace(/\u00a0/g, ' ');
}
