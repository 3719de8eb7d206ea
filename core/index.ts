export { aspects } from './aspects.js';
export { backwards, type Placed, type Task } from './batch/backwards.js';
export {
  type Calendar,
  DAY_S,
  type Day,
  dayOf,
  endDayOf,
  hoursADay,
  type Span,
  startOf,
  type WallS,
} from './batch/calendar.js';
export { type Batch, type BatchAsk, batch, type Hand, type Readiness } from './batch/deadline.js';
export { byDueDate, type Order } from './batch/due-order.js';
export type { Pair, Passage } from './batch/flow.js';
export type { Job } from './batch/johnson.js';
export { type TwoStages, twoStages } from './batch/order.js';
export type { BatchProblem } from './batch/problems.js';
export type { Share } from './batch/shares.js';
export type { Way } from './batch/ways.js';
export { fields } from './checked.js';
export { type Bill, type BillLine, bill, eachOf, type LeftOut, type Overhead } from './costing/bill.js';
export { type BreakEven, breakEven } from './costing/break-even.js';
export { type Earned, earnedAnHour } from './costing/earnings.js';
export { type Fees, NO_FEES } from './costing/fees.js';
export type { Item, Price } from './costing/item.js';
export { BILLED, itemsOf, type NotionPrice, type Prices } from './costing/of-plan.js';
export { copiesToPay, type PatternWork, patternEarned, patternPrice } from './costing/pattern.js';
export {
  marginOfMarkup,
  markupOfMargin,
  priceForMargin,
  priceForMarkup,
  type Sale,
  saleAt,
} from './costing/price.js';
export type { CostProblem } from './costing/problems.js';
export { retailFrom, wholesaleFrom } from './costing/wholesale.js';
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
export { acrossOf, type MachineBench, type OnMachine, onMachines } from './machines.js';
export { decimalOf, isCurrency, type Money, minorDigits, minorOf } from './money/currency.js';
export { cheapestPacks, type Pack, type Purchase } from './money/packs.js';
export { notionsFor } from './notions.js';
export { isOfUse } from './of-use.js';
export type { Ask, Asks, Notion, Piece } from './piece.js';
export { pieceById, pieces } from './pieces/index.js';
export { ENGINE, type Plan, type PlanInput, plan } from './plan.js';
export { type PlannedSize, TENSION_REACH } from './planned-size.js';
export type { FieldName, Offer, Outcome, Problem, Tight } from './problems.js';
export { edgesOf, outcomeOf, reasons } from './reasons.js';
export { type Remedy, remedies } from './remedies.js';
export { type Panels, panelsInWords } from './sizing/in-panels.js';
export { type RowChoice, rowsGiven, type Window } from './sizing/rows.js';
export { SIDES } from './sizing/sides.js';
export { type BodyMeasure, bodySizeMm, type Person } from './tables/bodies.js';
export { unusualFor, YARN_WEIGHTS, type YarnWeight, yarnWeightNamed } from './tables/yarn-weights.js';
export { yarnWeightsWrapped } from './tables/yarn-wraps.js';
export { divided, type TimeProblem } from './timing/divided.js';
export { type Rates, rates, type TimeLog } from './timing/rates.js';
export { type TimeLine, type TimeRange, type Timing, timing } from './timing/timing.js';
export { DRIVERS, type Driver, type Stage, USUAL_RATES } from './timing/usual-rates.js';
export * from './units/chance.js';
export * from './units/print.js';
export * from './units/quantity.js';
export { G_PER, MM_PER, otherUnits, type Units } from './units/units.js';
export { chance, count, inOthers, inShort, length, mass, range, say, tail, type Words } from './words.js';
export type { Checkpoint } from './work/checkpoint.js';
export type { Correction, InHand } from './work/correction.js';
export { type Verdict, weighed } from './work/counters.js';
export { finishedCount, readingCount } from './work/finished.js';
export type { Reading } from './work/reading.js';
export { type Doubt, doubtOf, type Standing } from './work/standing.js';
export { type Buying, type PurchaseLine, purchases, type YarnPurchase, type YarnPurchases } from './yarn/buying.js';
export { type Ball, ballTex, countOf, texOf, type YarnCountSystem } from './yarn/count.js';
export {
  type Balls,
  chanceEnough,
  ENOUGH,
  leastBalls,
  type Needed,
  sureEnough,
  together,
  withReserve,
} from './yarn/enough.js';
export { type Feel, feel, feelSaid, type Knitted, massPerM2 } from './yarn/fabric.js';
export {
  type Lasting,
  lasting,
  type RowsLeft,
  reachableWindow,
  rowsLeft,
  type YarnLeft,
  yarnToComeM,
} from './yarn/left.js';
export { tightness } from './yarn/loop.js';
export {
  type LoopEstimate,
  type LoopSample,
  loopEstimate,
  WEIGH_AT_LEAST_G,
  weighedCv,
  type YarnKnown,
} from './yarn/loop-estimate.js';
export { weighedPiece, type YarnNeed, type YarnParts } from './yarn/need.js';
export type { YarnOutcome, YarnProblem } from './yarn/problems.js';
export type { PutUp } from './yarn/put-up.js';
export { isRing, JOG, type Stripe, type Striped, type StripeRun, type Striping, striped } from './yarn/stripes.js';
export { type Substituting, type Substitution, substitution } from './yarn/substitution.js';
