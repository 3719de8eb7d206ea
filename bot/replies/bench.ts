import type { Driver, TimeRange, Timing, Words } from '../../core/index.js';
import type { Hours } from '../hours.js';

/** How long the plan in hand takes, for all that are asked for; `paced`: what the maker's own log has taught. */
export type Took = { timing: Timing; copies: number; paced: readonly Driver[]; sessions: number };

export type BenchReply =
  | { kind: 'time'; label: string; isPair: boolean; time: Took }
  | {
      kind: 'logged';
      label: string;
      times: readonly { parts: readonly string[]; seconds: number }[];
      pieces: number;
      /** A piece like it as a whole, before and now. */
      was: TimeRange;
      now: TimeRange;
      sessions: number;
      assumed: readonly Words[];
    }
  | {
      kind: 'hours';
      became: 'set' | 'shown' | 'zone';
      hours: Hours;
      timeZone: string;
      /** What the clock of that zone shows now: `11:05`. */
      clock: string;
      assumed: readonly Words[];
    };
