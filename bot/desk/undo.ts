import { count, evidence, gauge, pieceById, say, type Words } from '../../core/index.js';
import { type Change, type Conversation, inHand } from '../conversation.js';
import { askInWords } from './changes.js';
import { type At, type Desk, refusal } from './desk.js';
import { benchName } from './names.js';
import { tried } from './planning.js';

/** The last change of this talk taken back, or the last one taken back put in again. */
export const undoDesk: Desk<'undo'> = async ({ redo }, at) => {
  const { changes } = at.talk;
  const index = redo ? changes.findIndex((change) => change.undone) : changes.findLastIndex((change) => !change.undone);
  const change = changes[index];
  if (change === undefined) return refusal(at, { code: 'nothing_to_undo', redo });
  await applied(change, redo, at);
  const edit = change.kind === 'plan' ? { turned: { other: inHand(at.talk) }, plan: inHand(change.other) } : undefined;
  const turned = { ...change, ...edit?.turned, undone: !redo };
  const talk: Conversation = { ...at.talk, ...edit?.plan, changes: changes.with(index, turned) };
  const lead = redo ? say`Back: ${change.said}` : say`Taken back: ${change.said}`;
  const lines = await standing(change, { ...at, talk });
  const offers = redo
    ? [{ button: 'Undo', say: 'undo', request: { kind: 'undo' as const, redo: false } }]
    : [{ button: 'Put It Back', say: 'put it back', request: { kind: 'undo' as const, redo: true } }];
  return { reply: { kind: 'answer', lead, lines, examples: [], offers }, talk };
};

async function applied(change: Change, redo: boolean, at: At): Promise<void> {
  switch (change.kind) {
    case 'measurement':
      for (const id of change.ids) {
        await (redo ? at.store.measurements.restore(id) : at.store.measurements.withdraw(id, at.now));
      }
      return;
    case 'units': {
      const units = redo ? change.id : change.before;
      return at.store.makers.setUnits(at.maker.id, units === 'cm' || units === 'in' ? units : undefined);
    }
    case 'plan':
      return;
  }
}

/** How things stand now, in a line. */
async function standing(change: Change, at: At): Promise<Words[]> {
  switch (change.kind) {
    case 'measurement':
      return remaining(change.ids[0] ?? '', at);
    case 'units':
      return [];
    case 'plan':
      return planInHand(at);
  }
}

async function remaining(measurementId: string, at: At): Promise<Words[]> {
  const profileId = (await at.store.measurements.get(measurementId))?.profileId;
  const profile = (await at.store.profiles.of(at.maker.id)).find(({ id }) => id === profileId);
  if (profile === undefined) return [];
  const { pieces } = gauge(evidence(await at.store.measurements.of(profile.id)));
  const where = benchName(profile.machine, profile.yarn);
  return [say`That leaves ${pieces === 0 ? 'nothing' : count(pieces, 'piece')} measured for ${where}.`];
}

/** The plan as it now stands; its machine is the one used last again. */
async function planInHand(at: At): Promise<Words[]> {
  const { subject, pending } = at.talk;
  if (pending !== undefined) return [say`What I asked before it is open again.`];
  const piece = pieceById(subject?.piece ?? '');
  if (subject === undefined || piece === undefined) return [];
  const { outcome, profile } = await tried(subject, piece, at);
  if (!outcome.ok || profile === undefined) return [];
  await at.store.profiles.used(profile.id, at.now);
  const { label, rows, needles } = outcome.value;
  const on = needles === undefined ? say`` : say` on ${count(needles, 'needle')}`;
  const sizes = askInWords(subject).reduce((line, words) => say`${line}, ${words}`);
  return [say`Your ${label.toLowerCase()} now: ${sizes}; ${count(rows, 'row')}${on}.`];
}
