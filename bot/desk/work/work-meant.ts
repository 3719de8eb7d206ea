import { type Outcome, type Piece, type Plan, pieceById, type Reading, type Words } from '../../../core/index.js';
import type { WorkShown } from '../../reply.js';
import type { PlanAsk } from '../../request.js';
import type { Profile, StoredReading, Work } from '../../store/ports.js';
import type { At } from '../desk.js';
import { machineMeant } from '../gauge/bench.js';
import { sameName } from '../names.js';
import { tried } from '../plan/planning.js';
import { colourAt, stripesOf } from '../plan/stripes.js';

/** A piece on the machine, with the plan it follows and what was read of it, by row. */
export type WorkMeant = {
  work: Work;
  ask: PlanAsk;
  piece: Piece;
  profile: Profile;
  readings: readonly StoredReading[];
};

/** The work a request is about: the one a button names, that on the machine named, that of this talk, else the last. */
export async function workMeant(
  { workId, on = {} }: { workId?: string | undefined; on?: PlanAsk['on'] | undefined },
  at: At,
): Promise<WorkMeant | undefined> {
  const profiles = await at.store.profiles.of(at.maker.id);
  const machineOf = (work: Work): string => profiles.find(({ id }) => id === work.profileId)?.machine.name ?? '';
  const named = on.machine !== undefined || on.needles !== undefined ? machineMeant(on, profiles).name : undefined;
  const open = await at.store.works.open(at.maker.id);
  const work =
    workId !== undefined
      ? open.find(({ id }) => id === workId)
      : named !== undefined
        ? open.find((one) => sameName(machineOf(one), named))
        : (open.find(({ id }) => id === at.talk.workId) ?? open[0]);
  return work && withPlan(work, profiles, at);
}

/** Work with its plan, its profile and what was read of it. */
export async function withPlan(work: Work, profiles: readonly Profile[], at: At): Promise<WorkMeant> {
  const stored = await at.store.plans.get(work.planId, at.maker.id);
  const piece = pieceById(stored?.piece ?? '');
  const profile = profiles.find(({ id }) => id === work.profileId);
  if (stored === undefined || piece === undefined || profile === undefined) throw new Error('work without its plan');
  const readings = await at.store.readings.of(work.id);
  return { work, ask: stored.ask, piece, profile, readings: [...readings].sort((a, b) => a.row - b.row) };
}

/** The plan of the work, corrected by readings of it: those kept, unless others are given. */
export async function plannedWith(
  { work, ask, piece, profile, readings }: WorkMeant,
  at: At,
  more: { readings?: readonly Reading[]; stopAt?: number; knitted?: number } = {},
): Promise<Outcome<Plan>> {
  const inHand = { readings, stopAt: work.stopAt, knitted: work.rows, ...more };
  const { outcome } = await tried(ask, piece, at, inHand, profile.id);
  return outcome;
}

/** How the work stands, for a card: the row it is at, where it stops, and where to measure on the way. */
export async function workShown(meant: WorkMeant, at: At): Promise<WorkShown> {
  const { work, piece, profile } = meant;
  const { machine } = profile;
  const { id, rows, stopAt } = work;
  const outcome = await plannedWith(meant, at);
  const shown = { id, label: piece.label, machine, rows, stopAt };
  if (!outcome.ok) return { ...shown, soFarMm: undefined, measureAt: undefined };
  const { checkpoint, work: corrected, onMachine } = outcome.value;
  const ahead = checkpoint && checkpoint.row > rows && checkpoint.row < stopAt ? checkpoint.row : undefined;
  return {
    ...shown,
    colour: colourOn(meant, outcome.value),
    soFarMm: rows * Math.exp((corrected?.pitch ?? onMachine.row).mu),
    measureAt: ahead,
  };
}

/** The colour that is on in stripes, at the row the work is at. */
function colourOn({ work: { rows, stopAt }, ask }: WorkMeant, plan: Plan): Words | undefined {
  const stripes = stripesOf(ask, plan, stopAt);
  return stripes?.ok ? colourAt(stripes.value, rows) : undefined;
}

/** The same work once its tally stands at other rows. */
export const atRow = (meant: WorkMeant, rows: number): WorkMeant => ({ ...meant, work: { ...meant.work, rows } });
