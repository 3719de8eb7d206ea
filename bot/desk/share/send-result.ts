import { say } from '../../../core/index.js';
import { withStored } from '../../conversation.js';
import { makerMeant } from '../batch/makers-meant.js';
import type { Desk } from '../desk.js';
import { UNDO } from '../offers.js';
import { shareDesk } from './share.js';
import { ownerOf, shareInHand, shareRefusal } from './shares.js';

/** The maker's last result of a shared plan told to its owner: the size, and the rows and needles only if those are said. */
export const sendResultDesk: Desk<'send_result'> = async ({ rows, to: said }, at) => {
  const named = said === undefined ? undefined : await makerMeant(said, at);
  if (named !== undefined && 'code' in named) return shareRefusal(at, named);
  const result = await at.store.results.latest(at.maker.id);
  const owner = result && (await ownerOf(result.origin, at));
  const isOther =
    named !== undefined && result !== undefined && named.id !== (await at.store.shares.ownerOf(result.origin));
  const came = rows && result === undefined ? await shareInHand(at) : undefined;
  if (came !== undefined && (named === undefined || named.id === came.ownerId))
    return shareDesk({ kind: 'share', with: 'back', rows, sure: false }, at);
  if (result === undefined || owner === undefined || isOther)
    return shareRefusal(at, { code: 'no_result', said: named && (said ?? '') });
  const to = rows ? 'rows' : 'size';
  await at.store.results.send(result.id, to);
  const what = rows ? 'the size, your rows and your needles' : 'the size alone';
  return {
    reply: {
      kind: 'answer',
      isOwn: true,
      lead: say`Sent to ${owner}: ${what}`,
      lines: rows ? [say`Your gauge can be worked out from them. Undo takes the rows back from the results.`] : [],
      examples: [],
      offers: [UNDO],
    },
    talk: withStored(at.talk, `what was sent to ${owner}`, [
      { did: 'sent_result', resultId: result.id, from: result.sent, to },
    ]),
  };
};
