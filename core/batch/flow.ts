import { type Calendar, doneAfter, type WallS, workBetween } from './calendar.js';
import type { Job } from './johnson.js';

/** Two people with their hours, and when both may begin. */
export type Pair = { knitter: Calendar; finisher: Calendar; from: WallS };

/** One piece on its way: when it is knitted, when finished, and who waits for whom before it is. */
export type Passage = {
  id: string;
  knitted: WallS;
  finished: WallS;
  /** Time by the clock that the piece waits for the finisher. */
  pieceWaitsS: number;
  /** Hours worked that the finisher waits for the piece, in seconds. */
  finisherWaitsS: number;
};

/** The pieces in the order given, through both stages. */
export function passages(jobs: readonly Job[], { knitter, finisher, from }: Pair): Passage[] {
  let [knitted, finished] = [from, from];
  return jobs.map(({ id, knitS, finishS, restS = 0 }) => {
    knitted = doneAfter(knitter, knitted, knitS);
    const ready = knitted + restS;
    const free = finished;
    finished = doneAfter(finisher, Math.max(ready, free), finishS);
    const finisherWaitsS = ready > free ? workBetween(finisher, free, ready) : 0;
    return { id, knitted, finished, pieceWaitsS: Math.max(0, free - ready), finisherWaitsS };
  });
}

/** When the last piece of an order is finished. */
export const finishedAt = (jobs: readonly Job[], pair: Pair): WallS =>
  passages(jobs, pair).reduce((last, { finished }) => Math.max(last, finished), pair.from);
