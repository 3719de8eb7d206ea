import type { Bench } from '../request.js';
import type { Profile } from '../store/ports.js';

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

/**
 * The profile a plan is made on: that of the machine and yarn meant; else the machine in its last yarn; else the
 * last of this yarn, borrowed from another machine.
 */
export function profileMeant(
  on: Bench,
  profiles: readonly Profile[],
): { profile: Profile; needles: number | undefined; borrowed: boolean } | undefined {
  const machine = machineMeant(on, profiles);
  const yarn = key(on.yarn ?? '');
  const ofMachine = profiles.filter((p) => key(p.machine.name) === key(machine.name));
  const ofYarn = (list: readonly Profile[]) => list.filter((p) => on.yarn === undefined || key(p.yarn.name) === yarn);
  const own = ofYarn(ofMachine)[0];
  if (own !== undefined) return { profile: own, needles: machine.needles ?? own.machine.needles, borrowed: false };
  const other = ofYarn(profiles)[0];
  if (other === undefined) return undefined;
  return { profile: other, needles: machine.needles, borrowed: key(other.machine.name) !== key(machine.name) };
}
