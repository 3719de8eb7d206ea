import { say } from '../../core/index.js';
import type { Change } from '../conversation.js';
import { type Desk, refusal } from './desk.js';

/** The last stored change of this talk taken back, or the last one taken back put in again. */
export const undoDesk: Desk<'undo'> = async ({ redo }, at) => {
  const { changes } = at.talk;
  const index = redo ? changes.findIndex((change) => change.undone) : changes.findLastIndex((change) => !change.undone);
  const change = changes[index];
  if (change === undefined) return refusal(at, { code: 'nothing_to_undo', redo });
  await applied(change, redo, at);
  const talk = { ...at.talk, changes: changes.with(index, { ...change, undone: !redo }) };
  const lead = redo ? say`Back: ${change.said}` : say`Taken back: ${change.said}`;
  const offers = redo
    ? [{ button: 'Undo', say: 'undo', request: { kind: 'undo' as const, redo: false } }]
    : [{ button: 'Put It Back', say: 'put it back', request: { kind: 'undo' as const, redo: true } }];
  return { reply: { kind: 'answer', lead, lines: [], examples: [], offers }, talk };
};

async function applied(change: Change, redo: boolean, at: Parameters<typeof undoDesk>[1]): Promise<void> {
  switch (change.kind) {
    case 'measurement':
      return redo ? at.store.measurements.restore(change.id) : at.store.measurements.withdraw(change.id, at.now);
    case 'units': {
      const units = redo ? change.id : change.before;
      return at.store.makers.setUnits(at.maker.id, units === 'cm' || units === 'in' ? units : undefined);
    }
  }
}
