import type { Effect } from '../../effect.js';
import type { BotProblem } from '../../problems.js';
import type { PriceAsk } from '../../request.js';
import type { Ball, PutUp, Yarn } from '../../store/ports.js';
import type { At } from '../desk.js';

/** So many balls for a price; a put-up alone is one ball of no price. */
export type Way = Pick<PutUp, 'ball' | 'balls' | 'price'>;

/** Half a ball is sold nowhere. */
export const packProblems = (prices: readonly PriceAsk[]): BotProblem[] =>
  prices.flatMap(({ count }): BotProblem[] =>
    Number.isInteger(count) && count >= 1 ? [] : [{ code: 'count_not_whole', label: 'Balls', given: count }],
  );

/** A ball with each of its prices, or alone. */
export const waysOf = (ball: Ball, asks: readonly PriceAsk[], prices: readonly PutUp['price'][]): Way[] =>
  prices.length === 0
    ? [{ ball, balls: 1, price: undefined }]
    : prices.map((price, i) => ({ ball, balls: asks[i]?.count ?? 1, price }));

/** Puts in what is new, in place of what was told before of the same ball and as many. */
export async function keepWays(ways: readonly Way[], yarn: Yarn, said: string, at: At): Promise<Effect[]> {
  const known = await at.store.putUps.of(yarn.id);
  const effects: Effect[] = [];
  for (const way of ways) {
    const before = known.find((one) => one.balls === way.balls && isSame(one.ball, way.ball));
    if (before !== undefined && (way.price === undefined || isSame(before.price, way.price))) continue;
    if (before !== undefined) {
      await at.store.putUps.withdraw(before.id, at.now);
      effects.push({ did: 'dropped_put_up', putUpId: before.id });
    }
    const id = at.newId();
    await at.store.putUps.add({ ...way, id, yarnId: yarn.id, said, at: at.now });
    effects.push({ did: 'sold_as', putUpId: id });
  }
  return effects;
}

const isSame = (a: object | undefined, b: object | undefined): boolean => JSON.stringify(a) === JSON.stringify(b);

/** What a ball tells of the yarn's count. */
export function countTold(yarn: Yarn, tex: number): Effect[] {
  const { category = null, tex: known = null, since = null } = yarn;
  const before = { category, tex: known, since };
  return known === tex ? [] : [{ did: 'described', yarnId: yarn.id, before, after: { ...before, tex } }];
}
