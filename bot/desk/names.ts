import type { Machine, Yarn } from '../store/ports.js';

/** A machine as its maker says it: `the 46`, or `your machine` while it has no name. */
export const machineName = (machine: Pick<Machine, 'name'>): string =>
  machine.name === '' ? 'your machine' : `the ${machine.name.replace(/^the /i, '')}`;

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Names are the same whatever their case. */
export const sameName = (a: string, b: string): boolean => a.trim().toLowerCase() === b.trim().toLowerCase();

/** Yarn, machine and tension together, `grey medium on the 46, tension 5`; what has no name is left out. */
export function benchName(machine: Pick<Machine, 'name'>, yarn: Pick<Yarn, 'name'>, tension = ''): string {
  const bench = yarn.name === '' ? machineName(machine) : `${yarn.name} on ${machineName(machine)}`;
  return tension === '' ? bench : `${bench}, tension ${tension}`;
}
