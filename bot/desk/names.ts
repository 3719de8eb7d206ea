import type { Machine, Yarn } from '../store/ports.js';

/** A machine as its maker says it: `the 46`, or `your machine` while it has no name. */
export const machineName = (machine: Pick<Machine, 'name'>): string =>
  machine.name === '' ? 'your machine' : `the ${machine.name.replace(/^the /i, '')}`;

/** Names are the same whatever their case. */
export const sameName = (a: string, b: string): boolean => a.trim().toLowerCase() === b.trim().toLowerCase();

/** Yarn and machine together, `grey medium on the 46`; the machine alone while the yarn has no name. */
export const benchName = (machine: Pick<Machine, 'name'>, yarn: Pick<Yarn, 'name'>): string =>
  yarn.name === '' ? machineName(machine) : `${yarn.name} on ${machineName(machine)}`;
