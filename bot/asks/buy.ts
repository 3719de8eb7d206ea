import { z } from 'zod';
import { BallAsk, PriceAsk } from './stock.js';

/** A ball on sale and what one or several cost; without `ball` the one known of the yarn. */
const WayAsk = z.object({ ball: BallAsk.optional(), prices: z.array(PriceAsk).default([]) });
export type WayAsk = z.infer<typeof WayAsk>;

/** What to buy for the plan in hand; what is absent is as it was asked for the same plan before. */
export const BuyAsk = z.object({
  copies: z.number().int().min(1).max(500).optional(),
  /** How often it must be enough, and what is kept for repairs, as shares. */
  sure: z.number().optional(),
  reserve: z.number().optional(),
  /** In the maker's words; the yarn of the plan where none was said. */
  yarn: z.string().optional(),
  /** The lot on the shelf that it must match. */
  dyeLot: z.string().optional(),
  ways: z.array(WayAsk).max(20).default([]),
  said: z.string(),
});
export type BuyAsk = z.infer<typeof BuyAsk>;
