import type { Piece, Units } from '../../core/index.js';
import type { Bench, Size } from '../request.js';

/** What a text is read against: everything of the maker and the talk that changes its meaning. */
export type Context = {
  pieces: readonly Piece[];
  /** The maker's unit, undefined until set or typed once. */
  units: Units | undefined;
  /** The maker's own names, longest first. */
  machines: readonly string[];
  yarns: readonly string[];
  /** Names of what is on the maker's shelf and the team's. */
  onShelf?: readonly string[] | undefined;
  /** The machine and yarn of the plan in hand. */
  bench?: Bench | undefined;
  /** The piece of the plan a follow-up would change. */
  subjectPiece?: string | undefined;
  /** How many of it are planned. */
  copies?: number | undefined;
  /** The size that the rows of the plan in hand make. */
  rowsMake?: string | undefined;
  /** The sizes in hand, of which one may be chosen. */
  sizes?: readonly Size[] | undefined;
  /** The work of this talk, with the counts that disagree while they do. */
  inHand?: { piece: string; rows: number; stopAt: number; counts?: readonly number[] | undefined } | undefined;
  /** Names of the makers of the workspace, and what Slack calls them; undefined where none is named. */
  team?: readonly string[] | undefined;
  /** The batch in hand, with how many are still to be made. */
  batch?: { left: number } | undefined;
  /** The rows of the swatch recorded last: `same one, now 15 3/8` is over them. */
  swatchRows?: number | undefined;
  /** What the open question asks for, most wanted first; empty when none is open. */
  holes: readonly string[];
  /** The words beside each way that the last card offered, '' for none. */
  offered?: readonly string[] | undefined;
  /** Words of a request that waits for its piece to be named: they are read again with the answer. */
  held?: string | undefined;
  /** True right after an answer about cost: `at 52` is then a price. */
  onCost?: boolean | undefined;
  /** True right after it was told what would help: `2.5 is fine` is then what may be allowed. */
  onHelp?: boolean | undefined;
  command?: '/rows' | '/gauge' | '/walewright' | undefined;
  /** Reads a date after a cue word from the free part of a text; loaded only when there is a cue. */
  due?: ((text: string) => DueDate | undefined) | undefined;
};

/**
 * A day read from words, as ISO dates. `day`: when the piece must be ready; `event`: the day named, when that is the
 * day after. `unusable` is what is said of a day that is over or that its month does not have. `past`: the last such
 * day, for what was measured then; `since` marks the day a lot of yarn came.
 */
export type DueDate = { said: string; start: number; end: number; past?: string; since?: boolean } & (
  | { day: string; event?: string }
  | { unusable: string }
);

/** What was read and how: printed by `ask --explain`, and what the cards say was assumed. */
export type Trace = {
  tokens: { text: string; usedAs: string | undefined }[];
  /** Typos mended: `guage` read as `gauge`. */
  mended: { from: string; to: string }[];
  /** Words and numbers that nobody used. */
  leftover: string[];
};
