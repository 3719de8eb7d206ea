import { changesBetween } from '../changes.js';
import type { Desk, DeskAnswer } from '../desk.js';
import { planDesk } from '../plan/plan.js';
import { besideOwner } from './apart.js';
import { countsOf, ownerName, shareFor, shareRefusal, takenBy } from './shares.js';

/** A plan shared by another, in the asker's own rows; without gauge it asks for one, and waits. */
export const sizeShareDesk: Desk<'size_share'> = async ({ change, ...meant }, at) => {
  const share = await shareFor(meant, at);
  if ('code' in share) return shareRefusal(at, share);
  const isOwner = share.ownerId === at.maker.id;
  const { revision, origin } = share;
  const shared = isOwner ? { origin } : { origin, held: { shareId: share.id, revision } };
  const answer = await planDesk({ kind: 'plan', ask: { ...share.ask, shared } }, at);
  const { reply, talk } = answer;
  if (reply.kind === 'question') return resumable(answer, share.id);
  if (reply.kind !== 'plan') return answer;
  const before = await takenBy(share, at.maker.id, at);
  const was = before && (await at.store.shares.askOf(share.id, before.revision));
  if (!isOwner) await at.store.shares.take({ shareId: share.id, makerId: at.maker.id, revision, answered: revision });
  const owner = await ownerName(share, at);
  const beside = share.counts === undefined || isOwner ? [] : besideOwner(countsOf(reply.plan), share.counts, owner);
  return {
    reply: {
      ...reply,
      shared: beside,
      changed: change === true && was !== undefined ? changesBetween(was, share.ask) : [],
    },
    talk,
  };
};

/** What waits for the answer is the share, so that it counts as taken once it is sized. */
function resumable({ reply, talk }: DeskAnswer, shareId: string): DeskAnswer {
  const { pending } = talk;
  return { reply, talk: { ...talk, pending: pending && { ...pending, request: { kind: 'size_share', shareId } } } };
}
