/** What is sold whole: so many for a price in minor units. One alone is a pack of 1. */
export type Pack = { count: number; minor: number };

/** What to buy: how many of each pack, in the order they were given, what they hold and what they cost. */
export type Purchase = { minor: number; count: number; packs: readonly number[] };

type Step = { minor: number; count: number; last: number; from: number };

const isBetter = (tried: Step, known: Step): boolean =>
  tried.minor < known.minor || (tried.minor === known.minor && tried.count < known.count);

/**
 * The cheapest packs that hold at least so many; of several as cheap, those that leave the least over. Exact.
 * f(i) = min over packs (f(max(0, i − count)) + price).
 * @param needed a whole number, 0 or more
 * @param packs at least one, each count whole and above 0, each price 0 or more
 */
export function cheapestPacks(needed: number, packs: readonly Pack[]): Purchase {
  const best: Step[] = [{ minor: 0, count: 0, last: -1, from: 0 }];
  for (let i = 1; i <= needed; i++) best.push(bestStep(best, i, packs));
  const taken = packs.map(() => 0);
  let at = reached(best, needed);
  const { minor, count } = at;
  for (; at.last >= 0; at = reached(best, at.from)) taken[at.last] = (taken[at.last] ?? 0) + 1;
  return { minor, count, packs: taken };
}

const bestStep = (best: readonly Step[], i: number, packs: readonly Pack[]): Step =>
  packs
    .map((pack, last): Step => {
      const from = Math.max(0, i - pack.count);
      const { minor, count } = reached(best, from);
      return { minor: minor + pack.minor, count: count + pack.count, last, from };
    })
    .reduce((known, tried) => (isBetter(tried, known) ? tried : known));

function reached(best: readonly Step[], i: number): Step {
  const step = best[i];
  if (step === undefined) throw new Error(`no way to buy ${i} was worked out`);
  return step;
}
