import { type Measurement, type Outcome, type Piece, type Plan, plan } from '../../core/index.js';
import type { PlanAsk, Value } from '../request.js';
import type { Profile } from '../store/ports.js';
import { profileMeant } from './bench.js';
import type { At } from './desk.js';
import { machineName } from './names.js';

/** A plan tried on the bench it means, and what it was tried with. `profile` is undefined for a maker without gauge. */
export type Tried = {
  outcome: Outcome<Plan>;
  profile: Profile | undefined;
  measurements: readonly Measurement[];
  /** The ask with the machine and yarn it came to stand on, so that its steps and its changes stay there. */
  ask: PlanAsk;
};

/** Plans an ask on the machine and yarn it names, else on those used last. Writes nothing. */
export async function tried(ask: PlanAsk, piece: Piece, at: At): Promise<Tried> {
  const profiles = await at.store.profiles.of(at.maker.id);
  const meant = profileMeant(ask.on, profiles);
  const profile = meant?.profile;
  const needles = meant?.needles ?? ask.on.needles;
  const measurements = profile === undefined ? [] : await at.store.measurements.of(profile.id);
  const borrowedFrom = profile !== undefined && meant?.borrowed ? machineName(profile.machine) : undefined;
  const outcome = plan({ piece, values: given(ask.values), needles, measurements, borrowedFrom, pieces: ask.copies });
  const machine = ask.on.machine ?? (borrowedFrom === undefined ? profile?.machine.name : undefined);
  const on = { ...ask.on, machine, needles, yarn: profile?.yarn.name ?? ask.on.yarn };
  return { outcome, profile, measurements, ask: { ...ask, on } };
}

/** Values as core takes them. A bare number is asked about before anything is planned. */
export const given = (values: Record<string, Value>) =>
  Object.fromEntries(Object.entries(values).flatMap(([id, value]) => (value.is === 'bare' ? [] : [[id, value]])));
