import type { Conversation } from '../conversation.js';
import type { Request } from '../request.js';
import type { Batches } from './ports/batches.js';
import type { BenchLog, Clocks } from './ports/bench-log.js';
import type { Measurements, Profiles, Yarns } from './ports/gauge.js';
import type { Homes } from './ports/homes.js';
import type { Introductions } from './ports/introductions.js';
import type { Makers } from './ports/makers.js';
import type { Address, Body, OutboxRow } from './ports/outbox.js';
import type { Plans } from './ports/plans.js';
import type { RatesPort } from './ports/rates.js';
import type { Reminders, TakenReminder } from './ports/reminders.js';
import type { Results, Shares } from './ports/share.js';
import type { PutUps, Shelf } from './ports/shelf.js';
import type { Readings, Works } from './ports/works.js';

export * from './ports/batches.js';
export * from './ports/bench-log.js';
export * from './ports/gauge.js';
export * from './ports/homes.js';
export * from './ports/introductions.js';
export * from './ports/makers.js';
export * from './ports/outbox.js';
export * from './ports/plans.js';
export * from './ports/rates.js';
export * from './ports/reminders.js';
export * from './ports/share.js';
export * from './ports/shelf.js';
export * from './ports/works.js';

/** The repositories of one workspace inside one transaction. Nothing here reaches another workspace. */
export type Bound = {
  deliveries: {
    /** True the first time a key is claimed. Always the first statement of a turn: it takes the write lock. */
    claim(key: string, at: number): Promise<boolean>;
  };
  makers: Makers;
  profiles: Profiles;
  measurements: Measurements;
  yarns: Yarns;
  works: Works;
  readings: Readings;
  putUps: PutUps;
  shelf: Shelf;
  rates: RatesPort;
  benchLog: BenchLog;
  clocks: Clocks;
  batches: Batches;
  reminders: Reminders;
  plans: Plans;
  homes: Homes;
  introductions: Introductions;
  shares: Shares;
  results: Results;
  conversations: {
    /** The talk of this maker in this place, empty when it never began or has lapsed by `at`. */
    of(place: string, makerId: string, at: number): Promise<Conversation>;
    keep(place: string, makerId: string, talk: Conversation, until: number): Promise<void>;
    /** Whose talk in this place a turn with buttons was of, and what they offered; undefined where no talk knows it. */
    offering(place: string, turn: string, at: number): Promise<{ makerId: string; choices: Request[] } | undefined>;
  };
  outbox: {
    /** A page for Home takes the place of one that still waits for the same maker. `at` is when it may go out. */
    add(id: string, address: Address, body: Body, at: number, expires: number): Promise<void>;
    /** Makes the row say something else; false, and nothing changed, once it was posted or is in the hand of a sender. */
    replace(id: string, body: Body, at: number, expires: number): Promise<boolean>;
  };
  /** Runs `work`, and rolls back what it wrote where its result is not one to keep. */
  attempted<T>(work: () => Promise<T>, isKept: (result: T) => boolean): Promise<T>;
};

export type Store = {
  /** Runs `work` in one transaction bound to the workspace of this Slack team; a throw rolls all of it back. */
  within<T>(slackTeamId: string, work: (bound: Bound) => Promise<T>): Promise<T>;
  /** What bot/delivery takes from: a row taken is leased, so that two senders never post it twice. */
  outbox: {
    take(at: number, leaseMs: number, limit: number): Promise<OutboxRow[]>;
    /**
     * The row with what it holds by now; from here on nothing joins it, and what comes is a row of its own. One that makes
     * another row's message anew names that message, once there is one.
     */
    sealed(row: OutboxRow): Promise<OutboxRow>;
    posted(row: OutboxRow, at: number, slackTs: string | undefined): Promise<void>;
    /** Gives a row back to be tried at `notBefore`. */
    later(row: OutboxRow, notBefore: number): Promise<void>;
    dropped(row: OutboxRow, at: number, why: string): Promise<void>;
    /** When the next unsent row falls due, or undefined when there is none. */
    nextAt(): Promise<number | undefined>;
  };
  /** Reminders that are due, leased like the rows of the outbox. */
  reminders: {
    take(at: number, leaseMs: number, limit: number): Promise<TakenReminder[]>;
    /** When the next falls due, or undefined when none waits. */
    nextAt(): Promise<number | undefined>;
  };
  /** Forgets lapsed conversations, deliveries older than a week and outbox rows sent over a week ago. */
  purge(at: number): Promise<void>;
  close(): Promise<void>;
};
