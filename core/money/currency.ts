import { MINOR_DIGITS } from '../tables/currencies.js';
import { exact } from './exact.js';

/** An amount in whole minor units of its currency: 1234 of EUR is 12.34. */
export type Money = { currency: string; minor: number };

/** Whether a code has the form of a currency's: three capital letters. */
export const isCurrency = (code: string): boolean => /^[A-Z]{3}$/.test(code);

/** Digits behind the point of a currency: two for most. */
export const minorDigits = (currency: string): number => MINOR_DIGITS[currency] ?? 2;

/** An amount as typed, in minor units; undefined where it is finer than the currency: 1.205 EUR, 0.5 JPY. */
export function minorOf(amount: number, currency: string): number | undefined {
  const minor = exact(amount).mul(10 ** minorDigits(currency));
  return minor.d === 1n ? minor.valueOf() : undefined;
}

/** An amount in minor units as a plain decimal: `12.34`, `1200`, `-0.050`. */
export function decimalOf({ currency, minor }: Money): string {
  const digits = minorDigits(currency);
  const all = `${Math.abs(minor)}`.padStart(digits + 1, '0');
  const point = all.length - digits;
  const sign = minor < 0 ? '-' : '';
  return `${sign}${all.slice(0, point)}${digits === 0 ? '' : `.${all.slice(point)}`}`;
}
