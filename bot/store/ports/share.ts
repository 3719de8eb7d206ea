import type { PlanAsk, SharedCounts } from '../../request.js';

/** A plan shown to one maker or in a channel, as it was shown last. */
export type Share = {
  id: string;
  ownerId: string;
  /** The plan that was shared first; all that became of it by changes has this origin. */
  origin: string;
  to: { makerId: string } | { channel: string; threadTs: string | undefined };
  /** The size alone: no machine, no yarn, no count that was not asked for. */
  ask: PlanAsk;
  /** The owner's own rows, where they chose to show them. */
  counts: SharedCounts | undefined;
  revision: number;
  isWithdrawn: boolean;
};

/** A maker who sized a share. `answered`: the last revision they took or chose not to. */
export type Taken = { shareId: string; makerId: string; revision: number; answered: number };

export type Shares = {
  /** Keeps a share and returns its id; to those it was shared with before, withdrawn or not, it is the same share anew. */
  add(share: Omit<Share, 'revision' | 'isWithdrawn'> & { at: number }): Promise<string>;
  get(id: string): Promise<Share | undefined>;
  /** An owner's shares not withdrawn, the one made first first; of this origin alone, where one is given. */
  of(ownerId: string, origin?: string): Promise<Share[]>;
  /** Those made for this maker, or in this channel, that are not withdrawn, the last first; so many at most. */
  shownTo(to: { makerId: string } | { channel: string }, most: number): Promise<Share[]>;
  /** Shows another size, or other rows, to the same; returns the number of the revision. */
  revise(id: string, ask: PlanAsk, counts: SharedCounts | undefined): Promise<number>;
  /** Makes one of its revisions the one that is shown. */
  setRevision(id: string, revision: number): Promise<void>;
  withdraw(id: string, at: number): Promise<void>;
  restore(id: string): Promise<void>;
  /** Keeps what a maker made of a share in place of what was kept before. */
  take(taken: Taken): Promise<void>;
  /** Forgets that a maker sized it. */
  release(shareId: string, makerId: string): Promise<void>;
  /** All who sized it. */
  takenBy(shareId: string): Promise<Taken[]>;
  /** Whose plan it is, by its origin. */
  ownerOf(origin: string): Promise<string | undefined>;
  /** The ask of a revision. */
  askOf(shareId: string, revision: number): Promise<PlanAsk | undefined>;
};

/** What of a result its maker sent to the owner of the plan: nothing, its size, or its rows and needles too. */
export type Sent = '' | 'size' | 'rows';

/** A finished piece of a shared plan: what the rows made, in the window it was made for. */
export type Result = {
  id: string;
  makerId: string;
  origin: string;
  cameMm: number;
  window: { loMm: number; hiMm: number };
  rows: number;
  needles: number | undefined;
  sent: Sent;
  at: number;
};

export type Results = {
  add(result: Result): Promise<void>;
  /** Those not withdrawn, oldest first. */
  of(origin: string): Promise<Result[]>;
  /** The maker's own result kept last. */
  latest(makerId: string): Promise<Result | undefined>;
  send(id: string, sent: Sent): Promise<void>;
  withdraw(id: string, at: number): Promise<void>;
  restore(id: string): Promise<void>;
};
