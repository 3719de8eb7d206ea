import type { Reading } from '../../../core/index.js';

/** A piece on a machine. `rows` is where its tally stands. */
export type Work = {
  id: string;
  makerId: string;
  planId: string;
  profileId: string;
  stopAt: number;
  rows: number;
  startedAt: number;
  endedAt: number | undefined;
};

export type Outcome = 'done' | 'given_up';

/** One change of a tally: `rows` is where it stood afterwards. */
export type TallyEntry = {
  seq: number;
  kind: 'start' | 'by' | 'to' | 'lost' | 'settled';
  rows: number;
  said: string;
  at: number;
  undone: boolean;
};

export type StoredReading = Reading & { id: string; workId: string; said: string; at: number };

export type Works = {
  /** Puts a piece on a machine, its tally at 0. */
  start(work: Pick<Work, 'id' | 'makerId' | 'planId' | 'profileId' | 'stopAt'> & { at: number }): Promise<void>;
  /** Those not ended, the one touched last first. */
  open(makerId: string): Promise<Work[]>;
  get(id: string, makerId: string): Promise<Work | undefined>;
  /** All of a plan, ended or not. */
  ofPlan(planId: string): Promise<{ outcome: Outcome | undefined }[]>;
  /** The work done last of which nothing was measured. */
  unmeasured(makerId: string): Promise<Work | undefined>;
  /** The work done last. */
  doneLast(makerId: string): Promise<Work | undefined>;
  stopAt(id: string, rows: number): Promise<void>;
  end(id: string, at: number, outcome: Outcome): Promise<void>;
  reopen(id: string): Promise<void>;
  /** Adds an entry to the tally; returns its number. */
  count(id: string, entry: Pick<TallyEntry, 'kind' | 'rows' | 'said' | 'at'>): Promise<number>;
  undoCount(id: string, seq: number, at: number): Promise<void>;
  redoCount(id: string, seq: number): Promise<void>;
  /** Every entry, oldest first, those taken back included. */
  tally(id: string): Promise<TallyEntry[]>;
};

export type Readings = {
  add(reading: StoredReading): Promise<void>;
  /** Those not withdrawn, oldest first. */
  of(workId: string): Promise<StoredReading[]>;
  withdraw(id: string, at: number): Promise<void>;
  restore(id: string): Promise<void>;
};
