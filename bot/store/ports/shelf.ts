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

export type PutUps = {
  add(putUp: PutUp): Promise<void>;
  /** Those not withdrawn, oldest first. */
  of(yarnId: string): Promise<PutUp[]>;
  withdraw(id: string, at: number): Promise<void>;
  restore(id: string): Promise<void>;
};

export type Shelf = {
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
