import { tQuantile } from '../stats/student-t.js';
import type { Drift } from './drift.js';
import type { Estimate, Spacing } from './estimate.js';
import { type Factor, factorsFrom, pairsIn, type StateFactors } from './factors.js';
import type { Count, Measurement, Setting } from './measurement.js';
import { pooled } from './pooled.js';
import { type Axis, bySwatch, RULER_MM, type Swatch, swatches } from './swatches.js';

/** A maker's gauge on one machine in one yarn: the log height of a row and the log width of a stitch, in mm. */
export type Gauge = {
  row: Estimate | undefined;
  stitch: Estimate | undefined;
  /** Swatches behind the better known of the two. */
  pieces: number;
  /** How the height of a row changes over time, where that can be told. */
  drift: Drift | undefined;
};

/** Measurements gathered by swatch, with what their pairs say of the maker's fabric in each direction. */
export type Evidence = Readonly<Record<Axis, { swatches: readonly Swatch[]; factors: StateFactors }>>;

/**
 * Gathers what a gauge is made from.
 * @param measurements those of one profile, any number, in any state
 * @param inYarn all of the maker's in that yarn, on any machine: pairs among them teach how it changes off the machine
 */
export function evidence(measurements: readonly Measurement[], inYarn = measurements): Evidence {
  const own = bySwatch(measurements);
  const taught = inYarn === measurements ? own : bySwatch(inYarn);
  const along = (axis: Axis) => {
    const found = swatches(own, axis);
    return { swatches: found, factors: factorsFrom(pairsIn(taught === own ? found : swatches(taught, axis))) };
  };
  return { rows: along('rows'), stitches: along('stitches') };
}

export const RESTED_TUBE: Setting = { state: 'rested', form: 'tube' };

/**
 * Returns the gauge that evidence supports, in the setting finished sizes are meant in.
 * @param target rested tube unless said
 * @returns `row` and `stitch` undefined where nothing was measured
 */
export function gauge({ rows, stitches }: Evidence, target: Setting = RESTED_TUBE): Gauge {
  const row = pooled(target, rows.swatches, rows.factors);
  const stitch = pooled(target, stitches.swatches, stitches.factors);
  return {
    row: row?.estimate,
    stitch: stitch?.estimate,
    pieces: Math.max(row?.estimate.pieces ?? 0, stitch?.estimate.pieces ?? 0),
    drift: row?.drift,
  };
}

/** The expected spacing in mm: the median of the next piece. */
export const spacingMm = ({ mu }: Pick<Spacing, 'mu'>): number => Math.exp(mu);

/** How sure a gauge is, in a word. */
export type Sureness = 'rough' | 'fair' | 'good' | 'firm';

/** The word for a gauge by the half-width of the next piece's 80 % interval: rough over 5 %, then 3.5 and 2.5 %. */
export function sureness(estimate: Spacing): Sureness {
  const half = Math.expm1(tQuantile(0.9, estimate.nu) * estimate.sd);
  if (half > 0.05) return 'rough';
  if (half > 0.035) return 'fair';
  return half > 0.025 ? 'good' : 'firm';
}

/**
 * Where a new measurement stands against a gauge: `unusual` beyond the t quantile that one piece in 100 passes.
 * @param factor the change from the setting it was read in to the gauge's, for one piece
 */
export function standing(estimate: Spacing, count: Count, factor: Factor = SAME): 'usual' | 'unusual' {
  const variance = estimate.sd ** 2 + (RULER_MM / count.overMm) ** 2 + factor.variance;
  const z = (Math.log(count.overMm / count.count) + factor.delta - estimate.mu) / Math.sqrt(variance);
  return Math.abs(z) > tQuantile(0.995, estimate.nu) ? 'unusual' : 'usual';
}

const SAME: Factor = { delta: 0, variance: 0 };
