import type { App } from '@slack/bolt';
import type { Log } from '../surroundings.js';
import type { Turn } from '../turn.js';

/** What every listener needs: a place to hand the turn to, and a bell to ring once it is stored. */
export type Door = {
  /** Rejects only when the store is down. */
  taken(turn: Turn): Promise<unknown>;
  /** Rung after the commit; posting begins after the acknowledgement has gone out. */
  wake(): void;
  now(): number;
  log: Log;
};

/** The context that our own authorize fills in for every request. */
export type SlackApp = App<{ teamId: string; botUserId: string }>;
