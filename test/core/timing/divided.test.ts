import { describe, expect, test } from 'vitest';
import { divided } from '../../../core/timing/divided.js';
import { rates, type TimeLog } from '../../../core/timing/rates.js';
import { timing } from '../../../core/timing/timing.js';
import { made, wrong } from '../costing/samples.js';
import { AT_TABLE } from './samples.js';

const usual = rates([]);
const seconds = (logs: readonly TimeLog[]): number => logs.reduce((sum, log) => sum + log.seconds, 0);

describe('one time over several steps', () => {
  // Worked by hand: 55 bars at 12 s and 406.4 mm at 2 s are 660 and 812.8 s, in all 1472.8; of an hour 1613 and 1987 s.
  test('is divided as the usual rates divide it: of an hour, 26.9 min of seaming and 33.1 of sewing a closure', () => {
    const steps = AT_TABLE.filter(({ driver }) => driver === 'mattress' || driver === 'sew_closure');
    const logs = made(divided(3600, steps, usual, { session: 'a' }));
    expect(logs.map(({ driver, seconds }) => [driver, Math.round(seconds)])).toEqual([
      ['mattress', 1613],
      ['sew_closure', 1987],
    ]);
  });

  test('sums to itself, over the counts of all the pieces made in it', () => {
    const logs = made(divided(7200, AT_TABLE, usual, { session: 'a', pieces: 3 }));
    expect(seconds(logs)).toBeCloseTo(7200, 9);
    expect(logs.find(({ driver }) => driver === 'graft')).toMatchObject({ session: 'a', count: 138 });
  });

  test('moves every step it was over the same way', () => {
    const slow = rates(made(divided(2 * 3410.8, AT_TABLE, usual, { session: 'a' })));
    const found = timing(AT_TABLE, slow).lines.map(({ driver, medianS }, i) => {
      const before = timing(AT_TABLE, usual).lines[i];
      return [driver, before && medianS / before.medianS] as const;
    });
    // Twice the usual, heard against a prior of .5102: 2^(1/1.5102) = 1.5825.
    for (const [, ratio] of found) expect(ratio).toBeCloseTo(2 ** (1 / 1.5102), 4);
    expect(slow.sessions).toBe(1);
  });
});

test('no time, time without end and steps without counts are not logged', () => {
  for (const givenS of [0, -60, Number.NaN, 40 * 86_400]) {
    expect(wrong(divided(givenS, AT_TABLE, usual, { session: 'a' }))).toEqual([
      { code: 'time_out_of_range', givenS, minS: 1, maxS: 31 * 86_400 },
    ]);
  }
  expect(wrong(divided(60, [{ driver: 'crank', count: 0 }], usual, { session: 'a' }))).toEqual([
    { code: 'nothing_to_time' },
  ]);
});
