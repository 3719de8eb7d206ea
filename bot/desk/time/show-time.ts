import { type Plan, pieceById, timing } from '../../../core/index.js';
import type { Took } from '../../replies/bench.js';
import { type At, type Desk, refusal } from '../desk.js';
import { MY_GAUGE } from '../offers.js';
import { tried } from '../plan/planning.js';
import { whichSize } from '../plan/which-size.js';
import { paceOf } from './pace.js';

const MOST_COPIES = 500;

/** How long the plan in hand takes this maker, all of it or so many. */
export const showTimeDesk: Desk<'show_time'> = async ({ copies }, at) => {
  const which = whichSize(at);
  if (which !== undefined) return which;
  const ask = at.talk.subject ?? (await at.store.plans.latest(at.maker.id))?.ask;
  const piece = pieceById(ask?.piece ?? '');
  if (ask === undefined || piece === undefined) return refusal(at, { code: 'no_plan_yet' });
  const many = copies ?? ask.copies;
  if (many < 1 || many > MOST_COPIES)
    return refusal(at, { code: 'count_outside', label: 'Pieces', given: many, min: 1, max: MOST_COPIES });
  const { outcome } = await tried({ ...ask, copies: many }, piece, at);
  if (!outcome.ok) return refusal(at, ...outcome.problems);
  const plan = outcome.value;
  return {
    reply: {
      kind: 'time',
      label: plan.label,
      isPair: piece.isPair === true,
      time: await took(plan, at),
      offers: [
        { button: 'Start the Clock', say: 'start the clock', request: { kind: 'clock', set: 'start' } },
        MY_GAUGE,
      ],
    },
    talk: at.talk,
  };
};

/** How long all pieces of a plan take this maker. */
export async function took(plan: Plan, at: At): Promise<Took> {
  const steps = plan.steps.map((step) => ({ ...step, times: (step.times ?? 1) * plan.pieces }));
  const logs = await at.store.benchLog.of(at.maker.id);
  const found = timing(steps, await paceOf(at));
  const paced = found.lines.flatMap(({ driver }) => (logs.some((log) => log.driver === driver) ? [driver] : []));
  return { timing: found, copies: plan.pieces, paced, sessions: new Set(logs.map(({ session }) => session)).size };
}
