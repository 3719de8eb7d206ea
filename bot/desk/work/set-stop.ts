import { say } from '../../../core/index.js';
import { withStored } from '../../conversation.js';
import { type Desk, refusal } from '../desk.js';
import { rowProblems } from '../gauge/gauge-checks.js';
import { workMeant, workShown } from './work-meant.js';
import { countOffers } from './work-offers.js';

/** The maker's own stop row: it stands until a reading moves it. */
export const setStopDesk: Desk<'set_stop'> = async ({ rows, ...which }, at) => {
  const meant = await workMeant(which, at);
  if (meant === undefined) return refusal(at, { code: 'no_work' });
  const problems = rowProblems('Stop row', rows);
  if (problems.length > 0) return refusal(at, ...problems);

  const { work } = meant;
  await at.store.works.stopAt(work.id, rows);
  const shown = await workShown({ ...meant, work: { ...work, stopAt: rows } }, at);
  const talk = withStored({ ...at.talk, workId: work.id }, `stop at row ${rows}, from ${work.stopAt}`, [
    {
      did: 'moved_stop',
      workId: work.id,
      from: work.stopAt,
      to: rows,
    },
  ]);
  const notes = rows === work.stopAt ? [] : [say`Your count. It was ${work.stopAt}.`];
  return { reply: { kind: 'work', became: 'stop_set', work: shown, notes, offers: countOffers(shown) }, talk };
};
