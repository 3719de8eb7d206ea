import { LOOSE_TAIL_MM } from '../finishing/tails.js';
import { sum } from '../gauge/estimate.js';
import type { Pack } from '../money/packs.js';
import { done, refused } from '../problems.js';
import { cheapest } from './cheapest.js';
import { type Balls, chanceEnough, ENOUGH, heldM, type Needed, sureEnough, toHoldM, unevenness } from './enough.js';
import type { YarnOutcome } from './problems.js';
import { asPacks, checkedPutUps, type PutUp } from './put-up.js';

/** What to buy of one put-up. */
export type PurchaseLine = {
  putUp: PutUp;
  balls: number;
  packs: readonly { pack: Pack; count: number }[];
  minor: number;
};

/** What to buy, whole balls, and how often it will be enough. */
export type YarnPurchase = {
  lines: readonly PurchaseLine[];
  balls: number;
  lengthM: number;
  massG: number;
  minor: number;
  currency: string;
  lots: readonly string[];
  chance: number;
  /** What the ends take where ball follows ball without a break, in metres. It is not in the need. */
  joinsM: number;
};

/** The cheapest of all, and the cheapest of one dye lot where one holds enough. */
export type YarnPurchases = { cheapest: YarnPurchase; oneLot: YarnPurchase | undefined };

export type Buying = {
  need: Needed;
  putUps: readonly PutUp[];
  /** How often it must be enough: 95 times in 100 unless said. */
  sure?: number | undefined;
  /** The dye lot that it must be of, where it must match yarn that is there. */
  lot?: string | undefined;
  /** Balls that are there already and join those bought. Alone they are not enough. */
  have?: readonly Balls[] | undefined;
};

/**
 * The cheapest whole balls that are enough this often, from all that is on sale and from one dye lot.
 * @returns of several as cheap the one with most yarn; problems of the put-ups, `sureness_out_of_range`, `unknown_lot`,
 * `not_enough_for_sale`
 */
export function purchases({ need, putUps, sure = ENOUGH, lot, have = [] }: Buying): YarnOutcome<YarnPurchases> {
  const [checked, surely] = [checkedPutUps(putUps), sureEnough(sure)];
  if (!checked.ok) return checked;
  if (!surely.ok) return surely;
  const lots = [...new Set(putUps.map((putUp) => putUp.lot))];
  if (lot !== undefined && !lots.includes(lot)) return refused({ code: 'unknown_lot', given: lot, lots });

  const bought = (from: readonly PutUp[]) => purchase({ need, sure, have }, from, checked.value.currency);
  const of = (one: string) => bought(putUps.filter((putUp) => putUp.lot === one));
  const single = (lot === undefined ? lots : [lot]).flatMap((one) => of(one) ?? []).sort(cheaper);
  const best = lot === undefined && lots.length > 1 ? bought(putUps) : single[0];
  if (best === undefined) return refused(notEnough({ need, sure, have }, putUps, lot));
  return done({ cheapest: best, oneLot: single[0] });
}

const cheaper = (a: YarnPurchase, b: YarnPurchase): number => a.minor - b.minor || b.lengthM - a.lengthM;

type Wanted = { need: Needed; sure: number; have: readonly Balls[] };

function notEnough({ need, sure, have }: Wanted, putUps: readonly PutUp[], lot: string | undefined) {
  const sold = putUps.filter((putUp) => lot === undefined || putUp.lot === lot);
  const mostM = sum(sold, ({ stock = 0, ball }) => stock * ball.lengthM);
  return { code: 'not_enough_for_sale' as const, toHoldM: toHoldM(need, sure, 0) - heldM(have), mostM };
}

/** Held by what is bought, in metres, where what is there already comes near to being enough. */
const LEAST_M = 0.001;

/**
 * The cheapest that is enough with what is there. What must be held depends on how many balls hold it, so it is first
 * taken for the least it can be, and raised to what the balls found would have to hold while they are not enough.
 */
function purchase(wanted: Wanted, putUps: readonly PutUp[], currency: string): YarnPurchase | undefined {
  const { need, sure, have } = wanted;
  const wares = putUps.map(({ ball, packs, stock }) => ({ size: ball.lengthM, packs, stock }));
  for (let holdM = leastToHoldM(wanted, putUps); ; ) {
    const counts = cheapest(wares, Math.max(LEAST_M, holdM - heldM(have)));
    if (counts === undefined) return undefined;
    const made = asPurchase(wanted, putUps, counts, currency);
    if (made.chance >= sure) return made;
    holdM = toHoldM(need, sure, unevenness([...have, ...ballsOf(made.lines)]));
  }
}

/** The least that any balls must hold: Σnb²/L² is never under the smallest ball's share of what must be held. */
function leastToHoldM({ need, sure, have }: Wanted, putUps: readonly PutUp[]): number {
  const ballM = Math.min(...putUps.map(({ ball }) => ball.lengthM), ...have.map(({ lengthM }) => lengthM));
  const atMost = toHoldM(need, sure, Math.min(1, ballM / toHoldM(need, sure, 0)));
  return toHoldM(need, sure, Math.min(1, ballM / atMost));
}

const ballsOf = (lines: readonly PurchaseLine[]) =>
  lines.map(({ putUp, balls }) => ({ balls, lengthM: putUp.ball.lengthM }));

function asPurchase(
  { need, have }: Pick<Wanted, 'need' | 'have'>,
  putUps: readonly PutUp[],
  counts: readonly number[],
  currency: string,
): YarnPurchase {
  const lines = putUps.flatMap((putUp, i): PurchaseLine[] => {
    const balls = counts[i] ?? 0;
    if (balls === 0) return [];
    const packs = asPacks(putUp.packs, balls);
    return [{ putUp, balls, packs, minor: sum(packs, ({ pack, count }) => count * pack.minor) }];
  });
  const balls = sum(lines, (line) => line.balls);
  return {
    lines,
    balls,
    lengthM: heldM(ballsOf(lines)),
    massG: sum(lines, ({ putUp, balls }) => balls * putUp.ball.massG),
    minor: sum(lines, (line) => line.minor),
    currency,
    lots: [...new Set(lines.map(({ putUp }) => putUp.lot))],
    chance: chanceEnough(need, [...have, ...ballsOf(lines)]),
    joinsM: ((balls - 1) * 2 * LOOSE_TAIL_MM) / 1000,
  };
}
