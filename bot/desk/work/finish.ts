import {
  evidence,
  finishedCount,
  type Measurement,
  mass,
  type Plan,
  type PlannedSize,
  pieceById,
  printedLength,
  readingCount,
  say,
} from '../../../core/index.js';
import { withStored } from '../../conversation.js';
import type { Effect } from '../../effect.js';
import { inUnits } from '../../language/lengths.js';
import type { Request, Value } from '../../request.js';
import type { StoredMeasurement, Work } from '../../store/ports.js';
import { type At, type Desk, type DeskAnswer, refusal } from '../desk.js';
import { isUnusual, lengthProblems, massProblems, rowProblems, spacingProblems } from '../gauge/gauge-checks.js';
import { mmOfValue } from '../gauge/measured.js';
import { MY_GAUGE, UNDO } from '../offers.js';
import { tried } from '../plan/planning.js';
import { asked, unitsQuestion, unusualQuestion } from '../question.js';
import { resultKept } from '../share/results.js';
import { dayOf } from '../time/days.js';
import { readAs } from '../typed.js';
import { usedUp } from './used-up.js';
import { plannedWith, type WorkMeant, withPlan, workMeant } from './work-meant.js';

type FinishRequest = Request & { kind: 'finish' };

/** A size of the finished piece, as it was typed. */
type Came = { size: PlannedSize; value: Value };

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

/** Lengths with a name go to the size so named, the others in order: what rows make first. */
function sizesOf({ sizes }: FinishRequest, plan: Plan, at: At): Came[] {
  const solved = plan.sizes.filter(({ id }) => id === plan.landing.dimension);
  const inOrder = [...solved, ...plan.sizes.filter(({ id }) => id !== plan.landing.dimension)];
  const free = inOrder.filter(({ id }) => !sizes.some((one) => one.id === id));
  return sizes.flatMap(({ id, value }) => {
    const size = id === undefined ? free.shift() : inOrder.find((one) => one.id === id || isSideOf(plan, id, one));
    return size === undefined ? [] : [{ size, value: inUnits(value, at.maker.units) }];
  });
}

/** A size that goes by a word of an ask for what the piece goes on: `33 round` is the hat's girth, not the head's. */
const isSideOf = (plan: Plan, id: string, { adjective }: PlannedSize): boolean =>
  plan.sizes.every((size) => size.id !== id) &&
  pieceById(plan.piece)?.asks[id]?.words.includes(adjective.split(' ')[0] ?? '') === true;

function measurementOf(
  { work, piece, profile }: WorkMeant,
  plan: Plan,
  came: readonly Came[],
  rows: number,
  request: FinishRequest,
  at: At,
): StoredMeasurement | undefined {
  if (came.length === 0 && request.mass === undefined) return undefined;
  const counted = (axis: 'rows' | 'needles', count: number | undefined) => {
    const one = came.find(({ size }) => size.axis === axis);
    return one && count !== undefined ? finishedCount(one.size.measure, count, mmOfValue(one.value)) : undefined;
  };
  const sizes = came.map(({ size, value }) => `${value.said ?? ''} ${size.adjective}`.trim());
  const mass = request.mass?.said;
  return {
    id: at.newId(),
    profileId: profile.id,
    swatch: work.id,
    state: request.state ?? 'rested',
    form: plan.onMachine.target.form,
    rows: counted('rows', rows),
    stitches: counted('needles', plan.needles),
    needles: plan.needles,
    massG: request.mass?.is === 'mass' ? request.mass.g : undefined,
    unravelled: undefined,
    note: '',
    day: dayOf(at),
    workId: work.id,
    replaces: '',
    said: [`finished ${piece.label.toLowerCase()}`, ...sizes, ...(mass === undefined ? [] : [mass])].join(', '),
    at: at.now,
  };
}

/** Readings of the work as readings of the same fabric. */
const readingsOf = (
  { work, readings, profile }: WorkMeant,
  form: Measurement['form'],
  rows: number,
  at: At,
): StoredMeasurement[] =>
  readings.map(({ row, lengthMm, state, said, at: readAt }) => ({
    id: at.newId(),
    profileId: profile.id,
    swatch: work.id,
    state,
    form,
    rows: readingCount({ row, lengthMm, state }, rows),
    stitches: undefined,
    needles: undefined,
    massG: undefined,
    unravelled: undefined,
    note: '',
    day: dayOf(at, readAt),
    workId: work.id,
    replaces: '',
    said,
    at: readAt,
  }));

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
