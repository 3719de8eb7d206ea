import { count, evidence, gauge, pieceById, say, type Words } from '../../core/index.js';
import { type Change, type Conversation, inHand } from '../conversation.js';
import type { Effect } from '../effect.js';
import type { Profile, StoredMeasurement } from '../store/ports.js';
import { askInWords } from './changes.js';
import { type At, type Desk, refusal } from './desk.js';
import { putBack, takenBack } from './effects.js';
import { boughtLine } from './gauge/bought.js';
import { benchName } from './names.js';
import { UNDO } from './offers.js';
import { tried } from './plan/planning.js';
import { heldAgain } from './share/held.js';
import { remindersMoved } from './time/remind.js';
import { hasMovedOn } from './work/moved-on.js';
import { workMeant } from './work/work-meant.js';
import { holdsWords } from './yarn/lots.js';

/** The last change of this talk taken back, or the last one taken back put in again. */
export const undoDesk: Desk<'undo'> = async ({ redo }, at) => {
  const { changes } = at.talk;
  const index = redo ? changes.findIndex((change) => change.undone) : changes.findLastIndex((change) => !change.undone);
  const change = changes[index];
  if (change === undefined) return refusal(at, { code: 'nothing_to_undo', redo });
  const touched = await gaugeTouched(change, at);
  if (!(await turnedInStore(change, redo, at))) return refusal(at, { code: 'moved_on', said: change.said });
  const edit = change.kind === 'plan' ? { turned: { other: inHand(at.talk) }, plan: inHand(change.other) } : undefined;
  const turned = { ...change, ...edit?.turned, undone: !redo };
  const workId = workAfter(change, redo, at.talk.workId);
  const leadsIn = change.kind === 'units' ? undefined : at.talk.leadsIn;
  const dealt = await planDealt(change, at);
  const talk: Conversation = {
    ...at.talk,
    ...edit?.plan,
    ...dealt,
    leadsIn,
    workId,
    changes: changes.with(index, turned),
  };
  const lead = redo ? say`Back: ${change.said}` : say`Taken back: ${change.said}`;
  const lines = await standing(change, touched, { ...at, talk });
  const offers = redo
    ? [UNDO]
    : [{ button: 'Put It Back', say: 'put it back', request: { kind: 'undo' as const, redo: true } }];
  return { reply: { kind: 'answer', lead, lines, examples: [], offers }, talk };
};

/** Takes a change back in the store, or puts it in again; false, and nothing done, where what it stored has moved on. */
export async function turnedInStore(change: Change, redo: boolean, at: At): Promise<boolean> {
  const [out, back] = swapOf(change, redo);
  if ((await hasMovedOn(out, false, at)) || (await hasMovedOn(back, true, at))) return false;
  await applied(change, redo, at);
  if (change.kind === 'plan') await remindersMoved(at.talk.planId, change.other.planId, at);
  return true;
}

/** The work of the talk once a start or an end of it is taken back or put in again. */
function workAfter(change: Change, redo: boolean, now: string | undefined): string | undefined {
  const effects = change.kind === 'stored' ? change.effects : [];
  const edge = effects.find((effect) => effect.did === 'started' || effect.did === 'ended');
  if (edge === undefined) return now;
  return (edge.did === 'started') === redo ? edge.workId : undefined;
}

/** The plan that the batch of a change is of, once that change was turned; its follow-ups are about it again. */
async function planDealt(change: Change, at: At): Promise<Pick<Conversation, 'subject' | 'planId'> | undefined> {
  const effects = change.kind === 'stored' ? change.effects : [];
  const dealt = effects.find((effect) => effect.did === 'dealt');
  const batch = dealt && (await at.store.batches.get(dealt.batchId));
  const plan = batch && (await at.store.plans.get(batch.planId, at.maker.id));
  return plan && { subject: plan.ask, planId: plan.id };
}

async function applied(change: Change, redo: boolean, at: At): Promise<void> {
  switch (change.kind) {
    case 'stored':
      return swapped(change, redo, at);
    case 'units': {
      const units = redo ? change.id : change.before;
      return at.store.makers.setUnits(at.maker.id, units === 'cm' || units === 'in' ? units : undefined);
    }
    case 'plan':
      return heldAgain(at.talk.subject, change.other.subject, redo, at);
  }
}

