import { type InHand, type Outcome, type Piece, type Plan, plan, type Units } from '../../../core/index.js';
import { inUnits } from '../../language/lengths.js';
import type { PlanAsk } from '../../request.js';
import type { Ball, Profile, StoredMeasurement } from '../../store/ports.js';
import type { At } from '../desk.js';
import { benchMeant, isBorrowed } from '../gauge/bench.js';
import { machineName } from '../names.js';
import { yarnTold } from '../yarn/yarn-known.js';
import { given, inUse } from './in-use.js';
import { rowsHeld, settled } from './stripes.js';

/** A plan tried on the bench it means, and what it was tried with. `profile` is undefined for a maker without gauge. */
export type Tried = {
  outcome: Outcome<Plan>;
  profile: Profile | undefined;
  measurements: readonly StoredMeasurement[];
  /** What a ball of its yarn holds, where that was told. */
  ball: Ball | undefined;
  /** The ask with the machine and yarn it came to stand on, so that its steps and its changes stay there. */
  ask: PlanAsk;
};

/**
 * Plans an ask on the machine and yarn it names, else on those used last; the work in hand, corrected. Writes nothing.
 * @param profileId the profile that comes before those used later: that of the work in hand
 */
export async function tried(ask: PlanAsk, piece: Piece, at: At, work?: InHand, profileId?: string): Promise<Tried> {
  return triedOn(await basisOf(ask.on, at, profileId), ask, piece, work);
}

/** What plans on one machine in one yarn stand on. */
export type Basis = Awaited<ReturnType<typeof basisOf>>;

/** The machine and yarn meant, and what is measured on them or nearest to them. */
export async function basisOf(on: PlanAsk['on'], at: At, profileId?: string) {
  const profiles = await at.store.profiles.of(at.maker.id);
  const meant = benchMeant(
    on,
    [...profiles].sort((a, b) => Number(b.id === profileId) - Number(a.id === profileId)),
  );
  const { profile, measurements, inYarn } = await firstMeasured(meant.profiles, at);
  const needles = meant.machine.needles ?? profile?.machine.needles;
  const borrowedFrom = profile !== undefined && isBorrowed(profile, meant) ? machineName(profile.machine) : undefined;
  const yarn = profile && (await yarnTold({ profile, measurements, inYarn: inYarn ?? [], at }));
  return { meant, profile, measurements, needles, borrowedFrom, inYarn, yarn: yarn?.known, ball: yarn?.ball };
}

/** The same on what is known already, for several sizes in one go. Pure. */
export function triedOn(basis: Basis, ask: PlanAsk, piece: Piece, work?: InHand): Tried {
  const { meant, profile, measurements, needles, borrowedFrom, inYarn, yarn, ball } = basis;
  const values = given(inUse(ask));
  const input = { piece, values, needles, measurements, inYarn, borrowedFrom, pieces: ask.copies, work, yarn };
  const free = plan(input);
  const stripes = ask.stripes && free.ok ? settled(ask.stripes, free.value) : ask.stripes;
  const repeatRows = free.ok ? rowsHeld(stripes, free.value) : undefined;
  const outcome = repeatRows === undefined ? free : plan({ ...input, repeatRows });
  // An ask that waits for a gauge stays open to the machine that gauge will come from.
  const tension = ask.on.tension ?? profile?.tension;
  const own = { machine: meant.machine.name, needles, yarn: profile?.yarn.name, ...(tension && { tension }) };
  const on = profile === undefined ? ask.on : own;
  return { outcome, profile, measurements, ball, ask: { ...ask, on, ...(stripes && { stripes }) } };
}

/**
 * The first profile with rows measured; a machine that was only named has none, and borrows. Stitch widths measured
 * nearer by stand in place of the borrowed ones.
 */
async function firstMeasured(profiles: readonly Profile[], at: At) {
  const nearer: StoredMeasurement[] = [];
  for (const profile of profiles) {
    const inYarn = await at.store.measurements.inYarn(at.maker.id, profile.yarn.id);
    const measurements = inYarn.filter(({ profileId }) => profileId === profile.id);
    if (measurements.some(({ rows }) => rows !== undefined)) {
      const own = nearer.length === 0 ? measurements : measurements.map((m) => ({ ...m, stitches: undefined }));
      return { profile, measurements: [...nearer, ...own], inYarn };
    }
    nearer.push(...measurements);
  }
  return { profile: undefined, measurements: [], inYarn: undefined };
}

/** An ask whose bare numbers take the maker's unit, once that is known. */
export function inUnitsOf(ask: PlanAsk, units: Units | undefined): PlanAsk {
  const read = (values: PlanAsk['values']) =>
    Object.fromEntries(Object.entries(values).map(([id, value]) => [id, inUnits(value, units)]));
  const sizes = ask.sizes?.map((size) => ({ ...size, values: read(size.values) }));
  return { ...ask, values: read(ask.values), ...(sizes && { sizes }) };
}
