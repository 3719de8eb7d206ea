import { done, type Outcome, refused } from '../problems.js';
import { type Calendar, doneAfter, type WallS } from './calendar.js';
import { finishedAt, type Pair, type Passage, passages } from './flow.js';
import { type Job, johnsonOrder } from './johnson.js';
import { type BatchProblem, calendarProblems, paceProblems, pieceProblems, restProblems } from './problems.js';

/**
 * An order for two people with one stage each, and how far it is known to be the best of all orders: by `johnson`'s
 * rule where that is exact, by trying `every_order`, or only a `good_order`.
 */
export type TwoStages = { passages: readonly Passage[]; finished: WallS; by: 'johnson' | 'every_order' | 'good_order' };

/** Up to so many pieces every order is tried. */
const MOST_TRIED = 7;

/**
 * Returns the order in which a knitter and a finisher are through soonest, and who waits.
 * @param jobs from 1; all there at the start, none passes another
 * @returns problems `pieces_out_of_range`, `no_pace`, `rest_out_of_range`, `no_hours`, `bad_hours`
 */
export function twoStages(jobs: readonly Job[], pair: Pair): Outcome<TwoStages, BatchProblem> {
  const problems = [
    ...pieceProblems(jobs.length),
    ...jobs.flatMap(({ id, knitS, finishS, restS }) => [
      ...paceProblems(id, knitS, finishS),
      ...restProblems(id, restS),
    ]),
    ...calendarProblems('knitter', pair.knitter),
    ...calendarProblems('finisher', pair.finisher),
  ];
  if (problems.length > 0) return refused(...problems);
  const { order, by } = ordered(jobs, pair);
  return done({ passages: passages(order, pair), finished: finishedAt(order, pair), by });
}

function ordered(jobs: readonly Job[], pair: Pair): { order: readonly Job[]; by: TwoStages['by'] } {
  const byRule = johnsonOrder(jobs);
  if (isExact(jobs, pair)) return { order: byRule, by: 'johnson' };
  if (jobs.length <= MOST_TRIED) return { order: bestOfAll(jobs, pair), by: 'every_order' };
  return { order: swapped(byRule, pair), by: 'good_order' };
}

/** Pieces that are all alike have only one order. */
const isExact = (jobs: readonly Job[], { knitter, finisher }: Pair): boolean =>
  (sameHours(knitter, finisher) && jobs.every(({ restS = 0 }) => restS === 0)) ||
  jobs.every((job) => alike(job, jobs[0] ?? job));

const sameHours = (a: Calendar, b: Calendar): boolean => JSON.stringify(a) === JSON.stringify(b);

const alike = (a: Job, b: Job): boolean =>
  a.knitS === b.knitS && a.finishS === b.finishS && (a.restS ?? 0) === (b.restS ?? 0);

/** The first of the orders that are through soonest: each tried but those that are too late already. */
function bestOfAll(jobs: readonly Job[], pair: Pair): readonly Job[] {
  let best = { order: jobs, finished: finishedAt(jobs, pair) };
  const tryAll = (order: readonly Job[], left: readonly Job[], knitted: WallS, finished: WallS): void => {
    if (finished >= best.finished) return;
    if (left.length === 0) best = { order, finished };
    for (const [i, job] of left.entries()) {
      if (left.findIndex((other) => alike(other, job)) < i) continue;
      const through = doneAfter(pair.knitter, knitted, job.knitS);
      const begin = Math.max(through + (job.restS ?? 0), finished);
      tryAll([...order, job], left.toSpliced(i, 1), through, doneAfter(pair.finisher, begin, job.finishS));
    }
  };
  tryAll([], jobs, pair.from, pair.from);
  return best.order;
}

/** Pieces passed through both stages while swapping, so that an answer never takes longer than a moment. */
const MOST_PASSED = 20_000;

/** An order with any two pieces swapped that makes it sooner, again and again until none does. */
function swapped(start: readonly Job[], pair: Pair): readonly Job[] {
  let best = { order: start, finished: finishedAt(start, pair) };
  let passed = 0;
  for (let improved = true; improved; ) {
    improved = false;
    for (const [i, j] of pairsOf(start.length)) {
      passed += start.length;
      if (passed > MOST_PASSED) return best.order;
      const order = withSwapped(best.order, i, j);
      const finished = finishedAt(order, pair);
      if (finished < best.finished) [best, improved] = [{ order, finished }, true];
    }
  }
  return best.order;
}

const pairsOf = (n: number): [number, number][] =>
  Array.from({ length: n }, (_, i) => Array.from({ length: i }, (_, j): [number, number] => [j, i])).flat();

const withSwapped = <T>(order: readonly T[], i: number, j: number): T[] =>
  order.map((one, at) => (at === i ? (order[j] ?? one) : at === j ? (order[i] ?? one) : one));
