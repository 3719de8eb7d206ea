import { z } from 'zod';
import { Bench } from './plan.js';
import { Value } from './value.js';

/** Rows or stitches, and the length they were counted over; `over` is absent when a rate names none. */
export const Tension = z.object({
  count: z.number(),
  over: Value.optional(),
  /** `counted`: whole rows inside a fixed ruler length. `read`: a known number of rows, its length read. */
  how: z.enum(['counted', 'read']),
  said: z.string().optional(),
});
export type Tension = z.infer<typeof Tension>;

export const State = z.enum(['hanging', 'rested', 'washed']);

/** Rows of one object measured in one state. */
export const StateReading = z.object({ rows: Tension, state: State });
export type StateReading = z.infer<typeof StateReading>;

const PastDay = z.object({ day: z.string(), said: z.string() });

/** Yarn by its category in the standard yarn weight system, its count in tex, and the ISO day its lot came. */
const YarnFacts = z.object({
  category: z.number().optional(),
  tex: z.number().optional(),
  since: PastDay.optional(),
  said: z.string(),
});

export const GaugeAsk = z.object({
  on: Bench.default({}),
  /** As last measured; see `earlier`. */
  rows: Tension.optional(),
  stitches: Tension.optional(),
  /** Flat width of the whole tube; with needles it gives the stitch width. */
  flatWidth: Value.optional(),
  state: State.optional(),
  /** The same object in the states before: readings of one swatch. */
  earlier: z.array(StateReading).optional(),
  form: z.enum(['tube', 'panel']).optional(),
  /** Another reading of the swatch recorded last. */
  same: z.boolean().optional(),
  mass: Value.optional(),
  /** Yarn drawn out of this many stitches, and its length. */
  unravelled: z.object({ stitches: z.number(), over: Value }).optional(),
  /** What is known of the yarn: its category in the standard yarn weight system, its count. */
  weight: YarnFacts.optional(),
  /** The ISO day it was measured, when that is not today. */
  day: PastDay.optional(),
  note: z.string().max(200).optional(),
  /** Set when the maker has said that an unusual figure is right. */
  confirmed: z.boolean().optional(),
});
export type GaugeAsk = z.infer<typeof GaugeAsk>;
