import type { Spacing } from './gauge/estimate.js';
import type { Given } from './given.js';
import type { Outcome } from './problems.js';
import type { Contents } from './sizing/contents.js';
import type { Panels } from './sizing/in-panels.js';
import type { Measure, Window } from './sizing/rows.js';
import type { BodyMeasure } from './tables/bodies.js';
import type { Words } from './words.js';

/** Half the width of a window around a size given without one. */
export type Tolerance = { mm: number } | { share: number };

/** Options of a choice of the piece, by its id. */
type OnlyWith = { choice: string; options: readonly string[] };

/**
 * One thing a kind of piece can be asked for. `words` are what makers call it; `source` says where a default is from.
 * `beside` are words of a side that may stand with them: a `zip 9 in long`, a `5 cm deep brim`. `onlyWith`: where
 * nobody gives it, it is of use with these alone.
 */
export type Ask = {
  label: string;
  question?: string;
  words: readonly string[];
  beside?: readonly string[];
  source?: string;
  onlyWith?: OnlyWith;
} & (
  | { is: 'window'; minMm: number; maxMm: number; tolerance: Tolerance }
  /**
   * `body` is the measure of a person that stands for a length not given: "for a two-year-old". `across` are words for
   * the diameter of what this is the girth of; a length without a word under `acrossUnderMm` is one. `usualMm`: meant
   * where it is wanted and no length said, "with a fringe".
   * `named`: words that stand for a length; a 0 among them is none at all, whatever the range.
   */
  | {
      is: 'length';
      minMm: number;
      maxMm: number;
      defaultMm?: number;
      body?: BodyMeasure;
      across?: readonly string[];
      acrossUnderMm?: number;
      usualMm?: number;
      named?: readonly { words: readonly string[]; mm: number }[];
    }
  /** A share in per cent, such as an ease: 10 is 10 %. */
  | { is: 'percent'; min: number; max: number; default?: number }
  | { is: 'count'; min: number; max: number }
  /** `inName` is false where a name of the piece that holds the word of an option does not choose it: `upright pouch`. */
  | {
      is: 'choice';
      options: readonly { id: string; label: string; words: readonly string[] }[];
      default: string;
      inName?: false;
    }
  /** What the piece must take; the range is that of each side. */
  | { is: 'contents'; minMm: number; maxMm: number }
);
export type Asks = Readonly<Record<string, Ask>>;

/** What an ask comes to once checked. */
export type Asked<A extends Asks> = { readonly [K in keyof A]: AskedOne<A[K]> };
type AskedOne<A extends Ask> = A extends { is: 'window' }
  ? Window | undefined
  : A extends { is: 'length'; defaultMm: number } | { is: 'percent'; default: number }
    ? number
    : A extends { is: 'choice' }
      ? string
      : A extends { is: 'contents' }
        ? Contents | undefined
        : number | undefined;

/** A dimension of the finished piece, made by rows or by needles: D = share·(count + extra)·spacing + fixed. */
export type Dimension = Measure & {
  id: string;
  /** Name of the figure in the answer, with its unit: `widthMm`. */
  figure: 'widthMm' | 'heightMm' | 'lengthMm' | 'girthMm' | 'diameterMm';
  label: string;
  /** How the size is said: `27 cm wide`. */
  adjective: string;
  axis: 'rows' | 'needles';
  /** How flat panels would make it where the needles of the tube do not; undefined where they could not. */
  inPanels?: Panels['way'];
  window?: Window | undefined;
  /** The least it must come to across the needles, where more does no harm. */
  leastMm?: number | undefined;
};

/** The fabric in hand when layouts are chosen: needles in the tube, and the stitch width expected round and flat. */
export type Fabric = {
  needles: number | undefined;
  stitchMm: Readonly<Record<Layout['form'], number | undefined>>;
};

/**
 * A way to lay the piece on the machine. A flat layout works on `needles` of its own choosing. `parts` are knitted alike:
 * 2 for a pair, the strips of a blanket. `because` says why this way, where another would do; `assumed` what that takes
 * for granted.
 */
export type Layout = {
  id: string;
  form: 'round' | 'flat';
  parts: number;
  because?: Words | undefined;
  assumed?: readonly Words[] | undefined;
  /** What must go in by its opening: so long flat, in mm. */
  openingMm?: number | undefined;
  needles?: number | undefined;
  dimensions: readonly Dimension[];
};

