import { say, type Words } from '../../core/index.js';
import { longDay } from '../day-words.js';
import type { Request } from '../request.js';
import { type At, type DeskAnswer, refusal } from './desk.js';

import { saidAgain } from './plan/plan.js';
import { inLine, nameOf, shownAsk } from './share/shares.js';
import { zoned, zonedFor } from './time/zoned.js';
import { workMeant, workShown } from './work/work-meant.js';
import { countOffers } from './work/work-offers.js';

/** A button that this talk knows nothing of: of another maker's card, or of an old one, with what stands now in its place. */
export async function oldCard(turn: string, at: At): Promise<DeskAnswer> {
  return (
    (await ofAnother(turn, at)) ??
    (await asItIsNow(turn, at)) ??
    refusal(at, { code: 'unread', why: 'expired', words: '' })
  );
}

/** The plan or the work of the maker, under a line that says how old the card is; undefined where there is neither. */
async function asItIsNow(turn: string, at: At): Promise<DeskAnswer | undefined> {
  const madeAt = madeAtMs(turn);
  if (madeAt === undefined) return undefined;
  const { timeZone } = at.maker;
  const [then, now] = [await zoned(madeAt, timeZone), await zonedFor(at)];
  const day = then === undefined || then.day === now.day ? 'earlier today' : longDay(then.day, now.day);
  const meant = at.talk.planId === undefined || at.talk.workId !== undefined ? await workMeant({}, at) : undefined;
  if (meant !== undefined) {
    const work = await workShown(meant, at);
    const notes = [say`That card is from ${day}, and nothing was counted. Here is the work as it stands.`];
    return { reply: { kind: 'work', became: 'shown', work, notes, offers: countOffers(work) }, talk: at.talk };
  }
  const talk = at.talk.planId === undefined ? { ...at.talk, ...(await lastPlan(at)) } : at.talk;
  const plan = await saidAgain([], { ...at, talk });
  const since = say`That card is from ${day} and the plan has moved on. Here it is now.`;
  return plan && { reply: { ...plan, since }, talk };
}

async function lastPlan({ store, maker }: At) {
  const last = await store.plans.latest(maker.id);
  return last && { subject: last.ask, planId: last.id };
}

/** When a turn was, which its id tells; undefined for an id that tells no time. */
function madeAtMs(turn: string): number | undefined {
  const [, high = '', low = ''] = /^([\da-f]{8})-([\da-f]{4})-7/.exec(turn) ?? [];
  return high === '' ? undefined : Number.parseInt(high + low, 16);
}

/** What a co-maker who presses a button of another's card in a thread may have: its size, in their own gauge. */
async function ofAnother(turn: string, at: At): Promise<DeskAnswer | undefined> {
  if (!at.place.startsWith('thread:')) return undefined;
  const owner = await at.store.conversations.offering(at.place, turn, at.now);
  if (owner === undefined || owner.makerId === at.maker.id) return undefined;
  const name = await nameOf(owner.makerId, at);
  const planId = owner.choices.map(planOf).find((id) => id !== undefined);
  const plan = planId === undefined ? undefined : await at.store.plans.get(planId, owner.makerId);
  if (plan === undefined)
    return answered(at, say`This is ${name}'s card`, [
      say`Its buttons are for ${name}. Ask me yourself, and you get your own.`,
    ]);
  const ask = shownAsk(plan.ask);
  return answered(
    at,
    say`This is ${name}'s plan. Size it to your own gauge?`,
    [say`The ${inLine(ask)}. Your rows come from your own gauge.`],
    [{ button: 'Size to My Gauge', request: { kind: 'plan', ask } }],
  );
}

const planOf = (request: Request): string | undefined =>
  request.kind === 'start' || request.kind === 'steps' ? request.planId : undefined;

const answered = (
  at: At,
  lead: Words,
  lines: Words[],
  offers: { button: string; request: Request }[] = [],
): DeskAnswer => ({
  reply: { kind: 'answer', isOwn: true, lead, lines, examples: [], offers },
  talk: at.talk,
});
