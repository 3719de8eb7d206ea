import { checkpoint, latestSafeRow } from '../../core/work/checkpoint.js';
import { FOLDED_RING, WINDOW } from '../core/samples.js';
import type { Draws } from './draws.js';
import { correctedBy, type Landing, planned, type ReadAt } from './landings.js';

/**
 * A way to come to a stated chance. `within`: how far stated and observed may differ over all makers. `share`: where the
 * share that lands must lie, where a figure is known for it.
 */
export type Case = {
  name: string;
  land: (draw: Draws) => Landing;
  within: number;
  share: readonly [from: number, to: number] | undefined;
};

const TWO_POINTS = 0.02;
/**
 * A pair is two lengths, each laid out anew, but the program takes that to be part of how far pieces stray: it states
 * about 2.7 points too much after one pair, 1.5 after two and 1.1 after three.
 */
const FEW_PAIRS = 0.03;

const about = (share: number) => [share - TWO_POINTS, share + TWO_POINTS] as const;

const atLatest: ReadAt = (work) => [[latestSafeRow(work) ?? 10, 'hanging']];
const atProposed: ReadAt = (work) => [[checkpoint(WINDOW, FOLDED_RING, work, 'rested')?.row ?? 10, 'rested']];
const hangingAt =
  (...rows: number[]): ReadAt =>
  () =>
    rows.map((row) => [row, 'hanging'] as const);
const hangingThenRested: ReadAt = () => [
  [30, 'hanging'],
  [50, 'rested'],
];

const corrected = (name: string, readAt: ReadAt, share?: Case['share'], pairs = 0): Case => ({
  name,
  land: (draw) => correctedBy(draw, pairs, readAt),
  within: pairs === 0 ? TWO_POINTS : FEW_PAIRS,
  share,
});
const pooled = (rested: number, hanging: number): Case => ({
  name: `${rested} swatches at rest and ${hanging} hanging`,
  land: (draw) => planned(draw, { rested, hanging }),
  within: TWO_POINTS,
  share: undefined,
});

/** Figures worked independently, by a simulation in another language. */
export const cases: readonly Case[] = [
  corrected('one swatch, never read', () => [], [0, 0.4]),
  corrected('read at rest at the proposed row', atProposed, [0.95, 1]),
  corrected('read hanging at the latest safe row, no pair known', atLatest, about(0.587)),
  corrected('the same, 1 pair known', atLatest, about(0.834), 1),
  corrected('the same, 2 pairs known', atLatest, about(0.882), 2),
  corrected('the same, 3 pairs known', atLatest, about(0.902), 3),
  corrected('read hanging at rows 30, 50, 70 and 90', hangingAt(30, 50, 70, 90), about(0.587)),
  corrected('read hanging at row 30, then at rest at row 50', hangingThenRested),
  pooled(0, 1),
  pooled(0, 3),
  pooled(0, 8),
  pooled(0, 30),
  pooled(1, 3),
  pooled(2, 8),
];

/** Plans from 1, 2, 3 and 8 swatches at rest, a quarter of all from each. */
export const plans = (draw: Draws, makers: number): Landing[] =>
  [1, 2, 3, 8].flatMap((rested) => Array.from({ length: makers / 4 }, () => planned(draw, { rested, hanging: 0 })));
