import type { Day } from '../../../core/index.js';
import type { BatchStage } from '../../asks/batch.js';

export type { BatchStage };

export type BatchPart = {
  makerId: string;
  stage: BatchStage;
  /** Pieces dealt to them in all, and how many of these are done. */
  share: number;
  done: number;
  /** Days that they are away from this batch. */
  away: readonly { from: Day; to: Day }[];
  /** They make no more of it. */
  isOut: boolean;
};

/** So many of a plan, made by several for a day. */
export type StoredBatch = {
  id: string;
  ownerId: string;
  planId: string;
  pieces: number;
  dueDay: Day;
  /** When it was to be ready as it was dealt last. */
  readyDay: Day;
  version: number;
  endedAt: number | undefined;
  parts: readonly BatchPart[];
};

export type Batches = {
  add(batch: Omit<StoredBatch, 'version' | 'endedAt'>, at: number): Promise<void>;
  get(id: string): Promise<StoredBatch | undefined>;
  /** That of a plan, not ended. */
  ofPlan(planId: string): Promise<StoredBatch | undefined>;
  /** The one made last that is not ended and in which the maker has a part, or that is theirs. */
  openOf(makerId: string): Promise<StoredBatch | undefined>;
  /** Replaces all but what is done, unless it was changed since `version`; parts no longer named are out. */
  replace(batch: Omit<StoredBatch, 'endedAt'>): Promise<boolean>;
  /** Adds to what a maker has done; false where that came below 0. */
  addDone(id: string, makerId: string, stage: BatchStage, by: number): Promise<boolean>;
  end(id: string, at: number | undefined): Promise<void>;
};
