import fc from 'fast-check';
import { expect, test } from 'vitest';
import { doneAfter } from '../../../core/batch/calendar.js';
import { byDueDate, type Order } from '../../../core/batch/due-order.js';
import { at, calendar, FROM, MONDAY, orders, pace } from './samples.js';

const order: fc.Arbitrary<Order> = fc.record({
  id: fc.constant('o'),
  workS: pace,
  due: fc.integer({ min: 0, max: 400 }).map((hour) => at(MONDAY, hour)),
});

test('no order of up to 6 dates is less late at its latest', () => {
  fc.assert(
    fc.property(fc.array(order, { minLength: 1, maxLength: 6 }), calendar, (asked, hours) => {
      const latest = (sequence: readonly Order[]): number => {
        let done = FROM;
        return Math.max(
          ...sequence.map(({ workS, due }) => {
            done = doneAfter(hours, done, workS);
            return done - due;
          }),
        );
      };
      const found = byDueDate(asked, hours, FROM);
      expect(Math.max(...found.map(({ lateS }) => lateS))).toBe(Math.min(...orders(asked).map(latest)));
    }),
    { seed: 55, numRuns: 60 },
  );
});
