import type { Day } from '../../../core/index.js';
import { dayOf } from '../../../core/index.js';
import { withStored } from '../../conversation.js';
import type { Effect } from '../../effect.js';
import type { AwayAsk, BatchStage } from '../../request.js';
import type { BatchPart, StoredBatch } from '../../store/ports.js';
import { type At, type Desk, type DeskAnswer, refusal } from '../desk.js';
import { UNDO } from '../offers.js';
import { wallOf } from '../time/wall.js';
import { changesOf, kept, REMIND } from './batch-deal.js';
import { going, leftOf } from './batch-parts.js';
import { batchReply, type Drafted, redealt, scheduled } from './batch-plan.js';
import { makerCalled } from './team.js';

/** How the batch in hand stands, each with their share; or its rest dealt anew. */
export const batchDesk: Desk<'batch'> = async ({ act }, at) => {
  const batch = await inHand(at);
  if (batch === undefined) return refusal(at, { code: 'no_batch' });
  if (act === 'replan') return changedTo(batch, batch.parts, 'the batch dealt anew', at);
  const reply = await batchReply('shown', batch, await scheduled(batch, 'kept', at), at);
  return { reply: { ...reply, changed: [], offers: [REPLAN, REMIND] }, talk: at.talk };
};

const REPLAN = { button: 'Re-plan', say: 're-plan', request: { kind: 'batch' as const, act: 'replan' as const } };

/** So many more done, by the maker unless another is named. */
export const batchDoneDesk: Desk<'batch_done'> = async ({ count, who, stage }, at) => {
  const batch = await inHand(at);
  if (batch === undefined) return refusal(at, { code: 'no_batch' });
  const makers = await at.store.makers.all();
  const maker = who === undefined ? at.maker : makerCalled(who, makers, at.maker);
  const part = maker && partMeant(batch, maker.id, stage);
  if (maker === undefined || part === undefined)
    return refusal(at, {
      code: 'not_in_team',
      said: who ?? at.maker.name,
      makers: going(batch).flatMap(({ makerId }) => makers.find(({ id }) => id === makerId)?.name ?? []),
    });
  const knitted = batch.parts.filter((one) => one.stage !== 'finish').reduce((sum, { done }) => sum + done, 0);
  const max = part.stage === 'knit' ? batch.pieces - knitted : leftOf(batch);
  if (!Number.isInteger(count) || count < 1 || count > max)
    return refusal(at, { code: 'done_outside', given: count, max });
  await at.store.batches.addDone(batch.id, maker.id, part.stage, count);
  const effects: Effect[] = [{ did: 'batch_done', batchId: batch.id, makerId: maker.id, stage: part.stage, by: count }];
  const parts = batch.parts.map((one) => (one === part ? { ...one, done: one.done + count } : one));
  const after = { ...batch, parts };
  if (leftOf(after) === 0) {
    await at.store.batches.end(batch.id, at.now);
    effects.push({ did: 'batch_ended', batchId: batch.id });
  }
  const reply = await batchReply('counted', after, await scheduled(after, 'kept', at), at);
  return {
    reply: { ...reply, changed: [], offers: leftOf(after) === 0 ? [UNDO] : [REPLAN, UNDO] },
    talk: withStored(at.talk, `${count} done by ${maker.name}`, effects),
  };
};

/** The rest dealt anew without somebody, for some days or for good. */
export const batchWithoutDesk: Desk<'batch_without'> = async ({ who, when }, at) => {
  const batch = await inHand(at);
  if (batch === undefined) return refusal(at, { code: 'no_batch' });
  const makers = await at.store.makers.all();
  const maker = makerCalled(who, makers, at.maker);
  if (maker === undefined || !going(batch).some(({ makerId }) => makerId === maker.id))
    return refusal(at, { code: 'not_in_team', said: who, makers: [] });
  const today = dayOf(wallOf(at.now, at.maker.timeZone));
  const away = daysOf(when, today);
  const parts = batch.parts.map((part): BatchPart => {
    if (part.makerId !== maker.id) return part;
    return away === undefined ? { ...part, isOut: true } : { ...part, away: [...part.away, away] };
  });
  return changedTo(batch, parts, `without ${maker.name}`, at);
};

type OpenBatch = StoredBatch & Drafted;

/** The batch of this maker that was made last, with what it is of. */
export async function inHand(at: Pick<At, 'store' | 'maker'>): Promise<OpenBatch | undefined> {
  const batch = await at.store.batches.openOf(at.maker.id);
  const plan = batch && (await at.store.plans.get(batch.planId, batch.ownerId));
  return batch && plan && { ...batch, ask: plan.ask };
}

async function changedTo(batch: OpenBatch, parts: readonly BatchPart[], said: string, at: At): Promise<DeskAnswer> {
  const draft = { ...batch, parts };
  const outcome = await scheduled(draft, 'anew', at);
  if (!outcome.ok) return refusal(at, ...outcome.problems);
  const dealt = { ...draft, parts: outcome.value === undefined ? parts : redealt(parts, outcome.value) };
  const readyDay = outcome.value?.readyDay ?? batch.readyDay;
  const effect = await kept({ ...dealt, readyDay }, batch, at);
  const changed = await changesOf(batch, { ...dealt, readyDay }, at);
  const reply = await batchReply('replanned', dealt, outcome, at);
  return { reply: { ...reply, changed, offers: [REMIND, UNDO] }, talk: withStored(at.talk, said, [effect]) };
}

/** The part that counts: of the stage said, else their only one, else the one that ends a piece. */
function partMeant(batch: StoredBatch, makerId: string, stage: BatchStage | undefined): BatchPart | undefined {
  const own = going(batch).filter((part) => part.makerId === makerId);
  return own.find((part) => part.stage === stage) ?? own.find((part) => part.stage !== 'knit') ?? own[0];
}

const WEEK = 7;
/** Day 0 was a Thursday. */
const MONDAY_BEFORE = 3;

function daysOf(when: AwayAsk, today: Day): { from: Day; to: Day } | undefined {
  const sunday = today + (WEEK - 1) - ((today + MONDAY_BEFORE) % WEEK);
  switch (when) {
    case 'today':
      return { from: today, to: today };
    case 'tomorrow':
      return { from: today + 1, to: today + 1 };
    case 'this_week':
      return { from: today, to: sunday };
    case 'next_week':
      return { from: sunday + 1, to: sunday + WEEK };
    case 'always':
      return undefined;
  }
}
