import { type Day, pieceById, say, type Words } from '../../../core/index.js';
import { withStored } from '../../conversation.js';
import { longDay } from '../../day-words.js';
import type { Effect } from '../../effect.js';
import type { Schedule } from '../../replies/batch.js';
import type { Reminder, ReminderWhat } from '../../store/ports.js';
import { inHand } from '../batch/batch.js';
import { scheduled } from '../batch/batch-plan.js';
import { type At, type Desk, refusal } from '../desk.js';
import { UNDO } from '../offers.js';
import { tried } from '../plan/planning.js';
import { dayNumber } from './days.js';
import { remindAt } from './remind-times.js';
import { scheduleAlone } from './schedule.js';

/** Reminders of the plan or batch in hand: the latest start, half-way, the day itself; or no more of them. */
export const remindDesk: Desk<'remind'> = async ({ act }, at) => {
  const waiting = await at.store.reminders.waiting(at.maker.id);
  if (act === 'stop') {
    if (waiting.length === 0) return refusal(at, { code: 'no_reminders' });
    const effects = await dropped(waiting, at);
    return {
      reply: { kind: 'answer', lead: say`I will not remind you any more`, lines: [], examples: [], offers: [UNDO] },
      talk: withStored(at.talk, 'no more reminders', effects),
    };
  }
  const subject = await subjectMeant(at);
  if (subject === undefined) return refusal(at, { code: 'nothing_to_remind' });
  const reminders = remindersOf(subject, at);
  if (reminders.length === 0) return refusal(at, { code: 'nothing_to_remind' });
  const old = waiting.filter(({ subjectId }) => subjectId === subject.id);
  const effects = [...(await dropped(old, at)), ...(await added(reminders, at))];
  const today = subject.schedule.today;
  return {
    reply: {
      kind: 'answer',
      lead: say`I will remind you in a direct message`,
      lines: [
        ...reminders.map(({ what, day }) => say`${longDay(day, today)}: ${NAMES[what]}.`),
        say`Each once, in your hours; one that is no longer so is not sent.`,
      ],
      examples: ['stop reminding me'],
      offers: [UNDO],
    },
    talk: withStored(at.talk, 'the reminders', effects),
  };
};

const NAMES: Record<ReminderWhat, Words> = {
  start: say`the latest day to start`,
  checkpoint: say`how far it should be by then`,
  hand_over: say`the day it must be ready`,
};

type Subject = Pick<Reminder, 'subject'> & { id: string; schedule: Schedule; dueDay: Day };

/** The plan of this talk that has a day, else the batch in hand. */
async function subjectMeant(at: At): Promise<Subject | undefined> {
  const { subject, planId } = at.talk;
  if (subject?.due !== undefined && subject.team === undefined && planId !== undefined) return ofPlan(planId, at);
  const batch = await inHand(at);
  const outcome = batch && (await scheduled(batch, 'kept', at));
  if (batch === undefined || outcome?.ok !== true || outcome.value === undefined) return undefined;
  return { subject: 'batch', id: batch.id, schedule: outcome.value, dueDay: batch.dueDay };
}

async function ofPlan(planId: string, at: At): Promise<Subject | undefined> {
  const stored = await at.store.plans.get(planId, at.maker.id);
  const piece = pieceById(stored?.piece ?? '');
  if (stored?.ask.due === undefined || piece === undefined) return undefined;
  const { outcome } = await tried(stored.ask, piece, at);
  const schedule = outcome.ok ? await scheduleAlone(outcome.value, stored.ask.due, at) : undefined;
  if (schedule?.ok !== true) return undefined;
  return { subject: 'plan', id: planId, schedule: schedule.value, dueDay: dayNumber(stored.ask.due.day) };
}

/** What is still ahead: the latest start, the day by which half is done as a rule, and the day it must be ready. */
function remindersOf({ subject, id, schedule, dueDay }: Subject, { maker, now, newId }: At) {
  const own = schedule.makers.find((one) => one.id === maker.id)?.days ?? [];
  const half = own.length > 1 ? own[Math.ceil(own.length / 2) - 1] : undefined;
  const days: [ReminderWhat, Day | undefined][] = [
    ['start', schedule.latest.startDay],
    ['checkpoint', half],
    ['hand_over', dueDay],
  ];
  const found = days.flatMap(([what, day]) => {
    if (day === undefined) return [];
    const dueAt = remindAt(day, maker);
    if (dueAt <= now) return [];
    return [{ id: newId(), makerId: maker.id, subject, subjectId: id, what, day, dueDay, dueAt }];
  });
  return found.sort((a, b) => a.dueAt - b.dueAt);
}

async function added(reminders: readonly Reminder[], at: At): Promise<Effect[]> {
  for (const one of reminders) await at.store.reminders.add(one);
  return reminders.map(({ id }) => ({ did: 'reminded', id }));
}

async function dropped(reminders: readonly Reminder[], { store, now }: At): Promise<Effect[]> {
  for (const { id } of reminders) await store.reminders.settle(id, 'dropped', now);
  return reminders.map(({ id }) => ({ did: 'stopped_reminder', id }));
}

/** Reminders of a plan that another took the place of become those of the other: what moved is not sent. */
export async function remindersMoved(from: string | undefined, to: string | undefined, at: At): Promise<void> {
  const waiting = from === undefined ? [] : await at.store.reminders.waiting(at.maker.id);
  const old = waiting.filter(({ subjectId }) => subjectId === from);
  if (old.length === 0 || from === to) return;
  await dropped(old, at);
  const subject = to === undefined ? undefined : await ofPlan(to, at);
  if (subject !== undefined) await added(remindersOf(subject, at), at);
}