/** What a step takes its time from. */
type Driver =
  | 'set_up'
  | 'crank'
  | 'change'
  | 'measure'
  | 'run_off'
  | 'turn_for_graft'
  | 'graft'
  | 'take_out_waste'
  | 'mattress'
  | 'cast_off'
  | 'ring'
  | 'pin_closure'
  | 'sew_closure'
  | 'strap'
  | 'gather'
  | 'hem'
  | 'stuff'
  | 'fringe'
  | 'button'
  | 'loop'
  | 'drawstring'
  | 'elastic'
  | 'pompom'
  | 'lining'
  | 'border'
  | 'fold'
  | 'weave_in'
  | 'check';

/** Yarn a step uses: stitches knitted, or a length cut, in mm. */
export type StepYarn = { role: 'main' | 'waste'; stitches?: number; lengthMm?: number };

/**
 * One action at the machine or the table. `count` is in the driver's own unit: stitches, pairs, rows, mm, ends. A step
 * without a driver counts nothing: its time is in that of a step beside it.
 */
export type Step = {
  id: string;
  say: Words;
  driver?: Driver;
  count: number;
  times?: number;
  yarn?: readonly StepYarn[];
};

/** Things that one piece takes: so many, each cut to a length where it is cut, and words behind them. */
export type Things = { id: string; count: number; one: string; many?: string; cutMm?: number; after?: Words };
/** A stuff that one piece takes so much of. */
export type Stuff = { id: string; massG: number; of: string };
/** What to have at hand for one piece that is not yarn, as figures, so that it can be added up over several. */
export type Notion = Things | Stuff;

/** What a piece is, for the cautions that go with it. */
export type Trait =
  | 'small_parts'
  | 'long_loop'
  | 'neck_loop'
  | 'cord'
  | 'load'
  | 'stuffed'
  | 'worn_on_head'
  | 'bed'
  | 'holds_hot'
  | 'near_flame';

/**
 * What a finished piece looks like from the front, for a drawing: corners in mm, x to the right and y up from the lower
 * left; lines between corners by their indexes. A round piece is drawn flat as it lies.
 */
export type Outline = {
  points: readonly (readonly [xMm: number, yMm: number])[];
  lines: readonly { is: 'edge' | 'fold' | 'seam' | 'graft' | 'gather' | 'opening'; from: number; to: number }[];
  /** Words at the middle of a line: the size it is drawn at. */
  labels: readonly { line: number; say: Words }[];
};

/** A piece with its counts settled: what steps, notions and traits are made from. */
export type Made<A extends Asks> = {
  asked: Asked<A>;
  layout: Layout;
  /** Needles the piece is knitted on; undefined until the machine's are known. */
  needles: number | undefined;
  rows: number;
  rowsInPiece: number;
  row: Spacing;
  /** Height of a row at rest, and as the work hangs on the machine, in mm. */
  rowMm: number;
  hangingRowMm: number;
  stitchMm: number | undefined;
  /** Yarn in one stitch, in mm; undefined until the stitch width is known. */
  loopMm: number | undefined;
  measureAtRow: number | undefined;
};

/** The contract of a kind of piece: all that shared code and the bot need of it, as data and pure functions. */
type PieceOf<A extends Asks> = {
  id: string;
  label: string;
  words: readonly string[];
  /** Words that name it only with a size right beside them: a `ball 10 cm across`, but no `ball of yarn`. */
  sizedWords?: readonly string[];
  /** What no kind makes and this one comes nearest to, and what that would lack: `socks`, for `a heel and a toe`. */
  nearestTo?: readonly { words: readonly string[]; lacks: string }[];
  /** What it goes on, of which makers tell the sizes: so many of these want as many pieces. */
  goesOn?: readonly string[];
  /** Two of them are one piece. */
  isPair?: true;
  asks: A;
  /** What `11 by 6 3/4` means, in order. */
  pair: readonly (keyof A & string)[];
  /** One of each group must be given. */
  needs: readonly (readonly (keyof A & string)[])[];
  /** A phrase a maker could type, which the reader must understand. */
  example: string;
  layouts(asked: Asked<A>, fabric: Fabric): Outcome<readonly Layout[]>;
  /** What is taken for granted beyond the tolerance of a window. */
  assumes(made: Made<A>): readonly Words[];
  notions(made: Made<A>): readonly Notion[];
  steps(made: Made<A>): readonly Step[];
  traits(made: Made<A>): readonly Trait[];
  /** Of the kind that is nothing but panels: the values that ask for those which another piece is made from instead. */
  ofPanels?(panels: Panels): Readonly<Record<string, Given>>;
  outline(made: Made<A>): Outline;
};

/** A kind of piece as shared code sees it: its own asks are no longer known to the type checker. */
export type Piece = PieceOf<Asks>;

/** Declares a kind of piece. The one cast of core: values reach a piece only through `checked`, under its own asks. */
export const piece = <const A extends Asks>(declared: PieceOf<A>): Piece => declared as unknown as Piece;
