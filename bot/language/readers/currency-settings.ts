import type { Request } from '../../request.js';
import { wordsWithin } from '../clauses.js';
import type { Context } from '../context.js';
import { currenciesNamed } from '../currencies.js';
import { nameAt } from '../money.js';
import { claim, indexesBetween, type Sheet, said } from '../sheet.js';
import type { Span } from './stock-amounts.js';

const OF_PRICES = ['currency', 'prices', 'price', 'priced', 'pay', 'paying', 'money', 'charge', 'sell'];
const SWITCHES = ['use', 'in', 'switch'];
const MOST_WORDS = 5;

/** The currency of prices without one: `prices in euros`, `my currency is GBP`, `use us dollars`; any named when it was asked for. */
export function readCurrency(
  sheet: Sheet,
  { from, to }: Span,
  { holes }: Context,
): Extract<Request, { kind: 'set_currency' }> | undefined {
  const all = indexesBetween(from, to - 1);
  const named = all.map((i) => nameAt(sheet, i)).find((name) => name?.scale === 1) ?? signAlone(sheet, from, to);
  const isSwitch = wordsWithin(sheet, SWITCHES, from, to).length > 0 && to - from <= MOST_WORDS;
  const isSet = wordsWithin(sheet, OF_PRICES, from, to).length > 0 || isSwitch || holes[0] === 'currency';
  if (named === undefined || !isSet || all.some((i) => sheet.tokens[i]?.is === 'quantity')) return undefined;
  claim(sheet, 'currency', ...all);
  return {
    kind: 'set_currency',
    currencies: [...named.currencies],
    said: said(sheet, named.to),
  };
}

/** A currency told by its sign, which is no word: `prices in €`. */
function signAlone(sheet: Sheet, from: number, to: number) {
  const text = sheet.text.slice(sheet.tokens[from]?.start ?? 0, sheet.tokens[to]?.start);
  const sign = /(?:^|\s)((?:us|ca|au|nz|hk|[acrs])?[$€£¥₹])(?:\s|$)/i.exec(text)?.[1];
  const currencies = sign === undefined ? undefined : currenciesNamed(sign);
  return currencies && { to: to - 1, currencies, scale: 1 };
}
