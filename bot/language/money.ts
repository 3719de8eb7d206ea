import { gPer, quantityAt } from '../../core/index.js';
import type { MoneyAsk, PriceAsk } from '../request.js';
import { bareAt, endsClause } from './clauses.js';
import { countryCurrency, currenciesNamed, hundredthsNamed } from './currencies.js';
import { isFree, markAt, quantityAtIndex, type Sheet, said, saidBetween, wordAt } from './sheet.js';

/** Where money stands, first and last token. */
type MoneyAt = { from: number; to: number; money: MoneyAsk };
/** `cue`: what tells that it is a price. */
type PriceAt = { from: number; to: number; price: PriceAsk; cue: 'words' | 'lead' | 'currency' };

type Named = { to: number; currencies: readonly string[]; scale: number };

const SIGNED = /^(?<sign>[a-z]{0,2}[$€£¥₹])?\s?(?<figure>\d.*?)\s?(?<behind>[$€£¥₹])?$/iu;

/** Money with its currency beside it: `€6.50`, `6,20 euros`, `usd 5`, `80p`. Pounds in words may be a weight. */
function moneyAt(sheet: Sheet, i: number): MoneyAt | undefined {
  if (!isFree(sheet, i)) return undefined;
  return signed(sheet, i) ?? ahead(sheet, i) ?? behind(sheet, i);
}

function signed(sheet: Sheet, i: number): MoneyAt | undefined {
  if (wordAt(sheet, i) === undefined) return undefined;
  const { sign, behind, figure = '' } = SIGNED.exec(said(sheet, i))?.groups ?? {};
  const mark = sign ?? behind;
  const amount = mark === undefined ? undefined : quantityAt(figure, 0)?.lo;
  if (mark === undefined || amount === undefined) return undefined;
  const own = nameAt(sheet, i + 1);
  const isOwn = own?.currencies.length === 1 && own.scale === 1;
  return found(sheet, i, isOwn ? own.to : i, amount, isOwn ? own.currencies : (currenciesNamed(mark) ?? []));
}

function ahead(sheet: Sheet, i: number): MoneyAt | undefined {
  const name = wordAt(sheet, i) === undefined ? undefined : nameAt(sheet, i);
  const amount = name && bareAt(sheet, name.to + 1);
  if (name === undefined || amount === undefined || name.scale !== 1) return undefined;
  return found(sheet, i, name.to + 1, amount, name.currencies);
}

function behind(sheet: Sheet, i: number): MoneyAt | undefined {
  const amount = bareAt(sheet, i);
  const name = amount === undefined ? undefined : nameAt(sheet, i + 1);
  if (amount === undefined || name === undefined) return undefined;
  return found(sheet, i, name.to, amount / name.scale, name.currencies);
}

/** A currency by name at an index: `euros`, `GBP`, `us dollars`, `new zealand dollars`, `pence`. */
export function nameAt(sheet: Sheet, i: number): Named | undefined {
  if (!isFree(sheet, i) || wordAt(sheet, i) === undefined) return undefined;
  const from = wordAt(sheet, i) === 'new' ? i + 1 : i;
  const country = countryCurrency(wordAt(sheet, from) ?? '');
  if (country !== undefined && currenciesNamed(said(sheet, from + 1)) !== undefined && isFree(sheet, from + 1))
    return { to: from + 1, currencies: [country], scale: 1 };
  const currencies = currenciesNamed(said(sheet, i));
  if (currencies !== undefined) return { to: i, currencies, scale: 1 };
  const parts = hundredthsNamed(wordAt(sheet, i) ?? '');
  return parts && { to: i, currencies: parts, scale: 100 };
}

const found = (sheet: Sheet, from: number, to: number, amount: number, currencies: readonly string[]): MoneyAt => ({
  from,
  to,
  money: { amount, currencies: [...currencies], said: saidBetween(sheet, from, to) },
});

const LEADS = ['at', 'costs', 'cost', 'costing', 'price', 'priced'];
const EACH = ['each', 'apiece', 'ea'];
const OF_ONE = ['a', 'an', 'per', 'the', 'one', 'each'];
const FOR_ALL = ['for', 'paid'];

type Things = (word: string) => boolean;

