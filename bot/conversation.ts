import { z } from 'zod';
import { PlanAsk, Request } from './request.js';

/** How many changes, and how many cards with buttons, a talk remembers. */
export const REMEMBERED = 20;

/** A change that a desk stored: what undo walks back and redo puts back. */
export const Change = z.object({
  kind: z.enum(['measurement', 'units']),
  id: z.string(),
  /** Words for the change as the card named it, so that taking it back can name it too. */
  said: z.string(),
  before: z.string().optional(),
  undone: z.boolean().default(false),
});
export type Change = z.infer<typeof Change>;

/** The state of one maker's talk in one place. A refused request never reaches it. */
export const Conversation = z.object({
  v: z.literal(1).default(1),
  subject: PlanAsk.optional(),
  planId: z.string().optional(),
  pending: z
    .object({
      request: Request,
      holes: z.array(z.string()).min(1),
      /** What waits in turn for this question: it runs once the request is answered. */
      next: Request.optional(),
      until: z.number().default(0),
    })
    .optional(),
  /** What cards offered, by turn. `named` ones were numbered in words, so that "the first" can pick them. */
  offered: z
    .array(z.object({ turn: z.string(), named: z.boolean(), choices: z.array(Request) }))
    .max(REMEMBERED)
    .default([]),
  changes: z.array(Change).max(REMEMBERED).default([]),
});
export type Conversation = z.infer<typeof Conversation>;

const HOUR_MS = 3_600_000;

/** How long a place remembers: a command 2 hours, a direct message 12, a thread as long as its plan is of use. */
export function rememberedMs(place: string): number {
  if (place.startsWith('command:')) return 2 * HOUR_MS;
  if (place.startsWith('dm:')) return 12 * HOUR_MS;
  return 30 * 24 * HOUR_MS;
}

/** How long a question stays open: 24 hours in a direct message, else as long as the place remembers. */
export function openMs(place: string): number {
  return place.startsWith('dm:') ? 24 * HOUR_MS : rememberedMs(place);
}

/** The talk with one more stored change. What was taken back before it can no longer be put back. */
export const withChange = (talk: Conversation, change: Omit<Change, 'undone'>): Conversation => ({
  ...talk,
  changes: [...talk.changes.filter(({ undone }) => !undone), { ...change, undone: false }].slice(-REMEMBERED),
});
