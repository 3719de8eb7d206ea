import { minorDigits } from '../core/index.js';
import type { Price } from './store/ports.js';

/** A price in words: `€6.50`, `¥500`, and `6.50` without a currency. */
export function printedPrice({ minor, currency }: Price): string {
  const digits = minorDigits(currency);
  const style = currency === '' ? {} : { style: 'currency' as const, currency };
  return new Intl.NumberFormat('en', { ...style, minimumFractionDigits: digits, maximumFractionDigits: digits })
    .format(minor / 10 ** digits)
    .replace(/\u00a0/g, ' ');
}
