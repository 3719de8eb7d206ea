import {
  type Balls,
  leastBalls,
  type Needed,
  type PutUp as OnSale,
  purchases,
  type YarnOutcome,
  type YarnPurchase,
} from '../../../core/index.js';
import { NO_CURRENCY } from '../../money.js';
import type { Bought } from '../../replies/buy.js';
import type { Ball } from '../../store/ports.js';
import type { Way } from './put-ups.js';

/** What must be held, and what joins it. */
export type Wanted = { need: Needed; sure: number; have: readonly Balls[] };

/** The cheapest of one lot, and what would be cheaper of several; without prices the fewest balls of the kind told last. */
export function best({ need, sure, have }: Wanted, ways: readonly Way[]): YarnOutcome<{ one: Bought; mixed?: Bought }> {
  const [first] = ways;
  if (first === undefined) throw new Error('nothing is known to be sold');
  if (ways.every(({ price }) => price === undefined)) return { ok: true, value: { one: fewest(first.ball) } };
  const outcome = purchases({ need, sure, have, putUps: onSale(ways) });
  if (!outcome.ok) return outcome;
  const { cheapest, oneLot } = outcome.value;
  const one = boughtOf(oneLot ?? cheapest);
  return {
    ok: true,
    value: cheapest.minor < (oneLot ?? cheapest).minor ? { one, mixed: boughtOf(cheapest) } : { one },
  };

  function fewest(ball: Ball): Bought {
    const ballM = ball.lengthMm / 1000;
    const { balls, chance } = leastBalls(need, ballM, sure, have);
    return { lines: [{ ball, balls, packs: [] }], balls, lengthM: balls * ballM, price: undefined, chance };
  }
}

/** The ways in which a lot can be completed: in balls like those that are there, of no known price where none such is sold. */
export function waysLike(ball: Ball | undefined, ways: readonly Way[]): readonly Way[] {
  if (ball === undefined) return ways;
  const alike = ways.filter((way) => way.ball.massG === ball.massG && way.ball.lengthMm === ball.lengthMm);
  return alike.length > 0 ? alike : [{ ball, balls: 1, price: undefined }];
}

/** Ways with a price by their ball. Balls of two kinds are of two lots; a price without a currency is in that of the others. */
function onSale(ways: readonly Way[]): OnSale[] {
  const byBall = new Map<string, OnSale>();
  const own = ways.find(({ price }) => price !== undefined && price.currency !== '')?.price?.currency ?? NO_CURRENCY;
  for (const { ball, balls, price } of ways) {
    if (price === undefined) continue;
    const key = JSON.stringify([ball, price.currency || own]);
    const { packs = [] } = byBall.get(key) ?? {};
    byBall.set(key, {
      ball: { massG: ball.massG, lengthM: ball.lengthMm / 1000 },
      lot: key,
      currency: price.currency || own,
      packs: [...packs, { count: balls, minor: price.minor }],
    });
  }
  return [...byBall.values()];
}

function boughtOf({ lines, balls, lengthM, chance, minor, currency }: YarnPurchase): Bought {
  return {
    lines: lines.map(({ putUp, packs, balls: ofIt }) => ({
      ball: { massG: putUp.ball.massG, lengthMm: putUp.ball.lengthM * 1000 },
      balls: ofIt,
      packs: packs.map(({ pack, count }) => ({ of: pack.count, count })),
    })),
    balls,
    lengthM,
    price: { minor, currency: currency === NO_CURRENCY ? '' : currency },
    chance,
  };
}
