import { divided, say, type TimeLine, type TimeLog, timing, USUAL_RATES, type Words } from '../../../core/index.js';
import { withStored } from '../../conversation.js';
import type { Effect } from '../../effect.js';
import type { AnyProblem } from '../../problems.js';
import type { Request, TimeAsk } from '../../request.js';
import { type At, type Desk, type DeskAnswer, refusal } from '../desk.js';
import { NEVER_MIND, UNDO } from '../offers.js';
import { asked } from '../question.js';
import { linesFor, linesLeft, linesSoFar, soFar } from './bench-lines.js';
import { type BenchWork, benchWork } from './bench-work.js';
import { durationText, roughText } from './durations.js';
import { paceOf } from './pace.js';
import { zonedFor } from './zoned.js';

type LogTime = Request & { kind: 'log_time' };

/** Time that the work in hand or done last took → the bench log, divided over its steps; and what it teaches. */
export const logTimeDesk: Desk<'log_time'> = async (request, at) => {
  const bench = await benchWork(
    request.times.flatMap(({ parts }) => parts),
    at,
  );
  if (bench === undefined) return refusal(at, { code: 'no_plan_yet' });
  if (!bench.ok) return refusal(at, ...bench.problems);
  const lines = timing(bench.value.plan.steps, await paceOf(at)).lines;
  return logged(request, bench.value, timedOf(request.times, lines, bench.value), at);
};

/** What one time is for: steps of a piece with their counts, and the seconds that are theirs. */
export type Timed = { lines: readonly TimeLine[]; seconds: number; workId: string; assumed: readonly Words[] };

/** What each time is for. All of the work, while it is half knitted, is the knitting so far. */
export function timedOf(times: readonly TimeAsk[], all: readonly TimeLine[], bench: BenchWork): (Timed | AnyProblem)[] {
  const knitted = soFar(bench);
  return linesFor(times, linesSoFar(all, knitted)).map((lines, i) => {
    const isHalf = knitted !== undefined && times[i]?.parts.length === 0;
    return whatFor(times[i], isHalf ? lines.filter(({ stage }) => stage === 'knit') : lines, bench);
  });
}

/** The steps that a time is for, less what was logged for this work before; once all is logged, those of another. */
function whatFor(time: TimeAsk | undefined, meant: readonly TimeLine[], bench: BenchWork): Timed | AnyProblem {
  const { plan, workId, isOpen, logged } = bench;
  const { seconds = 0, parts = [], said = '' } = time ?? {};
  const label = plan.label.toLowerCase();
  if (meant.length === 0) return { code: 'of_time', problem: { code: 'nothing_to_time' }, said, label };
  const left = linesLeft(meant, logged);
  if (left.length === 0 && isOpen) return { code: 'timed_already', said, label };
  const another = say`another ${label} like the last, whose time is in already`;
  if (left.length === 0) return { lines: meant, seconds, workId: '', assumed: [another] };
  const half = soFar(bench);
  const isMeant = ({ driver }: TimeLog): boolean => meant.some((line) => line.driver === driver);
  const before = parts.length > 0 ? 0 : total(logged.filter(isMeant));
  const assumed = [
    ...(half === undefined || meant.every(({ driver }) => driver !== 'crank')
      ? []
      : [say`for the rows so far, ${half.rows} of ${half.of}`]),
    ...(before === 0 ? [] : [say`${durationText(before)} of it was logged before`]),
  ];
  return { lines: left, seconds: seconds - before, workId, assumed };
}

/**
 * Keeps times of one piece of work, or of several at once, as one session.
 * @param also what else the request did, to be undone with it
 */
export async function logged(
  request: LogTime,
  { plan }: BenchWork,
  timed: readonly (Timed | AnyProblem)[],
  at: At,
  also: readonly Effect[] = [],
): Promise<DeskAnswer> {
  const { times, pieces = 1 } = request;
  const label = plan.label.toLowerCase();
  const pace = await paceOf(at);
  const session = at.newId();
  const shares = timed.map((one, i) => {
    if ('code' in one) return { problems: [one] };
    const { lines, seconds, workId, assumed } = one;
    const outcome = divided(seconds, lines, pace, { session, pieces });
    if (outcome.ok) return { logs: outcome.value, lines, workId, assumed };
    const { said = '' } = times[i] ?? {};
    return { problems: outcome.problems.map((problem) => ({ code: 'of_time' as const, problem, said, label })) };
  });
  const problems = shares.flatMap((share) => share.problems ?? []);
  if (problems.length > 0) return refusal(at, ...problems);
  const kept = shares.flatMap((share) => (share.logs === undefined ? [] : [share]));
  const odd = kept.findIndex(({ logs, lines }) => isOdd(total(logs), pieces * expectedS(lines)));
  if (odd >= 0 && request.confirmed !== true)
    return oddQuestion(request, `${times[odd]?.said}`, pieces * usualS(kept[odd]?.lines ?? []), at);

  const { day } = await zonedFor(at);
  for (const { logs, workId } of kept) {
    for (const log of logs)
      await at.store.benchLog.add({
        ...log,
        id: at.newId(),
        makerId: at.maker.id,
        workId,
        day,
        said: times.map(({ said }) => said).join(', '),
        at: at.now,
      });
  }
  const now = await paceOf(at);
  const said = times.map(({ said }) => said).join(', ');
  return {
    reply: {
      kind: 'logged',
      label: plan.label,
      times: times.map(({ parts }, i) => ({ parts, seconds: total(kept[i]?.logs ?? []) })),
      pieces,
      was: timing(plan.steps, pace).whole,
      now: timing(plan.steps, now).whole,
      sessions: now.sessions,
      assumed: [
        ...times.flatMap(({ unit, seconds }) => (unit === undefined ? [] : [say`${seconds / 60} read as minutes`])),
        ...new Map(kept.flatMap(({ assumed }) => assumed).map((words) => [JSON.stringify(words), words])).values(),
      ],
      offers: [UNDO, { button: 'How Long Now', say: 'how long will it take', request: { kind: 'show_time' } }],
    },
    talk: withStored({ ...at.talk, pending: undefined }, said, [...also, { did: 'timed', session }]),
  };
}

const expectedS = (lines: readonly TimeLine[]): number => lines.reduce((sum, { medianS }) => sum + medianS, 0);
const usualS = (lines: readonly TimeLine[]): number =>
  lines.reduce((sum, { driver, count }) => sum + count * USUAL_RATES[driver].seconds, 0);
const total = (logs: readonly TimeLog[]): number => logs.reduce((sum, { seconds }) => sum + seconds, 0);

const MOST_OFF = 8;

/** True for a time so far from what was to be expected that it is rather a slip. */
const isOdd = (seconds: number, expected: number): boolean =>
  seconds > MOST_OFF * expected || seconds * MOST_OFF < expected;

/** The usual time is anyone's, so that it may be told where others read: the maker's own is not. */
const oddQuestion = (request: LogTime, said: string, usual: number, at: At): DeskAnswer =>
  asked(at, { ...request, confirmed: true }, ['confirm'], {
    asks: say`Is that right: ${said}?`,
    because: say`Such work usually takes about ${roughText(usual)}. Nothing is stored yet.`,
    examples: ['yes', 'never mind'],
    offers: [{ button: 'It Is Right', request: { ...request, confirmed: true } }, NEVER_MIND],
  });
