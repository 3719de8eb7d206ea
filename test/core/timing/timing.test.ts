import { describe, expect, test } from 'vitest';
import { rates } from '../../../core/timing/rates.js';
import { type TimeRange, timing } from '../../../core/timing/timing.js';
import { AT_MACHINE, AT_TABLE, graftTimes, POUCH, practised } from './samples.js';

const total = (steps: Parameters<typeof timing>[0]): number =>
  timing(steps, rates([])).lines.reduce((sum, { medianS }) => sum + medianS, 0);

// Worked by hand from the usual rates: 300 + 1104 + 120 + 90 + 120, and 180 + 828 + 90 + 660 + 300 + 120 + 812.8 + 360 + 60.
test('the usual rates add up to 28.9 min at the machine and 56.8 min at the table', () => {
  expect(total(AT_MACHINE)).toBeCloseTo(1734, 9);
  expect(total(AT_TABLE)).toBeCloseTo(3410.8, 9);
});

describe('a pouch of 110 rows', () => {
  const found = timing(POUCH.steps, rates([]));

  test('counts what its steps count, machine and table apart', () => {
    const counts = Object.fromEntries(found.lines.map(({ driver, count }) => [driver, count]));
    expect(counts).toMatchObject({ crank: 120 * 46, graft: 46, mattress: 55, take_out_waste: 10, sew_closure: 406.4 });
    const atMachine = found.lines.filter(({ stage }) => stage === 'knit').map(({ driver }) => driver);
    expect(atMachine).toEqual(['set_up', 'crank', 'change', 'measure', 'run_off']);
    expect(found.leftOut).toEqual([]);
  });

  test('is slowest at the crank, and for one who grafts at 30 s a pair at the graft', () => {
    expect(found.slowest).toBe('crank');
    expect(timing(POUCH.steps, rates(graftTimes(30, 31, 29))).slowest).toBe('graft');
  });

  test('takes more in all than its medians sum to, and less than the parts apart', () => {
    const medians = found.lines.reduce((sum, { medianS }) => sum + medianS, 0);
    expect(found.whole.medianS).toBeGreaterThan(medians);
    expect(found.whole.hiS).toBeLessThan(found.knit.hiS + found.finish.hiS);
    expect(found.whole.loS).toBeGreaterThan(found.knit.loS + found.finish.loS);
  });
});

// Simulated apart from this code: 200,000 times of independent steps drawn from their t, with the common factor.
describe('the range of steps together is that of simulated times', () => {
  const near = ({ medianS, loS, hiS }: TimeRange, minutes: readonly [number, number, number], within: number): void => {
    for (const [i, s] of [loS, medianS, hiS].entries()) {
      expect(Math.abs(s / 60 / (minutes[i] ?? Number.NaN) - 1)).toBeLessThan(within);
    }
  };

  test('without logs: 18.2, 31.1 and 56.5 min at the machine, 41.2, 64.0 and 105.2 at the table', () => {
    near(timing(AT_MACHINE, rates([])).knit, [18.2, 31.1, 56.5], 0.08);
    near(timing(AT_TABLE, rates([])).finish, [41.2, 64, 105.2], 0.04);
  });

  test('after three sessions of everything: 23.1, 29.3 and 37.6 min, and 74.1, 88.0 and 105.0 in all', () => {
    near(timing(AT_MACHINE, practised(3)).knit, [23.1, 29.3, 37.6], 0.015);
    near(timing([...AT_MACHINE, ...AT_TABLE], practised(3)).whole, [74.1, 88, 105], 0.005);
  });
});

test('three sessions make a range narrower than two do, and by more than their own times', () => {
  const spread = (sessions: number): number => {
    const { hiS, loS } = timing(AT_TABLE, practised(sessions)).whole;
    return Math.log(hiS / loS);
  };
  expect(spread(2) - spread(3)).toBeGreaterThan(2 * (spread(3) - spread(4)));
});

test('no steps take no time', () => {
  expect(timing([], rates([]))).toMatchObject({ whole: { medianS: 0, loS: 0, hiS: 0 }, slowest: undefined });
});

test('steps whose count is not known yet are named, and the rest is timed', () => {
  const found = timing([{ driver: 'crank', count: 0 }, ...AT_TABLE], rates([]));
  expect(found.leftOut).toEqual(['crank']);
  expect(found.knit.medianS).toBe(0);
});

test('a step without a driver takes its time in that of another, and is not named', () => {
  expect(timing([{ count: 0 }, ...AT_TABLE], rates([]))).toEqual(timing(AT_TABLE, rates([])));
});

test('a step done for each of two parts counts twice', () => {
  const [line] = timing([{ driver: 'graft', count: 24, times: 2 }], rates([])).lines;
  expect(line).toMatchObject({ count: 48 });
});
