import { type Estimate, estimate, type Observation } from '../../core/gauge/estimate.js';
import type { Count, Measurement } from '../../core/gauge/measurement.js';
import { bySwatch, type Swatch, type SwatchReading, swatches, weightOf } from '../../core/gauge/swatches.js';
import type { Given } from '../../core/given.js';
import { notionsFor } from '../../core/notions.js';
import type { Piece } from '../../core/piece.js';
import { type Plan, type PlanInput, plan } from '../../core/plan.js';
import type { Outcome, Problem } from '../../core/problems.js';
import type { Measure, Window } from '../../core/sizing/rows.js';
import type { Words } from '../../core/words.js';

/** A known count whose length was read off a ruler. */
export const read = (count: number, overMm: number): Count => ({ count, overMm, how: 'read' });

/** Rows and the length they span on one tube, at rest unless said. */
export const tube = (swatch: string, rows: number, overMm: number, more: Partial<Measurement> = {}): Measurement => ({
  swatch,
  state: 'rested',
  form: 'tube',
  rows: read(rows, overMm),
  ...more,
});

/** 110 rows in 22 in; 46 needles make a tube 6 3/4 in flat: rows of 5.08 mm, stitches of 7.4543 mm. */
export const MEDIUM = [tube('first', 110, 558.8, { stitches: read(23, 171.45) })];

/** A fabric of exactly 7.5 by 5 mm. */
export const EVEN = [tube('even', 100, 500, { stitches: read(24, 180) })];

/** A bulky fabric of 9.5 by 6.5 mm. */
export const BULKY = [tube('bulky', 100, 650, { stitches: read(24, 228) })];

/** What was read of each swatch along its rows. */
export const rowsIn = (measurements: readonly Measurement[]): Swatch[] => swatches(bySwatch(measurements), 'rows');

/** What a reading in the setting asked for counts as. */
export const observed = (reading: SwatchReading): Observation => ({ y: reading.y, weight: weightOf(reading) });

const fitted = (measurements: readonly Measurement[]): Estimate => {
  const found = estimate(rowsIn(measurements).flatMap((swatch) => swatch.map(observed)));
  if (found === undefined) throw new Error('nothing to estimate from');
  return found;
};

export const ONE_SWATCH = fitted(MEDIUM);
export const THREE_SWATCHES = fitted([...MEDIUM, tube('second', 60, 309.88), tube('third', 80, 401.32)]);

/** An 8 in closure with two 1 in rings: 10 1/2 to 11 in. */
export const WINDOW: Window = { loMm: 266.7, hiMm: 279.4 };
/** The width of a grafted ring folded flat. */
export const FOLDED_RING: Measure = { share: 1 / 2, extra: 1, fixedMm: 0 };

export const mm = (length: number): Given => ({ is: 'length', mm: length });
export const between = (loMm: number, hiMm: number): Given => ({ is: 'window', loMm, hiMm });

/** A plan on 46 needles in the medium fabric, unless said otherwise. */
export const outcomeOf = (piece: Piece, values: PlanInput['values'], more: Partial<PlanInput> = {}): Outcome<Plan> =>
  plan({ piece, values, needles: 46, measurements: MEDIUM, pieces: 1, ...more });

/** The plan, where one is expected. */
export function planOf(...asked: Parameters<typeof outcomeOf>): Plan {
  const outcome = outcomeOf(...asked);
  if (!outcome.ok) throw new Error(outcome.problems.map((p) => p.code).join(', '));
  return outcome.value;
}

/** The problems, where they are expected. */
export function problemsOf(outcome: Outcome<unknown>): readonly Problem[] {
  if (outcome.ok) throw new Error('no problem was found');
  return outcome.problems;
}

/** What a plan says to have at hand, for all its pieces. */
export const atHand = ({ notions, pieces }: Plan): Words[] => notionsFor(notions, pieces).map(({ say }) => say);
