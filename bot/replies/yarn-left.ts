import type { Lasting, Plan, RowChoice, Window, Words, YarnLeft } from '../../core/index.js';
import type { PlanAsk } from '../request.js';

/** Yarn left against the rows to go: all of `yarn` in grams or all in metres. */
export type YarnLeftShown = Lasting & {
  plan: Plan;
  ask: PlanAsk;
  yarn: YarnLeft;
  unit: 'g' | 'm';
  /** `shelf`: what was set aside or lies there, for all rows from the first. */
  from: 'told' | 'shelf';
  at: number;
  stopAt: number;
  /** The largest size as wide as the one wanted that it still reaches. */
  reach: (Window & RowChoice) | undefined;
  assumed: readonly Words[];
};
