import { done, type Outcome, refused } from '../problems.js';
import { type Calendar, type Day, dayOf, doneAfter, endDayOf, startOf, type WallS } from './calendar.js';
import {
  type BatchProblem,
  calendarProblems,
  dueProblems,
  leadProblems,
  paceProblems,
  pieceProblems,
} from './problems.js';
import { dealt, dealtBack, lastDone, type Maker, mostBetween, type Share } from './shares.js';
import { type Way, ways } from './ways.js';

/** Somebody of a batch: what a piece takes them, as a rule and when it goes slowly, and its time at the machine. */
export type Hand = { id: string; medianS: number; slowS: number; knitS: number; calendar: Calendar };

export type BatchAsk = {
  hands: readonly Hand[];
  /** Still to be made. */
  pieces: number;
  from: WallS;
  /** The last day on which the last may become ready. */
  dueDay: Day;
  /** Whole days between ordering something and having it. */
  leadDays: number;
};

/** Whether a batch is ready by its day: even where all goes slowly, only as a rule, or not. */
export type Readiness = 'in_time' | 'tight' | 'too_late';

export type Batch = {
  readiness: Readiness;
  /** Who makes how many, and when each is done, as a rule. */
  shares: readonly Share[];
  readyDay: Day;
  /** Where all of the same shares goes slowly. */
  slowReadyDay: Day;
  dueDay: Day;
  /** The most that all can make by the day: as a rule, and where all goes slowly. */
  most: { usual: number; slow: number };
  /** The last days to order, to begin, and to have closures in hand, where all then goes slowly. */
  latest: { buyDay: Day; startDay: Day; closuresDay: Day };
  /** Empty where it is in time. */
  ways: readonly Way[];
};

/**
 * Returns who makes how many of a batch, when it is ready and the last days for it; where it may not be in time, what
 * would make it so.
 * @returns problems `no_makers`, `pieces_out_of_range`, `lead_out_of_range`, `no_pace`, `no_hours`, `bad_hours`,
 * `due_day_out_of_range`
 */
export function batch(ask: BatchAsk): Outcome<Batch, BatchProblem> {
  const problems = batchProblems(ask);
  if (problems.length > 0) return refused(...problems);
  const { hands, pieces, from, dueDay } = ask;
  const due = startOf(dueDay + 1);
  const usual = hands.map((hand) => makerOf(hand, hand.medianS));
  const slow = hands.map((hand) => makerOf(hand, hand.slowS));
  const shares = dealt(usual, pieces, from);
  const most = { usual: mostOf(usual, from, due), slow: mostOf(slow, from, due) };
  const readiness = most.slow >= pieces ? 'in_time' : most.usual >= pieces ? 'tight' : 'too_late';
  return done({
    readiness,
    shares,
    readyDay: endDayOf(lastDone(shares)),
    slowReadyDay: endDayOf(Math.max(...slow.map((maker, i) => doneWith(maker, shares[i], from)))),
    dueDay,
    most,
    latest: latestDays(ask, dealtBack(slow, pieces, due)),
    ways: readiness === 'in_time' ? [] : ways(slow, pieces, from, due),
  });
}

function batchProblems({ hands, pieces, from, dueDay, leadDays }: BatchAsk): BatchProblem[] {
  return [
    ...(hands.length === 0 ? [{ code: 'no_makers' as const }] : []),
    ...pieceProblems(pieces),
    ...leadProblems(leadDays),
    ...hands.flatMap(({ id, medianS, slowS, knitS, calendar }) => [
      ...paceProblems(id, medianS, slowS, knitS),
      ...calendarProblems(id, calendar),
    ]),
    ...dueProblems(dueDay, dayOf(from)),
  ];
}

/** Whole seconds, so that the same work comes to the same time forwards and backwards. */
const makerOf = ({ id, calendar }: Hand, paceS: number): Maker => ({ id, calendar, paceS: Math.ceil(paceS) });

const mostOf = (makers: readonly Maker[], from: WallS, due: WallS): number =>
  makers.reduce((sum, maker) => sum + mostBetween(maker, from, due), 0);

const doneWith = ({ calendar, paceS }: Maker, share: Share | undefined, from: WallS): WallS =>
  share === undefined || share.at.length === 0 ? from : doneAfter(calendar, from, share.at.length * paceS);

function latestDays({ hands, leadDays }: BatchAsk, shares: readonly Share[]): Batch['latest'] {
  const starts = shares.flatMap(({ at }, i) => {
    const hand = hands[i];
    const begin = at.at(-1);
    return hand === undefined || begin === undefined ? [] : [{ hand, begin }];
  });
  const startDay = dayOf(Math.min(...starts.map(({ begin }) => begin)));
  const closures = starts.map(({ hand, begin }) => dayOf(doneAfter(hand.calendar, begin, Math.ceil(hand.knitS))));
  return { buyDay: startDay - leadDays, startDay, closuresDay: Math.min(...closures) };
}
