import type { App, webApi } from '@slack/bolt';
import type { Visit } from '../home.js';
import type { Surroundings } from '../surroundings.js';
import type { Answered, Turn } from '../turn.js';
import type { Agent } from './agent.js';
import type { Meet } from './people.js';

/** What every listener needs: a place to hand the turn to, and a bell to ring once it is stored. */
export type Door = {
  /** Rejects only when the store is down. */
  taken(turn: Turn): Promise<Answered | undefined>;
  /** Rejects only when the store is down. */
  visited(visit: Visit): Promise<void>;
  /** Gives prompts to a maker who opens Messages; it neither waits nor fails. */
  prompted(visit: Visit): void;
  met: Meet;
  agent: Agent;
  /** Rung after the commit; posting begins after the acknowledgement has gone out. */
  wake(): void;
  now(): number;
  /** For what opens at once and goes through no outbox. */
  views: Pick<webApi.WebClient['views'], 'open' | 'update'>;
} & Pick<Surroundings, 'store' | 'log'>;

/** The context that our own authorize fills in for every request. */
export type SlackApp = App<{ teamId: string; botUserId: string }>;
