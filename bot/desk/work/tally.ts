import { withStored } from '../../conversation.js';
import { type Desk, refusal } from '../desk.js';
import { rowProblems } from '../gauge/gauge-checks.js';
import { atRow, workMeant, workShown } from './work-meant.js';
import { countOffers } from './work-offers.js';

/** One row more, ten, or the row the maker is at → the tally, every change of it kept. */
export const tallyDesk: Desk<'tally'> = async ({ by, to, settles = false, ...which }, at) => {
  const meant = await workMeant(which, at);
  if (meant === undefined) return refusal(at, { code: 'no_work' });
  const { work } = meant;
  const rows = to ?? work.rows + (by ?? 1);
  const problems = rowProblems('Row', rows, 0);
  if (problems.length > 0) return refusal(at, ...problems);

  const kind = settles ? 'settled' : to === undefined ? 'by' : 'to';
  const said = `row ${rows}`;
  const seq = await at.store.works.count(work.id, { kind, rows, said, at: at.now });
  const shown = await workShown(atRow(meant, rows), at);
  const talk = withStored({ ...at.talk, workId: work.id, pending: undefined }, `${said}, from ${work.rows}`, [
    {
      did: 'counted',
      workId: work.id,
      seq,
    },
  ]);
  return {
    reply: {
      kind: 'work',
      became: settles ? 'settled' : 'counted',
      work: shown,
      notes: [],
      offers: countOffers(shown),
    },
    talk,
  };
};
