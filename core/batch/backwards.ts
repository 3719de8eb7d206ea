import { beginBefore, type Calendar, type WallS } from './calendar.js';

/** Work that follows other work: seconds of hours worked, above 0, and seconds that it then lies before the next. */
export type Task = { id: string; workS: number; restS?: number };

/** A task with the latest times at which it must begin and be done. */
export type Placed = { id: string; begin: WallS; done: WallS };

/** Tasks one after another, placed as late as they may be for the last to be done, and to have rested, by a time. */
export function backwards(tasks: readonly Task[], calendar: Calendar, due: WallS): Placed[] {
  let next = due;
  return tasks
    .toReversed()
    .map(({ id, workS, restS = 0 }) => {
      const done = next - restS;
      next = beginBefore(calendar, done, workS);
      return { id, begin: next, done };
    })
    .toReversed();
}
