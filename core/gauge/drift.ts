import { LAY_OUT, sum, weightedSums } from './estimate.js';

/**
 * A log pitch, its weight, and the day it was read. `group` tells apart readings converted from different settings: each
 * has a level of its own, since a change of state that is not known yet is no drift.
 */
export type Dated = { y: number; weight: number; day: number | undefined; group?: number };

/** How a log pitch changes over time: below 0 a maker tightens up. */
export type Drift = {
  perDay: number;
  standardError: number;
  /** The odds of this drift against none, from the readings alone. */
  bayesFactor: number;
  /** `hint`: worth a word. `established`: old readings lose weight. */
  sureness: 'none' | 'hint' | 'established';
  pieces: number;
  spanDays: number;
  lastDay: number;
  /** The age in days at which a reading counts half, once the drift is established. */
  halfLifeDays: number;
};

/** A slope of one between-piece deviation a month is to be expected beforehand. From memory. */
const MONTH_DAYS = 30;
/** Only the last readings are asked, so that a drift can end. From memory. */
const RECENT = 20;
const ENOUGH = { pieces: 6, spanDays: 14, bayesFactor: 10, change: 0.01 };
const HINT_FACTOR = 3;
/** A reading counts half after a day at the soonest. */
const HALF_LIFE_DAYS = { least: 1, most: 180 };
/** A reading keeps at least this share of its weight, so that a group of old ones still has a mean. */
const LEAST_KEPT = 1e-6;
/** Readings that differ by no more than the last digits of a logarithm are all alike. */
const ALIKE = 1e-20;

/**
 * Tests dated readings for a drift: a weighted line over time against a level, by their Bayes factor.
 *
 * The prior of the slope does not depend on how many readings there are, so looking after each new one is safe.
 * @returns undefined with fewer than three dated readings, all on one day, or all alike
 * @source the Bayes factor of a normal linear model with a conjugate slope, flat mean and log scale; checked by quadrature
 */
export function drift(readings: readonly Dated[]): Drift | undefined {
  const recent = readings
    .filter((r): r is Dated & { day: number } => r.day !== undefined)
    .sort((a, b) => a.day - b.day)
    .slice(-RECENT);
  const n = recent.length;
  const [first, beforeLast, last] = [recent[0], recent[n - 3], recent[n - 1]];
  if (first === undefined || beforeLast === undefined || last === undefined) return undefined;

  const { slope, sxx, ss, levels } = line(recent);
  if (!(sxx > 0 && ss > ALIKE && n > levels + 1)) return undefined;
  const explained = slope ** 2 * sxx;
  const residual = Math.sqrt(Math.max(0, ss - explained) / (n - levels - 1));
  const q = sxx / MONTH_DAYS ** 2;
  const bayesFactor = (1 + q) ** -0.5 * (ss / (ss - (q / (1 + q)) * explained)) ** ((n - levels) / 2);
  const spanDays = last.day - first.day;
  const established =
    n >= ENOUGH.pieces &&
    spanDays >= ENOUGH.spanDays &&
    bayesFactor >= ENOUGH.bayesFactor &&
    Math.abs(slope) * spanDays >= ENOUGH.change;
  // Readings on a line to the last digit still differ by how they were laid out.
  const halfLife = (Math.LN2 * Math.max(LAY_OUT, residual)) / (2 * Math.abs(slope));
  return {
    perDay: slope,
    standardError: residual / Math.sqrt(sxx),
    bayesFactor,
    sureness: established ? 'established' : bayesFactor >= HINT_FACTOR ? 'hint' : 'none',
    pieces: n,
    spanDays,
    lastDay: last.day,
    halfLifeDays: Math.min(HALF_LIFE_DAYS.most, Math.max(HALF_LIFE_DAYS.least, last.day - beforeLast.day, halfLife)),
  };
}

/** The weighted line of y on day, each group about its own level: its slope, Σw(t − t̄)², Σw(y − ȳ)² and the levels. */
function line(readings: readonly (Dated & { day: number })[]) {
  const groups = [...new Set(readings.map((r) => r.group))];
  const sums = groups.map((group) => aboutItsLevel(readings.filter((r) => r.group === group)));
  const sxx = sum(sums, (s) => s.sxx);
  return { slope: sum(sums, (s) => s.sxy) / sxx, sxx, ss: sum(sums, (s) => s.ss), levels: groups.length };
}

function aboutItsLevel(readings: readonly (Dated & { day: number })[]) {
  const { weight, mean, ss } = weightedSums(readings);
  const dayMean = sum(readings, (r) => r.weight * r.day) / weight;
  const sxx = sum(readings, (r) => r.weight * (r.day - dayMean) ** 2);
  return { sxx, sxy: sum(readings, (r) => r.weight * (r.day - dayMean) * (r.y - mean)), ss };
}

/** The share of its weight that a reading of this day keeps under an established drift. */
export const keptWeight = (trend: Drift, day: number | undefined): number =>
  day === undefined ? 1 : Math.max(LEAST_KEPT, 2 ** (-(trend.lastDay - day) / trend.halfLifeDays));
