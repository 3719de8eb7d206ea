import { z } from 'zod';

/** Who makes a batch, in the maker's words: `me`, a name, what Slack calls somebody. Two stages where both are said. */
export const Team = z.object({
  names: z.array(z.string()).min(1).max(12),
  knit: z.string().optional(),
  finish: z.string().optional(),
});
export type Team = z.infer<typeof Team>;

/** What somebody does of each piece of a batch. */
export const BatchStage = z.enum(['whole', 'knit', 'finish']);
export type BatchStage = z.infer<typeof BatchStage>;

/** When somebody is away from a batch; `always`: from now on. */
export const AwayAsk = z.enum(['today', 'tomorrow', 'this_week', 'next_week', 'always']);
export type AwayAsk = z.infer<typeof AwayAsk>;
