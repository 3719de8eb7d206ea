import { say } from '../../core/index.js';
import { withStored } from '../conversation.js';
import type { Share } from '../store/ports.js';
import type { At, Desk } from './desk.js';
import { makerMeant } from './makers-meant.js';
import { inOneLine, nameOf, ownOrigin, shareRefusal, shownTo } from './shares.js';

/** A plan is shown no more: to the one named, else to all who were shown the plan of this talk. */
export const withdrawShareDesk: Desk<'withdraw_share'> = async ({ with: said }, at) => {
  const named = said === undefined || isAll(said) ? undefined : await makerMeant(said, at);
  if (named !== undefined && 'code' in named) return shareRefusal(at, named);
  const shares = await sharesMeant(named?.id, at);
  if (shares.length === 0) return shareRefusal(at, { code: 'nothing_shared', said: named ? (said ?? '') : '' });
  for (const { id } of shares) await at.store.shares.withdraw(id, at.now);
  const names = inOneLine(await Promise.all(shares.map((share) => shownTo(share, at))), 'reader');
  const takers = (await Promise.all(shares.map(({ id }) => at.store.shares.takenBy(id)))).flat();
  const holders = await Promise.all([...new Set(takers.map(({ makerId }) => makerId))].map((id) => nameOf(id, at)));
  return {
    reply: {
      kind: 'answer',
      isOwn: true,
      lead: say`Withdrawn from ${names}`,
      lines: [
        say`It can be sized no more. What was read cannot be unread${holders.length === 0 ? '' : `, and what ${inOneLine(holders, 'maker')} made of it stays theirs`}.`,
      ],
      examples: [],
      offers: [{ button: 'Put It Back', say: 'undo', request: { kind: 'undo', redo: false } }],
    },
    talk: withStored(
      at.talk,
      `the withdrawal from ${names}`,
      shares.map(({ id }) => ({ did: 'withdrew_share', shareId: id })),
    ),
  };
};

const isAll = (said: string): boolean =>
  ['everyone', 'all', 'them', 'here', 'the channel'].includes(said.toLowerCase());

/** Those with the one named; of the plan in hand where it is shared, else of the plan shared last. */
async function sharesMeant(makerId: string | undefined, at: At): Promise<Share[]> {
  const own = await at.store.shares.of(at.maker.id);
  const isTo = ({ to }: Share): boolean => makerId === undefined || ('makerId' in to && to.makerId === makerId);
  const fitting = own.filter(isTo);
  const origin = at.talk.subject && ownOrigin(at.talk.subject, at);
  const ofTalk = fitting.filter((share) => share.origin === origin);
  return ofTalk.length > 0 ? ofTalk : fitting.filter((share) => share.origin === fitting.at(-1)?.origin);
}
