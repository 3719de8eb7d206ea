import { minorDigits, minorOf, say, type Words } from '../../../core/index.js';
import type { Effect } from '../../effect.js';
import { MOST_AMOUNT } from '../../money.js';
import type { Offered } from '../../reply.js';
import type { MoneyAsk, Request } from '../../request.js';
import type { Price } from '../../store/ports.js';
import { type At, type DeskAnswer, refusal } from '../desk.js';
import { asked } from '../question.js';

const OF_MONEY = ['stock', 'sold_as', 'buy', 'set_rates', 'cost', 'shop_price', 'pattern_price'] as const;
/** Requests that tell prices. */
export type OfMoney = Extract<Request, { kind: (typeof OF_MONEY)[number] }>;
export const isOfMoney = (request: Request | undefined): request is OfMoney =>
  OF_MONEY.some((kind) => kind === request?.kind);

/** Prices in minor units, what a first currency makes of the maker's, and what to say of it; or the answer that they cannot be read. */
type Priced = { prices: Price[]; effects: Effect[]; notes: Words[]; assumed: Words[] } | { answer: DeskAnswer };

/** Prices as they were asked, in the currency typed with them, else the maker's own. Writes nothing. */
export function priced(asks: readonly MoneyAsk[], request: OfMoney, at: At): Priced {
  // What is told at once is in one currency, unless it says otherwise.
  const [told] = asks.flatMap(({ currencies: [only, ...others] }) =>
    only !== undefined && others.length === 0 ? [only] : [],
  );
  const own = at.maker.currency ?? told;
  const prices: Price[] = [];
  for (const { amount, currencies, said } of asks) {
    const currency = currencyOf(currencies, own);
    if (currency === undefined) return { answer: currencyQuestion(request, currencies, said, at) };
    if (amount < 0 || amount > MOST_AMOUNT)
      return {
        answer: refusal(at, {
          code: 'amount_outside',
          label: 'Price',
          given: amount,
          min: 0,
          max: MOST_AMOUNT,
          unit: '',
        }),
      };
    const minor = minorOf(amount, currency);
    if (minor === undefined)
      return { answer: refusal(at, { code: 'price_too_fine', said, digits: minorDigits(currency) }) };
    prices.push({ minor, currency });
  }
  const first = prices.find(({ currency }) => currency !== '')?.currency;
  const isFirst = at.maker.currency === undefined && first !== undefined;
  return {
    prices,
    effects: isFirst ? [{ did: 'set_currency', makerId: at.maker.id, before: null, after: first }] : [],
    assumed: isFirst ? [say`prices without a currency are in ${first} from now on`] : [],
    notes: prices.some(({ currency }) => currency === '')
      ? [say`No currency named, so I keep the number alone: say "prices in euros", or in yours.`]
      : [],
  };
}

/** The one currency that is meant; '' where none was ever named, undefined where it must be asked. */
function currencyOf(named: readonly string[], own: string | undefined): string | undefined {
  const [only, ...others] = named;
  if (only === undefined) return own ?? '';
  if (others.length === 0) return only;
  return own !== undefined && named.includes(own) ? own : undefined;
}

const MOST_OFFERED = 4;

function currencyQuestion(request: OfMoney, currencies: readonly string[], said: string, at: At): DeskAnswer {
  return asked(at, request, ['currency'], {
    asks: say`Which currency is ${said} in?`,
    because: say`It could be ${currencies.join(', ')}. Nothing is stored yet.`,
    examples: [currencies[0] ?? '', 'never mind'],
    offers: currencies
      .slice(0, MOST_OFFERED)
      .map((code): Offered => ({ button: code, request: inCurrency(request, code) })),
  });
}

/** The same request with its prices in one currency. */
export function inCurrency(request: OfMoney, code: string): OfMoney {
  const currencies = [code];
  const inOne = <M extends MoneyAsk>(price: M): M => (price.currencies.length > 1 ? { ...price, currencies } : price);
  switch (request.kind) {
    case 'sold_as':
      return { ...request, prices: request.prices.map(inOne) };
    case 'set_rates':
      return { ...request, rates: request.rates.map((rate) => ({ ...rate, prices: rate.prices.map(inOne) })) };
    case 'stock': {
      const { price, ...stock } = request.stock;
      return { kind: 'stock', stock: { ...stock, ...(price && { price: inOne(price) }) } };
    }
    case 'buy': {
      const ways = request.buy.ways.map((way) => ({ ...way, prices: way.prices.map(inOne) }));
      return { kind: 'buy', buy: { ...request.buy, ways } };
    }
    case 'cost': {
      const { price, ...cost } = request.cost;
      return { kind: 'cost', cost: { ...cost, ...(price && { price: inOne(price) }) } };
    }
    case 'shop_price': {
      const { price, ...shop } = request.shop;
      return { kind: 'shop_price', shop: { ...shop, ...(price && { price: inOne(price) }) } };
    }
    case 'pattern_price': {
      const { price, ...pattern } = request.pattern;
      return { kind: 'pattern_price', pattern: { ...pattern, ...(price && { price: inOne(price) }) } };
    }
  }
}
