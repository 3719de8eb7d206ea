import {
  type CostProblem,
  copiesToPay,
  type Money,
  NO_FEES,
  patternEarned,
  patternPrice,
  retailFrom,
  say,
  type Words,
  wholesaleFrom,
} from '../../../core/index.js';
import { moneyOf, printedMoney, printedPrice } from '../../money.js';
import type { MoneyAsk } from '../../request.js';
import { type At, type Desk, type DeskAnswer, refusal } from '../desk.js';
import { type OfMoney, priced } from './prices.js';
import { costed, rateCardOf } from './rate-card.js';

/** Shops keep half of their price. Common practice, no source. */
const SHOP_KEEPS_PERCENT = 50;

/** What a shop pays for what it sells at a price, or what it asks for what it bought at one. Nothing is stored. */
export const shopPriceDesk: Desk<'shop_price'> = async (request, at) => {
  const { way, price: typed, percent = SHOP_KEEPS_PERCENT } = request.shop;
  if (typed === undefined) return refusal(at, { code: 'says_too_little', needs: 'a price', example: `${way} of 48` });
  const read = moneyMeant(typed, request, at);
  if ('answer' in read) return read.answer;
  const found = way === 'wholesale' ? wholesaleFrom(read.money, percent) : retailFrom(read.money, percent);
  if (!found.ok) return costRefusal(at, found.problems);
  const [shop, maker] = way === 'wholesale' ? [read.money, found.value] : [found.value, read.money];
  const lead =
    way === 'wholesale'
      ? say`A shop that sells it at ${amount(shop)} pays you ${amount(maker)}`
      : say`A shop that buys it at ${amount(maker)} sells it at ${amount(shop)}`;
  const kept = request.shop.percent === undefined ? say`, as is usual` : say``;
  const lines = [say`It keeps ${percent}% of its price${kept}.`, TAXES];
  return answered(at, lead, lines, [`cost at ${figure(maker)}`]);
};

/** What a written pattern must sell for, how many copies pay for it, or what an hour of it earned. Nothing is stored. */
export const patternPriceDesk: Desk<'pattern_price'> = async (request, at) => {
  const { hours, price: typed, copies } = request.pattern;
  const { hour, fees = NO_FEES } = costed(await rateCardOf(at), at.maker.currency);
  if (hours === undefined || (typed === undefined && copies === undefined))
    return refusal(at, {
      code: 'says_too_little',
      needs: 'its hours, and its price or how many copies you hope to sell',
      example: 'pattern at 6.00, 20 hours',
    });
  if (hour === undefined || hour.is !== 'rate')
    return refusal(at, {
      code: 'says_too_little',
      needs: 'what an hour of yours costs',
      example: 'my time is 18 an hour',
    });
  const work = { hours, hourly: { currency: hour.currency, minor: hour.minor }, otherMinor: 0 };
  if (typed === undefined) {
    const found = patternPrice(work, copies ?? 1, fees);
    if (!found.ok) return costRefusal(at, found.problems);
    const lead = say`Ask ${amount(found.value)} for the pattern`;
    return answered(
      at,
      lead,
      [say`${copies ?? 1} copies then pay for ${hours} hours at ${amount(work.hourly)}.`, TAXES],
      [`pattern at ${figure(found.value)}, ${hours} hours`],
    );
  }
  const read = moneyMeant(typed, request, at);
  if ('answer' in read) return read.answer;
  const paid = copiesToPay(work, read.money, fees);
  if (!paid.ok) return costRefusal(at, paid.problems);
  const earned = copies === undefined ? undefined : patternEarned(work, { copies, price: read.money }, fees);
  if (earned?.ok === false) return costRefusal(at, earned.problems);
  const lead =
    paid.value.pieces === undefined
      ? say`At ${amount(read.money)} no number of copies pays for the pattern`
      : say`At ${amount(read.money)} the pattern is paid by copy ${paid.value.pieces}`;
  const lines: Words[] = [
    say`It took ${hours} hours at ${amount(work.hourly)}; each copy leaves ${amount({ ...read.money, minor: paid.value.eachMinor })}.`,
    ...(earned === undefined ? [] : [say`${copies ?? 0} copies earn you ${amount(earned.value)} an hour.`]),
    TAXES,
  ];
  return answered(at, lead, lines, [`pattern at ${figure(read.money)}, ${hours} hours, 100 copies`]);
};

/** Rules for taxes are none of ours to know. */
const TAXES = say`Tax and sales rules differ by place; ask a qualified adviser.`;

const amount = printedMoney;
const figure = (money: Money): string => printedPrice({ ...money, currency: '' });

/** An amount typed, in minor units of its currency, else of the maker's. */
export function moneyMeant(typed: MoneyAsk, request: OfMoney, at: At): { money: Money } | { answer: DeskAnswer } {
  const read = priced([typed], request, at);
  if ('answer' in read) return read;
  const [price = { minor: 0, currency: '' }] = read.prices;
  return { money: moneyOf(price, at.maker.currency) };
}

export const costRefusal = (at: At, problems: readonly CostProblem[]): DeskAnswer =>
  refusal(at, ...problems.map((problem) => ({ code: 'of_cost' as const, problem })));

const answered = (at: At, lead: Words, lines: readonly Words[], examples: readonly string[]): DeskAnswer => ({
  reply: { kind: 'answer', lead, lines, examples, isOwn: true, offers: [] },
  talk: at.talk,
});
