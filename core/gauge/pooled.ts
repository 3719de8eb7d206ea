import { type Drift, drift, keptWeight } from './drift.js';
import { type Estimate, GAUGE_PRIOR, settled, sum, weightedSums } from './estimate.js';
import { factorBetween, type StateFactors, UNPAIRED } from './factors.js';
import type { Setting } from './measurement.js';
import { type Swatch, type SwatchReading, weightOf } from './swatches.js';

/** One swatch as it counts towards a target setting. */
type Converted = { y: number; weight: number; day: number | undefined; group: number };

/** All swatches converted from one setting: they share one unknown factor of this variance, 0 in the target's own. */
type Group = { variance: number; swatches: Converted[] };

/**
 * The gauge in the setting that finished sizes are meant in, and whether it drifts.
 *
 * Of a swatch read in several settings the surest reading stands for it. Readings in other settings are converted,
 * and all converted from one setting share one unknown factor: however many, they weigh together no more than
 * tau0²/variance pieces. Adding that variance to each reading instead would treat the factor as new each time, and
 * promise far too much. Old swatches lose weight only where a drift is established.
 */
export function pooled(
  target: Setting,
  swatches: readonly Swatch[],
  known: StateFactors = UNPAIRED,
): { estimate: Estimate; drift: Drift | undefined } | undefined {
  if (swatches.length === 0) return undefined;
  const groups = converted(swatches, target, known);
  const trend = drift(([] as Converted[]).concat(...groups.map((g) => g.swatches)));
  return trend?.sureness === 'established'
    ? { estimate: estimateOf(forgetting(groups, trend), true), drift: trend }
    : { estimate: estimateOf(groups, false), drift: trend };
}

function converted(swatches: readonly Swatch[], target: Setting, known: StateFactors): Group[] {
  const groups: (Group & { setting: Setting; id: number; delta: number })[] = [];
  const groupOf = (setting: Setting) => {
    for (const group of groups) if (same(group.setting, setting)) return group;
    const made = { setting, id: groups.length, ...factorBetween(known, setting, target), swatches: [] };
    groups.push(made);
    return made;
  };
  for (const swatch of swatches) {
    const reading = swatch.length === 1 ? swatch[0] : surest(swatch, (r) => groupOf(r).variance);
    if (reading === undefined) continue;
    const { id, delta, variance, swatches } = groupOf(reading);
    const weight = weightOf(reading, variance === 0 ? 0 : known.pieceVariance);
    swatches.push({ y: reading.y + delta, weight, day: reading.day, group: id });
  }
  return groups.filter((group) => group.swatches.length > 0);
}

const same = (a: Setting, b: Setting): boolean => a.state === b.state && a.form === b.form;

const surest = (swatch: Swatch, variance: (reading: SwatchReading) => number): SwatchReading | undefined =>
  swatch.reduce((best, reading) => (variance(reading) < variance(best) ? reading : best));

const forgetting = (groups: readonly Group[], trend: Drift): Group[] =>
  groups.map((group) => ({
    ...group,
    swatches: group.swatches.map((s) => ({ ...s, weight: s.weight * keptWeight(trend, s.day) })),
  }));

function estimateOf(groups: readonly Group[], forgets: boolean): Estimate {
  const means = groups.map(({ variance, swatches }) => {
    const { weight, mean, ss } = weightedSums(swatches);
    const together = variance === 0 ? weight : 1 / (1 / weight + variance / GAUGE_PRIOR.tau0 ** 2);
    return { y: mean, within: ss, weight: together };
  });
  const { weight, mean: mu, ss: between } = weightedSums(means);
  const ss = sum(means, (g) => g.within) + between;
  const pieces = sum(groups, (g) => g.swatches.length);
  const counted = forgets ? effective(groups) : pieces;
  return settled({ mu, ss, weight, nu: GAUGE_PRIOR.nu0 + counted - 1, pieces }, GAUGE_PRIOR);
}

/** How many swatches of equal weight would know as much: (Σw)²/Σw². */
const effective = (groups: readonly Group[]): number =>
  sum(groups, (g) => sum(g.swatches, (s) => s.weight)) ** 2 / sum(groups, (g) => sum(g.swatches, (s) => s.weight ** 2));
