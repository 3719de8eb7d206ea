import { z } from 'zod';

/** An owner's own rows as they stood when they were shown; lengths in mm. Gauge can be worked out from them. */
export const SharedCounts = z.object({
  rows: z.number(),
  needles: z.number().optional(),
  rowMm: z.number(),
  stitchMm: z.number().optional(),
  /** What comes of the needles, where it is known. */
  across: z.object({ adjective: z.string(), mm: z.number() }).optional(),
});
export type SharedCounts = z.infer<typeof SharedCounts>;

/** Without an id, the share that these words of the talk are about. */
const ofShare = { shareId: z.string().optional() };

/** Requests about plans that makers show each other. */
export const SHARE_REQUESTS = [
  /** `rows`: whether one's own rows go with it, undefined until said; `sure`: told that gauge shows in them. */
  z.object({
    kind: z.literal('share'),
    with: z.array(z.string()).min(1).max(10).or(z.literal('here')),
    rows: z.boolean().default(false),
    sure: z.boolean().default(false),
  }),
  z.object({ kind: z.literal('withdraw_share'), with: z.string().optional(), ...ofShare }),
  z.object({ kind: z.literal('send_change') }),
  /** To the maker's own gauge; `change`: in place of the one sized before. */
  z.object({ kind: z.literal('size_share'), change: z.boolean().optional(), ...ofShare }),
  /** What was shared is left alone: not now, or `keep` what was sized before. */
  z.object({ kind: z.literal('leave_share'), keep: z.boolean().optional(), ...ofShare }),
  /** `to`: whom the words name, who must be the one that shared the plan. */
  z.object({ kind: z.literal('send_result'), rows: z.boolean(), to: z.string().optional() }),
  z.object({ kind: z.literal('show_results') }),
] as const;
