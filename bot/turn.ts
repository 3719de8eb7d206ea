import type { Printing } from '../core/index.js';
import { blocks } from './cards/blocks.js';
import type { Fault } from './cards/forms/index.js';
import { apology, type Card, card } from './cards/index.js';
import { plainText } from './cards/plain-text.js';
import { type Conversation, REMEMBERED, rememberedMs } from './conversation.js';
import { counterPressed, withCounter } from './counter.js';
import type { Letter } from './desk/desk.js';
import {
  askedNow,
  editOf,
  exchangedAgain,
  hasFailed,
  isOvertaken,
  isStillStored,
  type Message,
  startOf,
} from './edited.js';
import { type Exchange, exchanged, type Said } from './exchanged.js';
import { FormRefused } from './form-sent.js';
import { isLook, refreshed, refreshedTogether } from './home.js';
import type { DueDate, Trace } from './language/context.js';
import { hasDueCue } from './language/due-cue.js';
import { switchOffer, unitsHeard } from './other-units.js';
import { reaching, seenBy } from './seen-by.js';
import type { Address, AnswerTo, Body, Bound } from './store/ports.js';
import type { Surroundings } from './surroundings.js';
import { textOf } from './understood.js';
import { unitsMeant } from './units-meant.js';

/** One turn of talk, from whichever door. */
export type Turn = Said & {
  /** Names the delivery, so that a repeat acts once: event id, command trigger id, or action id and time. */
  key: string;
  slackTeamId: string;
  /** Where the answer goes; undefined for a door that prints what `answered` returns. */
  address?: AnswerTo | undefined;
  /** The card whose button was pressed, where it may be made anew. */
  pressed?: (Address & { to: 'card' }) | undefined;
  /** Set for a button of Home: the page itself shows where a tally stands, and no card is posted to say so. */
  onHome?: true;
  /** The message of Slack's that the words stand in. */
  message?: Message | undefined;
};

/** What a turn came to: the requests read, their replies, and the one card made of them. */
export type Answered =
  | { status: 'answered'; exchanges: readonly Exchange[]; card: Card; printing: Printing; trace: Trace }
  | { status: 'apologised'; reference: string; text: string }
  /** A form with faults. Nothing is stored: it may be sent again. */
  | { status: 'refused'; faults: readonly Fault[] }
  /** A repeat of what was answered before, or a message deleted that stored nothing. */
  | { status: 'seen' };

/** An answer that could not be posted within a day is of no use; a response url lives 30 minutes. */
const KEPT_MS = { response: 30 * 60_000, other: 24 * 3_600_000 };

/**
 * Takes one turn: claims the delivery, holds the maker, reads, answers and queues the card, all in one transaction.
 * A fault of ours stores nothing but the claim and one apology with a reference; only when the store itself is down
 * does it throw, so that the door is told and the delivery comes again.
 */
export async function taken(turn: Turn, surroundings: Surroundings): Promise<Answered> {
  const { store, log } = surroundings;
  const began = performance.now();
  const id = surroundings.newId();
  try {
    const due = 'text' in turn.input && hasDueCue(turn.input.text) ? await dueReaderAt(turn.at) : undefined;
    const answered = await store.within(turn.slackTeamId, (bound) => answeredIn(bound, turn, id, surroundings, due));
    const kinds = answered.status === 'answered' ? answered.exchanges.map(({ request }) => request.kind) : [];
    const ms = Math.round((performance.now() - began) * 10) / 10;
    log.info(
      { turn: id, team: turn.slackTeamId, place: turn.place.split(':')[0], status: answered.status, kinds, ms },
      'turn',
    );
    return answered;
  } catch (error) {
    if (error instanceof FormRefused) return { status: 'refused', faults: error.faults };
    const reference = id.slice(-6).toUpperCase();
    log.error({ turn: id, reference, error: error instanceof Error ? error.stack : String(error) }, 'turn failed');
    return apologised(turn, reference, surroundings);
  }
}

/** The date library is loaded only for a text that may hold a date. */
async function dueReaderAt(now: number): Promise<(zone: string) => (text: string) => DueDate | undefined> {
  const { dueReader } = await import('./language/due.js');
  return (zone) => dueReader(now, zone);
}

async function apologised(turn: Turn, reference: string, { store, newId }: Surroundings): Promise<Answered> {
  const body = apology(reference);
  // What was typed is kept in the form, which stays open and may be sent again.
  if ('form' in turn.input) return { status: 'apologised', reference, text: plainText(body) };
  return store.within(turn.slackTeamId, async (bound) => {
    if (!(await bound.deliveries.claim(turn.key, turn.at))) return { status: 'seen' };
    if (turn.address !== undefined) {
      const made = { text: plainText(body), blocks: blocks(body, reference) };
      await bound.outbox.add(newId(), turn.address, made, turn.at, expires(turn.address, turn.at));
    }
    return { status: 'apologised', reference, text: plainText(body) };
  });
}

/** Replies whose offers are ways to choose from, so that words pick one. */
const NAMED: readonly string[] = ['problem', 'question', 'sizes', 'machines', 'helps'];

/** True for a message that is not to be answered: its edit was, or it was deleted and had stored nothing. */
const isLeftOut = (message: Message, talk: Conversation, at: number): boolean =>
  message.became === 'deleted' ? !isStillStored(message, talk, at) : isOvertaken(message, talk);

/** An edit that changes nothing is told so. */
const LEFT = { request: { kind: 'unread', why: 'edited', words: '' } } as const;

