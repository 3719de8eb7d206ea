import { mass, type Plan, say, type Words } from '../../../core/index.js';
import type { Lot, LotMove } from '../../store/ports.js';
import type { At } from '../desk.js';
import { amountWords, freeOf, lotName, milligrams } from '../yarn/lots.js';
import { notionsHeld, type OnShelf } from './set-aside.js';

/**
 * Takes off what a finished piece used: what it weighs, else what was set aside for it, from the lot that was set aside;
 * frees the rest, and takes its notions at the first telling. A piece finished before and weighed now is put right.
 */
export async function usedUp(
  workId: string,
  plan: Plan,
  massG: number | undefined,
  isFirst: boolean,
  at: At,
): Promise<OnShelf> {
  const { effects, notes } = await settled(
    workId,
    ({ aside, left }) => (massG === undefined ? aside - left : milligrams(massG)),
    at,
  );
  if (isFirst)
    for (const { count: wanted, held } of notionsHeld(plan, await at.store.shelf.of(at.maker.id))) {
      const lot = held.find(({ left }) => left >= wanted);
      if (lot === undefined) continue;
      const move = { id: at.newId(), lotId: lot.id, workId, left: -wanted, aside: 0, said: 'done', at: at.now };
      if (!(await at.store.shelf.move(move))) continue;
      effects.push({ did: 'moved_stock', moveId: move.id, lotId: lot.id });
      notes.push(say`Off the shelf: ${wanted} ${lotName(lot)}; ${lot.left - wanted} left.`);
    }
  return { effects, notes };
}

/** Frees what was set aside for work that was given up. */
export const freed = (workId: string, at: At): Promise<OnShelf> => settled(workId, ({ left }) => -left, at);

/** Brings what work took of each yarn to what it used, in mg, and what is set aside for it to nothing. */
async function settled(
  workId: string,
  usedOf: (sum: { left: number; aside: number }) => number,
  at: At,
): Promise<OnShelf> {
  const moves = await at.store.shelf.movesFor(workId);
  const lots = (await at.store.shelf.of(at.maker.id)).filter(
    ({ id, kind }) => kind === 'yarn' && moves.some(({ lotId }) => lotId === id),
  );
  const done: OnShelf = { effects: [], notes: [] };
  for (const one of lots) {
    const lot = await at.store.shelf.opened(one, at.now);
    const own = moves.filter(({ lotId }) => lotId === lot.id);
    const sum = { left: own.reduce((a, b) => a + b.left, 0), aside: own.reduce((a, b) => a + b.aside, 0) };
    const most = freeOf(lot) + sum.aside - sum.left;
    const used = usedOf(sum);
    const left = -Math.min(used, most) - sum.left;
    if (left === 0 && sum.aside === 0) continue;
    const move: LotMove = { id: at.newId(), lotId: lot.id, workId, left, aside: -sum.aside, said: 'done', at: at.now };
    if (!(await at.store.shelf.move(move))) throw new Error('a lot does not hold what it was seen to hold');
    done.effects.push({ did: 'moved_stock', moveId: move.id, lotId: lot.id });
    done.notes.push(endNote({ ...lot, left: lot.left + left, aside: lot.aside - sum.aside }, used, most));
  }
  return done;
}

function endNote(lot: Lot, used: number, most: number): Words {
  const left = lot.left === 0 ? say`nothing` : amountWords(lot.left, lot);
  if (used === 0) return say`Free again: ${lotName(lot)}, ${left}. If yarn was used, say "used 20 g".`;
  const other = mass((used - most) / 1000);
  const short = used > most ? say` The other ${other} came from elsewhere: say "used 20 g of lot 7" for that.` : say``;
  return say`Off the shelf: ${mass(Math.min(used, most) / 1000)} of ${lotName(lot)}; ${left} left.${short}`;
}
