import { sum } from './estimate.js';
import type { Setting } from './measurement.js';
import { rulerVariance, type Swatch } from './swatches.js';

/** One number each for hanging to rested, rested to washed, and tube to panel, in logs. */
type Three = readonly [number, number, number];

/**
 * What is known of how fabric changes from one setting to another: the mean of each factor with its covariance, and
 * how far one piece strays from the maker's usual change. All in logs; learned in one yarn, over machines and tensions.
 */
export type StateFactors = {
  mean: Three;
  covariance: readonly [Three, Three, Three];
  /** Variance of one piece about the usual change. */
  pieceVariance: number;
  /** Pairs of readings behind this: two settings of one swatch each. */
  pairs: number;
};

/** How much a length changes between two settings, in logs: expected change, and the variance of that expectation. */
export type Factor = { delta: number; variance: number };

/** One piece strays from the usual change by about 1 %, never less than half of it. From memory. */
const PIECE = 0.01;
const LEAST_PIECE = 0.005;
/** What four pieces would have shown stands behind the 1 %; from six pairs on they are heard too. From memory. */
const PIECE_NU = 4;
const ENOUGH_PAIRS = 6;

/** Before any pair is known: hanging to rested 3 %, rested to washed 5 %, tube to panel 3 %. From memory. */
export const UNPAIRED: StateFactors = {
  mean: [0, 0, 0],
  covariance: [
    [0.03 ** 2, 0, 0],
    [0, 0.05 ** 2, 0],
    [0, 0, 0.03 ** 2],
  ],
  pieceVariance: PIECE ** 2,
  pairs: 0,
};

/** The change of one swatch from one setting to another, in logs, with the variance its two readings bring. */
export type Pair = { from: Setting; to: Setting; change: number; rulerVariance: number };

const ORDER = { hanging: 0, rested: 1, washed: 2 } as const;

/** The pairs that swatches read in more than one setting make: from each setting to the next. */
export function pairsIn(swatches: readonly Swatch[]): Pair[] {
  const inSeveral = swatches.filter((swatch) => swatch.length > 1);
  return inSeveral.flatMap((swatch) => {
    const inOrder = [...swatch].sort((a, b) => ORDER[a.state] - ORDER[b.state] || (a.form < b.form ? 1 : -1));
    return inOrder.slice(1).flatMap((to, i) => {
      const from = inOrder[i];
      return from ? [{ from, to, change: to.y - from.y, rulerVariance: rulerVariance(from) + rulerVariance(to) }] : [];
    });
  });
}

/**
 * The factors that pairs teach, from the wide defaults on: one Kalman step a pair, in any order.
 * @source Kalman's update for a linear observation of a normal vector; from memory
 */
export function factorsFrom(pairs: readonly Pair[]): StateFactors {
  const pieceVariance = strayed(pairs);
  return pairs.reduce(taught, { ...UNPAIRED, pieceVariance });
}

/** What one more pair that shows the usual change would teach: the same factors, better known. */
export const pairTaught = (known: StateFactors, pair: Omit<Pair, 'change'>): StateFactors =>
  taught(known, { ...pair, change: factorBetween(known, pair.from, pair.to).delta });

function taught(known: StateFactors, pair: Pair): StateFactors {
  const h = direction(pair.from, pair.to);
  const ch = known.covariance.map((line) => dot(line, h)) as unknown as Three;
  const spread = dot(ch, h) + known.pieceVariance + pair.rulerVariance;
  const surprise = pair.change - dot(known.mean, h);
  return {
    ...known,
    mean: each((i) => known.mean[i] + (ch[i] / spread) * surprise),
    covariance: each((i) => each((j) => known.covariance[i][j] - (ch[i] * ch[j]) / spread)),
    pairs: known.pairs + 1,
  };
}

/** How far pieces stray, from pairs of the same change: φ² = (4·.01² + Σ(d − d̄)²)/(4 + n − 1). */
function strayed(pairs: readonly Pair[]): number {
  if (pairs.length < ENOUGH_PAIRS) return PIECE ** 2;
  const kind = ({ from, to }: Pair): string => String(direction(from, to));
  const kinds = [...new Set(pairs.map(kind))];
  const squares = sum(kinds, (one) => {
    const alike = pairs.filter((pair) => kind(pair) === one);
    const mean = sum(alike, (p) => p.change) / alike.length;
    return sum(alike, (p) => (p.change - mean) ** 2);
  });
  return Math.max(LEAST_PIECE ** 2, (PIECE_NU * PIECE ** 2 + squares) / (PIECE_NU + pairs.length - kinds.length));
}

/** The usual change of a length between two settings. For one new piece add `pieceVariance`. */
export function factorBetween(known: StateFactors, from: Setting, to: Setting): Factor {
  const h = direction(from, to);
  return { delta: dot(known.mean, h), variance: sum([0, 1, 2] as const, (i) => h[i] * dot(known.covariance[i], h)) };
}

/** The same for one piece whose own change is not known: none at all where the setting is the same. */
export function pieceFactor(known: StateFactors, from: Setting, to: Setting): Factor {
  if (from.state === to.state && from.form === to.form) return { delta: 0, variance: 0 };
  const { delta, variance } = factorBetween(known, from, to);
  return { delta, variance: variance + known.pieceVariance };
}

/** A change of length as the washing-test standards give it: 100·(after − before)/before, in per cent. */
export const dimensionalChange = (delta: number): number => 100 * Math.expm1(delta);

const place = ({ state, form }: Setting): Three => [
  state === 'hanging' ? 0 : 1,
  state === 'washed' ? 1 : 0,
  form === 'panel' ? 1 : 0,
];

function direction(from: Setting, to: Setting): Three {
  const [start, end] = [place(from), place(to)];
  return each((i) => end[i] - start[i]);
}

const each = <T>(of: (i: 0 | 1 | 2) => T): readonly [T, T, T] => [of(0), of(1), of(2)];
const dot = (a: Three, b: Three): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
