import { evidence, mass, type Plan, printedLength, say } from '../../../core/index.js';
import { withStored } from '../../conversation.js';
import type { Effect } from '../../effect.js';
import type { StoredMeasurement, Work } from '../../store/ports.js';
import { type At, type Desk, type DeskAnswer, refusal } from '../desk.js';
import { isUnusual, lengthProblems, massProblems, rowProblems, spacingProblems } from '../gauge/gauge-checks.js';
import { mmOfValue } from '../gauge/measured.js';
import { MY_GAUGE, UNDO } from '../offers.js';
import { tried } from '../plan/planning.js';
import { asked, unitsQuestion, unusualQuestion } from '../question.js';
import { resultKept } from '../share/results.js';
import { readAs } from '../typed.js';
import { type Came, type FinishRequest, measurementOf, readingsOf, sizesOf } from './came-out.js';
import { usedUp } from './used-up.js';
import { plannedWith, type WorkMeant, withPlan, workMeant } from './work-meant.js';

/**
 * A finished piece → a measurement in its state, with every reading taken on the way as a reading of the same fabric:
 * together they teach how the fabric changes off the machine.
 */
export const finishDesk: Desk<'finish'> = async (wanted, at) => {
  const inHand = (await workMeant(wanted, at)) ?? (await doneWith(await at.store.works.unmeasured(at.maker.id), at));
  const isWeighing = inHand === undefined && wanted.mass !== undefined && wanted.sizes.length === 0;
  const meant = isWeighing ? await doneWith(await at.store.works.doneLast(at.maker.id), at) : inHand;
  if (meant === undefined) return refusal(at, { code: 'no_work' });
  // A question is about this work, whatever is on the machines when it is answered.
  const request = { ...wanted, workId: meant.work.id };
  const outcome = await plannedWith(meant, at);
  if (!outcome.ok) return refusal(at, ...outcome.problems);
  const plan = outcome.value;

  const rows = request.rows ?? Math.max(meant.work.rows, meant.work.stopAt);
  const came = sizesOf(request, plan, at);
  const problems = [
    ...rowProblems('Rows', rows),
    ...came.flatMap(({ size, value }) => lengthProblems(size.label, value)),
    ...massProblems('Weight', request.mass),
  ];
  if (problems.length > 0) return refusal(at, ...problems);
  const bare = came.find(({ value }) => value.is === 'bare');
  if (bare !== undefined) return unitsQuestion(request, bare.value.said ?? '', at);
  if (came.length === 0 && request.unmeasured !== true && !isWeighing) return sizeQuestion(request, plan, at);

  const measured = measurementOf(meant, plan, came, rows, request, at);
  const impossible = measured === undefined ? [] : spacingProblems(measured);
  if (impossible.length > 0) return refusal(at, ...impossible);
  if (measured !== undefined && request.confirmed !== true && isUnusual(await knownOf(meant, at), measured)) {
    return unusualQuestion({ ...request, confirmed: true }, measured.said, at);
  }
  return finished(meant, plan, { rows, came, measured, isWeighing }, request, at);
};

/** A piece that is off the machine: done and to be measured later, or weighed once it was measured. */
const doneWith = async (work: Work | undefined, at: At): Promise<WorkMeant | undefined> =>
  work && withPlan(work, await at.store.profiles.of(at.maker.id), at);

const knownOf = async ({ profile }: WorkMeant, at: At) =>
  evidence(
    await at.store.measurements.of(profile.id),
    await at.store.measurements.inYarn(at.maker.id, profile.yarn.id),
  );

/** `isWeighing`: it was measured before, and its readings are kept. */
type Finished = {
  rows: number;
  came: readonly Came[];
  measured: StoredMeasurement | undefined;
  isWeighing: boolean;
};

async function finished(
  meant: WorkMeant,
  plan: Plan,
  { rows, came, measured, isWeighing }: Finished,
  request: FinishRequest,
  at: At,
): Promise<DeskAnswer> {
  const { work, ask, piece, profile } = meant;
  const form = plan.onMachine.target.form;
  const before = await tried(ask, piece, at);
  const readings = isWeighing ? [] : readingsOf(meant, form, rows, at);
  const kept = measured === undefined ? [] : [...readings, measured];
  for (const one of kept) await at.store.measurements.add(one);
  if (work.endedAt === undefined) await at.store.works.end(work.id, at.now, 'done');
  const used = await usedUp(work.id, plan, measured?.massG, work.endedAt === undefined, at);
  const after = await tried(ask, piece, at);

  const solved = came.find(({ size }) => size.id === plan.landing.dimension);
  const mm = solved && mmOfValue(solved.value);
  const forOwner =
    mm === undefined
      ? undefined
      : await resultKept(ask, work.planId, { cameMm: mm, window: plan.landing, rows, needles: plan.needles }, at);
  const effects: Effect[] = [
    ...kept.map(({ id }): Effect => ({ did: 'measured', id })),
    ...(work.endedAt === undefined ? [{ did: 'ended' as const, workId: work.id, outcome: 'done' as const }] : []),
    ...used.effects,
    ...(forOwner?.effects ?? []),
  ];
  const talk = withStored(
    { ...at.talk, workId: undefined, pending: undefined },
    `${isWeighing ? 'weighed' : 'finished'} ${piece.label.toLowerCase()}`,
    effects,
    { ...request, workId: work.id },
  );
  const next = (outcome: typeof before.outcome) =>
    outcome.ok ? { rows: outcome.value.rows, chance: outcome.value.landing.chance } : undefined;
  return {
    reply: {
      kind: 'finished',
      assumed: readAs(came.map(({ value }) => value)),
      label: piece.label,
      machine: profile.machine,
      rows,
      rowsAssumed: request.rows === undefined && work.rows !== work.stopAt,
      size:
        solved && mm !== undefined
          ? { said: solved.value.said ?? '', mm, adjective: solved.size.adjective, landing: plan.landing }
          : undefined,
      massG: measured?.massG,
      yarn: {
        was: before.outcome.ok ? before.outcome.value.yarn : undefined,
        now: after.outcome.ok ? after.outcome.value.yarn : undefined,
      },
      paired: measured !== undefined && meant.readings.some(({ state }) => state !== measured.state),
      stateAssumed: request.state === undefined && measured !== undefined,
      was: next(before.outcome),
      next: next(after.outcome),
      shelf: used.notes,
      shared: forOwner?.notes ?? [],
      offers: [...(forOwner?.offers ?? []), UNDO, MY_GAUGE],
    },
    talk,
  };
}

/** How it came out, lying flat at rest: what the next rows learn from. */
function sizeQuestion(request: FinishRequest, plan: Plan, at: At): DeskAnswer {
  const size = plan.sizes.find(({ id }) => id === plan.landing.dimension);
  const weight =
    request.mass?.is === 'mass' ? say` The ${mass(request.mass.g)} of yarn it took is kept with it.` : say``;
  return asked(at, request, ['size'], {
    asks: say`What is its ${size?.label.toLowerCase() ?? 'size'}, lying flat at rest?`,
    because: say`That is the piece your next rows learn from.${weight}`,
    examples: [
      printedLength(size?.expectedMm ?? plan.landing.expectedMm, at.maker.units ?? 'in'),
      'later',
      'never mind',
    ],
    offers: [{ button: 'Measure Later', say: 'later', request: { ...request, unmeasured: true } }],
  });
}
