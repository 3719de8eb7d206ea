import { dayOf, type Outcome, type Plan, pieceById } from '../../../core/index.js';
import type { AnyProblem } from '../../problems.js';
import type { BatchReply, Schedule } from '../../replies/batch.js';
import type { PlanAsk } from '../../request.js';
import type { BatchPart, Maker, StoredBatch } from '../../store/ports.js';
import type { At } from '../desk.js';
import { tried } from '../plan/planning.js';
import { ofBatch, scheduleKept, scheduleOf } from '../time/schedule.js';
import { wallOf } from '../time/wall.js';
import { doneOf, going, isStaged, leftOf } from './batch-parts.js';
import { type Handed, handOf } from './hands.js';
import { scheduleStaged } from './two-stages.js';

/** What a batch is of, and who makes it. */
export type Drafted = Pick<StoredBatch, 'ownerId' | 'pieces' | 'dueDay' | 'parts'> & { ask: PlanAsk };

/** Each who goes on, ready to be reckoned with, and the plan of those who knit, in their own gauge. */
type Ready = { part: BatchPart; handed: Handed; plan: Plan };

/**
 * When the rest of a batch is ready: dealt anew, or with each keeping their share.
 * @returns the schedule, undefined where nothing is left to make
 */
export async function scheduled(
  draft: Drafted,
  way: 'anew' | 'kept',
  at: At,
): Promise<Outcome<Schedule | undefined, AnyProblem>> {
  const left = leftOf(draft);
  if (left === 0) return { ok: true, value: undefined };
  const all = await everyone(draft, at);
  if (!all.ok) return all;
  const handed = all.value.map((one) => one.handed);
  if (isStaged(draft)) {
    const [knitter, finisher] = (['knit', 'finish'] as const).map((is) =>
      all.value.find(({ part }) => part.stage === is),
    );
    if (knitter === undefined || finisher === undefined)
      return { ok: false, problems: [{ code: 'of_batch', problem: { code: 'no_makers' } }] };
    const knitted = Math.min(left, Math.max(0, knitter.part.done - finisher.part.done));
    const pairing = { knitter: knitter.handed, finisher: finisher.handed, pieces: left, knitted };
    const staged = scheduleStaged(pairing, draft.dueDay, wallOf(at.now, at.maker.timeZone));
    return staged.ok ? staged : { ok: false, problems: staged.problems.map((problem) => ofBatch(problem, handed)) };
  }
  if (way === 'anew') return scheduleOf(handed, left, draft.dueDay, at);
  const kept = all.value.map(({ part, handed: one }) => ({ handed: one, left: Math.max(0, part.share - part.done) }));
  return scheduleKept(kept, draft.dueDay, at);
}

async function everyone({ ask, ownerId, parts }: Drafted, at: At): Promise<Outcome<Ready[], AnyProblem>> {
  const makers = await at.store.makers.all();
  const ready: Ready[] = [];
  const problems: AnyProblem[] = [];
  const go = going({ parts });
  const knits = go.find(({ stage }) => stage === 'knit');
  for (const part of go) {
    const maker = makers.find(({ id }) => id === part.makerId);
    if (maker === undefined) throw new Error('a batch of a maker that is not');
    // Who only finishes does so what another has knitted.
    const knitter = part.stage === 'finish' ? makers.find(({ id }) => id === knits?.makerId) : maker;
    const plan = knitter && (await planOf(ask, knitter, ownerId, at));
    if (plan === undefined) {
      problems.push({ code: 'no_gauge_of', who: (knitter ?? maker).name });
      continue;
    }
    const handed = await handOf(plan, maker, at, part.away);
    if ('code' in handed) problems.push(handed);
    else ready.push({ part, handed, plan });
  }
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value: ready };
}

/** The piece in a maker's own gauge: on the bench asked for where they asked, else on the one they used last. */
export async function planOf(ask: PlanAsk, maker: Maker, ownerId: string, at: At): Promise<Plan | undefined> {
  const piece = pieceById(ask.piece ?? '');
  if (piece === undefined) return undefined;
  const own = maker.id === ownerId ? ask : { ...ask, on: {} };
  const { outcome } = await tried(own, piece, { ...at, maker });
  return outcome.ok ? outcome.value : undefined;
}

/** The parts with what is dealt to each from now on. */
export const redealt = (parts: readonly BatchPart[], schedule: Schedule): BatchPart[] =>
  parts.map((part) => {
    const dealt = schedule.makers.find(({ id, stage }) => id === part.makerId && stage === part.stage);
    return { ...part, share: part.done + (dealt?.days.length ?? 0) };
  });

/** A batch as its makers see it: what each has of it, and the asker's own rows. */
export async function batchReply(
  became: BatchReply['became'],
  draft: Drafted,
  outcome: Outcome<Schedule | undefined, AnyProblem>,
  at: At,
): Promise<Omit<BatchReply, 'changed'>> {
  const makers = await at.store.makers.all();
  const own = draft.parts.find(({ makerId, isOut, stage }) => makerId === at.maker.id && !isOut && stage !== 'finish');
  const plan = own && (await planOf(draft.ask, at.maker, draft.ownerId, at));
  return {
    kind: 'batch',
    became,
    label: pieceById(draft.ask.piece ?? '')?.label ?? 'piece',
    pieces: draft.pieces,
    done: doneOf(draft),
    dueDay: draft.dueDay,
    today: dayOf(wallOf(at.now, at.maker.timeZone)),
    schedule: outcome.ok ? outcome.value : undefined,
    problems: outcome.ok ? [] : (outcome.problems as BatchReply['problems']),
    members: draft.parts
      .filter(({ isOut, done }) => !isOut || done > 0)
      .map(({ makerId, stage, share, done }) => ({
        name: makers.find(({ id }) => id === makerId)?.name ?? '',
        isOwn: makerId === at.maker.id,
        stage,
        share,
        done,
      })),
    own: plan && { rows: plan.rows, needles: plan.needles },
  };
}
