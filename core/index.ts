export { aspects } from './aspects.js';
export { fields } from './checked.js';
export type { Drift } from './gauge/drift.js';
export type { Estimate } from './gauge/estimate.js';
export { dimensionalChange, factorBetween, pieceFactor } from './gauge/factors.js';
export {
  type Evidence,
  evidence,
  type Gauge,
  gauge,
  RESTED_TUBE,
  type Sureness,
  spacingMm,
  standing,
  sureness,
} from './gauge/gauge.js';
export type { Count, Form, Measurement, State } from './gauge/measurement.js';
export type { Given } from './given.js';
export { notionsFor } from './notions.js';
export type { Ask, Asks, Piece } from './piece.js';
export { pieceById, pieces } from './pieces/index.js';
export { ENGINE, type Plan, type PlanInput, plan } from './plan.js';
export type { PlannedSize } from './planned-size.js';
export type { FieldName, Offer, Outcome, Problem } from './problems.js';
export { type Remedy, remedies } from './remedies.js';
export type { Window } from './sizing/rows.js';
export { type BodyMeasure, bodySizeMm, type Person } from './tables/bodies.js';
export { unusualFor, YARN_WEIGHTS, yarnWeightNamed } from './tables/yarn-weights.js';
export * from './units/chance.js';
export * from './units/print.js';
export * from './units/quantity.js';
export { MM_PER, otherUnits, type Units } from './units/units.js';
export { chance, count, length, mass, range, say, tail, type Words } from './words.js';
export type { Checkpoint } from './work/checkpoint.js';
export type { Correction, InHand } from './work/correction.js';
export { type Verdict, weighed } from './work/counters.js';
export { finishedCount, readingCount } from './work/finished.js';
export type { Reading } from './work/reading.js';
export { type Doubt, doubtOf, type Standing } from './work/standing.js';
