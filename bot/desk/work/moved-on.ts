import type { Effect } from '../../effect.js';
import type { Work } from '../../store/ports.js';
import { snapshot } from '../batch/batch-deal.js';
import type { At } from '../desk.js';
import { sameName } from '../names.js';

/**
 * True when effects cannot be turned back exactly, because something was changed after them from another place: the
 * stop row stands elsewhere, the machine holds another piece, the yarn was used, or other hours were said.
 * @param redo whether they are to be put in again rather than taken back
 */
export async function hasMovedOn(effects: readonly Effect[], redo: boolean, at: At): Promise<boolean> {
  const own = effects.flatMap((effect) => ('workId' in effect ? [effect.workId] : []));
  for (const effect of effects) {
    if (effect.did === 'moved_stop') {
      const work = await at.store.works.get(effect.workId, at.maker.id);
      if (work?.stopAt !== (redo ? effect.from : effect.to)) return true;
    }
    if (await isSetAnew(effect, redo, at)) return true;
    if (effect.did === 'dealt') {
      const batch = await at.store.batches.get(effect.batchId);
      const expected = redo ? effect.before : effect.after;
      const now = batch === undefined || batch.endedAt !== undefined ? null : snapshot(batch);
      if (JSON.stringify(sorted(now)) !== JSON.stringify(sorted(expected))) return true;
    }
    if (effect.did === 'batch_done' && !redo) {
      const { parts = [] } = (await at.store.batches.get(effect.batchId)) ?? {};
      const part = parts.find(({ makerId, stage }) => makerId === effect.makerId && stage === effect.stage);
      if ((part?.done ?? 0) < effect.by) return true;
    }
    const reopens = redo ? effect.did === 'started' : effect.did === 'ended';
    if (reopens && 'workId' in effect && (await isMachineTaken(effect.workId, own, at))) return true;
  }
  const moveIds = effects.flatMap((effect) => (effect.did === 'moved_stock' ? [effect.moveId] : []));
  return moveIds.length > 0 && !(await at.store.shelf.canTurn(moveIds, redo));
}

/** True when the hours or the clock of the maker, or a line of a rate card, are no longer what the effect left. */
async function isSetAnew(effect: Effect, redo: boolean, at: At): Promise<boolean> {
  if (effect.did !== 'set_hours' && effect.did !== 'set_clock' && effect.did !== 'set_rate') return false;
  return JSON.stringify(await standing(effect, at)) !== JSON.stringify(redo ? effect.before : effect.after);
}

async function standing(effect: Effect & { did: 'set_hours' | 'set_clock' | 'set_rate' }, { maker, store }: At) {
  switch (effect.did) {
    case 'set_hours':
      return maker.hours;
    case 'set_clock':
      return (await store.clocks.of(maker.id)) ?? null;
    case 'set_rate': {
      const { owner, of, name } = effect;
      const card = await store.rates.of(maker.id);
      return card.find((rate) => rate.owner === owner && rate.of === of && sameName(rate.name, name))?.value ?? null;
    }
  }
}

/** True when a piece of no change in `own` is on the machine of a work. */
async function isMachineTaken(workId: string, own: readonly string[], at: At): Promise<boolean> {
  const work = await at.store.works.get(workId, at.maker.id);
  const profiles = await at.store.profiles.of(at.maker.id);
  const machineOf = ({ profileId }: Work) => profiles.find(({ id }) => id === profileId)?.machine.id;
  const open = await at.store.works.open(at.maker.id);
  return work !== undefined && open.some((other) => !own.includes(other.id) && machineOf(other) === machineOf(work));
}

type DealtBatch = Extract<Effect, { did: 'dealt' }>['before'];

/** With its parts in one order, whichever they were named in. */
const sorted = (batch: DealtBatch): DealtBatch =>
  batch && {
    planId: batch.planId,
    pieces: batch.pieces,
    dueDay: batch.dueDay,
    readyDay: batch.readyDay,
    parts: batch.parts
      .map(({ makerId, stage, share, away, isOut }) => ({ makerId, stage, share, away, isOut }))
      .toSorted((a, b) => (a.makerId + a.stage < b.makerId + b.stage ? -1 : 1)),
  };
