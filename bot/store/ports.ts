import type { Measurement } from '../../core/index.js';
import type { Conversation } from '../conversation.js';
import type { PlanAsk } from '../request.js';

export type Units = 'cm' | 'in';

export type Maker = { id: string; slackUserId: string; name: string; units: Units | undefined; timeZone: string };

/** `name` is '' for the machine or yarn a maker has not named; `needles` is undefined until said. */
export type Machine = { id: string; name: string; needles: number | undefined };
export type Yarn = { id: string; name: string };

export type Profile = { id: string; machine: Machine; yarn: Yarn; usedAt: number };

export type StoredMeasurement = Measurement & { id: string; profileId: string; said: string; at: number };

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

/** Where a card goes. `ephemeral` and `response` are seen by one person only. */
export type Address =
  | { to: 'post'; channel: string; threadTs?: string | undefined }
  | { to: 'ephemeral'; channel: string; user: string; threadTs?: string | undefined }
  | { to: 'response'; url: string };

/** A card made ready: plain text that says all, and Block Kit that says the same. */
export type Body = { text: string; blocks: readonly unknown[] };

export type OutboxRow = {
  workspaceId: string;
  slackTeamId: string;
  id: string;
  address: Address;
  body: Body;
  attempts: number;
  expires: number;
};

/** The repositories of one workspace inside one transaction. Nothing here reaches another workspace. */
export type Bound = {
  deliveries: {
    /** True the first time a key is claimed. Always the first statement of a turn: it takes the write lock. */
    claim(key: string, at: number): Promise<boolean>;
  };
  makers: {
    /** The maker of this Slack user, made on first use and held until the commit. */
    held(slackUserId: string, name: string, at: number): Promise<Maker>;
    setUnits(makerId: string, units: Units | undefined): Promise<void>;
  };
  profiles: {
    /** All profiles of a maker, the one used last first. */
    of(makerId: string): Promise<Profile[]>;
    /** The profile of this machine and yarn, made on first use. An unnamed machine without needles takes the name given. */
    opened(
      makerId: string,
      machine: { name: string; needles: number | undefined },
      yarn: string,
      at: number,
    ): Promise<Profile>;
    used(profileId: string, at: number): Promise<void>;
  };
  measurements: {
    add(measurement: StoredMeasurement): Promise<void>;
    /** Those not withdrawn, oldest first. */
    of(profileId: string): Promise<StoredMeasurement[]>;
    get(id: string): Promise<StoredMeasurement | undefined>;
    withdraw(id: string, at: number): Promise<void>;
    restore(id: string): Promise<void>;
  };
  plans: {
    /** Stores a plan with its first revision. */
    add(plan: StoredPlan): Promise<void>;
    get(id: string, makerId: string): Promise<StoredPlan | undefined>;
  };
  conversations: {
    /** The talk of this maker in this place, empty when it never began or has lapsed by `at`. */
    of(place: string, makerId: string, at: number): Promise<Conversation>;
    keep(place: string, makerId: string, talk: Conversation, until: number): Promise<void>;
  };
  outbox: {
    add(id: string, address: Address, body: Body, at: number, expires: number): Promise<void>;
  };
};

export type Store = {
  /** Runs `work` in one transaction bound to the workspace of this Slack team; a throw rolls all of it back. */
  within<T>(slackTeamId: string, work: (bound: Bound) => Promise<T>): Promise<T>;
  /** What bot/delivery takes from: a row taken is leased, so that two senders never post it twice. */
  outbox: {
    take(at: number, leaseMs: number, limit: number): Promise<OutboxRow[]>;
    posted(row: OutboxRow, at: number, slackTs: string | undefined): Promise<void>;
    /** Gives a row back to be tried at `notBefore`. */
    later(row: OutboxRow, notBefore: number): Promise<void>;
    dropped(row: OutboxRow, at: number, why: string): Promise<void>;
    /** When the next unsent row falls due, or undefined when there is none. */
    nextAt(): Promise<number | undefined>;
  };
  /** Forgets lapsed conversations, deliveries older than a week and outbox rows sent over a week ago. */
  purge(at: number): Promise<void>;
  close(): Promise<void>;
};
