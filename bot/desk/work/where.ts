import { type Desk, refusal } from '../desk.js';
import { workMeant, workShown } from './work-meant.js';
import { countOffers } from './work-offers.js';

/** Where the work in hand stands. */
export const whereDesk: Desk<'where'> = async (request, at) => {
  const meant = await workMeant(request, at);
  if (meant === undefined) return refusal(at, { code: 'no_work' });
  const shown = await workShown(meant, at);
  return {
    reply: { kind: 'work', became: 'shown', work: shown, notes: [], offers: countOffers(shown) },
    talk: { ...at.talk, workId: meant.work.id },
  };
};
