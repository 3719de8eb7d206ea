import type { Pack } from '../money/packs.js';
import { byCount } from './put-up.js';

/** Something sold by the piece or in packs: what one piece holds, above 0, and how many there are, if not endless. */
export type Ware = { size: number; packs: readonly Pack[]; stock?: number | undefined };

/** A number of pieces, none included, and what it costs. */
type Choice = { pieces: number; minor: number };

/**
 * A ware with the numbers of it worth buying, and the least that each number or more of it costs. `rate` is the most it
 * holds for one unit of money, `worth` what all of it would cost at that rate.
 */
type Sold = {
  index: number;
  size: number;
  choices: readonly Choice[];
  atLeast: readonly number[];
  rate: number;
  worth: number;
};

/** Sums of sizes differ in their last digits by the order they were added in. */
const ROUNDING = 1e-9;

/**
 * The pieces of each ware that hold at least `need` together and cost the least; of several, those that hold most.
 *
 * Exact: for each sum of money up to the price of a known way out, the most that it buys of the first wares, ware by
 * ware. Sums from which the need cannot be reached, even if the wares to come could be cut, are dropped.
 * @param need above 0
 * @returns pieces in the order of the wares; undefined where all of them together hold less
 */
export function cheapest(wares: readonly Ware[], need: number): number[] | undefined {
  const least = need * (1 - ROUNDING);
  const unit = wares.flatMap(({ packs }) => packs.map(({ minor }) => minor)).reduce(commonDivisor, 0);
  const sold = wares.map((ware, index) => priced(ware, index, unit, least)).sort((a, b) => b.rate - a.rate);
  const budget = wayOut(sold, least);
  if (budget === undefined) return undefined;
  const pieces = wares.map(() => 0);
  for (let basket = cheapestBasket(budget, sold, least); basket?.under; basket = basket.under)
    pieces[basket.index] = basket.pieces;
  return pieces;
}

/** Money is counted in units that divide all prices. A number is worth buying if it costs less than any larger one. */
function priced({ size, packs, stock = Number.POSITIVE_INFINITY }: Ware, index: number, unit: number, least: number) {
  const useful = Math.ceil(least / size) + Math.max(0, ...packs.map(({ count }) => count - 1));
  const costs = byCount(packs, Math.min(stock, useful));
  const choices: Choice[] = [];
  const atLeast: number[] = [];
  for (let pieces = costs.length - 1; pieces >= 0; pieces--) {
    const [minor, more] = [
      (costs[pieces]?.minor ?? Number.POSITIVE_INFINITY) / unit,
      atLeast[pieces + 1] ?? Number.POSITIVE_INFINITY,
    ];
    if (minor < more) choices.push({ pieces, minor });
    atLeast[pieces] = Math.min(minor, more);
  }
  choices.reverse();
  const rates = choices.map(({ pieces, minor }) => (pieces === 0 ? 0 : (pieces * size) / minor));
  const rate = rates.reduce((best, one) => Math.max(best, one), 0);
  const worth = rate === 0 ? 0 : ((choices.at(-1)?.pieces ?? 0) * size) / rate;
  return { index, size, choices, atLeast, rate, worth };
}

/** The least cost of some of a first ware, all there is of those before it, and enough of one after it. */
function wayOut(sold: readonly Sold[], least: number): number | undefined {
  let [left, paid, best] = [least, 0, Number.POSITIVE_INFINITY];
  for (const [i, { size, choices }] of sold.entries()) {
    for (const { pieces, minor } of choices) {
      const rest = left - pieces * size;
      const after = rest <= 0 ? [0] : sold.slice(i + 1).map((one) => one.atLeast[Math.ceil(rest / one.size)]);
      for (const cost of after) best = Math.min(best, paid + minor + (cost ?? Number.POSITIVE_INFINITY));
      if (rest <= 0) break;
    }
    const all = choices.at(-1);
    left -= (all?.pieces ?? 0) * size;
    paid += all?.minor ?? 0;
    if (left <= 0) break;
  }
  return Number.isFinite(best) ? best : undefined;
}

/** What a sum of money buys at most of the wares from one on, if they could be cut. */
function atMost(money: number, sold: readonly Sold[], from: number): number {
  let [left, holds] = [money, 0];
  for (let i = from; i < sold.length && left > 0; i++) {
    const { rate, worth } = sold[i] as Sold;
    const paid = Math.min(left, worth);
    holds += paid * rate;
    left -= paid;
  }
  return holds;
}

/** What was bought for a sum of money: so many pieces of the last ware, on top of a basket of those before it. */
type Basket = { paid: number; held: number; index: number; pieces: number; under: Basket | undefined };

/** The cheapest basket within a budget that is known to be enough: for each sum paid the fullest, ware by ware. */
function cheapestBasket(budget: number, sold: readonly Sold[], least: number): Basket | undefined {
  let baskets: Basket[] = [{ paid: 0, held: 0, index: -1, pieces: 0, under: undefined }];
  for (const [i, { index, size, choices }] of sold.entries()) {
    const fullest = new Map<number, Basket>();
    for (const under of baskets) {
      for (const { pieces, minor } of choices) {
        const [paid, held] = [under.paid + minor, under.held + pieces * size];
        if (paid > budget) break;
        if (held + atMost(budget - paid, sold, i + 1) < least) continue;
        if (held > (fullest.get(paid)?.held ?? -1)) fullest.set(paid, { paid, held, index, pieces, under });
      }
    }
    baskets = notOutdone(fullest.values());
  }
  return baskets.find(({ held }) => held >= least);
}

/** Baskets by price, without those that hold no more than a cheaper one: whatever is added, they stay outdone. */
function notOutdone(baskets: Iterable<Basket>): Basket[] {
  const kept: Basket[] = [];
  for (const basket of [...baskets].sort((a, b) => a.paid - b.paid)) {
    if (basket.held > (kept.at(-1)?.held ?? -1)) kept.push(basket);
  }
  return kept;
}

const commonDivisor = (a: number, b: number): number => (b === 0 ? a : commonDivisor(b, a % b));
