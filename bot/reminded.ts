import { pieceById } from '../core/index.js';
import { blocks } from './cards/blocks.js';
import { plainText } from './cards/plain-text.js';
import { reminderCard } from './cards/reminder.js';
import { doneOf } from './desk/batch/batch-parts.js';
import { nextMoment } from './desk/time/remind-times.js';
import { wallOf } from './desk/time/wall.js';
import type { Body, Bound, Maker, Reminder } from './store/ports.js';

/** What becomes of a reminder at its time: said, put off to the maker's hours, or nothing, where it is no longer so. */
type Reminded =
  | { became: 'said'; to: string; body: Body }
  | { became: 'put_off'; until: number }
  | { became: 'nothing' };

/** Asks again, at its time, whether a reminder is still so. */
export async function reminded(reminder: Reminder, store: Bound, now: number): Promise<Reminded> {
  const maker = (await store.makers.all()).find(({ id }) => id === reminder.makerId);
  const subject = maker && (await subjectOf(reminder, maker, store));
  if (maker === undefined || subject === undefined) return { became: 'nothing' };
  const until = nextMoment(now, maker);
  if (until > now) return { became: 'put_off', until };
  const today = Math.floor(wallOf(now, maker.timeZone) / 86_400);
  const made = reminderCard({ ...subject, what: reminder.what, dueDay: reminder.dueDay, today });
  return { became: 'said', to: maker.slackUserId, body: { text: plainText(made), blocks: blocks(made, reminder.id) } };
}

type Subject = { label: string; pieces: number; done: number };

/** What a reminder is about, as it is now; undefined where that ended, moved, or was begun before its latest start. */
async function subjectOf(reminder: Reminder, maker: Maker, store: Bound): Promise<Subject | undefined> {
  return reminder.subject === 'plan' ? planMeant(reminder, maker, store) : batchMeant(reminder, maker, store);
}

async function planMeant({ subjectId, what }: Reminder, maker: Maker, { plans, works }: Bound) {
  const plan = await plans.get(subjectId, maker.id);
  if (plan === undefined) return undefined;
  const begun = await works.ofPlan(subjectId);
  const done = begun.filter(({ outcome }) => outcome === 'done').length;
  const { copies } = plan.ask;
  const isOver = done >= copies || (copies === 1 && begun.some(({ outcome }) => outcome === 'given_up'));
  if (isOver || (what === 'start' && begun.length > 0)) return undefined;
  return { label: labelOf(plan.piece), pieces: copies, done };
}

async function batchMeant({ subjectId, what, dueDay }: Reminder, maker: Maker, { batches, plans }: Bound) {
  const batch = await batches.get(subjectId);
  if (batch === undefined || batch.endedAt !== undefined || batch.dueDay !== dueDay) return undefined;
  const own = batch.parts.filter(({ makerId, isOut }) => makerId === maker.id && !isOut);
  if (own.length === 0 || (what === 'start' && own.some(({ done }) => done > 0))) return undefined;
  const plan = await plans.get(batch.planId, batch.ownerId);
  return { label: labelOf(plan?.piece ?? ''), pieces: batch.pieces, done: doneOf(batch) };
}

const labelOf = (piece: string): string => pieceById(piece)?.label.toLowerCase() ?? 'piece';
