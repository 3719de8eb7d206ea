import type { Store } from './store/ports.js';

export type Log = {
  info(fields: Record<string, unknown>, message: string): void;
  warn(fields: Record<string, unknown>, message: string): void;
  error(fields: Record<string, unknown>, message: string): void;
};

/** What a turn needs from outside, made once in main. */
export type Surroundings = { store: Store; newId: () => string; log: Log; now: () => number };

export const silentLog: Log = { info: () => {}, warn: () => {}, error: () => {} };
