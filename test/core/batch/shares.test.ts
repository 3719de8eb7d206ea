import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { beginBefore, doneAfter } from '../../../core/batch/calendar.js';
import { dealt, dealtBack, lastDone, mostBetween } from '../../../core/batch/shares.js';
import { A, at, B, dealings, FROM, MONDAY, maker } from './samples.js';

describe('eight pieces from Monday, of 1.5 h in the evening and 2 h on Tuesday and Saturday', () => {
  const shares = dealt([A, B], 8, FROM);

  test('are six and two', () => {
    expect(shares.map(({ id, at }) => [id, at.length])).toEqual([
      ['a', 6],
      ['b', 2],
    ]);
  });

  test('are done on Friday at seven, the other’s on Tuesday at one', () => {
    expect(lastDone(shares)).toBe(at(MONDAY + 4, 19));
    expect(shares[1]?.at).toEqual([at(MONDAY + 1, 11), at(MONDAY + 1, 13)]);
  });

  test('must be begun on Monday for Friday night, by one who then ends it on time', () => {
    const back = dealtBack([A, B], 8, at(MONDAY + 4, 24));
    expect(back.map((share) => share.at.length)).toEqual([6, 2]);
    expect(Math.min(...back.flatMap((share) => share.at))).toBe(at(MONDAY, 19));
  });
});

test('how many are done by a time is what its hours hold', () => {
  expect(mostBetween(A, FROM, at(MONDAY + 4, 24))).toBe(6);
  expect(mostBetween(B, FROM, at(MONDAY + 4, 24))).toBe(2);
});

const asked = fc.tuple(fc.array(maker, { minLength: 1, maxLength: 3 }), fc.integer({ min: 1, max: 8 }));
const sum = (times: readonly number[]): number => times.reduce((all, time) => all + time, 0);

test('no other dealing of up to 8 pieces to up to 3 makers is through sooner, in its last or in all', () => {
  fc.assert(
    fc.property(asked, ([makers, pieces]) => {
      const times = makers.map(({ calendar, paceS }) =>
        Array.from({ length: pieces }, (_, i) => doneAfter(calendar, FROM, (i + 1) * paceS)),
      );
      const all = dealings(pieces, makers.length).map((counts) =>
        counts.flatMap((n, i) => times[i]?.slice(0, n) ?? []),
      );
      const found = dealt(makers, pieces, FROM);
      expect(lastDone(found)).toBe(Math.min(...all.map((dones) => Math.max(...dones))));
      expect(sum(found.flatMap((share) => share.at))).toBe(Math.min(...all.map(sum)));
    }),
    { seed: 8, numRuns: 500 },
  );
});

test('nor does any other begin later for the same end', () => {
  const due = at(MONDAY + 21, 0);
  fc.assert(
    fc.property(asked, ([makers, pieces]) => {
      const begins = dealings(pieces, makers.length).map((counts) =>
        Math.min(
          ...counts.flatMap((n, i) => {
            const made = makers[i];
            return made === undefined || n === 0 ? [] : [beginBefore(made.calendar, due, n * made.paceS)];
          }),
        ),
      );
      const found = dealtBack(makers, pieces, due).flatMap((share) => share.at);
      expect(Math.min(...found)).toBe(Math.max(...begins));
    }),
    { seed: 9, numRuns: 500 },
  );
});

test('pieces begun no later than that are done in time, and as many as were said', () => {
  const due = at(MONDAY + 21, 0);
  fc.assert(
    fc.property(asked, ([makers, pieces]) => {
      const begin = Math.min(...dealtBack(makers, pieces, due).flatMap((share) => share.at));
      expect(lastDone(dealt(makers, pieces, begin))).toBeLessThanOrEqual(due);
      const most = sum(makers.map((one) => mostBetween(one, begin, due)));
      expect(most).toBeGreaterThanOrEqual(pieces);
      expect(lastDone(dealt(makers, most + 1, begin))).toBeGreaterThan(due);
    }),
    { seed: 10, numRuns: 300 },
  );
});
