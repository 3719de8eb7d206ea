import { type Plan, say, type Words } from '../../../core/index.js';
import { withStored } from '../../conversation.js';
import { longDay } from '../../day-words.js';
import type { Effect } from '../../effect.js';
import type { Offered } from '../../reply.js';
import type { PlanAsk } from '../../request.js';
import type { BatchPart, StoredBatch } from '../../store/ports.js';
import { type At, type DeskAnswer, refusal } from '../desk.js';
import { UNDO } from '../offers.js';
import { asked, hoursQuestion } from '../question.js';
import { dayNumber } from '../time/days.js';
import { batchReply, redealt, scheduled } from './batch-plan.js';
import { isOwnHours } from './hands.js';
import { partsFor } from './team.js';

export const REMIND: Offered = { button: 'Remind Me', say: 'remind me', request: { kind: 'remind', act: 'set' } };

/** A plan that can be, to be stored by `keep` once it is dealt. */
type Planned = { ask: PlanAsk; made: Plan; planId: string; follows: boolean; keep(): Promise<void> };

/** A plan with those who make it, dealt out; the batch of the plan before it where this changes that. */
export async function batchDealt({ ask, made, planId, follows, keep }: Planned, at: At): Promise<DeskAnswer> {
  const { team, due } = ask;
  if (team === undefined) throw new Error('a batch of nobody');
  if (due === undefined)
    return asked(at, { kind: 'plan', ask, follows }, ['due'], {
      asks: say`By which day must all ${ask.copies} be ready?`,
      because: say`I deal them out so that the last is done as early as can be, and tell whether that is in time.`,
      examples: ['by 5 December', 'for the market on 12 December', 'never mind'],
    });
  const named = await partsFor(team, at);
  if ('code' in named) return refusal(at, named);
  const before = follows && at.talk.planId !== undefined ? await at.store.batches.ofPlan(at.talk.planId) : undefined;
  const others = (before?.parts ?? []).filter((old) => !named.some((one) => isSame(one, old)));
  const parts = [...named.map((part) => carried(part, before)), ...others.map((old) => ({ ...old, isOut: true }))];
  const dueDay = dayNumber(due.day);
  const draft = { ownerId: at.maker.id, pieces: ask.copies, dueDay, parts, ask };
  const outcome = await scheduled(draft, 'anew', at);
  if (!outcome.ok && outcome.problems.every(isOwnHours)) return hoursQuestion({ kind: 'plan', ask, follows }, at);
  if (!outcome.ok) return refusal(at, ...outcome.problems);
  const dealt = { ...draft, parts: outcome.value === undefined ? parts : redealt(parts, outcome.value) };
  const readyDay = outcome.value?.readyDay ?? dueDay;
  await keep();
  const effect = await kept({ ...dealt, planId, readyDay }, before, at);
  const changed = before === undefined ? [] : await changesOf(before, { ...dealt, readyDay }, at);
  const reply = await batchReply(before === undefined ? 'dealt' : 'replanned', dealt, outcome, at);
  const label = made.label.toLowerCase();
  const talk = { ...at.talk, subject: ask, planId, rowsMake: made.landing.dimension, pending: undefined };
  return {
    reply: { ...reply, changed, offers: [REMIND, UNDO] },
    talk: withStored(talk, `the batch of ${ask.copies}, ${label}`, [effect]),
  };
}

const isSame = (a: BatchPart, b: BatchPart): boolean => a.makerId === b.makerId && a.stage === b.stage;

/** A part with what its maker has done already and the days they are away. */
function carried(part: BatchPart, before: StoredBatch | undefined): BatchPart {
  const old = before?.parts.find((one) => isSame(one, part));
  return old === undefined ? part : { ...part, done: old.done, away: old.away };
}

type Settled = Pick<StoredBatch, 'ownerId' | 'planId' | 'pieces' | 'dueDay' | 'readyDay' | 'parts'>;

/** Stores a batch, new or in the place of what it was; the change as undo takes it back. */
export async function kept(settled: Settled, before: StoredBatch | undefined, at: At): Promise<Effect> {
  const id = before?.id ?? at.newId();
  if (before === undefined) await at.store.batches.add({ id, ...settled }, at.now);
  else if (!(await at.store.batches.replace({ id, version: before.version, ...settled })))
    throw new Error('a batch changed within a turn');
  return {
    did: 'dealt',
    batchId: id,
    before: before === undefined ? null : snapshot(before),
    after: snapshot(settled),
  };
}

/** A batch as it is dealt, without what is done. */
export const snapshot = ({ planId, pieces, dueDay, readyDay, parts }: Settled) => ({
  planId,
  pieces,
  dueDay,
  readyDay,
  parts: parts.filter(({ isOut }) => !isOut).map(({ done, ...part }) => ({ ...part, away: [...part.away] })),
});

const VERBS = { whole: 'makes', knit: 'knits', finish: 'finishes' } as const;

/** What dealing anew changed: the share of each, and the day all is ready. */
export async function changesOf(
  before: Pick<StoredBatch, 'parts' | 'pieces' | 'readyDay' | 'dueDay'>,
  after: Pick<StoredBatch, 'parts' | 'pieces' | 'readyDay' | 'dueDay'>,
  at: At,
): Promise<Words[]> {
  const makers = await at.store.makers.all();
  const today = Math.floor(at.now / 86_400_000);
  const shares = after.parts.flatMap((part) => {
    const old = before.parts.find((one) => isSame(one, part) && !one.isOut);
    const name = makers.find(({ id }) => id === part.makerId)?.name ?? '';
    if (part.isOut) return old === undefined ? [] : [say`${name} ${VERBS[part.stage]} no more`];
    if (old === undefined) return [say`${name} ${VERBS[part.stage]} ${part.share}`];
    return old.share === part.share ? [] : [say`${name} ${part.share} instead of ${old.share}`];
  });
  const ready =
    before.readyDay === after.readyDay
      ? []
      : [say`ready ${longDay(after.readyDay, today)} instead of ${longDay(before.readyDay, today)}`];
  const pieces = before.pieces === after.pieces ? [] : [say`${after.pieces} pieces instead of ${before.pieces}`];
  return [...pieces, ...shares, ...ready];
}
