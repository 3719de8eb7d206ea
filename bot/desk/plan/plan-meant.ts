import { type Plan, pieceById } from '../../../core/index.js';
import type { PlanAsk } from '../../request.js';
import type { Profile } from '../../store/ports.js';
import { type At, type DeskAnswer, refusal } from '../desk.js';
import { plannedWith, type WorkMeant, workMeant } from '../work/work-meant.js';
import { tried } from './planning.js';
import { whichSize } from './which-size.js';

/** The plan a question is about, made with all that is known now; `work` where it is on the machine. */
export type PlanMeant = { plan: Plan; ask: PlanAsk; profile: Profile; work: WorkMeant | undefined };

/** The work of this talk, unless a plan was made since; else the plan in hand, else the last; or why there is none. */
export async function planMeant(at: At): Promise<PlanMeant | DeskAnswer> {
  const inHand = at.talk.workId === undefined ? undefined : await workMeant({ workId: at.talk.workId }, at);
  const isOfWork =
    at.talk.planId === undefined ? at.talk.subject?.sizes === undefined : at.talk.planId === inHand?.work.planId;
  const work = isOfWork ? inHand : undefined;
  const which = work === undefined ? whichSize(at) : undefined;
  if (which !== undefined) return which;
  const ask = work?.ask ?? at.talk.subject ?? (await at.store.plans.latest(at.maker.id))?.ask;
  const piece = pieceById(ask?.piece ?? '');
  if (ask === undefined || piece === undefined) return refusal(at, { code: 'no_plan_yet' });
  const { outcome, profile } =
    work === undefined ? await tried(ask, piece, at) : { outcome: await plannedWith(work, at), profile: work.profile };
  if (!outcome.ok) return refusal(at, ...outcome.problems);
  if (profile === undefined) throw new Error('a plan without a gauge');
  return { plan: outcome.value, ask, profile, work };
}
