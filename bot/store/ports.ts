import type { Measurement, Reading } from '../../core/index.js';
import type { Conversation } from '../conversation.js';
import type { PlanAsk } from '../request.js';

export type Units = 'cm' | 'in';

export type Maker = {
  id: string;
  slackUserId: string;
  name: string;
  units: Units | undefined;
  timeZone: string;
  /** The ISO 4217 code that prices without one are in; undefined until said. */
  currency: string | undefined;
};

/** `name` is '' for the machine or yarn a maker has not named; `needles` is undefined until said. */
export type Machine = { id: string; name: string; needles: number | undefined };
export type Yarn = {
  id: string;
  name: string;
  /** Its category in the standard yarn weight system, 0 to 7. */
  category: number | undefined;
  tex: number | undefined;
  /** The day this lot came to the maker, as core counts days. */
  since: number | undefined;
};

/** `tension` is the machine's setting, '' where none was said. */
export type Profile = { id: string; machine: Machine; yarn: Yarn; tension: string; usedAt: number };

export type StoredMeasurement = Measurement & {
  id: string;
  profileId: string;
  /** Needles in the tube, when they were known. */
  needles: number | undefined;
  massG: number | undefined;
  /** Yarn drawn out of so many stitches. */
  unravelled: { stitches: number; lengthMm: number } | undefined;
  said: string;
  note: string;
  day: number;
  /** The work it came from, '' for a swatch. */
  workId: string;
  /** The measurement it corrects, '' for none. */
  replaces: string;
  at: number;
};

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

/** What a ball holds. */
export type Ball = { massG: number; lengthMm: number };
/** A price in minor units: `balls` or pieces for `minor`. `currency` is '' while the maker has named none. */
export type Price = { minor: number; currency: string };

/** A way a yarn is sold: so many balls, and what they cost where that was said. */
export type PutUp = {
  id: string;
  yarnId: string;
  ball: Ball;
  balls: number;
  price: Price | undefined;
  said: string;
  at: number;
};

/** Which thing on the shelf: of whom ('' for the team), its name, its dye lot ('' where none was said). */
export type LotOf = { owner: string; kind: 'yarn' | 'notion'; name: string; dyeLot: string };

/** Things of one lot. Amounts are mg of yarn, pieces of a notion; what is set aside for work is still among those left. */
export type Lot = LotOf & {
  id: string;
  ball: Ball | undefined;
  /** Of one ball or piece. */
  price: Price | undefined;
  left: number;
  aside: number;
};

/** One change of a lot. `workId` is '' where no work is behind it. */
export type LotMove = {
  id: string;
  lotId: string;
  workId: string;
  left: number;
  aside: number;
  said: string;
  at: number;
};

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
    setCurrency(makerId: string, currency: string | undefined): Promise<void>;
  };
  profiles: {
    /** All profiles of a maker, the one used last first. */
    of(makerId: string): Promise<Profile[]>;
    /** The profile of this machine, yarn and tension, made on first use. An unnamed machine without needles takes the name given. */
    opened(
      makerId: string,
      machine: { name: string; needles: number | undefined },
      yarn: string,
      tension: string,
      at: number,
    ): Promise<Profile>;
    used(profileId: string, at: number): Promise<void>;
  };
  measurements: {
    add(measurement: StoredMeasurement): Promise<void>;
    /** Those not withdrawn, oldest first. */
    of(profileId: string): Promise<StoredMeasurement[]>;
    /** The same of a maker's yarn, over all machines and tensions. */
    inYarn(makerId: string, yarnId: string): Promise<StoredMeasurement[]>;
    get(id: string): Promise<StoredMeasurement | undefined>;
    withdraw(id: string, at: number): Promise<void>;
    restore(id: string): Promise<void>;
  };
  yarns: {
    /** The maker's yarns, by name; the one without a name left out. */
    of(makerId: string): Promise<Yarn[]>;
    /** The maker's yarn of this name, made on first use. */
    opened(makerId: string, name: string): Promise<Yarn>;
    /** Keeps the category, the count and the day of a yarn; null for what is not known. */
    describe(id: string, known: { category: number | null; tex: number | null; since: number | null }): Promise<void>;
  };
  works: {
    /** Puts a piece on a machine, its tally at 0. */
    start(work: Pick<Work, 'id' | 'makerId' | 'planId' | 'profileId' | 'stopAt'> & { at: number }): Promise<void>;
    /** Those not ended, the one touched last first. */
    open(makerId: string): Promise<Work[]>;
    get(id: string, makerId: string): Promise<Work | undefined>;
    /** The work done last of which nothing was measured. */
    unmeasured(makerId: string): Promise<Work | undefined>;
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
  readings: {
    add(reading: StoredReading): Promise<void>;
    /** Those not withdrawn, oldest first. */
    of(workId: string): Promise<StoredReading[]>;
    withdraw(id: string, at: number): Promise<void>;
    restore(id: string): Promise<void>;
  };
  putUps: {
    add(putUp: PutUp): Promise<void>;
    /** Those not withdrawn, oldest first. */
    of(yarnId: string): Promise<PutUp[]>;
    withdraw(id: string, at: number): Promise<void>;
    restore(id: string): Promise<void>;
  };
  shelf: {
    /** Lots of this maker and of the team, by name and dye lot; used up ones as well. */
    of(makerId: string): Promise<Lot[]>;
    /** The lot of this owner, name and dye lot, made empty on first use. */
    opened(lot: LotOf, at: number): Promise<Lot>;
    /** Keeps what is known of a lot's ball and price in place of what was. */
    describe(id: string, known: Pick<Lot, 'ball' | 'price'>): Promise<void>;
    /** Changes a lot if it holds enough; false, and nothing changed, if it does not. */
    move(move: LotMove): Promise<boolean>;
    /** Turns a change back, or puts it in again; false, and nothing changed, if the lot no longer holds enough. */
    undoMove(id: string, at: number): Promise<boolean>;
    redoMove(id: string): Promise<boolean>;
    /** Whether all of these moves can be turned back together, or put in again. */
    canTurn(ids: readonly string[], redo: boolean): Promise<boolean>;
    /** What was moved for a work and not taken back, oldest first. */
    movesFor(workId: string): Promise<LotMove[]>;
  };
  plans: {
    /** Stores a plan with its first revision. */
    add(plan: StoredPlan): Promise<void>;
    get(id: string, makerId: string): Promise<StoredPlan | undefined>;
    /** The maker's plan made last, in whatever place. */
    latest(makerId: string): Promise<StoredPlan | undefined>;
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
