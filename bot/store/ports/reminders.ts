import type { Day } from '../../../core/index.js';

export type ReminderWhat = 'start' | 'checkpoint' | 'hand_over';

/** A message to a maker that waits for its time. */
export type Reminder = {
  id: string;
  makerId: string;
  subject: 'plan' | 'batch';
  subjectId: string;
  what: ReminderWhat;
  /** The day the subject was for when it was asked for. */
  dueDay: Day;
  /** In ms. */
  dueAt: number;
};

/** One taken to be sent; nobody else takes it until its lease ends. */
export type TakenReminder = Reminder & { slackTeamId: string };

export type Reminders = {
  add(reminder: Reminder): Promise<void>;
  /** Those of a maker still to be sent, soonest first. */
  waiting(makerId: string): Promise<Reminder[]>;
  /** Ends one; false where it was sent or dropped already. */
  settle(id: string, became: 'sent' | 'dropped', at: number): Promise<boolean>;
  restore(id: string): Promise<void>;
  /** Puts one off to another time, and gives it back. */
  putOff(id: string, dueAt: number): Promise<void>;
};
