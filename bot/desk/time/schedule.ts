import {
  type Batch,
  type BatchProblem,
  batch,
  type Day,
  dayOf,
  endDayOf,
  type Outcome,
  type Plan,
  say,
  type Words,
} from '../../../core/index.js';
import type { Dealt, Schedule } from '../../replies/batch.js';
import type { Due } from '../../request.js';
import { type Handed, handOf, type OfBatch } from '../batch/hands.js';
import type { At } from '../desk.js';
import { dayNumber } from './days.js';
import { wallOf } from './wall.js';

/** Common practice, no source: what is ordered is had within a week. */
export const LEAD_DAYS = 7;

/** Whether a maker alone has so many of a plan ready by a day, and the last days for it; or why it cannot be told. */
export async function scheduleAlone(
  plan: Plan,
  { day }: Due,
  at: Pick<At, 'maker' | 'store' | 'now'>,
): Promise<Outcome<Schedule, OfBatch>> {
  const handed = await handOf(plan, at.maker, at);
  if ('code' in handed) return { ok: false, problems: [handed] };
  return scheduleOf([handed], plan.pieces, dayNumber(day), at);
}

/** The same for several, each piece dealt to whoever has it done first. */
export function scheduleOf(
  handed: readonly Handed[],
  pieces: number,
  dueDay: Day,
  { maker, now }: Pick<At, 'maker' | 'now'>,
): Outcome<Schedule, OfBatch> {
  const from = wallOf(now, maker.timeZone);
  const outcome = batch({ hands: handed.map(({ hand }) => hand), pieces, from, dueDay, leadDays: LEAD_DAYS });
  if (!outcome.ok) return { ok: false, problems: outcome.problems.map((problem) => ofBatch(problem, handed)) };
  const assumed = [...paceAssumed(handed), ...leftOut(handed), say`what you order comes within ${LEAD_DAYS} days`];
  return { ok: true, value: { ...told(outcome.value, handed), pieces, today: dayOf(from), assumed } };
}

/** Each with what is left of the share they have, whoever would be done sooner with it. */
export function scheduleKept(
  kept: readonly { handed: Handed; left: number }[],
  dueDay: Day,
  at: Pick<At, 'maker' | 'now'>,
): Outcome<Schedule, OfBatch> {
  const each = kept.filter(({ left }) => left > 0).map((one) => scheduleOf([one.handed], one.left, dueDay, at));
  const problems = each.flatMap((one) => (one.ok ? [] : one.problems));
  const made = each.flatMap((one) => (one.ok ? [one.value] : []));
  const [first] = made;
  if (problems.length > 0 || first === undefined) return { ok: false, problems };
  const READINESS = ['in_time', 'tight', 'too_late'] as const;
  const worst = Math.max(...made.map(({ readiness }) => READINESS.indexOf(readiness)));
  const earliest = (of: (latest: Batch['latest']) => Day): Day => Math.min(...made.map(({ latest }) => of(latest)));
  return {
    ok: true,
    value: {
      ...first,
      readiness: READINESS[worst] ?? 'too_late',
      readyDay: Math.max(...made.map(({ readyDay }) => readyDay)),
      slowReadyDay: Math.max(...made.map(({ slowReadyDay }) => slowReadyDay)),
      latest: {
        startDay: earliest(({ startDay }) => startDay),
        buyDay: earliest(({ buyDay }) => buyDay),
        closuresDay: earliest(({ closuresDay }) => closuresDay),
      },
      // What would make one share ready is no way for the whole: that is to deal anew.
      ways: [],
      pieces: made.reduce((sum, { pieces }) => sum + pieces, 0),
      makers: made.flatMap(({ makers }) => makers),
      assumed: [...paceAssumed(kept.map(({ handed }) => handed)), say`what you order comes within ${LEAD_DAYS} days`],
    },
  };
}

const told = (made: Batch, handed: readonly Handed[]) => ({
  // Dealt otherwise it might be in time even slowly; as it is dealt it is not.
  readiness: made.readiness === 'in_time' && made.slowReadyDay > made.dueDay ? ('tight' as const) : made.readiness,
  readyDay: made.readyDay,
  slowReadyDay: made.slowReadyDay,
  dueDay: made.dueDay,
  latest: made.latest,
  ways: made.ways,
  makers: handed.map(({ maker, hand }): Dealt => {
    const done = made.shares.find(({ id }) => id === hand.id)?.at ?? [];
    const workS = done.length * Math.ceil(hand.medianS);
    return { id: maker.id, name: maker.name, stage: 'whole', days: done.map(endDayOf), workS };
  }),
});

/** A problem of core with a name in place of an id. */
export const ofBatch = (problem: BatchProblem, handed: readonly Handed[]): OfBatch => {
  const nameOf = (id: string): string => handed.find(({ hand }) => hand.id === id)?.maker.name ?? id;
  return { code: 'of_batch', problem: 'who' in problem ? { ...problem, who: nameOf(problem.who) } : problem };
};

/** Whose pace is the usual one. */
export function paceAssumed(handed: readonly Handed[]): Words[] {
  const unlogged = handed.filter(({ hasLogged }) => !hasLogged).map(({ maker }) => maker.name);
  if (unlogged.length === 0) return [];
  if (handed.length === 1) return [say`the usual pace, until you log your own`];
  return [say`the usual pace for ${unlogged.join(' and ')}, until they log their own`];
}

const leftOut = (handed: readonly Handed[]): Words[] =>
  handed.some(({ timing }) => timing.leftOut.length > 0) ? [say`time for what is not counted yet is left out`] : [];
