import { describe, expect, test } from 'vitest';
import { type Dated, drift, keptWeight } from '../../../core/gauge/drift.js';
import type { Setting } from '../../../core/gauge/measurement.js';
import { pooled } from '../../../core/gauge/pooled.js';
import { observed, rowsIn, tube } from '../samples.js';

/** Sixty rows a week for ten weeks, by a maker who tightens up; invented. */
const WEEKLY_MM = [304.8, 307.0, 303.5, 301.0, 302.2, 297.5, 298.0, 294.2, 295.0, 291.4];
const weekly = (lengths: readonly number[]) => lengths.map((mm, i) => tube(`${i}`, 60, mm, { day: 7 * i }));
const dated = (lengths: readonly number[]): Dated[] =>
  rowsIn(weekly(lengths)).flatMap((s) => s.map((r) => ({ ...observed(r), day: r.day })));
const RESTED: Setting = { state: 'rested', form: 'tube' };

const found = (lengths: readonly number[]) => {
  const trend = drift(dated(lengths));
  if (trend === undefined) throw new Error('no line');
  return trend;
};

// Slope, Bayes factors and weights worked independently; the Bayes factor also by quadrature in two dimensions.
describe('a maker who tightens up over ten weeks', () => {
  test('is a line of −7.662631e-4 a day, −2.27 ± .54 % in 30 days', () => {
    const { perDay, standardError } = found(WEEKLY_MM);
    expect(perDay).toBeCloseTo(-7.662631e-4, 10);
    expect(perDay / standardError).toBeCloseTo(-9.834, 3);
    expect(100 * Math.expm1(30 * perDay)).toBeCloseTo(-2.27, 2);
  });

  test.each([
    [5, 1.265, 'none'],
    [6, 2.238, 'none'],
    [7, 4.729, 'hint'],
    [8, 14.256, 'established'],
    [9, 47.19, 'established'],
    [10, 225.55, 'established'],
  ] as const)('after %i pieces has odds of %f: %s', (pieces, odds, sureness) => {
    const trend = found(WEEKLY_MM.slice(0, pieces));
    expect(trend.bayesFactor / odds).toBeCloseTo(1, 3);
    expect(trend.sureness).toBe(sureness);
  });

  test('makes old pieces count less: by half every 14 days, the ten worth 5.48', () => {
    const trend = found(WEEKLY_MM);
    expect(trend.halfLifeDays).toBe(14);
    expect(keptWeight(trend, trend.lastDay)).toBe(1);
    expect(keptWeight(trend, trend.lastDay - 14)).toBe(0.5);
    const estimate = pooled(RESTED, rowsIn(weekly(WEEKLY_MM)))?.estimate;
    expect(estimate?.weight).toBeCloseTo(3.20312, 5);
    expect(estimate?.nu).toBeCloseTo(4 + 5.4796 - 1, 4);
    expect(Math.exp(estimate?.mu ?? 0)).toBeCloseTo(4.92457, 5);
    expect(estimate?.pieces).toBe(10);
  });

  test('with equal weights would stand at 4.99044 mm a row', () => {
    const undated = weekly(WEEKLY_MM).map((m) => ({ ...m, day: undefined }));
    const whole = pooled(RESTED, rowsIn(undated));
    expect(whole?.drift).toBeUndefined();
    expect(Math.exp(whole?.estimate.mu ?? 0)).toBeCloseTo(4.99044, 5);
  });
});

describe('no drift is found', () => {
  test('in fewer than three dated pieces, on one day, or where all are alike', () => {
    expect(drift(dated(WEEKLY_MM.slice(0, 2)))).toBeUndefined();
    expect(drift(dated(WEEKLY_MM).map((d) => ({ ...d, day: 3 })))).toBeUndefined();
    expect(drift(dated(Array.from({ length: 8 }, () => 300)))).toBeUndefined();
  });

  test('within a fortnight, however steep', () => {
    const daily = dated(WEEKLY_MM).map((d, i) => ({ ...d, day: i }));
    expect(drift(daily)?.sureness).not.toBe('established');
  });

  test('of less than one per cent in all', () => {
    const slight = Array.from({ length: 10 }, (_, i) => 300 - 0.25 * i + (i % 2) * 0.01);
    expect(found(slight).bayesFactor).toBeGreaterThan(10);
    expect(found(slight).sureness).toBe('hint');
  });

  test('where readings at rest follow hanging ones: an unknown change of state is no drift', () => {
    const hung = Array.from({ length: 5 }, (_, i) =>
      tube(`h${i}`, 60, 319 + (i % 2), { state: 'hanging', day: 7 * i }),
    );
    const rested = Array.from({ length: 5 }, (_, i) => tube(`r${i}`, 60, 305.6 + (i % 2), { day: 35 + 7 * i }));
    expect(pooled(RESTED, rowsIn([...hung, ...rested]))?.drift?.sureness).toBe('none');
  });

  test('any more once twenty level pieces have followed', () => {
    const level = Array.from({ length: 20 }, (_, i) => 291 + ((i * 7) % 5));
    expect(found([...WEEKLY_MM, ...level]).sureness).not.toBe('established');
  });
});

// The line through two days fits to the last digit; what is left over must still be a gauge.
test.each([
  [4, 60, 300, 295],
  [3, 37, 280, 252],
])('%i swatches on day 0 and as many on day %i leave a gauge of finite numbers', (each, day, before, after) => {
  const on = (at: number, mm: number) =>
    Array.from({ length: each }, (_, i) => tube(`${at} ${i}`, 60, mm, { day: at }));
  const estimate = pooled(RESTED, rowsIn([...on(0, before), ...on(day, after)]))?.estimate;
  expect([estimate?.mu, estimate?.sd, estimate?.nu].every(Number.isFinite)).toBe(true);
  expect(Math.exp(estimate?.mu ?? 0)).toBeGreaterThan(after / 60 - 0.01);
});

test('a day may be centuries ago', () => {
  const old = weekly(WEEKLY_MM).map((m, i) => ({ ...m, day: i === 0 ? -200_000 : m.day }));
  expect(Number.isFinite(pooled(RESTED, rowsIn(old))?.estimate.mu)).toBe(true);
});
