import { describe, expect, test } from 'vitest';
import type { Hours } from '../../bot/hours.js';
import type { Store, StoredTime } from '../../bot/store/ports.js';
import { AT } from './samples.js';

const cranked = (makerId: string, more: Partial<StoredTime> = {}): StoredTime => ({
  id: 't1',
  makerId,
  session: 's1',
  workId: 'w1',
  driver: 'crank',
  count: 5060,
  seconds: 1500.5,
  day: 20_416,
  said: 'cranking 25 min',
  at: AT,
  ...more,
});

const HOURS: Hours = {
  weekly: [
    { spans: [{ fromS: 68_400, toS: 75_600 }] },
    { hours: 2 },
    { hours: 2 },
    { hours: 2 },
    { hours: 2 },
    { hours: 3.5 },
    { hours: 0 },
  ],
  off: [{ from: 20_442, to: 20_449 }],
};

/** Times at the bench, the clock that runs, and the hours of a maker. */
export function benchLogContract(name: string, store: () => Store): void {
  describe(`${name}: time at the bench`, () => {
    test('comes back oldest first, to its maker alone', async () => {
      await store().within('T1', async (s) => {
        const [nadia, owen] = [await s.makers.held('U1', 'Nadia', AT), await s.makers.held('U2', 'Owen', AT)];
        const later = cranked(nadia.id, { id: 't2', session: 's2', driver: 'graft', at: AT + 1 });
        await s.benchLog.add(later);
        await s.benchLog.add(cranked(nadia.id));
        expect(await s.benchLog.of(nadia.id)).toEqual([cranked(nadia.id), later]);
        expect(await s.benchLog.of(owen.id)).toEqual([]);
      });
    });

    test('goes and comes back with all of its session', async () => {
      await store().within('T1', async (s) => {
        const { id } = await s.makers.held('U1', 'Nadia', AT);
        for (const time of [{}, { id: 't2', driver: 'set_up' as const }, { id: 't3', session: 's2' }])
          await s.benchLog.add(cranked(id, time));
        const ids = async () => (await s.benchLog.of(id)).map((time) => time.id);
        await s.benchLog.withdraw('s1', AT + 1);
        expect(await ids()).toEqual(['t3']);
        await s.benchLog.restore('s1');
        expect(await ids()).toEqual(['t1', 't2', 't3']);
      });
    });

    test('of a session by the same name in another workspace stays', async () => {
      const here = await store().within('T1', async (s) => {
        const { id } = await s.makers.held('U1', 'Nadia', AT);
        await s.benchLog.add(cranked(id));
        return id;
      });
      await store().within('T2', async (s) => {
        await s.benchLog.withdraw('s1', AT);
        expect(await s.benchLog.of(here)).toEqual([]);
        expect(await s.clocks.of(here)).toBeUndefined();
      });
      expect(await store().within('T1', (s) => s.benchLog.of(here))).toEqual([cranked(here)]);
    });

    test('has one clock a maker, which a later start sets anew', async () => {
      await store().within('T1', async (s) => {
        const { id } = await s.makers.held('U1', 'Nadia', AT);
        const clock = { makerId: id, workId: 'w1', rows: 40, startedAt: AT };
        await s.clocks.start(clock);
        expect(await s.clocks.of(id)).toEqual(clock);
        await s.clocks.start({ ...clock, workId: '', rows: 0, startedAt: AT + 1 });
        expect(await s.clocks.of(id)).toEqual({ makerId: id, workId: '', rows: 0, startedAt: AT + 1 });
        await s.clocks.stop(id);
        expect(await s.clocks.of(id)).toBeUndefined();
      });
    });
  });

  test(`${name}: a maker has no hours and the zone UTC until they are said, each maker their own`, async () => {
    await store().within('T1', async (s) => {
      const { id } = await s.makers.held('U1', 'Nadia', AT);
      const of = async (user: string) => {
        const { hours, timeZone } = await s.makers.held(user, '', AT);
        return { hours, timeZone };
      };
      const unsaid = { hours: { weekly: undefined, off: [] }, timeZone: 'UTC' };
      expect(await of('U1')).toEqual(unsaid);
      await s.makers.setHours(id, HOURS);
      await s.makers.setTimeZone(id, 'Europe/Vienna');
      expect(await of('U1')).toEqual({ hours: HOURS, timeZone: 'Europe/Vienna' });
      expect(await of('U2')).toEqual(unsaid);
      await s.makers.setHours(id, unsaid.hours);
      expect((await of('U1')).hours).toEqual(unsaid.hours);
    });
  });
}
