import { LOOSE_TAIL_MM } from '../finishing/tails.js';
import { sum } from '../gauge/estimate.js';
import type { Step } from '../piece.js';
import { done, refused } from '../problems.js';
import { say, type Words } from '../words.js';
import type { YarnOutcome, YarnProblem } from './problems.js';

/** Rows of one colour, one after another. A repeat is several of them, worked again and again. */
export type Stripe = { colour: string; rows: number };

/** One line of the checklist: rows of one colour, from the first to the last, counted as cranked. */
export type StripeRun = Stripe & { from: number; to: number };

/** What one colour takes, in metres: its rows, its part of the graft, and the two ends of each of its stripes. */
type ColourNeed = {
  colour: string;
  rows: number;
  rowsM: number;
  graftM: number;
  endsM: number;
  lengthM: number;
};

/**
 * How the stripes of a piece meet: a ring across its graft, another piece at its two ends, which begin and end with the
 * first stripe where they match. `add` and `drop` are the rows more or fewer that would bring it about, 0 where it is so;
 * `drop` is undefined where none would be left.
 */
export type Meeting = { where: 'across_graft' | 'at_ends'; isWhole: boolean; add: number; drop: number | undefined };

/** Whether the steps of a plan graft it end to end into a ring. */
export const isRing = (steps: readonly Step[]): boolean => steps.some(({ id }) => id === 'graft');

export type Striped = {
  /** The rows as cranked, to tick off; `to` is what the counter shows when a line is done. */
  runs: readonly StripeRun[];
  /** The colour that grafting must be worked in: that of the row it stands for. Undefined where no row is grafted. */
  graftColour: string | undefined;
  colours: readonly ColourNeed[];
  /** Ends to weave in where each stripe is cut. */
  ends: number;
  repeatRows: number;
  meeting: Meeting;
  /** Colours that the piece ends before. */
  unreached: readonly string[];
};

export type Striping = {
  repeat: readonly Stripe[];
  /** Rows to crank. */
  rows: number;
  /** Whether it is grafted end to end into a ring, which makes one more row. Ends shut flat are no ring. */
  ring: boolean;
  needles: number;
  loopMm: number;
};

/** More colours than one pattern is likely to have. From memory. */
const MOST_COLOURS = 20;

/** What colour changes do in the round; a panel worked to and fro shows none of it. */
export const JOG: Words = say`In the round each change of colour shows a step of one row where the round begins. Change at a side fold, where it shows least, and pull the first stitch of the new colour snug.`;

/**
 * Stripes of a repeat over a piece: what each colour takes, and how the ends meet. The rows of all colours come to those
 * of the piece.
 * @returns problems `no_stripes`, `too_many_colours`, `stripe_not_whole`, `stripe_too_tall`
 */
export function striped({ repeat, rows, ring, needles, loopMm }: Striping): YarnOutcome<Striped> {
  const rowsInPiece = rows + (ring ? 1 : 0);
  const problems = stripeProblems(repeat, rowsInPiece);
  if (problems.length > 0) return refused(...problems);
  const inPiece = runsOf(repeat, rowsInPiece);
  const runs = runsOf(repeat, rows);
  const colours = [...new Set(repeat.map(({ colour }) => colour))];
  const graftColour = ring ? inPiece.at(-1)?.colour : undefined;
  const repeatRows = sum(repeat, (stripe) => stripe.rows);
  const over = ring ? rowsInPiece % repeatRows : (rowsInPiece - (repeat[0]?.rows ?? 0)) % repeatRows;
  return done({
    runs,
    graftColour,
    colours: colours.map((colour) => {
      const own = (all: readonly StripeRun[]) => all.filter((run) => run.colour === colour);
      const knitted = sum(own(runs), (run) => run.rows);
      const rowsM = (knitted * needles * loopMm) / 1000;
      const graftM = colour === graftColour ? (needles * loopMm) / 1000 : 0;
      const endsM = (own(inPiece).length * 2 * LOOSE_TAIL_MM) / 1000;
      return { colour, rows: knitted, rowsM, graftM, endsM, lengthM: rowsM + graftM + endsM };
    }),
    ends: 2 * inPiece.length,
    repeatRows,
    meeting: {
      where: ring ? 'across_graft' : 'at_ends',
      isWhole: over === 0,
      add: (repeatRows - over) % repeatRows,
      drop: over < rowsInPiece ? over : undefined,
    },
    unreached: colours.filter((colour) => !inPiece.some((run) => run.colour === colour)),
  });
}

/** The stripes of so many rows, neighbours of one colour as one. */
function runsOf(repeat: readonly Stripe[], rows: number): StripeRun[] {
  const runs: StripeRun[] = [];
  for (let [i, done] = [0, 0]; done < rows; i++) {
    const { colour, rows: tall } = repeat[i % repeat.length] as Stripe;
    const to = Math.min(rows, done + tall);
    const last = runs.at(-1);
    if (last?.colour === colour) runs[runs.length - 1] = { ...last, rows: to - last.from + 1, to };
    else runs.push({ colour, rows: to - done, from: done + 1, to });
    done = to;
  }
  return runs;
}

function stripeProblems(repeat: readonly Stripe[], rowsInPiece: number): YarnProblem[] {
  if (repeat.length === 0) return [{ code: 'no_stripes' }];
  const colours = new Set(repeat.map(({ colour }) => colour)).size;
  return [
    ...(colours > MOST_COLOURS ? [{ code: 'too_many_colours' as const, given: colours, max: MOST_COLOURS }] : []),
    ...repeat.flatMap(({ colour, rows: given }): YarnProblem[] => {
      if (!Number.isInteger(given) || given < 1) return [{ code: 'stripe_not_whole', colour, given }];
      return given > rowsInPiece ? [{ code: 'stripe_too_tall', colour, given, rowsInPiece }] : [];
    }),
  ];
}
