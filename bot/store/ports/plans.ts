import type { PlanAsk } from '../../request.js';

export type StoredPlan = {
  id: string;
  makerId: string;
  piece: string;
  profileId: string;
  ask: PlanAsk;
  /** Needles, rows and spacings as they stood, as JSON; steps and outlines are made again. */
  numbers: unknown;
  engine: string;
  at: number;
};

export type Plans = {
  /** Stores a plan with its first revision. */
  add(plan: StoredPlan): Promise<void>;
  get(id: string, makerId: string): Promise<StoredPlan | undefined>;
  /** The maker's plan made last, in whatever place. */
  latest(makerId: string): Promise<StoredPlan | undefined>;
  /** The same, unless it is on a machine or done. */
  unstarted(makerId: string): Promise<StoredPlan | undefined>;
};
