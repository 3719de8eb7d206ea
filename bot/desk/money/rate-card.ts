import {
  aspects,
  type Fees,
  type Money,
  type Notion,
  type NotionPrice,
  type Overhead,
  type Price,
} from '../../../core/index.js';
import { moneyOf } from '../../money.js';
import type { RateOf } from '../../request.js';
import type { Price as PackPrice, Rate, RateValue } from '../../store/ports.js';
import type { At } from '../desk.js';
import { isSameThing } from '../yarn/thing-meant.js';

/** The lines that hold for a maker: their own before the team's. */
export async function rateCardOf({ store, maker }: Pick<At, 'store' | 'maker'>): Promise<Rate[]> {
  const all = await store.rates.of(maker.id);
  const own = all.filter(({ owner }) => owner !== '');
  const isOwn = (rate: Rate): boolean =>
    own.some(({ of, name }) => of === rate.of && isSameThing(name, rate.name, 'notion'));
  return [...own, ...all.filter((rate) => rate.owner === '' && !isOwn(rate))];
}

/** Rates as costing takes them, amounts without a currency in the maker's. */
export function costed(card: readonly Rate[], own: string | undefined) {
  const lineOf = (of: RateOf): RateValue | undefined => card.find((rate) => rate.of === of)?.value;
  const amountOf = (of: RateOf): Money | undefined => {
    const [price] = lineOf(of)?.prices ?? [];
    return price && moneyOf(price, own);
  };
  const rateOf = (of: RateOf): Price | undefined => {
    const money = amountOf(of);
    return money && { is: 'rate', per: 1, ...money };
  };
  const fee = lineOf('fee');
  const fixed = amountOf('fee');
  const stall = amountOf('stall');
  return {
    hour: rateOf('hour'),
    packing: rateOf('packing'),
    /** One that costs nothing is none. */
    stall: stall?.minor === 0 ? undefined : stall,
    fees: fee && ({ percent: fee.percent ?? 0, ...(fixed && { fixed }) } satisfies Fees),
    overhead: overheadOf(lineOf('overhead'), amountOf('overhead')),
    /** The price of a notion, by whichever of its names it was told. */
    notion: (notion: Notion): NotionPrice | undefined => {
      const rate = card.find(({ of, name }) => of === 'notion' && isNotion(notion, name));
      return rate && packsOf(rate.value.prices, own);
    },
  };
}

/** Packs of a notion, sold by the piece. Those told at once are in one currency. */
export function packsOf(
  prices: readonly (PackPrice & { count: number })[],
  own: string | undefined,
): NotionPrice | undefined {
  const packs = prices.map(({ count, ...price }) => ({ count, ...moneyOf(price, own) }));
  const [first] = packs;
  return (
    first && {
      is: 'packs',
      by: 'piece',
      currency: first.currency,
      packs: packs.map(({ count, minor }) => ({ count, minor })),
    }
  );
}

function overheadOf(value: RateValue | undefined, perHour: Money | undefined): Overhead | undefined {
  if (value?.percent !== undefined) return { is: 'percent_of_prime', percent: value.percent };
  if (perHour === undefined) return undefined;
  return perHour.minor === 0 ? { is: 'none' } : { is: 'per_hour', ...perHour };
}

/** Makers' words for one thing that is sewn on. */
const SAME: readonly (readonly string[])[] = [aspects.closure, aspects.ring];

/** Whether a maker's name is that of a notion of a plan: `zips` for its closure. */
export function isNotion(notion: Notion, name: string): boolean {
  if ('massG' in notion) return false;
  const { one, many = `${one}s` } = notion;
  const isOne = (word: string): boolean => [one, many].some((own) => isSameThing(own, word, 'notion'));
  const last = name.split(' ').at(-1) ?? '';
  return isOne(name) || SAME.some((words) => words.includes(last.toLowerCase()) && words.some(isOne));
}

export type Costed = ReturnType<typeof costed>;
