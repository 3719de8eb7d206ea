import type { Conversation } from '../conversation.js';
import type { Reply } from '../reply.js';
import type { Request, RequestKind } from '../request.js';
import type { Address, Bound, Maker } from '../store/ports.js';

/** What a desk works with: the maker, the talk so far, and the store of this one transaction. */
export type At = {
  maker: Maker;
  talk: Conversation;
  store: Bound;
  /** The only clock a turn sees, in ms. */
  now: number;
  newId: () => string;
  /** When an open question lapses, in ms. */
  openUntil: number;
  /** Where the talk stands, as `Turn.place`. */
  place: string;
};

/** A card for someone else, or for a channel, whose buttons carry `turn`; in the reader's units. */
export type Letter = { to: Address; turn: string; reply: Reply; units: Maker['units'] };

export type DeskAnswer = { reply: Reply; talk: Conversation; letters?: readonly Letter[] };

/** Request + maker + store → reply. It writes only after all its checks. */
export type Desk<K extends RequestKind> = (request: Extract<Request, { kind: K }>, at: At) => Promise<DeskAnswer>;

/** A refusal: nothing stored, nothing of the talk changed. */
export const refusal = (at: At, ...problems: (Reply & { kind: 'problem' })['problems'][number][]): DeskAnswer => ({
  reply: { kind: 'problem', problems, ways: [], offers: [] },
  talk: at.talk,
});
