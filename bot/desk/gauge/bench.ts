import type { Bench } from '../../request.js';
import type { Profile } from '../../store/ports.js';

/** `name_key` of the store: names are the same whatever their case. */
const key = (name: string): string => name.trim().toLowerCase();

/** The machine a maker means, by name, by needles, else the one used last. */
export function machineMeant(on: Bench, profiles: readonly Profile[]): { name: string; needles: number | undefined } {
  const named = on.machine ?? (on.needles === undefined ? undefined : machineWith(on.needles, profiles));
  if (named === undefined) return profiles[0]?.machine ?? { name: '', needles: undefined };
  const known = profiles.find((p) => key(p.machine.name) === key(named))?.machine;
  return { name: known?.name ?? named, needles: on.needles ?? known?.needles };
}

/** The maker's machine with this many needles, the last used first; a new one is named by its needles. */
const machineWith = (needles: number, profiles: readonly Profile[]): string =>
  profiles.find((p) => p.machine.needles === needles)?.machine.name ?? String(needles);

export const yarnMeant = (on: Bench, profiles: readonly Profile[]): string => on.yarn ?? profiles[0]?.yarn.name ?? '';

/** The tension setting meant: as named, else the one used last on that machine in that yarn. */
export function tensionMeant(on: Bench, machine: string, yarn: string, profiles: readonly Profile[]): string {
  const last = profiles.find((p) => key(p.machine.name) === key(machine) && key(p.yarn.name) === key(yarn));
  return on.tension ?? last?.tension ?? '';
}

type BenchMeant = {
  machine: { name: string; needles: number | undefined };
  /** Where its gauge may be found, best first: on the machine itself, then on others in the same yarn and tension. */
  profiles: readonly Profile[];
};

/** The machine a plan is made on, in the yarn that is named or was used last on it. */
export function benchMeant(on: Bench, profiles: readonly Profile[]): BenchMeant {
  const machine = machineMeant(on, profiles);
  const onIt = (profile: Profile): boolean => key(profile.machine.name) === key(machine.name);
  const yarn = on.yarn ?? profiles.find(onIt)?.yarn.name;
  const ofYarn = profiles.filter(
    (p) =>
      (yarn === undefined || key(p.yarn.name) === key(yarn)) &&
      (on.tension === undefined || key(p.tension) === key(on.tension)),
  );
  return { machine, profiles: [...ofYarn.filter(onIt), ...ofYarn.filter((p) => !onIt(p))] };
}

/** True when a profile is of another machine than the one meant. */
export const isBorrowed = (profile: Profile, { machine }: BenchMeant): boolean =>
  key(profile.machine.name) !== key(machine.name);
