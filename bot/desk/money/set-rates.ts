import { say } from '../../../core/index.js';
import { withStored } from '../../conversation.js';
import type { Effect } from '../../effect.js';
import type { BotProblem } from '../../problems.js';
import type { RateAsk } from '../../request.js';
import type { Rate } from '../../store/ports.js';
import { type At, type Desk, refusal } from '../desk.js';
import { putBack } from '../effects.js';
import { formOffer, UNDO } from '../offers.js';
import { priced } from './prices.js';
import { rateCardOf } from './rate-card.js';

/** Shares beyond these are slips of the pen, as core takes them. */
const MOST_PERCENT = { overhead: 1000, fee: 90 };

/** Lines of the rate card → kept in place of what was said of them before. */
export const setRatesDesk: Desk<'set_rates'> = async (request, at) => {
  const { rates: asks, team = false } = request;
  const problems = asks.flatMap(problemsOf);
  if (problems.length > 0) return refusal(at, ...problems);
  const prices = priced(
    asks.flatMap((ask) => ask.prices),
    request,
    at,
  );
  if ('answer' in prices) return prices.answer;
  const mixed = asks.find(
    ({ prices: own }) => new Set(own.flatMap(({ currencies }) => currencies.slice(0, 1))).size > 1,
  );
  if (mixed !== undefined) {
    const currencies = [...new Set(mixed.prices.flatMap((price) => price.currencies.slice(0, 1)))];
    return refusal(at, { code: 'of_cost', problem: { code: 'mixed_currencies', currencies } });
  }
  const left = [...prices.prices];
  const owner = team ? '' : at.maker.id;
  const before = await at.store.rates.of(at.maker.id);
  const rates = asks.map(({ of, name = '', prices: typed, percent }): Rate => {
    const own = typed.map(({ count }) => ({ ...(left.shift() ?? { minor: 0, currency: '' }), count }));
    return { owner, of, name, value: { prices: own, ...(percent !== undefined && { percent }) } };
  });
  const effects: Effect[] = [...rates.map((rate) => effectOf(rate, before)), ...prices.effects];
  await putBack(effects, at.store, at.now);
  return {
    reply: {
      kind: 'rates',
      lead: say`Noted on ${team ? "the team's" : 'your'} rate card`,
      rates,
      team,
      notes: prices.notes,
      assumed: prices.assumed,
      offers: [UNDO],
    },
    talk: withStored({ ...at.talk, pending: undefined }, `on the rate card, ${asks.map(nameOf).join(', ')}`, effects),
  };
};

const NAMES: Readonly<Record<RateAsk['of'], string>> = {
  hour: 'your time',
  overhead: 'overhead',
  packing: 'packing',
  fee: 'the fee',
  stall: 'the stall',
  notion: 'a notion',
};
const nameOf = ({ of, name = NAMES[of] }: RateAsk): string => name;

function effectOf({ owner, of, name, value }: Rate, before: readonly Rate[]): Effect {
  const known = before.find((rate) => rate.owner === owner && rate.of === of && sameKey(rate.name, name));
  return { did: 'set_rate', owner, of, name, before: known?.value ?? null, after: value };
}

const sameKey = (a: string, b: string): boolean => a.toLowerCase() === b.toLowerCase();

function problemsOf({ of, percent, prices }: RateAsk): BotProblem[] {
  const max = of === 'fee' ? MOST_PERCENT.fee : MOST_PERCENT.overhead;
  const label = of === 'fee' ? 'Fee' : 'Overhead';
  return [
    ...(percent === undefined || (percent >= 0 && percent <= max)
      ? []
      : [{ code: 'amount_outside' as const, label, given: percent, min: 0, max, unit: '%' as const }]),
    ...prices.flatMap(({ count }): BotProblem[] =>
      Number.isInteger(count) && count >= 1 ? [] : [{ code: 'count_not_whole', label: 'Pack', given: count }],
    ),
  ];
}

/** All that holds for the maker. */
export const showRatesDesk: Desk<'show_rates'> = async (_request, at: At) => {
  const rates = await rateCardOf(at);
  const reply = { kind: 'rates' as const, team: false, notes: [], assumed: [], offers: [formOffer('rates')] };
  const lead = rates.length === 0 ? say`Your rate card is empty` : say`Your rate card`;
  return { reply: { ...reply, lead, rates }, talk: at.talk };
};
