import { decimalOf, minorDigits, minorOf } from '../../../core/index.js';
import { MOST_AMOUNT, NO_CURRENCY } from '../../money.js';
import type { MoneyAsk } from '../../request.js';
import type { Known } from './form.js';
import { quoted } from './typed.js';

type Amount = { minor: number; currency: string };

/** The currency that amounts without one are in: that of the card, else the maker's; '' where none was ever named. */
export const amountFilled = ({ rates, currency }: Known): string =>
  rates.flatMap(({ prices }) => prices).find((price) => price.currency !== '')?.currency ?? currency ?? '';

/** An amount as it is typed again, with its currency where that is another than the one of the form. */
export function amountAgain({ minor, currency }: Amount, known: Known): string {
  const figure = decimalOf({ minor, currency: currency === '' ? NO_CURRENCY : currency });
  return currency === '' || currency === amountFilled(known) ? figure : `${figure} ${currency}`;
}

/** What is wrong with an amount by itself, where its currency is sure. */
export function amountFault({ amount, currencies, said }: MoneyAsk, own: string | undefined): string | undefined {
  if (amount < 0 || amount > MOST_AMOUNT) return `I read ${quoted(said)}, and need an amount from 0 to ${MOST_AMOUNT}.`;
  const currency = currencies.length > 1 ? undefined : (currencies[0] ?? own ?? NO_CURRENCY);
  if (currency === undefined || minorOf(amount, currency) !== undefined) return undefined;
  const digits = minorDigits(currency);
  return `${quoted(said)} is finer than money goes: ${digits === 0 ? 'none' : digits} behind the point.`;
}

/** Whether an amount typed is the one held. One without a currency is in the maker's own. */
export function isSameAmount(
  { amount, currencies }: MoneyAsk,
  held: Amount | undefined,
  own: string | undefined,
): boolean {
  const [currency = own ?? '', ...others] = currencies;
  if (held === undefined || others.length > 0) return false;
  return currency === (held.currency || (own ?? '')) && minorOf(amount, currency || NO_CURRENCY) === held.minor;
}
