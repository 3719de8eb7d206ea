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

/** The share that one maker made, of one kind of piece, where the words name them. */
const shownBy = { by: z.string().optional(), piece: z.string().optional() };

/** Characters of a note that go along with a share. */
export const MOST_NOTED = 300;

/** Requests about plans that makers show each other. */
export const SHARE_REQUESTS = [
  /**
   * `back`: with whoever shared the plan in hand. `rows`: whether one's own rows go with it; `sure`: told that gauge
   * shows in them. `note`: words for the reader, as they were typed.
   */
  z.object({
    kind: z.literal('share'),
    with: z.array(z.string()).min(1).max(10).or(z.literal('here')).or(z.literal('back')),
    rows: z.boolean().default(false),
    sure: z.boolean().default(false),
    note: z.string().optional(),
    /** The kind of the plan that is meant, where the words name it. */
    piece: z.string().optional(),
  }),
  /** `origin`: of this plan alone; `every`: of all plans, asked about once before they are `sure`. */
  z.object({
    kind: z.literal('withdraw_share'),
    with: z.string().optional(),
    piece: z.string().optional(),
    origin: z.string().optional(),
    every: z.boolean().optional(),
    sure: z.boolean().optional(),
  }),
  z.object({ kind: z.literal('send_change') }),
  /** To the maker's own gauge; `change`: in place of the one sized before. */
  z.object({ kind: z.literal('size_share'), change: z.boolean().optional(), ...ofShare, ...shownBy }),
  /** What others show the maker, or what the maker shows them. `one`: the card of the last that fits, rather than a list. */
  z.object({ kind: z.literal('show_shares'), of: z.enum(['theirs', 'own']), one: z.boolean().optional(), ...shownBy }),
  /** Why one's own rows or sides differ from those of whoever shared the plan. */
  z.object({ kind: z.literal('why_apart'), of: z.enum(['rows', 'across', 'both']) }),
  /** What was shared is left alone: not now, or `keep` what was sized before. */
  z.object({ kind: z.literal('leave_share'), keep: z.boolean().optional(), ...ofShare }),
  /** `to`: whom the words name, who must be the one that shared the plan. */
  z.object({ kind: z.literal('send_result'), rows: z.boolean(), to: z.string().optional() }),
  z.object({ kind: z.literal('show_results'), piece: z.string().optional() }),
] as const;
