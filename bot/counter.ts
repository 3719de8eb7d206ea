import { blocks } from './cards/blocks.js';
import { plainCard } from './cards/card.js';
import { plainText } from './cards/plain-text.js';
import type { Conversation } from './conversation.js';
import type { Reply } from './reply.js';
import type { Address, Bound } from './store/ports.js';
import type { Input } from './understood.js';
import { isTurnOfWork } from './work-card.js';

/** An old card is of no use to put right after a day. */
const KEPT_MS = 24 * 3_600_000;

const MOVED = plainCard('This row counter has moved on', { body: ['Its buttons are on the card that came after it.'] });

/** The turns of this talk whose cards count rows: those with a button for one row and for ten. */
const countersIn = ({ offered }: Conversation): string[] =>
  offered.flatMap(({ turn, choices }) => (choices.filter(({ kind }) => kind === 'tally').length > 1 ? [turn] : []));

type Pressed = Pick<Input, 'input'> & { pressed?: (Address & { to: 'card' }) | undefined };

/** The row counter pressed, which counts on: its card is made anew, and none is added to the talk. */
export function counterPressed({ pressed, input }: Pressed, replies: readonly Reply[], talk: Conversation) {
  const isCounter = 'pick' in input && (countersIn(talk).includes(input.pick.turn) || isTurnOfWork(input.pick.turn));
  return isCounter && replies.every((reply) => reply.kind === 'work' && reply.became === 'counted')
    ? pressed
    : undefined;
}

type Queued = { row: string; address: Address; replies: readonly Reply[]; at: number; newId: () => string };

/**
 * The talk with where its row counter stands, once a card is queued. One that stood elsewhere loses its buttons, so that
 * a talk has one counter; where the new card says that the work has ended, it has none.
 */
export async function withCounter(talk: Conversation, bound: Bound, queued: Queued): Promise<Conversation> {
  const { row, address, replies, at, newId } = queued;
  const last = replies.at(-1);
  if (last?.kind !== 'work' && last?.kind !== 'finished') return talk;
  const { counter } = talk;
  if (address.to === 'card') return { ...talk, counter: { channel: address.channel, ts: address.ts } };
  if (address.to !== 'post') return talk;
  // The card of an edited message is made anew in its place.
  const isSame = counter !== undefined && 'row' in counter && counter.row === row;
  if (counter !== undefined && !isSame) {
    const to: Address =
      'ts' in counter ? { to: 'card', ...counter, ifThere: true } : { to: 'again', ...counter, ifThere: true };
    await bound.outbox.add(newId(), to, { text: plainText(MOVED), blocks: blocks(MOVED, row) }, at, at + KEPT_MS);
  }
  const counts = last.offers.some(({ request }) => request.kind === 'tally');
  return { ...talk, counter: counts ? { channel: address.channel, row } : undefined };
}
