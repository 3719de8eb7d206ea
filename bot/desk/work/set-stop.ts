import { say } from '../../../core/index.js';
import { withStored } from '../../conversation.js';
import { type Desk, refusal } from '../desk.js';
import { MOST_ROWS } from '../gauge/gauge-checks.js';
import { workMeant, workShown } from './work-meant.js';
import { countOffers } from './work-offers.js';

/** The maker's own stop row: it stands until a reading moves it. */
export const setStopDesk: Desk<'set_stop'> = async ({ rows, ...which }, at) => {
  const meant = await workMeant(which, at);
  if (meant === undefined) return refusal(at, { code: 'no_work' });
  if (!Number.isInteger(rows)) return refusal(at, { code: 'count_not_whole', label: 'Stop row', given: rows });
  if (rows < 1 || rows > MOST_ROWS)
    return refusal(at, { code: 'count_outside', label: 'Stop row', given: rows, min: 1, max: MOST_ROWS });

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
