import { say, type TimeLine, timing } from '../../../core/index.js';
import { withStored } from '../../conversation.js';
import type { Effect } from '../../effect.js';
import type { Request, TimeAsk } from '../../request.js';
import type { Clock } from '../../store/ports.js';
import { type At, type Desk, type DeskAnswer, refusal } from '../desk.js';
import { putBack } from '../effects.js';
import { UNDO } from '../offers.js';
import { asked } from '../question.js';
import { workMeant } from '../work/work-meant.js';
import { linesSoFar, type Rows } from './bench-lines.js';
import { type BenchWork, benchWork } from './bench-work.js';
import { durationText } from './durations.js';
import { logged, type Timed, timedOf } from './log-time.js';
import { paceOf } from './pace.js';

type ClockRequest = Request & { kind: 'clock' };

/** A clock that runs longer was rather forgotten. */
const FORGOTTEN_MS = 8 * 3_600_000;

const LEAST_MS = 60_000;

/** The clock at the bench: it runs in the store, whatever becomes of the bot meanwhile. */
export const clockDesk: Desk<'clock'> = async (request, at) => {
  const clock = await at.store.clocks.of(at.maker.id);
  if (request.set === 'start') return started(clock, at);
  if (clock === undefined) return refusal(at, { code: 'no_clock' });
  return request.set === 'forget' ? forgotten(clock, at) : stopped(request, clock, at);
};

const STOP = { button: 'Stop the Clock', say: 'stop the clock', request: { kind: 'clock', set: 'stop' } } as const;

async function started(running: Clock | undefined, at: At): Promise<DeskAnswer> {
  if (running !== undefined) {
    const lead = say`The clock runs already, for ${durationText((at.now - running.startedAt) / 1000)}`;
    return { reply: { kind: 'answer', lead, lines: [], examples: [], offers: [STOP] }, talk: at.talk };
  }
  const meant = await workMeant({}, at);
  const { id: workId = '', rows = 0 } = meant?.work ?? {};
  const clock = { makerId: at.maker.id, workId, rows, startedAt: at.now };
  const effect: Effect = { did: 'set_clock', makerId: at.maker.id, before: null, after: clock };
  await putBack([effect], at.store, at.now);
  const what = meant === undefined ? say`` : say` for the ${meant.piece.label.toLowerCase()}, from row ${rows}`;
  const lines = [say`It keeps running when I am restarted. Say so when you pause.`];
  return {
    reply: { kind: 'answer', lead: say`The clock runs${what}`, lines, examples: [], offers: [STOP, UNDO] },
    talk: withStored(at.talk, 'start the clock', [effect]),
  };
}

async function forgotten(clock: Clock, at: At, why = say`The clock is stopped`): Promise<DeskAnswer> {
  const effect: Effect = { did: 'set_clock', makerId: at.maker.id, before: clock, after: null };
  await putBack([effect], at.store, at.now);
  const lead = say`${why}, and nothing is logged`;
  return {
    reply: { kind: 'answer', lead, lines: [], examples: [], offers: [UNDO] },
    talk: withStored({ ...at.talk, pending: undefined }, 'the clock', [effect]),
  };
}

async function stopped(request: ClockRequest, clock: Clock, at: At): Promise<DeskAnswer> {
  const ranMs = at.now - clock.startedAt;
  if (request.seconds === undefined && ranMs > FORGOTTEN_MS) return forgottenQuestion(request, ranMs, at);
  if (request.seconds === undefined && ranMs < LEAST_MS)
    return forgotten(clock, at, say`The clock ran for less than a minute`);
  const seconds = request.seconds ?? ranMs / 1000;
  const bench = await benchWork(request.parts ?? [], at, clock.workId);
  if (bench === undefined) return refusal(at, { code: 'no_plan_yet' });
  if (!bench.ok) return refusal(at, ...bench.problems);
  const knitted = request.parts === undefined ? rowsSince(clock, bench.value) : undefined;
  if (request.parts === undefined && knitted === undefined) return partsQuestion(request, seconds, at);

  const said = `${durationText(seconds)} by the clock`;
  const times: TimeAsk[] = [{ seconds, parts: request.parts ?? ['knitting'], said }];
  const lines = timing(bench.value.plan.steps, await paceOf(at)).lines;
  const timed = knitted === undefined ? timedOf(times, lines, bench.value) : [ofRows(knitted, clock, lines, seconds)];
  const effect: Effect = { did: 'set_clock', makerId: at.maker.id, before: clock, after: null };
  const answer = await logged({ kind: 'log_time', times, confirmed: true }, bench.value, timed, at, [effect]);
  if (answer.reply.kind === 'logged') await putBack([effect], at.store, at.now);
  return answer;
}

/** The cranking of the rows that the tally moved by, and the setting up before the first. */
function ofRows(knitted: Rows, { rows, workId }: Clock, lines: readonly TimeLine[], seconds: number): Timed {
  const isOwn = ({ driver }: TimeLine): boolean => driver === 'crank' || (driver === 'set_up' && rows === 0);
  const assumed = [say`all of it went to rows ${rows + 1} to ${rows + knitted.rows}`];
  return { lines: linesSoFar(lines, knitted).filter(isOwn), seconds, workId, assumed };
}

/** The rows knitted while the clock ran, of work that is still on the machine. */
function rowsSince(clock: Clock, { isOpen, workId, rows, stopAt }: BenchWork): Rows | undefined {
  const since = rows - clock.rows;
  return isOpen && workId === clock.workId && since > 0 ? { rows: since, of: stopAt } : undefined;
}

const forgottenQuestion = (request: ClockRequest, ranMs: number, at: At): DeskAnswer =>
  asked(at, request, ['time'], {
    asks: say`The clock has run ${durationText(ranMs / 1000)}. How long did you work?`,
    because: say`More than 8 hours at a stretch is rather a clock forgotten. Nothing is stored yet.`,
    examples: ['2 hours', '45 min', 'never mind'],
    offers: [
      { button: 'All of It', request: { ...request, seconds: ranMs / 1000 } },
      { button: 'Forget the Clock', request: { kind: 'clock', set: 'forget' } },
    ],
  });

const partsQuestion = (request: ClockRequest, seconds: number, at: At): DeskAnswer => {
  const told = { ...request, seconds };
  return asked(at, told, ['parts'], {
    asks: say`What did those ${durationText(seconds)} go to?`,
    because: say`Your tally did not move meanwhile, so I cannot tell. The clock stops once you say.`,
    examples: ['knitting', 'finishing', 'seaming and ends', 'all of it'],
    offers: [
      { button: 'Knitting', request: { ...told, parts: ['knitting'] } },
      { button: 'Finishing', request: { ...told, parts: ['finishing'] } },
      { button: 'All of It', request: { ...told, parts: [] } },
      { button: 'Forget the Clock', request: { kind: 'clock', set: 'forget' } },
    ],
  });
};