/** What is to be taken back and what put in again: what a correction stored and what it stood for change places. */
function swapOf(change: Change, redo: boolean): [Effect[], Effect[]] {
  if (change.kind !== 'stored') return [[], []];
  const { effects, replaced = [] } = change;
  return redo ? [replaced, effects] : [effects, replaced];
}

async function swapped(change: Change, redo: boolean, at: At): Promise<void> {
  const [out, back] = swapOf(change, redo);
  await takenBack(out, at.store, at.now);
  await putBack(back, at.store, at.now);
}

/** How things stand now, in a line. */
async function standing(change: Change, touched: Touched | undefined, at: At): Promise<Words[]> {
  switch (change.kind) {
    case 'stored':
      return afterwards(change.effects, touched, at);
    case 'units':
      return [];
    case 'plan':
      return planInHand(at);
  }
}

/** What is left of the gauge that was touched, else where the work stands. */
async function afterwards(effects: readonly Effect[], touched: Touched | undefined, at: At): Promise<Words[]> {
  const gauge = touched === undefined ? [] : await remaining(touched, at);
  const ids = effects.flatMap((effect) => (effect.did === 'moved_stock' ? [effect.lotId] : []));
  const lots = ids.length === 0 ? [] : (await at.store.shelf.of(at.maker.id)).filter(({ id }) => ids.includes(id));
  const shelf = lots.map((lot) => say`On the shelf: ${holdsWords(lot)}.`);
  const works = effects.flatMap((effect) => ('workId' in effect ? [effect.workId] : []));
  const workId = works[0] ?? at.talk.workId;
  const meant = workId === undefined ? undefined : await workMeant({ workId }, at);
  const tally = meant === undefined ? [] : [say`Your tally: row ${meant.work.rows} of ${meant.work.stopAt}.`];
  return [...gauge, ...shelf, ...tally];
}

/** The profile whose measurements a change touches, and what they were before it is turned back. */
type Touched = { profile: Profile; before: readonly StoredMeasurement[] };

async function gaugeTouched(change: Change, at: At): Promise<Touched | undefined> {
  const effects = change.kind === 'stored' ? change.effects : [];
  const measured = effects.find((effect) => effect.did === 'measured' || effect.did === 'withdrew');
  const stored = measured === undefined ? undefined : await at.store.measurements.get(measured.id);
  const profile = (await at.store.profiles.of(at.maker.id)).find(({ id }) => id === stored?.profileId);
  return profile && { profile, before: await at.store.measurements.of(profile.id) };
}

async function remaining({ profile, before }: Touched, at: At): Promise<Words[]> {
  const { pieces } = gauge(evidence(await at.store.measurements.of(profile.id)));
  const where = benchName(profile.machine, profile.yarn, profile.tension);
  const left = say`Measured now for ${where}: ${pieces === 0 ? 'nothing' : count(pieces, 'piece')}.`;
  return [left, ...(await boughtLine(at, profile, before))];
}

/** The plan as it now stands; its machine is the one used last again. */
async function planInHand(at: At): Promise<Words[]> {
  const { subject, pending } = at.talk;
  if (pending !== undefined) return [say`What I asked before it is open again.`];
  const piece = pieceById(subject?.piece ?? '');
  if (subject === undefined || piece === undefined) return [];
  const sizes = askInWords(subject).reduce((line, words) => say`${line}, ${words}`);
  if (subject.sizes !== undefined) return [say`Your ${piece.label.toLowerCase()} now: ${sizes}.`];
  const { outcome, profile } = await tried(subject, piece, at);
  if (!outcome.ok || profile === undefined) return [];
  await at.store.profiles.used(profile.id, at.now);
  const { label, rows, needles } = outcome.value;
  const on = needles === undefined ? say`` : say` on ${count(needles, 'needle')}`;
  return [say`Your ${label.toLowerCase()} now: ${sizes}; ${count(rows, 'row')}${on}.`];
}
