import { type Outcome, type Plan, pieceById, USUAL_RATES } from '../../../core/index.js';
import { type BenchPartName, benchPart } from '../../bench-parts.js';
import type { StoredTime } from '../../store/ports.js';
import type { At } from '../desk.js';
import { tried } from '../plan/planning.js';
import { plannedWith, type WorkMeant, withPlan, workMeant } from '../work/work-meant.js';

/** What a time is for: work in hand or done, else the plan of the talk; with what was logged for that work before. */
export type BenchWork = {
  /** '' where there is no work, only a plan. */
  workId: string;
  plan: Plan;
  /** Where its tally stands, 0 where nothing was counted. */
  rows: number;
  stopAt: number;
  isOpen: boolean;
  logged: readonly StoredTime[];
};

/** The work that time for these parts is for; undefined where there is neither work nor plan. */
export async function benchWork(
  parts: readonly BenchPartName[],
  at: At,
  workId?: string,
): Promise<Outcome<BenchWork> | undefined> {
  const meant = await workFor(parts, at, workId);
  if (meant === undefined) return ofTalk(at);
  const outcome = await plannedWith(meant, at);
  if (!outcome.ok) return outcome;
  const { id, rows, stopAt, endedAt } = meant.work;
  const isOpen = endedAt === undefined;
  const logged = (await at.store.benchLog.of(at.maker.id)).filter((time) => time.workId === id);
  return { ok: true, value: { workId: id, plan: outcome.value, rows, stopAt, isOpen, logged } };
}

/** Time at the table is for the piece that is off the machine; other time for the one on it, until the other is newer. */
async function workFor(parts: readonly BenchPartName[], at: At, workId?: string): Promise<WorkMeant | undefined> {
  const { works, profiles } = at.store;
  const named = workId === undefined ? undefined : await works.get(workId, at.maker.id);
  if (named !== undefined) return withPlan(named, await profiles.of(at.maker.id), at);
  const open = await workMeant({}, at);
  const done = await works.doneLast(at.maker.id);
  const isTable = parts.length > 0 && parts.every(isOfTable);
  const isNewer = parts.length === 0 && done !== undefined && (done.endedAt ?? 0) > (open?.work.startedAt ?? 0);
  const isDone = done !== undefined && (open === undefined || isTable || isNewer);
  return isDone ? withPlan(done, await profiles.of(at.maker.id), at) : open;
}

function isOfTable(part: BenchPartName): boolean {
  const { of } = benchPart(part);
  return typeof of === 'string' ? of === 'finish' : of.flat().every((driver) => USUAL_RATES[driver].stage === 'finish');
}

/** The plan in hand, for a maker who starts no work here. */
async function ofTalk(at: At): Promise<Outcome<BenchWork> | undefined> {
  const ask = at.talk.subject ?? (await at.store.plans.latest(at.maker.id))?.ask;
  const piece = pieceById(ask?.piece ?? '');
  if (ask === undefined || piece === undefined || ask.sizes !== undefined) return undefined;
  const { outcome } = await tried(ask, piece, at);
  if (!outcome.ok) return outcome;
  const plan = outcome.value;
  return { ok: true, value: { workId: '', plan, rows: 0, stopAt: plan.rows, isOpen: false, logged: [] } };
}
