import type { PlanAsk } from '../../request.js';
import type { At } from '../desk.js';

/**
 * Keeps in step with undo what a maker holds of another's share: the plan that is in hand again is held in its own
 * revision; one that was taken up and is taken back is held no more.
 */
export async function heldAgain(
  was: PlanAsk | undefined,
  now: PlanAsk | undefined,
  redo: boolean,
  at: At,
): Promise<void> {
  const [before, held] = [was?.shared?.held, now?.shared?.held];
  const makerId = at.maker.id;
  if (held !== undefined) await at.store.shares.take({ ...held, makerId, answered: held.revision });
  else if (before !== undefined && !redo) await at.store.shares.release(before.shareId, makerId);
}
