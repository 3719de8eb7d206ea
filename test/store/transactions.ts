import { v7 } from 'uuid';
import { describe, expect, test } from 'vitest';
import type { Store } from '../../bot/store/ports.js';
import { AT, CARD, HERE } from './samples.js';

/** One turn, all or nothing. */
export function transactionsContract(name: string, store: () => Store): void {
  describe(`${name}: a transaction`, () => {
    test('claims a delivery key once in each workspace', async () => {
      const claims = [];
      for (const team of ['T1', 'T1', 'T2']) {
        claims.push(await store().within(team, (s) => s.deliveries.claim('event:1', AT)));
      }
      expect(claims).toEqual([true, false, true]);
    });

    test('leaves nothing behind when its work throws, not even its workspace', async () => {
      const failed = store().within('T1', async (s) => {
        await s.deliveries.claim('event:1', AT);
        await s.makers.held('U1', 'Nadia', AT);
        await s.outbox.add(v7(), HERE, CARD, AT, AT + 1000);
        throw new Error('the desk broke');
      });
      await expect(failed).rejects.toThrow('the desk broke');
      expect(await store().outbox.nextAt()).toBeUndefined();
      expect(await store().within('T1', (s) => s.deliveries.claim('event:1', AT))).toBe(true);
    });

    test('rolls back an attempt that is not to be kept, and nothing before or after it', async () => {
      const set = (units: 'cm' | 'in', isKept: boolean) =>
        store().within('T1', async (s) => {
          const { id, units: before } = await s.makers.held('U1', 'Nadia', AT);
          const result = await s.attempted(
            async () => {
              await s.makers.setUnits(id, units);
              return (await s.makers.held('U1', 'Nadia', AT)).units;
            },
            () => isKept,
          );
          await s.makers.setCurrency(id, 'EUR');
          return { before, result, after: await s.makers.held('U1', 'Nadia', AT) };
        });
      expect(await set('cm', true)).toMatchObject({ result: 'cm', after: { units: 'cm', currency: 'EUR' } });
      expect(await set('in', false)).toMatchObject({ result: 'in', after: { units: 'cm', currency: 'EUR' } });
      expect(await set('in', true)).toMatchObject({ before: 'cm', after: { units: 'in' } });
    });

    test('runs again when the database says it is busy, and gives up after three more tries', async () => {
      let runs = 0;
      const busyTwice = store().within('T1', async (s) => {
        runs += 1;
        const first = await s.deliveries.claim('event:1', AT);
        if (runs < 3) throw Object.assign(new Error('busy'), { code: '40001' });
        return first;
      });
      expect(await busyTwice).toBe(true);
      expect(runs).toBe(3);

      runs = 0;
      const busyAlways = store().within('T1', async () => {
        runs += 1;
        throw Object.assign(new Error('busy'), { code: 'SQLITE_BUSY_SNAPSHOT' });
      });
      await expect(busyAlways).rejects.toThrow('busy');
      expect(runs).toBe(4);
    });

    test('waits for the one that holds its maker', async () => {
      const order: string[] = [];
      await store().within('T1', (s) => s.makers.held('U1', 'Nadia', AT));
      await Promise.all(
        ['a', 'b'].map((turn) =>
          store().within('T1', async (s) => {
            await s.deliveries.claim(turn, AT);
            const { id } = await s.makers.held('U1', 'Nadia', AT);
            order.push(`${turn} begins`);
            await s.makers.setUnits(id, 'cm');
            order.push(`${turn} ends`);
          }),
        ),
      );
      const [first, second] = order[0] === 'a begins' ? ['a', 'b'] : ['b', 'a'];
      expect(order).toEqual([`${first} begins`, `${first} ends`, `${second} begins`, `${second} ends`]);
    });
  });
}
