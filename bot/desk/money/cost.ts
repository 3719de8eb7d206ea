import {
  type Bill,
  breakEven,
  eachOf,
  earnedAnHour,
  type Money,
  NO_FEES,
  priceForMargin,
  priceForMarkup,
  saleAt,
} from '../../../core/index.js';
import type { BotProblem } from '../../problems.js';
import type { CostReply } from '../../replies/costing.js';
import type { CostAsk } from '../../request.js';
import { type Desk, refusal } from '../desk.js';
import { planMeant } from '../plan/plan-meant.js';
import { billed } from './cost-bill.js';
import { costRefusal, moneyMeant } from './money-questions.js';
import { type Costed, costed, rateCardOf } from './rate-card.js';

/** What the plan in hand costs, and what a price leaves of it. Nothing is stored, and nothing without a price is made up. */
export const costDesk: Desk<'cost'> = async (request, at) => {
  const meant = await planMeant(at);
  if ('reply' in meant) return meant;
  const { plan, ask, profile } = meant;
  const typed = request.cost.price;
  const price = typed === undefined ? { money: undefined } : moneyMeant(typed, request, at);
  if ('answer' in price) return price.answer;
  const card = costed(await rateCardOf(at), at.maker.currency);
  const copies = request.cost.copies ?? 1;
  const lacking = lacks(request.cost, card);
  if (lacking !== undefined) return refusal(at, lacking);
  const made = await billed(plan, profile, copies, card, at);
  if (!made.ok) return costRefusal(at, made.problems);
  const { value } = made;
  const answer = sold(value.bill, request.cost, price.money, card);
  if (!answer.ok) return costRefusal(at, answer.problems);
  const reply: CostReply = {
    kind: 'cost',
    label: plan.label.toLowerCase(),
    ...value,
    fees: card.fees,
    isBreakEven: request.cost.breakEven ?? false,
    ...answer.value,
  };
  return { reply: { ...reply, offers: [] }, talk: { ...at.talk, subject: ask } };
};

/** What a question about sales that pay the stall needs beside the plan. */
function lacks({ breakEven: isBreakEven, price }: CostAsk, { stall }: Costed): BotProblem | undefined {
  if (!isBreakEven) return undefined;
  if (stall === undefined)
    return { code: 'says_too_little', needs: 'what the stall costs', example: 'the stall is 90' };
  return price === undefined ? { code: 'says_too_little', needs: 'a price', example: 'break even at 48' } : undefined;
}

type Sold = Pick<CostReply, 'eachMinor' | 'sale' | 'wanted' | 'stall'>;

/** What a price leaves, or what price leaves what was wanted; and how many sales pay for the stall. */
function sold(made: Bill, ask: CostAsk, at: Money | undefined, { fees = NO_FEES, stall }: Costed) {
  const eachMinor = eachOf(made)[0] ?? made.costMinor;
  const cost = { currency: made.currency, minor: eachMinor };
  const wanted =
    ask.margin !== undefined
      ? { way: 'margin' as const, percent: ask.margin, price: priceForMargin(cost, ask.margin, fees) }
      : ask.markup !== undefined
        ? { way: 'markup' as const, percent: ask.markup, price: priceForMarkup(cost, ask.markup, fees) }
        : undefined;
  if (wanted?.price.ok === false) return wanted.price;
  const price = wanted?.price.value ?? at;
  const none: Sold = { eachMinor, sale: undefined, wanted: undefined, stall: undefined };
  if (price === undefined) return { ok: true as const, value: none };
  const sale = saleAt(cost, price, fees);
  if (!sale.ok) return sale;
  const earned = earnedAnHour(made, price, fees);
  const paid = stall && breakEven(stall, cost, price, fees);
  if (paid?.ok === false) return paid;
  const value: Sold = {
    eachMinor,
    sale: {
      ...sale.value,
      anHour: earned.ok ? { currency: earned.value.currency, minor: earned.value.anHourMinor } : undefined,
    },
    wanted: wanted && { way: wanted.way, percent: wanted.percent, price },
    stall: stall && paid && { minor: stall.minor, pieces: paid.value.pieces },
  };
  return { ok: true as const, value };
}
