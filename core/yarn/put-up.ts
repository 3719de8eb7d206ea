import type { Pack } from '../money/packs.js';
import { done, refused } from '../problems.js';
import { type Ball, ballTex } from './count.js';
import type { YarnOutcome, YarnProblem } from './problems.js';

/**
 * Balls of one kind and dye lot as they are sold: singly, in packs, or both. `lot` is '' where it was not named; `stock`
 * is how many balls there are to buy, without limit unless said.
 */
export type PutUp = {
  ball: Ball;
  lot: string;
  stock?: number | undefined;
  /** ISO 4217, such as EUR. */
  currency: string;
  packs: readonly Pack[];
};

/** What is on sale, checked: whole prices above 0 in one currency, balls with yarn in them. */
export function checkedPutUps(putUps: readonly PutUp[]): YarnOutcome<{ currency: string }> {
  if (putUps.every(({ packs }) => packs.length === 0)) return refused({ code: 'nothing_for_sale' });
  const currencies = [...new Set(putUps.map(({ currency }) => currency))];
  const problems = putUps.flatMap(putUpProblems);
  if (problems.length > 0) return refused(...problems);
  const [currency = '', ...others] = currencies;
  return others.length > 0 ? refused({ code: 'mixed_currencies', currencies }) : done({ currency });
}

function putUpProblems({ ball, currency, stock = 0, packs }: PutUp): YarnProblem[] {
  const tex = ballTex(ball);
  const [pack] = packs;
  return [
    ...(tex.ok ? [] : tex.problems),
    ...packs.flatMap(({ minor, count }) => [...whole('price', minor, 1), ...whole('pack', count, 1)]),
    ...whole('stock', stock, 0),
    ...(currency === '' && pack !== undefined ? [{ code: 'no_currency' as const, minor: pack.minor }] : []),
  ];
}

const whole = (field: 'price' | 'pack' | 'stock', given: number, min: number): YarnProblem[] =>
  Number.isInteger(given) && given >= min ? [] : [{ code: 'not_whole', field, given, min }];

/**
 * The cheapest packs that come to each number of balls up to `most`, exactly: its price, and the pack added last. Of
 * none at index 0; undefined where no packs come to the number.
 */
export function byCount(packs: readonly Pack[], most: number): ({ minor: number; last?: Pack } | undefined)[] {
  const cheapest: ({ minor: number; last?: Pack } | undefined)[] = [{ minor: 0 }];
  for (let balls = 1; balls <= most; balls++) {
    for (const pack of packs) {
      const before = cheapest[balls - pack.count];
      const minor = before && before.minor + pack.minor;
      if (minor !== undefined && minor < (cheapest[balls]?.minor ?? Number.POSITIVE_INFINITY))
        cheapest[balls] = { minor, last: pack };
    }
  }
  return cheapest;
}

/** So many balls as the packs they are bought in, the largest first. */
export function asPacks(packs: readonly Pack[], balls: number): { pack: Pack; count: number }[] {
  const cheapest = byCount(packs, balls);
  const counts = new Map<Pack, number>();
  for (let left = balls; left > 0; ) {
    const pack = cheapest[left]?.last;
    if (pack === undefined) throw new Error(`no packs come to ${left} balls`);
    counts.set(pack, (counts.get(pack) ?? 0) + 1);
    left -= pack.count;
  }
  return [...counts].map(([pack, count]) => ({ pack, count })).sort((a, b) => b.pack.count - a.pack.count);
}
