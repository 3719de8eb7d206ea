import { z } from 'zod';
import { MoneyAsk, PriceAsk } from './stock.js';

/** What a rate card tells: an hour of the maker's, what goes on beside, packing, fees, a stall, notions by name. */
export const RATES = ['hour', 'overhead', 'packing', 'fee', 'stall', 'notion'] as const;
export const RateOf = z.enum(RATES);
export type RateOf = z.infer<typeof RateOf>;

/**
 * One line of a rate card as it was said. `prices` are of one hour, piece, sale or stall, of so many notions; `percent` is
 * of the prime cost for overhead, of the price for a fee.
 */
export const RateAsk = z.object({
  of: RateOf,
  name: z.string().optional(),
  prices: z.array(PriceAsk).default([]),
  percent: z.number().optional(),
});
export type RateAsk = z.infer<typeof RateAsk>;

/** What the plan in hand costs, for `copies` of it; at a price, or for a share left over in per cent. */
export const CostAsk = z.object({
  copies: z.number().optional(),
  price: MoneyAsk.optional(),
  margin: z.number().optional(),
  markup: z.number().optional(),
  /** Whether the question is how many sales pay the stall. */
  breakEven: z.boolean().optional(),
});
export type CostAsk = z.infer<typeof CostAsk>;

/** A shop's price against the maker's: what a shop pays, or asks, where it keeps `percent` of its price. */
export const ShopAsk = z.object({
  way: z.enum(['wholesale', 'retail']),
  price: MoneyAsk.optional(),
  percent: z.number().optional(),
});
export type ShopAsk = z.infer<typeof ShopAsk>;

/** A written pattern: its hours, its price or how many copies are to pay for it. */
export const PatternAsk = z.object({
  hours: z.number().optional(),
  price: MoneyAsk.optional(),
  copies: z.number().optional(),
});
export type PatternAsk = z.infer<typeof PatternAsk>;
