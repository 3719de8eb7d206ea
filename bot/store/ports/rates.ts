import { z } from 'zod';
import type { RateOf } from '../../asks/rates.js';

/** What a line of a rate card says: prices in minor units of so many at once, a share in per cent. */
export const RateValue = z.object({
  prices: z.array(z.object({ minor: z.number(), currency: z.string(), count: z.number() })),
  percent: z.number().optional(),
});
export type RateValue = z.infer<typeof RateValue>;

/** A line of the rate card of a maker, or of the team where `owner` is ''. `name` is that of a notion, '' for the others. */
type RateKey = { owner: string; of: RateOf; name: string };
export type Rate = RateKey & { value: RateValue };

export type RatesPort = {
  /** The maker's own lines and the team's, by what they are of and by name. */
  of(makerId: string): Promise<Rate[]>;
  /** Keeps a line in place of the one before; null for none. */
  set(key: RateKey, value: RateValue | null): Promise<void>;
};
