import { MINOR_DIGITS } from '../core/index.js';
import type { Price } from './store/ports.js';

/** A currency that nobody has named yet is taken to have two digits. */
const USUAL_DIGITS = 2;

/** Digits behind the point of a currency. */
export const digitsOf = (currency: string): number => MINOR_DIGITS[currency] ?? USUAL_DIGITS;

/** A float may miss a typed decimal by this much of it. */
const FLOAT = 1e-9;

/** An amount as typed, in minor units; undefined where it is finer than the currency. */
export function minorOf(amount: number, currency: string): number | undefined {
  const exact = amount * 10 ** digitsOf(currency);
  const minor = Math.round(exact);
  return Math.abs(exact - minor) <= FLOAT * Math.max(1, Math.abs(exact)) ? minor : undefined;
}

/** A price in words: `€6.50`, `¥500`, and `6.50` without a currency. */
export function printedPrice({ minor, currency }: Price): string {
  const digits = digitsOf(currency);
  const style = currency === '' ? {} : { style: 'currency' as const, currency };
  return new Intl.NumberFormat('en', { ...style, minimumFractionDigits: digits, maximumFractionDigits: digits })
    .format(minor / 10 ** digits)
    .replace(/\u00a0/g, ' ');
}
