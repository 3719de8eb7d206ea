import type { TimeLog } from '../../../core/index.js';

/** Time at the bench, of one driver. Those of one session were one look at the clock, and go and come together. */
export type StoredTime = TimeLog & {
  id: string;
  makerId: string;
  /** The work it was for. */
  workId: string;
  /** Whole days since 1970, in the maker's own time zone. */
  day: number;
  said: string;
  at: number;
};

export type BenchLog = {
  add(time: StoredTime): Promise<void>;
  /** Those not withdrawn, oldest first. */
  of(makerId: string): Promise<StoredTime[]>;
  /** Takes all of a session back. */
  withdraw(session: string, at: number): Promise<void>;
  restore(session: string): Promise<void>;
};

/** A clock that runs for some work, which stood at `rows` when it began. */
export type Clock = { makerId: string; workId: string; rows: number; startedAt: number };

export type Clocks = {
  of(makerId: string): Promise<Clock | undefined>;
  /** Sets the one clock of a maker. */
  start(clock: Clock): Promise<void>;
  stop(makerId: string): Promise<void>;
};
