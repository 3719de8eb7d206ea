import type { Day } from '../../core/index.js';
import { longDay } from '../day-words.js';
import { type Card, plainCard } from './card.js';
import { counted } from './names.js';

type What = 'start' | 'checkpoint' | 'hand_over';

type Remembered = { what: What; label: string; pieces: number; done: number; dueDay: Day; today: Day };

/** What was asked to be reminded of, on its day. */
export function reminderCard({ what, label, pieces, done, dueDay, today }: Remembered): Card {
  const all = pieces === 1 ? `the ${label}` : `the ${label}, ${pieces} of them`;
  const by = dueDay === today ? 'today' : longDay(dueDay, today);
  const stand = pieces === 1 ? [] : [`${done} of ${pieces} done so far.`];
  const left = counted(Math.max(0, dueDay - today), 'day');
  const leads: Record<What, string> = {
    start: `Begin today: ${all}, ready by ${by}`,
    checkpoint: `Half-way day: ${all}, ready by ${by}`,
    hand_over: `Ready ${dueDay === today ? 'today' : `by ${by}`}: ${all}`,
  };
  const lines: Record<What, string> = {
    start: 'After today it is in time only if nothing goes slowly.',
    checkpoint: `About half of your own should be done by now; ${left} are left.`,
    hand_over: 'If it will not be, say the new day and I plan again.',
  };
  return plainCard(leads[what], {
    body: [...stand, lines[what]],
    foot: ['You asked for this; it comes once.'],
    sayings: ['stop reminding me'],
  });
}