const expires = (address: Address, at: number): number =>
  at + (address.to === 'response' ? KEPT_MS.response : KEPT_MS.other);

async function answeredIn(
  bound: Bound,
  turn: Turn,
  id: string,
  { newId }: Surroundings,
  due: ((zone: string) => (text: string) => DueDate | undefined) | undefined,
): Promise<Answered> {
  if (!(await bound.deliveries.claim(turn.key, turn.at))) return { status: 'seen' };
  const held = await bound.makers.held(turn.user.slackUserId, turn.user.name, turn.at);
  const before = alive(await bound.conversations.of(turn.place, held.id, turn.at), turn.at);

  if (turn.message !== undefined && isLeftOut(turn.message, before, turn.at)) return { status: 'seen' };
  const edit = editOf(turn, before);
  const again = edit === 'left' ? undefined : edit;
  const said: Said = edit === 'left' ? { ...turn, input: LEFT } : turn;
  const profiles = 'text' in said.input ? await bound.profiles.of(held.id) : [];
  const heard = { bound, turn: said, maker: held, profiles, talk: before, newId, due: due?.(held.timeZone) };
  const start = edit === undefined ? turn.message && startOf(heard) : again;
  const done = await (again === undefined ? exchanged(heard) : exchangedAgain(heard, again));
  const { exchanges, letters, trace, skipped, maker } = done;
  const hasChanged = edit === undefined || (again !== undefined && !hasFailed(done));
  let { talk } = done;

  const { known, switchTo } = unitsHeard(
    talk.otherUnits,
    exchanges.map(({ request }) => request),
    hasChanged && 'text' in said.input ? said.input.text : '',
    again?.unitless ? undefined : held.units,
  );
  const replies = exchanges.map(({ reply }, i) =>
    switchTo === undefined || i < exchanges.length - 1
      ? reply
      : { ...reply, offers: [...reply.offers, switchOffer(switchTo)] },
  );
  const last = replies.at(-1);
  if (hasChanged) {
    const led = { onCost: last?.kind === 'cost' || undefined, onHelp: last?.kind === 'helps' || undefined };
    talk = { ...talk, ...led, otherUnits: known };
  }
  if (last !== undefined && last.offers.length > 0) {
    const named = NAMED.includes(last.kind);
    const choices = last.offers.map(({ request }) => request);
    const says = last.offers.map(({ say }) => say ?? '');
    talk = { ...talk, offered: [...talk.offered, { turn: id, named, choices, says }].slice(-REMEMBERED) };
  }

  const printing: Printing = {
    units: talk.leadsIn ?? unitsMeant(last, textOf(said.input)) ?? maker.units ?? 'in',
  };
  const made = card(replies, printing, {
    name: maker.name,
    mended: trace.mended,
    leftover: trace.leftover,
    skipped,
    switchTo,
    edit: again && (hasChanged || again.made === 0 ? 'read' : 'refused'),
    waits: last?.kind === 'question' && (talk.pending?.next?.length ?? 0) > 0,
  });
  let posted: string | undefined;
  if (turn.address !== undefined && !(turn.onHome && last?.kind === 'work')) {
    const body = { text: plainText(made), blocks: blocks(made, id) };
    const address = counterPressed(turn, replies, before) ?? seenBy(replies, turn.address, turn.user.slackUserId);
    const row = newId();
    posted = await queued(bound, address, body, turn.at, row, again?.card);
    talk = await withCounter(talk, bound, { row: posted ?? row, address, replies, at: turn.at, newId });
    for (const letter of letters) await sendLetter(bound, reaching(letter, turn), newId(), turn.at);
  }
  talk = { ...talk, asked: askedNow(turn.message, edit, start, heard, { ...done, talk }, posted) };
  await bound.conversations.keep(turn.place, maker.id, talk, turn.at + rememberedMs(turn.place));
  const isShownAnew = maker.units !== held.units || exchanges.some(({ request }) => !isLook(request));
  if (again !== undefined || isShownAnew) await refreshed(bound, maker, turn.at, newId);
  if (replies.some(({ kind }) => kind === 'batch')) await refreshedTogether(bound, maker, turn.at, newId);
  return { status: 'answered', exchanges, card: made, printing, trace };
}

/**
 * Queues an answer, in place of the card that an edit makes anew, or as that card made anew.
 * @returns the row that its card comes from; undefined where that cannot be made anew
 */
async function queued(
  bound: Bound,
  address: Address,
  body: Body,
  at: number,
  id: string,
  card: string | undefined,
): Promise<string | undefined> {
  const until = expires(address, at);
  if (address.to === 'post' && card !== undefined) {
    if (!(await bound.outbox.replace(card, body, at, until)))
      await bound.outbox.add(id, { ...address, to: 'again', row: card }, body, at, until);
    return card;
  }
  await bound.outbox.add(id, address, body, at, until);
  return address.to === 'post' ? id : undefined;
}

/** Queues a card for someone else; names and sizes are all it tells of the one who speaks. */
async function sendLetter(bound: Bound, { to, turn, reply, units }: Letter, id: string, at: number): Promise<void> {
  const made = card([reply], { units: units ?? 'in' }, { name: '', mended: [], leftover: [], skipped: 0 });
  const body = { text: plainText(made), blocks: blocks(made, turn) };
  await bound.outbox.add(id, to, body, at, expires(to, at));
}

/** The talk without a question that has lapsed. */
const alive = (talk: Conversation, now: number): Conversation =>
  talk.pending !== undefined && talk.pending.until <= now ? { ...talk, pending: undefined } : talk;