/**
 * What one or several of a thing cost, where words tell that a number is a price: its currency, `at 6.50`,
 * `6.50 a ball`, `6.20 each`, `6.50 for 50 g`, `ten for 56`.
 * @param isThing true for words for what is sold by the piece: `ball`, `zip`
 */
export function priceAt(sheet: Sheet, i: number, isThing: Things): PriceAt | undefined {
  const amount = amountAt(sheet, i);
  if (amount === undefined) return undefined;
  const { from, to, money } = amount;
  const one = oneBehind(sheet, to, isThing) ?? (isForBall(sheet, to) ? to : undefined);
  const pack = one === undefined ? packBefore(sheet, from, isThing) : undefined;
  if (pack !== undefined) return { from: pack.from, to, price: { ...money, count: pack.count }, cue: 'words' };
  const led = leadBefore(sheet, from);
  const isNamed = moneyAt(sheet, i) !== undefined;
  if (one === undefined && led === undefined && !isNamed) return undefined;
  const cue = one !== undefined ? 'words' : isNamed ? 'currency' : 'lead';
  return { from: led ?? from, to: one ?? to, price: { ...money, count: 1 }, cue };
}

/** What all of a thing cost together: `for 26`, `paid 26`. */
export function totalAt(sheet: Sheet, i: number, isThing: Things): MoneyAt | undefined {
  const amount = FOR_ALL.includes(wordAt(sheet, i - 1) ?? '') ? amountAt(sheet, i) : undefined;
  if (amount === undefined || oneBehind(sheet, amount.to, isThing) !== undefined) return undefined;
  const isAll = endsClause(sheet, amount.to + 1) || wordAt(sheet, amount.to + 1) === 'for';
  return isAll && packBefore(sheet, amount.from, isThing) === undefined ? amount : undefined;
}

/** An amount that may be money. */
const amountAt = (sheet: Sheet, i: number): MoneyAt | undefined =>
  moneyAt(sheet, i) ?? pounds(sheet, i) ?? bare(sheet, i);

/** `4 pounds`, which is a weight until words beside it tell of a price. */
function pounds(sheet: Sheet, i: number): MoneyAt | undefined {
  const quantity = quantityAtIndex(sheet, i);
  if (quantity?.unit !== 'lb' || quantity.lo !== quantity.hi || !/pounds?$/i.test(said(sheet, i))) return undefined;
  return found(sheet, i, i, quantity.lo, ['GBP']);
}

function bare(sheet: Sheet, i: number): MoneyAt | undefined {
  const amount = bareAt(sheet, i);
  return amount === undefined ? undefined : found(sheet, i, i, amount, []);
}

/** The last token of `each`, `a ball`, `/ball` behind an amount. */
function oneBehind(sheet: Sheet, to: number, isThing: Things): number | undefined {
  if (EACH.includes(wordAt(sheet, to + 1) ?? '')) return to + 1;
  const isOne = OF_ONE.includes(wordAt(sheet, to + 1) ?? '') || markAt(sheet, to + 1) === 'slash';
  return isOne && isThing(wordAt(sheet, to + 2) ?? '') ? to + 2 : undefined;
}

/** `6.50 for 50 g`: the ball it buys stays, to be read. */
const isForBall = (sheet: Sheet, to: number): boolean =>
  wordAt(sheet, to + 1) === 'for' && gPer(quantityAtIndex(sheet, to + 2)?.unit) !== undefined;

/** `ten for`, `10 balls for` before an amount. */
function packBefore(sheet: Sheet, from: number, isThing: Things): { from: number; count: number } | undefined {
  if (wordAt(sheet, from - 1) !== 'for') return undefined;
  const at = isThing(wordAt(sheet, from - 2) ?? '') ? from - 3 : from - 2;
  const count = bareAt(sheet, at);
  return count === undefined ? undefined : { from: at, count };
}

function leadBefore(sheet: Sheet, from: number): number | undefined {
  if (LEADS.includes(wordAt(sheet, from - 1) ?? '')) return from - 1;
  const start = sheet.tokens[from]?.start ?? 0;
  return /@\s?$/.test(sheet.text.slice(0, start)) ? from : undefined;
}
