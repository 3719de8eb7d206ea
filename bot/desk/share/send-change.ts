import { say, type Words } from '../../../core/index.js';
import { withStored } from '../../conversation.js';
import type { Effect } from '../../effect.js';
import type { Offered } from '../../reply.js';
import type { PlanAsk } from '../../request.js';
import type { Share } from '../../store/ports.js';
import { shownName } from '../batch/makers-meant.js';
import type { At, Desk, Letter } from '../desk.js';
import { UNDO } from '../offers.js';
import { planMeant } from '../plan/plan-meant.js';
import { changedLetter } from './share-letters.js';
import {
  countsOf,
  inLead,
  inOneLine,
  isSameSize,
  knownAsShared,
  ofSeveral,
  ownOrigin,
  shareRefusal,
  shownAsk,
  shownTo,
} from './shares.js';

/** The plan as it is now shown to all who were shown it as it was; each of them chooses. */
export const sendChangeDesk: Desk<'send_change'> = async (_request, at) => {
  const meant = await planMeant(at);
  if ('reply' in meant) return meant;
  const ask = shownAsk(meant.ask);
  const origin = ownOrigin(await knownAsShared(meant.ask, at), at);
  const shares = origin === undefined ? [] : await at.store.shares.of(at.maker.id, origin);
  if (shares.length === 0) return shareRefusal(at, { code: 'nothing_shared', said: '' });
  const behind = shares.filter((share) => !isSameSize(share.ask, ask));
  if (behind.length === 0) return shareRefusal(at, { code: 'nothing_changed' });

  const effects: Effect[] = [];
  const letters: Letter[] = [];
  for (const share of behind) {
    const to = await at.store.shares.revise(share.id, ask, share.counts && countsOf(meant.plan));
    effects.push({ did: 'changed_share', shareId: share.id, from: share.revision, to });
    const now: Share = { ...share, ask, revision: to, counts: share.counts && countsOf(meant.plan) };
    letters.push(await changedLetter(now, share.ask, shownName(at.maker), at));
  }
  const names = await namesOf(behind, at);
  return {
    reply: {
      kind: 'answer',
      isOwn: true,
      lead: say`Sent to ${names}: ${inLead(ask)}`,
      lines: [...ofSeveral(ask), say`Whoever sized it before is told, and chooses to take the change or keep theirs.`],
      examples: ['how did it land'],
      offers: [UNDO],
    },
    talk: withStored(at.talk, `the change sent to ${names}`, effects),
    letters,
  };
};

const namesOf = async (shares: readonly Share[], at: At): Promise<string> =>
  inOneLine(await Promise.all(shares.map((share) => shownTo(share, at))), 'reader');

/** That others have a plan as it was, and the offer to tell them. */
export type Behind = { line: Words; offer: Offered };

/** Who has a plan as it was before it changed, with the offer to tell them; nothing when nobody does. */
export async function holdersBehind(ask: PlanAsk, at: At): Promise<Behind | undefined> {
  const origin = ownOrigin(ask, at);
  if (origin === undefined) return undefined;
  const shares = await at.store.shares.of(at.maker.id, origin);
  const behind = shares.filter((share) => !isSameSize(share.ask, shownAsk(ask)));
  if (behind.length === 0) return undefined;
  const line = say`Shared as it was before with ${await namesOf(behind, at)}. Say "send the change" and they are told, and choose.`;
  return { line, offer: { button: 'Send the Change', say: 'send the change', request: { kind: 'send_change' } } };
}
