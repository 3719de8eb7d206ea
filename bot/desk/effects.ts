import type { Effect } from '../effect.js';
import type { Bound } from '../store/ports.js';

/** Takes effects back, the last first. */
export async function takenBack(effects: readonly Effect[], store: Bound, now: number): Promise<void> {
  for (const effect of [...effects].reverse()) await back(effect, store, now);
}

/** Puts effects in again, in the order they were made. */
export async function putBack(effects: readonly Effect[], store: Bound, now: number): Promise<void> {
  for (const effect of effects) await again(effect, store, now);
}

function back(
  effect: Effect,
  { makers, measurements, putUps, readings, shelf, works, yarns }: Bound,
  now: number,
): Promise<void> {
  switch (effect.did) {
    case 'measured':
      return measurements.withdraw(effect.id, now);
    case 'withdrew':
      return measurements.restore(effect.id);
    case 'read':
      return readings.withdraw(effect.id, now);
    case 'withdrew_reading':
      return readings.restore(effect.id);
    case 'counted':
      return works.undoCount(effect.workId, effect.seq, now);
    case 'moved_stop':
      return works.stopAt(effect.workId, effect.from);
    case 'described':
      return yarns.describe(effect.yarnId, effect.before);
    case 'moved_stock':
      return held(shelf.undoMove(effect.moveId, now));
    case 'sold_as':
      return putUps.withdraw(effect.putUpId, now);
    case 'dropped_put_up':
      return putUps.restore(effect.putUpId);
    case 'set_currency':
      return makers.setCurrency(effect.makerId, effect.before ?? undefined);
    case 'started':
      return works.end(effect.workId, now, 'given_up');
    case 'ended':
      return works.reopen(effect.workId);
  }
}

function again(
  effect: Effect,
  { makers, measurements, putUps, readings, shelf, works, yarns }: Bound,
  now: number,
): Promise<void> {
  switch (effect.did) {
    case 'measured':
      return measurements.restore(effect.id);
    case 'withdrew':
      return measurements.withdraw(effect.id, now);
    case 'read':
      return readings.restore(effect.id);
    case 'withdrew_reading':
      return readings.withdraw(effect.id, now);
    case 'counted':
      return works.redoCount(effect.workId, effect.seq);
    case 'moved_stop':
      return works.stopAt(effect.workId, effect.to);
    case 'described':
      return yarns.describe(effect.yarnId, effect.after);
    case 'moved_stock':
      return held(shelf.redoMove(effect.moveId));
    case 'sold_as':
      return putUps.restore(effect.putUpId);
    case 'dropped_put_up':
      return putUps.withdraw(effect.putUpId, now);
    case 'set_currency':
      return makers.setCurrency(effect.makerId, effect.after ?? undefined);
    case 'started':
      return works.reopen(effect.workId);
    case 'ended':
      return works.end(effect.workId, now, effect.outcome);
  }
}

/** Whether the shelf can take it was asked before anything was turned. */
async function held(turned: Promise<boolean>): Promise<void> {
  if (!(await turned)) throw new Error('a lot does not hold what it was seen to hold');
}
