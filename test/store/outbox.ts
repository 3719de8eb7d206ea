import { v7 } from 'uuid';
import { describe, expect, test } from 'vitest';
import type { Store } from '../../bot/store/ports.js';
import { AT, CARD, HERE } from './samples.js';

/** What delivery takes and gives back. */
export function outboxContract(name: string, store: () => Store): void {
  describe(`${name}: the outbox`, () => {
    const queued = async (team: string, at = AT) => {
      const id = v7();
      await store().within(team, (s) => s.outbox.add(id, HERE, CARD, at, at + 60_000));
      return id;
    };
    const takenIds = async (at: number, limit = 10) => (await store().outbox.take(at, 1000, limit)).map(({ id }) => id);

    test('gives rows of every workspace in the order they were made, as they were put in', async () => {
      const [first, second, third] = [await queued('T2'), await queued('T1'), await queued('T2', AT - 5)];
      const rows = await store().outbox.take(AT, 1000, 2);
      expect(rows).toMatchObject([
        { id: first, slackTeamId: 'T2', address: HERE, body: CARD, attempts: 1, expires: AT + 60_000 },
        { id: second, slackTeamId: 'T1' },
      ]);
      expect(await takenIds(AT)).toEqual([third]);
    });

    test('keeps every kind of address', async () => {
      const addresses = [
        { to: 'post', channel: 'C1', threadTs: '1.2' },
        { to: 'ephemeral', channel: 'C1', user: 'U1' },
        { to: 'response', url: 'https://slack.invalid/r' },
        { to: 'response', url: 'https://slack.invalid/r', inChannel: true },
        { to: 'card', channel: 'C1', ts: '1.2', ifThere: true },
      ] as const;
      await store().within('T1', async (s) => {
        for (const address of addresses) await s.outbox.add(v7(), address, CARD, AT, AT + 1);
      });
      expect((await store().outbox.take(AT, 1000, 10)).map(({ address }) => address)).toEqual(addresses);
    });

    test('leases a row until its time is up, then gives it again and counts the attempt', async () => {
      const id = await queued('T1');
      expect(await takenIds(AT)).toEqual([id]);
      expect(await takenIds(AT + 999)).toEqual([]);
      expect(await store().outbox.take(AT + 1000, 1000, 10)).toMatchObject([{ id, attempts: 2 }]);
    });

    test('gives no row twice to senders that take at once', async () => {
      const ids = [];
      for (let row = 0; row < 6; row += 1) ids.push(await queued('T1'));
      const takes = await Promise.all([takenIds(AT, 4), takenIds(AT, 4), takenIds(AT, 4)]);
      // A sender that loses a race may get fewer than it could have had; the rest is there for the next.
      expect([...takes.flat(), ...(await takenIds(AT))].toSorted()).toEqual(ids);
    });

    test('holds back a row given back until its new time', async () => {
      const id = await queued('T1');
      const [row] = await store().outbox.take(AT, 1000, 1);
      if (row) await store().outbox.later(row, AT + 500);
      expect(await takenIds(AT + 499)).toEqual([]);
      expect(await takenIds(AT + 500)).toEqual([id]);
    });

    test('never gives a posted or dropped row again', async () => {
      await queued('T1');
      await queued('T1');
      const [posted, dropped] = await store().outbox.take(AT, 1000, 2);
      if (posted) await store().outbox.posted(posted, AT + 1, '1.5');
      if (dropped) await store().outbox.dropped(dropped, AT + 1, 'expired');
      expect(await takenIds(AT + 1_000_000)).toEqual([]);
      expect(await store().outbox.nextAt()).toBeUndefined();
    });

    test('says something else of a row that waits, and leaves one alone that is being sent or was', async () => {
      const id = await queued('T1');
      const other = { text: 'Knit 109 rows', blocks: [] };
      const replace = (body: typeof other, at = AT) =>
        store().within('T1', (s) => s.outbox.replace(id, body, at, AT + 90_000));
      expect(await replace(other)).toBe(true);
      const [row] = await store().outbox.take(AT, 1000, 1);
      expect(row).toMatchObject({ id, body: other, expires: AT + 90_000 });
      expect(await replace({ text: 'late', blocks: [] })).toBe(false);
      expect(await replace(other, AT + 1000)).toBe(true);
      if (row) await store().outbox.posted(row, AT, '1.5');
      expect(await replace(other, AT + 5000)).toBe(false);
    });

    test('finds the message of a row that is made anew once it is sent, and not before', async () => {
      const row = await queued('T1');
      const again = { to: 'again', channel: 'C1', threadTs: '1.2', row } as const;
      await store().within('T1', (s) => s.outbox.add(v7(), again, CARD, AT, AT + 60_000));
      const [first, second] = await store().outbox.take(AT, 1000, 2);
      if (first === undefined || second === undefined) throw new Error('two rows were queued');
      expect((await store().outbox.sealed(second)).address).toEqual(again);
      await store().outbox.posted(first, AT, '1.5');
      const card = { to: 'card', channel: 'C1', threadTs: '1.2', ts: '1.5' };
      expect((await store().outbox.sealed(second)).address).toEqual(card);
    });

    test('names the time at which the next row can be taken', async () => {
      expect(await store().outbox.nextAt()).toBeUndefined();
      await queued('T1', AT + 70);
      const soon = await queued('T2', AT + 50);
      expect(await store().outbox.nextAt()).toBe(AT + 50);
      expect(await takenIds(AT + 50)).toEqual([soon]);
      expect(await store().outbox.nextAt()).toBe(AT + 70);
      await takenIds(AT + 70);
      expect(await store().outbox.nextAt()).toBe(AT + 1050);
      expect(await takenIds(AT + 1050)).toEqual([soon]);
    });
  });
}
