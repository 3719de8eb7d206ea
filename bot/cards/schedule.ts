import type { Way } from '../../core/index.js';
import { longDay } from '../day-words.js';
import type { Schedule } from '../replies/batch.js';
import { counted, joined } from './names.js';

/** `Yes, 10 days in hand`, `Only just`, `No`: whether all is ready by its day, in a few words. */
export function verdict({ readiness, slowReadyDay, readyDay, dueDay }: Schedule): string {
  if (readiness === 'in_time') {
    const days = dueDay - slowReadyDay;
    return days === 0 ? 'Yes, on the last day' : `Yes, with ${counted(days, 'day')} in hand`;
  }
  if (readiness === 'tight') return 'Only if all goes as usual';
  return `No, ${counted(readyDay - dueDay, 'day')} late`;
}

/** When all is done, the last days, and what would make it possible, a sentence each. */
export function scheduleLines(schedule: Schedule): string[] {
  const { readiness, readyDay, slowReadyDay, latest, ways, today } = schedule;
  const slow =
    slowReadyDay === readyDay ? 'even if it goes slowly' : `or ${longDay(slowReadyDay, today)} if it goes slowly`;
  const done = `Done ${longDay(readyDay, today)} as a rule, ${slow}.`;
  const last = [
    `to start ${longDay(latest.startDay, today)}`,
    `to order ${longDay(latest.buyDay, today)}`,
    `to have notions in hand ${longDay(latest.closuresDay, today)}`,
  ];
  const over = latest.buyDay < today ? ' Order today what you do not have yet.' : '';
  return [
    done,
    ...(readiness === 'in_time' ? [`Latest days, even if it goes slowly: ${joined(last)}.${over}`] : []),
    ...(ways.length === 0
      ? []
      : [`What would make it sure: ${ways.map((way) => wayWords(way, schedule)).join('; ')}.`]),
  ];
}

const HOUR_S = 3600;

function wayWords(way: Way, { today, pieces }: Schedule): string {
  switch (way.is) {
    case 'fewer':
      return `fewer, ${way.pieces} of the ${pieces} still to make`;
    case 'later':
      return `later, by ${longDay(way.dueDay, today)}`;
    case 'more_makers':
      return `more hands, ${counted(way.makers, 'more maker')} with the same pace and hours`;
    case 'more_hours':
      return `more hours, ${Math.ceil(way.workS / HOUR_S)} in all by then`;
  }
}
