import { z } from 'zod';

/** Rows of one colour: so many, or as tall as a length. With neither, one of so many that share the piece evenly. */
const Stripe = z.object({
  colour: z.string(),
  rows: z.number().optional(),
  heightMm: z.number().optional(),
  /** The whole rows that a plan made of it. */
  madeRows: z.number().optional(),
});

/** A repeat of stripes in the maker's own words for colours. */
export const Stripes = z.object({
  repeat: z.array(Stripe).min(1),
  /** Set when the rows are held to the repeat, so that the stripes of a ring meet across its graft. */
  meets: z.boolean().optional(),
  said: z.string(),
});
export type Stripes = z.infer<typeof Stripes>;
