import { type Estimate, GAUGE_PRIOR, settled, sum } from './estimate.js';
import type { Form, State } from './measurement.js';
import { observation, type SwatchReading } from './observations.js';

/** How a length was measured, or is meant: the state of the fabric, and whether it is a tube or a flat panel. */
export type Setting = { state: State; form: Form };

/** How much a length changes between two settings, in logs: expected change, and the variance of that factor. */
export type Factor = { delta: number; variance: number };

/** Variance of one piece about the maker's usual change of state. From memory. */
export const PIECE_FACTOR_VARIANCE = 0.01 ** 2;

/** Before any pair of readings is known: hanging to rested 3 %, rested to washed 5 %, tube to panel 3 %. From memory. */
const HANGING_RESTED_VARIANCE = 0.03 ** 2;
const RESTED_WASHED_VARIANCE = 0.05 ** 2;
const TUBE_PANEL_VARIANCE = 0.03 ** 2;

/** The change between two settings while no pair of readings of one swatch has taught it: none, but uncertain. */
export function unpairedFactor(from: Setting, to: Setting): Factor {
  const states = from.state === to.state ? [] : [from.state, to.state];
  const variance =
    (states.includes('hanging') ? HANGING_RESTED_VARIANCE : 0) +
    (states.includes('washed') ? RESTED_WASHED_VARIANCE : 0) +
    (from.form === to.form ? 0 : TUBE_PANEL_VARIANCE);
  return { delta: 0, variance };
}

const sameSetting = (a: Setting, b: Setting): boolean => a.state === b.state && a.form === b.form;

/**
 * The gauge in the setting that finished sizes are meant in.
 *
 * Readings in other settings are converted, and all converted from one setting share one unknown factor: however
 * many, they weigh together no more than tau0²/variance pieces. Adding that variance to each reading instead would
 * treat the factor as new each time, and promise far too much.
 */
export function estimateIn(target: Setting, readings: readonly SwatchReading[]): Estimate | undefined {
  if (readings.length === 0) return undefined;
  const keys = [...new Set(readings.map((r) => `${r.state} ${r.form}`))];
  const groups = keys.map((key) =>
    converted(
      readings.filter((r) => `${r.state} ${r.form}` === key),
      target,
    ),
  );
  const weight = sum(groups, (g) => g.weight);
  const mu = sum(groups, (g) => g.weight * g.mean) / weight;
  const ss = sum(groups, (g) => g.within + g.weight * (g.mean - mu) ** 2);
  const pieces = readings.length;
  return settled({ mu, ss, weight, nu: GAUGE_PRIOR.nu0 + pieces - 1, pieces }, GAUGE_PRIOR);
}

/** The readings of one setting as one group in the target's: its mean, its scatter and what it weighs. */
function converted(readings: readonly SwatchReading[], target: Setting) {
  const from = readings[0] ?? target;
  const own = sameSetting(from, target);
  const factor = unpairedFactor(from, target);
  const observations = readings.map((r) =>
    observation({ ...r, y: r.y + factor.delta }, own ? 0 : PIECE_FACTOR_VARIANCE),
  );
  const weight = sum(observations, (o) => o.weight);
  const mean = sum(observations, (o) => o.weight * o.y) / weight;
  return {
    mean,
    within: sum(observations, (o) => o.weight * (o.y - mean) ** 2),
    weight: own ? weight : 1 / (1 / weight + factor.variance / GAUGE_PRIOR.tau0 ** 2),
  };
}
