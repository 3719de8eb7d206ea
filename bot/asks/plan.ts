import { z } from 'zod';
import { Team } from './batch.js';
import { Stripes } from './stripes.js';
import { Value } from './value.js';

/** Which machine and yarn, in the maker's words; absent parts follow what was used last. */
export const Bench = z.object({
  machine: z.string().optional(),
  needles: z.number().optional(),
  yarn: z.string().optional(),
  /** The tension setting, as the machine marks it. */
  tension: z.string().optional(),
});
export type Bench = z.infer<typeof Bench>;

/** ISO dates. `day`: when the piece must be ready. `event`: the day named, when that is the day after. */
export const Due = z.object({ day: z.string(), said: z.string(), event: z.string().optional() });
export type Due = z.infer<typeof Due>;

/** One of several sizes: what the maker calls it, and the values that it alone has. */
export const Size = z.object({ label: z.string(), values: z.record(z.string(), Value) });
export type Size = z.infer<typeof Size>;

/** So many sizes are planned in one go at most. */
export const MOST_SIZES = 12;
const Sizes = z.array(Size).min(2).max(MOST_SIZES).optional();

/** Where a plan that is shared comes from: the plan that was shared first; for one who was shown it, in which revision of which share. */
export const Shared = z.object({
  origin: z.string(),
  held: z.object({ shareId: z.string(), revision: z.number() }).optional(),
});
export type Shared = z.infer<typeof Shared>;

export const PlanAsk = z.object({
  piece: z.string().optional(),
  copies: z.number().int().min(1).max(500).default(1),
  values: z.record(z.string(), Value).default({}),
  /** Several sizes of the piece in one go; `values` are those that all of them share. */
  sizes: Sizes,
  on: Bench.default({}),
  focus: z.array(z.enum(['rows', 'needles', 'yarn', 'notions', 'steps', 'checklist', 'time'])).default([]),
  due: Due.optional(),
  stripes: Stripes.optional(),
  shared: Shared.optional(),
  /** Who makes them, where that is not the maker alone. */
  team: Team.optional(),
  /** The maker's words for the sizes, kept while the piece is not known and so cannot be asked what they mean. */
  words: z.string().optional(),
  /** What they called the piece, a word that names no kind. */
  thing: z.string().optional(),
});
export type PlanAsk = z.infer<typeof PlanAsk>;

/** What a follow-up changes in a plan, one level deep: a value is replaced whole, null removes it. */
export const Edit = z.object({
  piece: z.string().optional(),
  copies: z.number().int().min(1).max(500).optional(),
  values: z.record(z.string(), Value.nullable()).default({}),
  sizes: Sizes,
  /** A size told beside the one in hand: so much more of it in mm, or so many times it; `word`: what the maker calls it. */
  by: z
    .object({ field: z.string(), word: z.string(), mm: z.number().optional(), times: z.number().optional() })
    .optional(),
  on: Bench.default({}),
  focus: PlanAsk.shape.focus,
  due: PlanAsk.shape.due,
  /** Null for none; `meet` holds the rows to the repeat that is in hand. */
  stripes: Stripes.or(z.literal('meet')).nullable().optional(),
  team: PlanAsk.shape.team,
});
export type Edit = z.infer<typeof Edit>;
