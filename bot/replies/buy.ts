import type { Needed, Words, YarnNeed } from '../../core/index.js';
import type { Ball, Lot, Price } from '../store/ports.js';

/** Balls of one kind, and the packs they are bought in: none where no price is known. */
type BoughtLine = { ball: Ball; balls: number; packs: readonly { of: number; count: number }[] };

/** Whole balls to buy, what they cost where that is known, and how often they are enough with what is there. */
export type Bought = {
  lines: readonly BoughtLine[];
  balls: number;
  lengthM: number;
  price: Price | undefined;
  chance: number;
};

/** What is there of one dye lot, and how often that alone is enough. */
export type Held = { lot: Lot; massG: number; lengthM: number; chance: number };

export type BuyReply = {
  kind: 'buy';
  /** The yarn by name, '' where it has none, and what it is for: `20 pouches`. */
  yarn: string;
  what: string;
  need: Needed & { massG: number | undefined };
  /** What one piece needs, for where it is from. */
  one: YarnNeed;
  sure: number;
  reserve: number;
  /** The lot on the shelf that what is bought would join. */
  held: Held | undefined;
  /** Other lots of the yarn on the shelf, which may differ in colour. */
  others: readonly Lot[];
  /** To join what is there; undefined where that is enough. */
  more: Bought | undefined;
  /** All of it new, of one lot. */
  anew: Bought;
  /** Cheaper where its lots may differ. */
  mixed: Bought | undefined;
  /** What would be enough once a swatch is weighed. */
  weighed: Bought | undefined;
  notes: readonly Words[];
  assumed: readonly Words[];
};
