import type { App, webApi } from '@slack/bolt';
import type { Surroundings } from '../surroundings.js';
import type { Answered, Turn } from '../turn.js';

/** What every listener needs: a place to hand the turn to, and a bell to ring once it is stored. */
export type Door = {
  /** Rejects only when the store is down. */
  taken(turn: Turn): Promise<Answered | undefined>;
  /** Rung after the commit; posting begins after the acknowledgement has gone out. */
  wake(): void;
  now(): number;
  /** For what opens at once and goes through no outbox. */
  views: Pick<webApi.WebClient['views'], 'open' | 'update'>;
} & Pick<Surroundings, 'store' | 'log'>;

/** The context that our own authorize fills in for every request. */
export type SlackApp = App<{ teamId: string; botUserId: string }>;
