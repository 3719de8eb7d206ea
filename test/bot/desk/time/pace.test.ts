import { describe, expect, test } from 'vitest';
import { calendarOf } from '../../../../bot/desk/time/hours.js';
import { paceOf } from '../../../../bot/desk/time/pace.js';
import type { Hours } from '../../../../bot/hours.js';
import { openSqlite } from '../../../../bot/store/sqlite.js';
import { rates } from '../../../../core/index.js';

const AT = 1_764_000_000_000;

describe('the pace of a maker', () => {
  test('is the usual one until they log a time, then their own, and no other maker’s', async () => {
    const store = await openSqlite(':memory:');
    await store.within('T1', async (s) => {
      const [nadia, owen] = [await s.makers.held('U1', 'Nadia', AT), await s.makers.held('U2', 'Owen', AT)];
      const pairs = [14.0, 12.5, 13.2].map((seconds, i) => ({
        id: `t${i}`,
        makerId: nadia.id,
        session: `s${i}`,
        workId: '',
        driver: 'graft' as const,
        count: 46,
        seconds: 46 * seconds,
        day: 0,
        said: '',
        at: AT + i,
      }));
      for (const one of pairs) await s.benchLog.add(one);
      const own = await paceOf({ store: s, maker: nadia });
      // By hand, in three logs of a pair: (.5102 ln 18 + ln 14.0 + ln 12.5 + ln 13.2) / 3.5102 = 2.6265.
      expect(Math.exp(own.of.graft.mu)).toBeCloseTo(13.826, 2);
      expect(own.sessions).toBe(3);
      expect(await paceOf({ store: s, maker: owen })).toEqual(rates([]));
    });
    await store.close();
  });
});

describe('the hours of a maker', () => {
  test('are a calendar: so many hours from the start of a day, or at their times, and each day off', () => {
    const none = { hours: 0 };
    const evening = [{ fromS: 68_400, toS: 75_600 }];
    const weekly: Hours['weekly'] = [{ spans: evening }, { hours: 1.5 }, none, none, none, none, none];
    expect(calendarOf({ weekly, off: [{ from: 20_442, to: 20_444 }] })).toEqual({
      weekly: [evening, [{ fromS: 0, toS: 5400 }], [], [], [], [], []],
      off: [20_442, 20_443, 20_444],
    });
  });

  test('are unknown until said', () => {
    expect(calendarOf({ weekly: undefined, off: [] })).toBeUndefined();
  });
});
