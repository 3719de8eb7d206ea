import {
  BILLED,
  type CostProblem,
  type Item,
  leastBalls,
  type Outcome,
  type Price,
  type YarnNeed,
} from '../../../core/index.js';
import { moneyOf } from '../../money.js';
import type { Lot, Profile, PutUp, Yarn } from '../../store/ports.js';
import type { At } from '../desk.js';
import { sameName } from '../names.js';

/** What a yarn costs: by the metre, and by the ball and the pack for whole balls. */
type YarnPrice = { byMetre: Price; ballM: number; packs: Price & { is: 'packs' } };

/**
 * The price of the plan's yarn, as it is sold, else as it stands on the shelf. `of`: whose price stands for it while it has
 * no name: that of the only yarn that has one.
 * @returns problem `mixed_currencies` where it was told in several
 */
export async function yarnPriced(
  { yarn }: Profile,
  shelf: readonly Lot[],
  at: At,
): Promise<Outcome<{ price: YarnPrice | undefined; of: string | undefined }, CostProblem>> {
  const meant = await yarnMeant(yarn, at);
  const lots = shelf.filter(({ kind, name }) => kind === 'yarn' && sameName(name, meant.name));
  const price = yarnPrice(await at.store.putUps.of(meant.id), lots, at.maker.currency);
  if (!price.ok) return price;
  const isOther = meant.id !== yarn.id && price.value !== undefined;
  return { ok: true, value: { price: price.value, of: isOther ? meant.name : undefined } };
}

async function yarnMeant(yarn: Yarn, at: At): Promise<Yarn> {
  const [only, ...others] = yarn.name === '' ? await at.store.yarns.of(at.maker.id) : [];
  return only !== undefined && others.length === 0 ? only : yarn;
}

/** Of a ball as it is sold alone, else of the smallest pack; packs of other balls are another yarn to buy. */
function yarnPrice(
  putUps: readonly PutUp[],
  lots: readonly Lot[],
  own: string | undefined,
): Outcome<YarnPrice | undefined, CostProblem> {
  const sold = putUps.flatMap(({ ball, balls, price }) => (price === undefined ? [] : [{ ball, balls, price }]));
  const held = lots.flatMap(({ ball, price }) => (ball && price ? [{ ball, balls: 1, price }] : []));
  const [first, ...others] = [...sold, ...held]
    .sort((a, b) => a.balls - b.balls)
    .map(({ ball, balls, price }) => ({ ball, count: balls, ...moneyOf(price, own) }));
  if (first === undefined) return { ok: true, value: undefined };
  const alike = [first, ...others].filter(({ ball }) => ball.lengthMm === first.ball.lengthMm);
  const currencies = [...new Set(alike.map(({ currency }) => currency))];
  if (currencies.length > 1) return { ok: false, problems: [{ code: 'mixed_currencies', currencies }] };
  const ballM = first.ball.lengthMm / 1000;
  const { currency, minor, count } = first;
  return {
    ok: true,
    value: {
      ballM,
      byMetre: { is: 'rate', currency, minor, per: ballM * count },
      packs: { is: 'packs', currency, packs: alike.map((pack) => ({ count: pack.count, minor: pack.minor })) },
    },
  };
}

/** Whole balls for so many pieces, enough 95 times in 100. */
export function ballsFor({ lengthM, cv }: YarnNeed, copies: number, { ballM, packs }: YarnPrice): Item {
  const { balls } = leastBalls({ lengthM: lengthM * copies, cv }, ballM);
  return { id: BILLED.yarn, is: 'material', quantity: balls, once: true, price: packs };
}
