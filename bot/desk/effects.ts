import type { Effect } from '../effect.js';

type DealtBatch = Extract<Effect, { did: 'dealt' }>['after'];

import type { Bound } from '../store/ports.js';

/** Takes effects back, the last first. */
export async function takenBack(effects: readonly Effect[], store: Bound, now: number): Promise<void> {
  for (const effect of effects.toReversed()) await turned(effect, false, store, now);
}

/** Puts effects in again, in the order they were made. */
export async function putBack(effects: readonly Effect[], store: Bound, now: number): Promise<void> {
  for (const effect of effects) await turned(effect, true, store, now);
}

/** Makes it so that an effect is, or is not. */
function turned(effect: Effect, is: boolean, store: Bound, now: number): Promise<void> {
  const { batches, benchLog, clocks, makers, measurements, putUps, readings, results, shares, shelf, works, yarns } =
    store;
  switch (effect.did) {
    case 'measured':
      return shown(measurements, effect.id, is, now);
    case 'withdrew':
      return shown(measurements, effect.id, !is, now);
    case 'read':
      return shown(readings, effect.id, is, now);
    case 'withdrew_reading':
      return shown(readings, effect.id, !is, now);
    case 'sold_as':
      return shown(putUps, effect.putUpId, is, now);
    case 'dropped_put_up':
      return shown(putUps, effect.putUpId, !is, now);
    case 'counted':
      return is ? works.redoCount(effect.workId, effect.seq) : works.undoCount(effect.workId, effect.seq, now);
    case 'moved_stop':
      return works.stopAt(effect.workId, is ? effect.to : effect.from);
    case 'described':
      return yarns.describe(effect.yarnId, is ? effect.after : effect.before);
    case 'described_lot': {
      const { ball, price } = is ? effect.after : effect.before;
      return shelf.describe(effect.lotId, { ball, price });
    }
    case 'set_currency':
      return makers.setCurrency(effect.makerId, (is ? effect.after : effect.before) ?? undefined);
    case 'timed':
      return shown(benchLog, effect.session, is, now);
    case 'set_clock': {
      const clock = is ? effect.after : effect.before;
      return clock === null ? clocks.stop(effect.makerId) : clocks.start(clock);
    }
    case 'set_hours':
      return makers.setHours(effect.makerId, is ? effect.after : effect.before);
    case 'set_time_zone':
      return makers.setTimeZone(effect.makerId, is ? effect.after : effect.before);
    case 'set_rate': {
      const { owner, of, name } = effect;
      return store.rates.set({ owner, of, name }, is ? effect.after : effect.before);
    }
    case 'moved_stock':
      return moved(effect.moveId, is, store, now);
    case 'shared':
      return shown(shares, effect.shareId, is, now);
    case 'withdrew_share':
      return shown(shares, effect.shareId, !is, now);
    case 'changed_share':
      return shares.setRevision(effect.shareId, is ? effect.to : effect.from);
    case 'resulted':
      return shown(results, effect.resultId, is, now);
    case 'sent_result':
      return results.send(effect.resultId, is ? effect.to : effect.from);
    case 'dealt':
      return redealtTo(effect.batchId, is ? effect.after : effect.before, store, now);
    case 'batch_done': {
      const { batchId, makerId, stage, by } = effect;
      return counted(batches.addDone(batchId, makerId, stage, is ? by : -by));
    }
    case 'batch_ended':
      return batches.end(effect.batchId, is ? now : undefined);
    case 'reminded':
      return waits(effect.id, is, store, now);
    case 'stopped_reminder':
      return waits(effect.id, !is, store, now);
    case 'started':
      return is ? works.reopen(effect.workId) : works.end(effect.workId, now, 'given_up');
    case 'ended':
      return is ? works.end(effect.workId, now, effect.outcome) : works.reopen(effect.workId);
  }
}

type Kept = { withdraw(id: string, at: number): Promise<void>; restore(id: string): Promise<void> };

const shown = (kept: Kept, id: string, is: boolean, now: number): Promise<void> =>
  is ? kept.restore(id) : kept.withdraw(id, now);

/** Whether the shelf can take it was asked before anything was turned. */
async function moved(moveId: string, is: boolean, { shelf }: Bound, now: number): Promise<void> {
  const done = is ? await shelf.redoMove(moveId) : await shelf.undoMove(moveId, now);
  if (!done) throw new Error('a lot does not hold what it was seen to hold');
}

/** The batch as it was dealt then; none is one that ended. */
async function redealtTo(id: string, to: DealtBatch | null, { batches }: Bound, now: number): Promise<void> {
  const batch = await batches.get(id);
  if (batch === undefined) throw new Error('a batch that is not');
  await batches.end(id, to === null ? now : undefined);
  if (to === null) return;
  const parts = to.parts.map((part) => ({ ...part, done: 0 }));
  await batches.replace({ id, ownerId: batch.ownerId, version: batch.version, ...to, parts });
}

async function counted(done: Promise<boolean>): Promise<void> {
  if (!(await done)) throw new Error('fewer are done than were seen to be');
}

/** Makes a reminder wait for its time, or not. */
async function waits(id: string, is: boolean, { reminders }: Bound, now: number): Promise<void> {
  if (is) await reminders.restore(id);
  else await reminders.settle(id, 'dropped', now);
}
