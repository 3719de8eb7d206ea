import { say, type Words } from '../../../core/index.js';
import { shortDay } from '../../day-words.js';
import type { StoredTime } from '../../store/ports.js';
import type { Desk } from '../desk.js';
import { benchWork } from './bench-work.js';
import { durationText } from './durations.js';

/** As many times as are told one by one, the newest first. */
const MOST_TOLD = 8;

/** What time was logged, all of it or that of the piece on the machine or done last. Nothing is stored. */
export const showLogDesk: Desk<'show_log'> = async ({ isOfWork }, at) => {
  const work = isOfWork ? await benchWork([], at) : undefined;
  const logs = work?.ok === true ? work.value.logged : isOfWork ? [] : await at.store.benchLog.of(at.maker.id);
  // All of a session were told in one go.
  const times = logs.filter(({ session }, i) => logs.findIndex((one) => one.session === session) === i).reverse();
  const label = work?.ok === true ? work.value.plan.label.toLowerCase() : undefined;
  const whole = durationText(logs.reduce((sum, { seconds }) => sum + seconds, 0));
  const of = label === undefined ? say`` : say` for the ${label}`;
  return {
    reply: {
      kind: 'answer',
      lead: times.length === 0 ? say`No time is logged${of} yet` : say`Logged${of}: ${whole}`,
      lines: times.length === 0 ? [HOW] : told(times),
      examples: ['took 85 minutes', 'how long will it take'],
      isOwn: true,
      offers: [],
    },
    talk: at.talk,
  };
};

const HOW = say`Tell me what the clock says, or start it and I count.`;

function told(times: readonly StoredTime[]): Words[] {
  const lines = times.slice(0, MOST_TOLD).map(({ day, said }) => say`${shortDay(day)}: ${said}.`);
  const more = times.length - lines.length;
  return more === 0 ? lines : [...lines, say`And ${more} before them.`];
}
