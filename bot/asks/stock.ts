import { z } from 'zod';

/** Money as it was typed, in whole units of one of these currencies by ISO 4217; none where none was named. */
export const MoneyAsk = z.object({ amount: z.number(), currencies: z.array(z.string()), said: z.string() });
export type MoneyAsk = z.infer<typeof MoneyAsk>;

/** What so many of a thing cost together. */
export const PriceAsk = MoneyAsk.extend({ count: z.number() });
export type PriceAsk = z.infer<typeof PriceAsk>;

/** What a ball weighs and how long its yarn is, as far as it was said. */
export const BallAsk = z.object({ massG: z.number().optional(), lengthMm: z.number().optional() });
export type BallAsk = z.infer<typeof BallAsk>;

/** What is on hand, came, or went. */
export const StockAsk = z.object({
  way: z.enum(['set', 'add', 'take']),
  kind: z.enum(['yarn', 'notion']),
  /** In the maker's words; the yarn of the plan in hand or used last where none was said. */
  name: z.string().optional(),
  dyeLot: z.string().optional(),
  /** Balls, or pieces of a notion. */
  count: z.number().optional(),
  /** Loose yarn. */
  massG: z.number().optional(),
  /** All there is, in place of an amount. */
  all: z.boolean().optional(),
  ball: BallAsk.optional(),
  price: PriceAsk.optional(),
  /** On the shelf of the team rather than the maker's own. */
  team: z.boolean().optional(),
  said: z.string(),
});
export type StockAsk = z.infer<typeof StockAsk>;
