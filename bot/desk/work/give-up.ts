import { withStored } from '../../conversation.js';
import { type Desk, refusal } from '../desk.js';
import { UNDO } from '../offers.js';
import { freed } from './used-up.js';
import { workMeant, workShown } from './work-meant.js';

/** A piece taken off unfinished: it teaches nothing, and the machine is free. */
export const giveUpDesk: Desk<'give_up'> = async (request, at) => {
  const meant = await workMeant(request, at);
  if (meant === undefined) return refusal(at, { code: 'no_work' });
  const { work, piece } = meant;
  const shown = await workShown(meant, at);
  await at.store.works.end(work.id, at.now, 'given_up');
  const free = await freed(work.id, at);
  const said = `giving up the ${piece.label.toLowerCase()}`;
  const talk = withStored({ ...at.talk, workId: undefined, pending: undefined }, said, [
    {
      did: 'ended',
      workId: work.id,
      outcome: 'given_up',
    },
    ...free.effects,
  ]);
  return { reply: { kind: 'work', became: 'given_up', work: shown, notes: free.notes, offers: [UNDO] }, talk };
};
