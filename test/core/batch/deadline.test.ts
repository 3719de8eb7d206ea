import { describe, expect, test } from 'vitest';
import { type BatchAsk, batch, type Hand } from '../../../core/batch/deadline.js';
import { lastDone } from '../../../core/batch/shares.js';
import { made, wrong } from '../costing/samples.js';
import { at, EVENINGS, FROM, hours, MONDAY, TWO_DAYS, week } from './samples.js';

const hand = (id: string, calendar: Hand['calendar'], median: number, slow: number): Hand => ({
  id,
  calendar,
  medianS: hours(median),
  slowS: hours(slow),
  knitS: hours(0.5),
});
const NADIA = hand('nadia', EVENINGS, 1.5, 2);
const OWEN = hand('owen', TWO_DAYS, 2, 2.5);

const FRIDAY = MONDAY + 4;
const ask = (more: Partial<BatchAsk> = {}): BatchAsk => ({
  hands: [NADIA, OWEN],
  pieces: 8,
  from: FROM,
  dueDay: FRIDAY,
  leadDays: 0,
  ...more,
});

// Worked by hand: in a week Nadia has 10 h until Friday and Owen 4; slowly that is 5 pieces and 1.
describe('eight pieces by Friday', () => {
  const found = made(batch(ask()));

  test('are ready on Friday as a rule, and on Monday where all goes slowly', () => {
    expect(found).toMatchObject({ readiness: 'tight', readyDay: FRIDAY, slowReadyDay: MONDAY + 7 });
    expect(found.most).toEqual({ usual: 8, slow: 6 });
    expect(found.shares.map((share) => share.at.length)).toEqual([6, 2]);
    expect(lastDone(found.shares)).toBe(at(FRIDAY, 19));
  });

  test('would surely be six, or ready on Saturday, or with one more maker, or 4 more hours', () => {
    expect(found.ways).toEqual([
      { is: 'fewer', pieces: 6 },
      { is: 'later', dueDay: MONDAY + 5 },
      { is: 'more_makers', makers: 1, like: 'nadia' },
      { is: 'more_hours', who: 'nadia', workS: hours(4) },
    ]);
  });

  test('each of these ways holds', () => {
    const inTime = (more: Partial<BatchAsk>) => made(batch(ask(more))).readiness;
    expect(inTime({ pieces: 6 })).toBe('in_time');
    expect(inTime({ dueDay: MONDAY + 5 })).toBe('in_time');
    expect(inTime({ hands: [NADIA, OWEN, NADIA] })).toBe('in_time');
    const longer = week({ ...[0, 1, 2, 3].map((): [number, number][] => [[17, 20]]), 4: [[18, 20]] });
    expect(inTime({ hands: [{ ...NADIA, calendar: longer }, OWEN] })).toBe('in_time');
  });
});

// Worked by hand backwards from Friday night: Nadia's evenings back to Monday, Owen's Tuesday and half of his Saturday.
describe('eight pieces by Friday week', () => {
  const found = made(batch(ask({ dueDay: FRIDAY + 7, leadDays: 3 })));

  test('are in time, and nothing need change', () => {
    expect(found).toMatchObject({ readiness: 'in_time', ways: [] });
    expect(found.most).toEqual({ usual: 20, slow: 15 });
  });

  test('may begin on Saturday, ordered three days before, closures in hand that day', () => {
    expect(found.latest).toEqual({ startDay: MONDAY + 5, buyDay: MONDAY + 2, closuresDay: MONDAY + 5 });
    expect(made(batch(ask({ dueDay: FRIDAY + 7, from: at(MONDAY + 5, 0) }))).readiness).toBe('in_time');
    expect(made(batch(ask({ dueDay: FRIDAY + 7, from: at(MONDAY + 6, 0) }))).readiness).toBe('tight');
  });
});

test('where nobody finishes even one, only later or longer is offered', () => {
  const found = made(batch(ask({ hands: [OWEN], pieces: 1, dueDay: MONDAY })));
  expect(found.readiness).toBe('too_late');
  expect(found.ways).toEqual([
    { is: 'later', dueDay: MONDAY + 1 },
    { is: 'more_hours', who: 'owen', workS: hours(2.5) },
  ]);
});

test('hours begun on a piece count towards the hours that lack', () => {
  const [, , , more] = made(batch(ask({ hands: [NADIA], pieces: 6, dueDay: FRIDAY, from: at(MONDAY, 19) }))).ways;
  // 9 h hold four pieces of 2 h and half of a fifth; two more take 3 h.
  expect(more).toEqual({ is: 'more_hours', who: 'nadia', workS: hours(3) });
});

test('a maker who falls behind or goes away is planned anew from what is left', () => {
  const away = { ...OWEN, calendar: { ...TWO_DAYS, off: [MONDAY + 1, MONDAY + 5] } };
  const found = made(batch(ask({ hands: [NADIA, away], pieces: 5 })));
  expect(found.shares.map((share) => share.at.length)).toEqual([5, 0]);
});

describe('a batch is refused', () => {
  test('without makers, pieces, hours or a pace, all at once', () => {
    const idle = hand('idle', week({}), 0, Number.NaN);
    expect(wrong(batch(ask({ hands: [idle], pieces: 0, leadDays: -1 }))).map(({ code }) => code)).toEqual([
      'pieces_out_of_range',
      'lead_out_of_range',
      'no_pace',
      'no_pace',
      'no_hours',
    ]);
    expect(wrong(batch(ask({ hands: [] })))).toEqual([{ code: 'no_makers' }]);
  });

  test('for hours that end before they begin, overlap or leave the day', () => {
    for (const spans of [
      [[20, 18]],
      [
        [9, 12],
        [11, 13],
      ],
      [[22, 25]],
      [[-1, 2]],
    ] as [number, number][][]) {
      const [problem] = wrong(batch(ask({ hands: [hand('odd', week({ 2: spans }), 1, 2)] })));
      expect(problem).toMatchObject({ code: 'bad_hours', who: 'odd', weekday: 2 });
    }
  });

  test('for a day that is over, or no day, or years off, but not for today', () => {
    for (const dueDay of [MONDAY - 1, Number.NaN, MONDAY + 4000]) {
      expect(wrong(batch(ask({ dueDay })))).toEqual([
        { code: 'due_day_out_of_range', dueDay, today: MONDAY, lastDay: MONDAY + 3653 },
      ]);
    }
    expect(batch(ask({ dueDay: MONDAY })).ok).toBe(true);
  });
});
