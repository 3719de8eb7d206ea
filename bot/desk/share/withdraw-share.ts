import { say } from '../../../core/index.js';
import { withStored } from '../../conversation.js';
import type { Request } from '../../request.js';
import type { Share } from '../../store/ports.js';
import { makerMeant } from '../batch/makers-meant.js';
import type { At, Desk, DeskAnswer } from '../desk.js';
import { NEVER_MIND } from '../offers.js';
import { asked } from '../question.js';
import { inOneLine, labelOf, nameOf, ownOrigin, shareRefusal, shownTo } from './shares.js';

type Withdrawal = Request & { kind: 'withdraw_share' };

/** A plan is shown no more: to the one named, else to all who were shown the plan of this talk; or every plan at once. */
export const withdrawShareDesk: Desk<'withdraw_share'> = async (request, at) => {
  const { with: said } = request;
  const named = said === undefined || isAll(said) ? undefined : await makerMeant(said, at);
  if (named !== undefined && 'code' in named) return shareRefusal(at, named);
  const shares = await sharesMeant(request, named?.id, at);
  if (shares.length === 0) return shareRefusal(at, { code: 'nothing_shared', said: named ? (said ?? '') : '' });
  if (request.every && !request.sure && shares.length > 1) return everyQuestion(request, shares, at);
  for (const { id } of shares) await at.store.shares.withdraw(id, at.now);
  const names = inOneLine([...new Set(await Promise.all(shares.map((share) => shownTo(share, at))))], 'reader');
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

/** Asked once, with how many there are and what they are. */
async function everyQuestion(request: Withdrawal, shares: readonly Share[], at: At): Promise<DeskAnswer> {
  const each = await Promise.all(
    shares.slice(0, MOST_NAMED).map(async (share) => `the ${labelOf(share.ask)} from ${await shownTo(share, at)}`),
  );
  const more = shares.length > each.length ? ` and ${shares.length - each.length} more` : '';
  const sure: Withdrawal = { ...request, sure: true };
  return asked(at, sure, ['confirm'], {
    asks: say`Withdraw all ${shares.length} shares?`,
    because: say`These: ${each.join(', ')}${more}. What others made of them stays theirs.`,
    examples: ['yes', 'never mind', 'what have I shared'],
    isOwn: true,
    offers: [{ button: `Withdraw All ${shares.length}`, request: sure }, NEVER_MIND],
  });
}

/** So many shares are named before they are withdrawn. */
const MOST_NAMED = 6;

const isAll = (said: string): boolean =>
  ['everyone', 'everybody', 'all', 'them', 'here', 'the channel'].includes(said.toLowerCase());

/** Those with the one named and of the piece named; of the plan in hand where it is shared, else of the plan shared last. */
async function sharesMeant(
  { every, piece, origin }: Withdrawal,
  makerId: string | undefined,
  at: At,
): Promise<Share[]> {
  const own = await at.store.shares.of(at.maker.id, origin);
  const fitting = own.filter(
    ({ to, ask }) =>
      (makerId === undefined || ('makerId' in to && to.makerId === makerId)) &&
      (piece === undefined || ask.piece === piece),
  );
  if (every) return fitting;
  const inHand = at.talk.subject && ownOrigin(at.talk.subject, at);
  const ofTalk = fitting.filter((share) => share.origin === inHand);
  return ofTalk.length > 0 ? ofTalk : fitting.filter((share) => share.origin === fitting.at(-1)?.origin);
}
