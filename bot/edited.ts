import { type Again, type Conversation, inHand, presentOf } from './conversation.js';
import type { At } from './desk/desk.js';
import { turnedInStore } from './desk/undo.js';
import { atOf, type Exchanged, exchanged, type Heard } from './exchanged.js';

/** A message by its time stamp in Slack, and what became of it. */
export type Message = { ts: string; became: 'sent' | 'edited' | 'deleted' };

const READ_AGAIN_MS = 10 * 60_000;

/** True while a message is read again once it is edited. */
export const isRecent = ({ ts }: { ts: string }, at: number): boolean => at - Number(ts) * 1000 < READ_AGAIN_MS;

/**
 * What an edited message is read again with, or 'left' where its edit changes nothing: it is not the last one, too old,
 * or cannot be taken back. Undefined for what is no edit, or was never answered here and is read as any other.
 */
export function editOf(
  { message, at }: { message?: Message | undefined; at: number },
  { asked }: Conversation,
): Again | 'left' | undefined {
  if (message?.became !== 'edited' || asked === undefined || isLater(message.ts, asked.message)) return undefined;
  return asked.message === message.ts && isRecent(message, at) ? (asked.again ?? 'left') : 'left';
}

const isLater = (ts: string, than: string): boolean => than !== '' && Number(ts) > Number(than);

/** True for a message whose edit came and was answered before it. */
export const isOvertaken = ({ ts, became }: Message, { asked }: Conversation): boolean =>
  became === 'sent' && asked?.message === ts;

/** True for the last message where it recorded something: who deletes it may take that to be gone too. */
export const isStillStored = ({ ts }: Message, { asked, changes }: Conversation, at: number): boolean =>
  asked?.message === ts && isRecent({ ts }, at) && (asked.again?.made ?? 0) > 0 && changes.at(-1)?.kind === 'stored';

export const hasFailed = ({ exchanges }: Pick<Exchanged, 'exchanges'>): boolean =>
  exchanges.at(-1)?.reply.kind === 'problem';

/** Where a message is read the first time: what stands before it, to be kept for an edit. */
export const startOf = ({ maker, profiles, talk }: Heard): Start => ({
  before: presentOf(talk),
  profileId: profiles[0]?.id,
  unitless: maker.units === undefined,
});
type Start = Pick<Again, 'before' | 'profileId' | 'unitless'>;

/** What is kept for an edit once a turn is answered, by the talk before it, what its answer made and where that stands. */
export function askedNow(
  message: Message | undefined,
  edit: Again | 'left' | undefined,
  start: Start | undefined,
  { talk: { asked, changes, offered: offeredBefore } }: Heard,
  done: Exchanged,
  card: string | undefined,
): Conversation['asked'] {
  if (edit === 'left') return asked;
  if (message === undefined || start === undefined) return asked && { message: '' };
  const { exchanges, letters, talk } = done;
  const offered = talk.offered.filter((offer) => !offeredBefore.includes(offer)).length;
  if (edit !== undefined && hasFailed(done))
    return { message: message.ts, again: { ...edit, card: edit.card ?? card, offered: edit.offered + offered } };
  // What others were told cannot be unsaid, and what an undo took back is put back in words.
  if (letters.length > 0 || exchanges.some(({ request }) => request.kind === 'undo')) return { message: message.ts };
  const made = talk.changes.filter((change) => !changes.includes(change)).length;
  const { before, profileId, unitless } = start;
  return { message: message.ts, again: { card, made, offered, before, profileId, unitless } };
}

/** Takes back what a message did and answers its new words. Where that fails, all stays as it was. */
export async function exchangedAgain(heard: Heard, again: Again): Promise<Exchanged> {
  const done = await heard.bound.attempted(
    () => afresh(heard, again),
    (done) => !hasFailed(done),
  );
  if (!hasFailed(done)) return done;
  const { exchanges, skipped, trace } = done;
  const { maker, talk } = heard;
  return { exchanges: exchanges.slice(-1), maker, talk, letters: [], trace, skipped: skipped + exchanges.length - 1 };
}

async function afresh(heard: Heard, again: Again): Promise<Exchanged> {
  const { turn, bound } = heard;
  const before = await takenBack(again, atOf(heard));
  if ('movedOn' in before) {
    const problems = [{ code: 'moved_on' as const, said: before.movedOn }];
    const reply = { kind: 'problem' as const, problems, ways: [], offers: [] };
    const exchanges = [{ request: { kind: 'undo' as const, redo: false }, reply }];
    return { ...heard, exchanges, letters: [], trace: { tokens: [], mended: [], leftover: [] }, skipped: 0 };
  }
  const maker = await bound.makers.held(turn.user.slackUserId, turn.user.name, turn.at);
  return exchanged({ ...heard, maker, profiles: await bound.profiles.of(maker.id), talk: before });
}

/** The talk before the message, what it stored taken back; or what of that has moved on since. */
async function takenBack(
  { made, offered, before, profileId, unitless }: Again,
  at: At,
): Promise<Conversation | { movedOn: string }> {
  let { talk } = at;
  const kept = talk.changes.length - made;
  for (const change of talk.changes.slice(kept).toReversed()) {
    if (!(await turnedInStore(change, false, { ...at, talk }))) return { movedOn: change.said };
    if (change.kind === 'plan') talk = { ...talk, ...inHand(change.other) };
  }
  if (unitless) await at.store.makers.setUnits(at.maker.id, undefined);
  if (profileId !== undefined) await at.store.profiles.used(profileId, at.now);
  return {
    ...talk,
    ...presentOf(before),
    changes: talk.changes.slice(0, kept),
    offered: talk.offered.slice(0, talk.offered.length - offered),
  };
}
