import { say } from '../../../core/index.js';
import type { Desk } from '../desk.js';
import { capital } from '../names.js';
import { labelOf, ownerName, shareFor, shareRefusal, sizeInWords, takenBy } from './shares.js';

/** What was shared is left as it is: not sized now, or kept in the size it was taken in. */
export const leaveShareDesk: Desk<'leave_share'> = async ({ shareId, keep }, at) => {
  const share = await shareFor({ shareId }, at);
  if ('code' in share) return shareRefusal(at, share);
  const owner = await ownerName(share, at);
  const taken = await takenBy(share, at.maker.id, at);
  const held = taken && (await at.store.shares.askOf(share.id, taken.revision));
  if (keep !== true || taken === undefined || held === undefined) {
    const lead = say`Left for now`;
    const lines = [say`Say "size it to my gauge" whenever you want it, unless ${owner} withdraws it.`];
    return {
      reply: { kind: 'answer', isOwn: true, lead, lines, examples: ['size it to my gauge'], offers: [] },
      talk: at.talk,
    };
  }
  await at.store.shares.take({ ...taken, answered: share.revision });
  const offers = [
    {
      button: 'Take the Change',
      say: 'take the change',
      request: { kind: 'size_share' as const, shareId: share.id, change: true },
    },
  ];
  const lead = say`Kept as you have it`;
  return {
    reply: {
      kind: 'answer',
      isOwn: true,
      lead,
      lines: [say`${capital(labelOf(held))}: ${sizeInWords(held)}. ${capital(owner)} sees that you kept it.`],
      examples: [],
      offers,
    },
    talk: at.talk,
  };
};
