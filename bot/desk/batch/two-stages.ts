import {
  type BatchProblem,
  type Day,
  dayOf,
  endDayOf,
  type Outcome,
  say,
  startOf,
  type TwoStages,
  twoStages,
  type WallS,
} from '../../../core/index.js';
import type { Schedule } from '../../replies/batch.js';
import { LEAD_DAYS, paceAssumed } from '../time/schedule.js';
import type { Handed } from './hands.js';

/** One who knits and one who finishes; `knitted` pieces are knitted already and wait. */
type Pairing = { knitter: Handed; finisher: Handed; pieces: number; knitted: number };

/** The schedule of pieces that one knits and another finishes, in core's order, and who waits for whom. */
export function scheduleStaged(pairing: Pairing, dueDay: Day, from: WallS): Outcome<Schedule, BatchProblem> {
  const { knitter, finisher, pieces } = pairing;
  const usual = passed(pairing, from, pieces, 'medianS');
  if (!usual.ok) return usual;
  const today = dayOf(from);
  if (dueDay < today) return { ok: false, problems: [{ code: 'due_day_out_of_range', dueDay, today, lastDay: today }] };
  const endOf = (start: WallS, n = pieces): Day => {
    const slow = passed(pairing, start, n, 'hiS');
    return slow.ok ? endDayOf(slow.value.finished) : Number.POSITIVE_INFINITY;
  };
  const slowReadyDay = endOf(from);
  const readyDay = endDayOf(usual.value.finished);
  const startDay = lastWhere(dueDay - FURTHEST_DAYS, dueDay, (day) => endOf(startOf(day)) <= dueDay);
  const fewer = lastWhere(0, pieces, (n) => n === 0 || endOf(from, n) <= dueDay);
  const { passages } = usual.value;
  return {
    ok: true,
    value: {
      readiness: slowReadyDay <= dueDay ? 'in_time' : readyDay <= dueDay ? 'tight' : 'too_late',
      readyDay,
      slowReadyDay,
      dueDay,
      latest: { startDay, buyDay: startDay - LEAD_DAYS, closuresDay: startDay },
      ways:
        slowReadyDay <= dueDay
          ? []
          : [...(fewer > 0 ? [{ is: 'fewer' as const, pieces: fewer }] : []), { is: 'later', dueDay: slowReadyDay }],
      pieces,
      today,
      makers: [
        {
          ...nameOf(knitter),
          stage: 'knit',
          days: passages.slice(pairing.knitted).map(({ knitted }) => endDayOf(knitted)),
          workS: Math.max(0, pieces - pairing.knitted) * knitter.timing.knit.medianS,
        },
        {
          ...nameOf(finisher),
          stage: 'finish',
          days: passages.map(({ finished }) => endDayOf(finished)),
          workS: pieces * finisher.timing.finish.medianS,
        },
      ],
      waits: {
        finisherS: passages.reduce((sum, one) => sum + one.finisherWaitsS, 0),
        piecesS: Math.max(...passages.map((one) => one.pieceWaitsS)),
      },
      assumed: [...paceAssumed([knitter, finisher]), say`what you order comes within ${LEAD_DAYS} days`],
    },
  };
}

const nameOf = ({ maker }: Handed) => ({ id: maker.id, name: maker.name });

/** A year back nothing is begun. */
const FURTHEST_DAYS = 366;
/** What is knitted already takes the knitter no time that counts. */
const NO_TIME_S = 1;

function passed(
  { knitter, finisher, knitted }: Pairing,
  from: WallS,
  pieces: number,
  pace: 'medianS' | 'hiS',
): Outcome<TwoStages, BatchProblem> {
  const knitS = Math.ceil(knitter.timing.knit[pace]);
  const finishS = Math.ceil(finisher.timing.finish[pace]);
  const jobs = Array.from({ length: pieces }, (_, i) => ({
    id: `${i}`,
    knitS: i < knitted ? NO_TIME_S : knitS,
    finishS,
  }));
  return twoStages(jobs, { knitter: knitter.hand.calendar, finisher: finisher.hand.calendar, from });
}

/** The last of whole numbers for which something holds that holds up to some number and then no more; else the first. */
function lastWhere(from: number, to: number, holds: (n: number) => boolean): number {
  let [low, high] = [from, to];
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (holds(middle)) low = middle;
    else high = middle - 1;
  }
  return low;
}
