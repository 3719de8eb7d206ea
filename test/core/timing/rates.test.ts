import { describe, expect, test } from 'vitest';
import { tQuantile } from '../../../core/stats/student-t.js';
import { rates, type TimeLog } from '../../../core/timing/rates.js';
import { DRIVERS } from '../../../core/timing/usual-rates.js';
import { graftTimes } from './samples.js';

const range = (logs: readonly TimeLog[]) => {
  const { mu, sd, nu } = rates(logs).of.graft;
  const half = tQuantile(0.9, nu) * sd;
  return { median: Math.exp(mu), lo: Math.exp(mu - half), hi: Math.exp(mu + half), nu, sd };
};

// Check values worked independently: prior 18 s, τ0 .25, ν0 4, k0 .5102.
describe('the time that one grafted pair takes', () => {
  test('is usually 18 s, 8 times in 10 between 9.3 and 34.8, before anything is logged', () => {
    expect(range([]).median).toBeCloseTo(18, 10);
    expect(range([]).lo).toBeCloseTo(9.3, 1);
    expect(range([]).hi).toBeCloseTo(34.8, 1);
  });

  test('after 14.0, 12.5 and 13.2 s is 13.826, between 9.93 and 19.25', () => {
    const found = range(graftTimes(14, 12.5, 13.2));
    expect(found.median).toBeCloseTo(13.826, 3);
    expect(found.nu).toBe(7);
    expect(found.sd).toBeCloseTo(0.23387, 5);
    expect(found.lo).toBeCloseTo(9.93, 2);
    expect(found.hi).toBeCloseTo(19.25, 2);
  });

  test('is not moved by what other steps took', () => {
    expect(range([{ session: 'a', driver: 'mattress', count: 55, seconds: 3000 }])).toEqual(range([]));
  });
});

test('logs of one session count once, all their pairs over all their seconds', () => {
  const twice: TimeLog[] = [
    { session: 'a', driver: 'graft', count: 20, seconds: 300 },
    { session: 'a', driver: 'graft', count: 26, seconds: 344 },
  ];
  expect(rates(twice)).toEqual(rates(graftTimes(14).map((log) => ({ ...log, session: 'a' }))));
  expect(rates(twice).sessions).toBe(1);
});

test('every driver has a rate before anything is logged', () => {
  for (const driver of DRIVERS) expect(Math.exp(rates([]).of[driver].mu)).toBeGreaterThan(0);
});
