import { z } from 'zod';
import { Effect } from './effect.js';
import { BuyAsk, isOfPiece, PlanAsk, Request } from './request.js';

/** How many changes, and how many cards with buttons, a talk remembers. */
export const REMEMBERED = 20;

/** One request alone is how talks kept it before there could be several. */
const listed = (kept: unknown): unknown => (kept === undefined || Array.isArray(kept) ? kept : [kept]);

/** A request that waits for the answer to a question. */
const Pending = z.object({
  request: Request,
  holes: z.array(z.string()).min(1),
  /** The question as it was put, and the answers it showed. */
  put: z.object({ asks: z.string(), examples: z.array(z.string()) }).optional(),
  /** What waits in turn for this question: it runs once the request is answered. */
  next: z.preprocess(listed, z.array(Request).optional()),
  until: z.number().default(0),
});

export type Pending = z.infer<typeof Pending>;

/** True for a request that is the one that waited, made whole: of the same kind, and of the same piece where it has one. */
export function answersFor(request: Request, waited: Request): boolean {
  if (!isOfPiece(request) || !isOfPiece(waited)) return request.kind === waited.kind;
  return waited.ask?.piece === undefined || request.ask?.piece === waited.ask.piece;
}

/** The plan in hand: the last one made, with the size that its rows make, and what waits to become the next. */
const InHand = z.object({
  subject: PlanAsk.optional(),
  planId: z.string().optional(),
  rowsMake: z.string().optional(),
  pending: Pending.optional(),
});

const named = {
  /** Words for the change as the card named it, so that taking it back can name it too. */
  said: z.string(),
  undone: z.boolean().default(false),
};

/** A change that a talk made: what undo walks back and redo puts back. */
export const Change = z.discriminatedUnion('kind', [
  /** `request`: what was asked, to be done again when a figure of it is put right. `replaced`: what it then stood for. */
  z.object({
    kind: z.literal('stored'),
    effects: z.array(Effect),
    request: Request.optional(),
    replaced: z.array(Effect).optional(),
    ...named,
  }),
  z.object({ kind: z.literal('units'), id: z.string(), before: z.string().optional(), ...named }),
  /** `other`: the plan in hand on the far side of the change, before it or, once it is taken back, after it. */
  z.object({ kind: z.literal('plan'), other: InHand, ...named }),
]);
export type Change = z.infer<typeof Change>;

/** What of a talk goes by what was said last: all but what it remembers of changes and cards. */
const Present = z.object({
  ...InHand.shape,
  /** The units asked for since the plan in hand was made: its answers lead with them, whatever was typed for it. */
  leadsIn: z.enum(['cm', 'in']).optional(),
  /** True right after an answer about cost: a bare price is then one. */
  onCost: z.boolean().optional(),
  /** True right after it was told what would help: a small size is then what may be allowed. */
  onHelp: z.boolean().optional(),
  /** Requests in a row in another unit than the maker's, and whether they were asked about it. */
  otherUnits: z.object({ times: z.number(), isAsked: z.boolean() }).optional(),
  /** The work that counts and readings in this talk are about. */
  workId: z.string().optional(),
  /** What was last asked to be bought, and for which plan. */
  buying: z.object({ planId: z.string().optional(), ask: BuyAsk }).optional(),
});

/** The message answered last, and what it takes to read it again once it is edited. */
const Asked = z.object({
  /** Its time stamp in Slack; '' where something else came last: a button, a form. */
  message: z.string(),
  /** Undefined where it cannot be read again: others were told, or it took something back. */
  again: z
    .object({
      /** The outbox row of its card; undefined where that cannot be made anew. */
      card: z.string().optional(),
      /** How many of the last changes, and of the last offers, are its own. */
      made: z.number(),
      offered: z.number(),
      /** What stood before it: the talk, the profile used last, and whether the maker had no unit yet. */
      before: Present,
      profileId: z.string().optional(),
      unitless: z.boolean(),
    })
    .optional(),
});
export type Again = NonNullable<z.infer<typeof Asked>['again']>;

/** The state of one maker's talk in one place. A refused request never reaches it. */
export const Conversation = z.object({
  v: z.literal(1).default(1),
  ...Present.shape,
  asked: Asked.optional(),
  /** The card that counts its rows: as it stands in Slack, or the row of the outbox that becomes it. */
  counter: z
    .union([z.object({ channel: z.string(), ts: z.string() }), z.object({ channel: z.string(), row: z.string() })])
    .optional(),
  /** What cards offered, by turn. `named` ones were numbered in words, so that "the first" can pick them. */
  offered: z
    .array(
      z.object({
        turn: z.string(),
        named: z.boolean(),
        choices: z.array(Request),
        /** The words beside each, '' for none. */
        says: z.array(z.string()).default([]),
      }),
    )
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

type Made = Change extends infer One ? (One extends Change ? Omit<One, 'undone'> : never) : never;

/** The talk with one more change. What was taken back before it can no longer be put back. */
export const withChange = (talk: Conversation, change: Made): Conversation => ({
  ...talk,
  changes: [...talk.changes.filter(({ undone }) => !undone), { ...change, undone: false }].slice(-REMEMBERED),
});

/** The talk with what a request stored among its changes, in the words that taking it back will use. */
export const withStored = (talk: Conversation, said: string, effects: Effect[], request?: Request): Conversation =>
  withChange(talk, { kind: 'stored', effects, said, request });

/** What an edit of the plan replaces, to be kept for undo. */
export const inHand = ({ subject, planId, rowsMake, pending }: z.infer<typeof InHand>): z.infer<typeof InHand> => ({
  subject,
  planId,
  rowsMake,
  pending,
});

/** What a message may change of the talk, to be kept for when it is read again. */
export const presentOf = (talk: z.infer<typeof Present>): z.infer<typeof Present> => ({
  ...inHand(talk),
  leadsIn: talk.leadsIn,
  onCost: talk.onCost,
  onHelp: talk.onHelp,
  otherUnits: talk.otherUnits,
  workId: talk.workId,
  buying: talk.buying,
});

/** The plan ask that a follow-up changes: the one waiting, else the last. */
export const subjectOf = ({ pending, subject }: Conversation): PlanAsk | undefined =>
  (isOfPiece(pending?.request) ? pending.request.ask : undefined) ?? subject;
