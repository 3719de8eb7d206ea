import { type Calendar, doneAfter, type WallS } from './calendar.js';

/** Work for one date: seconds of hours worked, above 0. */
export type Order = { id: string; workS: number; due: WallS };

/**
 * Orders one after another by their dates, earliest first: the one that is latest is then less late than in any other
 * order. `lateS` is the time by the clock past its date, negative where it is done before.
 * @source Jackson's rule (1955), from memory
 */
export function byDueDate(
  orders: readonly Order[],
  calendar: Calendar,
  from: WallS,
): (Order & { done: WallS; lateS: number })[] {
  let done = from;
  return orders
    .toSorted((a, b) => a.due - b.due)
    .map((order) => {
      done = doneAfter(calendar, done, order.workS);
      return { ...order, done, lateS: done - order.due };
    });
}
