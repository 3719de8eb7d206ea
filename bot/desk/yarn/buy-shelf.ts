import { type Balls, chanceEnough, type Needed } from '../../../core/index.js';
import type { Held } from '../../replies/buy.js';
import type { Ball, Lot } from '../../store/ports.js';
import type { At } from '../desk.js';
import { sameName } from '../names.js';
import { freeOf } from './lots.js';

/** Lots of a yarn with something free, what is set aside for the plan in hand among that. */
export async function lotsFree(yarn: string, at: At): Promise<Lot[]> {
  const { shelf, works } = at.store;
  const work = (await works.open(at.maker.id)).find(({ planId }) => planId === at.talk.planId);
  const own = work === undefined ? [] : await shelf.movesFor(work.id);
  const asideFor = ({ id }: Lot): number =>
    own.reduce((sum, { lotId, aside }) => (lotId === id ? sum + aside : sum), 0);
  return (await shelf.of(at.maker.id))
    .filter(({ kind, name }) => kind === 'yarn' && sameName(name, yarn))
    .map((lot) => ({ ...lot, aside: lot.aside - asideFor(lot) }))
    .filter((lot) => freeOf(lot) > 0);
}

/** What a lot holds as balls; a part of one counts as that part. */
export function ballsIn(lot: Lot, like: Ball): Balls {
  const ball = lot.ball ?? like;
  return { balls: freeOf(lot) / 1000 / ball.massG, lengthM: ball.lengthMm / 1000 };
}

/**
 * The lot that the yarn would come from: the smallest that is enough alone, so that large ones stay whole; else the
 * largest, to be completed. Lots never join, since they may differ in colour.
 */
export function heldFor(need: Needed, sure: number, lots: readonly Lot[], like: Ball): Held | undefined {
  const held = lots.map((lot): Held => {
    const balls = ballsIn(lot, like);
    const lengthM = balls.balls * balls.lengthM;
    return { lot, massG: freeOf(lot) / 1000, lengthM, chance: chanceEnough(need, [balls]) };
  });
  const bySize = held.sort((a, b) => a.lengthM - b.lengthM);
  return bySize.find(({ chance }) => chance >= sure) ?? bySize.at(-1);
}
