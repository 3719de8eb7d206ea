import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { finishedAt, type Pair, passages } from '../../../core/batch/flow.js';
import { type Job, johnsonOrder } from '../../../core/batch/johnson.js';
import { twoStages } from '../../../core/batch/order.js';
import { made, wrong } from '../costing/samples.js';
import { ALWAYS, at, calendar, EVENINGS, FROM, hours, MONDAY, orders, TWO_DAYS, week } from './samples.js';

const quarter = fc.integer({ min: 1, max: 20 }).map((n) => n * 900);
const job = fc.record({ id: fc.constant('j'), knitS: quarter, finishS: quarter });
const restedJob = fc.record({ id: fc.constant('j'), knitS: quarter, finishS: quarter, restS: quarter });
const upTo = (most: number, one: fc.Arbitrary<Job>) => fc.array(one, { minLength: 1, maxLength: most });
const soonest = (jobs: readonly Job[], pair: Pair): number =>
  Math.min(...orders(jobs).map((order) => finishedAt(order, pair)));

describe('Johnson’s order', () => {
  test('is through as soon as the best of all orders of up to 7 pieces, at the same hours', () => {
    fc.assert(
      fc.property(upTo(7, job), calendar, (jobs, hours) => {
        const pair = { knitter: hours, finisher: hours, from: FROM };
        expect(made(twoStages(jobs, pair))).toMatchObject({ finished: soonest(jobs, pair), by: 'johnson' });
      }),
      { seed: 54, numRuns: 30 },
    );
  });

  test('counts a rest with both stages, which is the best of all where work never stops', () => {
    const pair = { knitter: ALWAYS, finisher: ALWAYS, from: FROM };
    fc.assert(
      fc.property(upTo(6, restedJob), (jobs) => {
        expect(finishedAt(johnsonOrder(jobs), pair)).toBe(soonest(jobs, pair));
      }),
      { seed: 55, numRuns: 60 },
    );
  });
});

describe('where the rule is not exact', () => {
  test('every order of up to 7 pieces is tried', () => {
    fc.assert(
      fc.property(upTo(6, restedJob), calendar, calendar, (jobs, knitter, finisher) => {
        const pair = { knitter, finisher, from: FROM };
        expect(made(twoStages(jobs, pair)).finished).toBe(soonest(jobs, pair));
      }),
      { seed: 56, numRuns: 40 },
    );
  });

  // Found by trying, then by hand: knitted a, b, c the last is finished on Saturday at 14, b first it is Tuesday at 11.
  test('which is three days sooner here than the rule, whose first piece is too short for a Tuesday', () => {
    const pair = { knitter: EVENINGS, finisher: TWO_DAYS, from: FROM };
    const jobs: Job[] = [
      { id: 'a', knitS: hours(2), finishS: hours(4) },
      { id: 'b', knitS: hours(0.5), finishS: hours(1) },
      { id: 'c', knitS: hours(4), finishS: hours(4) },
    ];
    const found = made(twoStages(jobs, pair));
    expect(found).toMatchObject({ by: 'every_order', finished: at(MONDAY + 5, 14) });
    expect(found.passages.map(({ id }) => id)).toEqual(['a', 'b', 'c']);
    expect(finishedAt(johnsonOrder(jobs), pair)).toBe(at(MONDAY + 8, 11));
  });

  test('more pieces get a good order, no later than the rule’s', () => {
    fc.assert(
      fc.property(
        fc.array(restedJob, { minLength: 8, maxLength: 12 }),
        calendar,
        calendar,
        (jobs, knitter, finisher) => {
          const pair = { knitter, finisher, from: FROM };
          const found = made(twoStages(jobs, pair));
          expect(found.by).toBe('good_order');
          expect(found.finished).toBeLessThanOrEqual(finishedAt(johnsonOrder(jobs), pair));
          expect(found.passages).toHaveLength(jobs.length);
        },
      ),
      { seed: 57, numRuns: 15 },
    );
  });
});

test('pieces that are all alike need no search, whatever the hours', () => {
  const jobs = Array.from({ length: 24 }, (_, i): Job => ({ id: `${i}`, knitS: hours(0.5), finishS: hours(1) }));
  const found = made(twoStages(jobs, { knitter: EVENINGS, finisher: TWO_DAYS, from: FROM }));
  expect(found.by).toBe('johnson');
  expect(found.passages.map(({ id }) => id)).toEqual(jobs.map(({ id }) => id));
});

// Worked by hand: knitting 2 h a piece from nine; finishing 1 h, then 3 h, from nine too.
test('who waits is said: the finisher for pieces, or a piece for the finisher', () => {
  const pair = { knitter: week({ 0: [[9, 17]] }), finisher: week({ 0: [[9, 24]] }), from: FROM };
  const jobs = [1, 3, 1].map((h, i): Job => ({ id: `${i}`, knitS: hours(2), finishS: hours(h) }));
  const found = passages(jobs, pair);
  expect(found.map(({ finished }) => finished)).toEqual([12, 16, 17].map((h) => at(MONDAY, h)));
  expect(found.map(({ finisherWaitsS }) => finisherWaitsS)).toEqual([2, 1, 0].map(hours));
  expect(found.map(({ pieceWaitsS }) => pieceWaitsS)).toEqual([0, 0, 1].map(hours));
});

test('a piece that rests is not finished before it has', () => {
  const pair = { knitter: ALWAYS, finisher: ALWAYS, from: FROM };
  const [only] = passages([{ id: 'felt', knitS: hours(1), finishS: hours(1), restS: hours(12) }], pair);
  expect(only).toMatchObject({ knitted: FROM + hours(1), finished: FROM + hours(14), finisherWaitsS: hours(13) });
});

test('no pieces, times that are none, rests below nothing and people without hours are refused at once', () => {
  const never = week({});
  const bad: Job = { id: 'x', knitS: 0, finishS: Number.NaN, restS: -1 };
  const found = wrong(twoStages([bad], { knitter: never, finisher: EVENINGS, from: FROM }));
  expect(found.map(({ code }) => code)).toEqual(['no_pace', 'no_pace', 'rest_out_of_range', 'no_hours']);
  expect(wrong(twoStages([], { knitter: EVENINGS, finisher: EVENINGS, from: FROM })).map((p) => p.code)).toEqual([
    'pieces_out_of_range',
  ]);
});
