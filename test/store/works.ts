import { describe, expect, test } from 'vitest';
import type { Bound, Store } from '../../bot/store/ports.js';
import { AT, openedProfile, plan, reading } from './samples.js';

/** A pouch on the machine, to be stopped at row 106. */
async function started(s: Bound, id = 'w1', at = AT) {
  const { maker, profile } = await openedProfile(s);
  const made = plan(maker.id, profile.id);
  await s.plans.add(made);
  const work = { id, makerId: maker.id, planId: made.id, profileId: profile.id, stopAt: 106 };
  await s.works.start({ ...work, at });
  return { maker, profile, work: { ...work, rows: 0, startedAt: at, endedAt: undefined } };
}

/** Work in hand, its tally and what was read of it. */
export function worksContract(name: string, store: () => Store): void {
  describe(`${name}: work in hand`, () => {
    test('starts at row 0, and is open until it ends', async () => {
      await store().within('T1', async (s) => {
        const { maker, work } = await started(s);
        expect(await s.works.open(maker.id)).toEqual([work]);
        await s.works.end('w1', AT + 5, 'done');
        expect(await s.works.open(maker.id)).toEqual([]);
        expect(await s.works.get('w1', maker.id)).toEqual({ ...work, endedAt: AT + 5 });
        await s.works.reopen('w1');
        expect(await s.works.open(maker.id)).toEqual([work]);
      });
    });

    test('is done last by when it ended, given up work and other makers left out', async () => {
      await store().within('T1', async (s) => {
        const { maker } = await started(s);
        await started(s, 'w2');
        await started(s, 'w3');
        expect(await s.works.doneLast(maker.id)).toBeUndefined();
        await s.works.end('w2', AT + 9, 'done');
        await s.works.end('w1', AT + 7, 'done');
        await s.works.end('w3', AT + 11, 'given_up');
        expect((await s.works.doneLast(maker.id))?.id).toBe('w2');
        expect(await s.works.doneLast('another')).toBeUndefined();
      });
    });

    test('keeps every count with its own number; one taken back stands in the list and counts no more', async () => {
      await store().within('T1', async (s) => {
        const { maker } = await started(s);
        const rows = async () => (await s.works.get('w1', maker.id))?.rows;
        const one = await s.works.count('w1', { kind: 'by', rows: 1, said: '+1', at: AT + 1 });
        const forty = await s.works.count('w1', { kind: 'to', rows: 40, said: 'row 40', at: AT + 2 });
        expect(forty).toBe(one + 1);
        expect(await rows()).toBe(40);
        await s.works.undoCount('w1', forty, AT + 3);
        expect(await rows()).toBe(1);
        expect((await s.works.tally('w1')).map(({ kind, rows, undone }) => [kind, rows, undone])).toEqual([
          ['start', 0, false],
          ['by', 1, false],
          ['to', 40, true],
        ]);
        await s.works.redoCount('w1', forty);
        expect(await rows()).toBe(40);
      });
    });

    test('stands where the last count left it when an earlier one is taken back', async () => {
      await store().within('T1', async (s) => {
        const { maker } = await started(s);
        const ten = await s.works.count('w1', { kind: 'by', rows: 10, said: '+10', at: AT + 1 });
        await s.works.count('w1', { kind: 'lost', rows: 10, said: 'lost count', at: AT + 2 });
        await s.works.count('w1', { kind: 'settled', rows: 64, said: 'keep 64', at: AT + 3 });
        await s.works.undoCount('w1', ten, AT + 4);
        expect((await s.works.get('w1', maker.id))?.rows).toBe(64);
        expect((await s.works.tally('w1')).map(({ undone }) => undone)).toEqual([false, true, false, false]);
      });
    });

    test('gives two counts at once a number each', async () => {
      await store().within('T1', (s) => started(s));
      const counted = (rows: number) =>
        store().within('T1', (s) => s.works.count('w1', { kind: 'to', rows, said: '', at: AT }));
      const numbers = await Promise.all([counted(7), counted(8)]);
      const entries = await store().within('T1', (s) => s.works.tally('w1'));
      expect(entries.map(({ seq, rows }) => [seq, rows])).toEqual([
        [1, 0],
        ...[
          [numbers[0], 7],
          [numbers[1], 8],
        ].toSorted(),
      ]);
    });

    test('of several the one counted last comes first', async () => {
      await store().within('T1', async (s) => {
        const { maker } = await started(s, 'w1', AT);
        await started(s, 'w2', AT + 1);
        expect((await s.works.open(maker.id)).map(({ id }) => id)).toEqual(['w2', 'w1']);
        await s.works.count('w1', { kind: 'by', rows: 1, said: '+1', at: AT + 2 });
        expect((await s.works.open(maker.id)).map(({ id }) => id)).toEqual(['w1', 'w2']);
      });
    });

    test('takes another stop row, and never one below 1', async () => {
      await store().within('T1', async (s) => {
        const { maker } = await started(s);
        await s.works.stopAt('w1', 102);
        expect((await s.works.get('w1', maker.id))?.stopAt).toBe(102);
      });
      await expect(store().within('T1', (s) => s.works.stopAt('w1', 0))).rejects.toThrow(/check/i);
    });

    test('has readings that come back oldest first, those withdrawn left out until restored', async () => {
      await store().within('T1', async (s) => {
        await started(s);
        const first = {
          id: 'r1',
          workId: 'w1',
          row: 60,
          lengthMm: 320.04,
          state: 'hanging' as const,
          said: '12 5/8 in',
          at: AT,
        };
        const second = { ...first, id: 'r2', row: 80, lengthMm: 441.5, at: AT + 1 };
        await s.readings.add(second);
        await s.readings.add(first);
        expect(await s.readings.of('w1')).toEqual([first, second]);
        await s.readings.withdraw('r1', AT + 2);
        expect(await s.readings.of('w1')).toEqual([second]);
        await s.readings.restore('r1');
        expect(await s.readings.of('w1')).toEqual([first, second]);
      });
    });

    test('is seen by its own maker and workspace alone', async () => {
      await store().within('T1', async (s) => {
        await started(s);
        const other = await s.makers.held('U2', 'Owen', AT);
        expect(await s.works.get('w1', other.id)).toBeUndefined();
        expect(await s.works.open(other.id)).toEqual([]);
      });
      await store().within('T2', async (s) => {
        const { id } = await s.makers.held('U1', 'Nadia', AT);
        expect(await s.works.open(id)).toEqual([]);
        expect(await s.readings.of('w1')).toEqual([]);
        expect(await s.works.tally('w1')).toEqual([]);
      });
    });

    test('is changed from its own workspace alone', async () => {
      const read = { id: 'r1', workId: 'w1', row: 9, lengthMm: 50, state: 'hanging' as const, said: '', at: AT };
      const { maker, work } = await store().within('T1', async (s) => {
        const made = await started(s);
        await s.readings.add(read);
        return made;
      });
      await store().within('T2', async (s) => {
        await s.works.stopAt('w1', 3);
        await s.works.end('w1', AT, 'given_up');
        await s.works.undoCount('w1', 1, AT);
        await s.readings.withdraw('r1', AT);
      });
      const counted = store().within('T2', (s) => s.works.count('w1', { kind: 'by', rows: 1, said: '+1', at: AT }));
      await expect(counted).rejects.toThrow(/no result/i);
      await store().within('T1', async (s) => {
        expect(await s.works.open(maker.id)).toEqual([work]);
        expect(await s.works.tally('w1')).toHaveLength(1);
        expect(await s.readings.of('w1')).toEqual([read]);
      });
    });
  });

  describe(`${name}: measurements in one yarn`, () => {
    test('are none for another maker or in another workspace', async () => {
      const { maker, profile } = await store().within('T1', async (s) => {
        const made = await openedProfile(s);
        await s.measurements.add(reading(made.profile.id));
        const owen = await s.makers.held('U2', 'Owen', AT);
        expect(await s.measurements.inYarn(owen.id, made.profile.yarn.id)).toEqual([]);
        return made;
      });
      const elsewhere = store().within('T2', (s) => s.measurements.inYarn(maker.id, profile.yarn.id));
      expect(await elsewhere).toEqual([]);
    });

    test('come from every machine and tension, but not from another yarn or what was withdrawn', async () => {
      await store().within('T1', async (s) => {
        const { maker, profile } = await openedProfile(s);
        const tighter = await s.profiles.opened(maker.id, { name: 'red', needles: 46 }, 'grey', '5', AT);
        const wider = await s.profiles.opened(maker.id, { name: '72', needles: 72 }, 'grey', '', AT);
        const blue = await s.profiles.opened(maker.id, { name: 'red', needles: 46 }, 'blue', '', AT);
        const [a, b, c, gone] = [profile, tighter, wider, profile].map(({ id }, i) => ({ ...reading(id), at: AT + i }));
        for (const one of [a, b, c, gone, reading(blue.id)]) if (one) await s.measurements.add(one);
        if (gone) await s.measurements.withdraw(gone.id, AT);
        expect(await s.measurements.inYarn(maker.id, profile.yarn.id)).toEqual([a, b, c]);
      });
    });
  });

  describe(`${name}: the plan made last`, () => {
    test('is the latest of this maker', async () => {
      await store().within('T1', async (s) => {
        const { maker, profile } = await openedProfile(s);
        expect(await s.plans.latest(maker.id)).toBeUndefined();
        const [first, second] = [plan(maker.id, profile.id), { ...plan(maker.id, profile.id), at: AT + 1 }];
        await s.plans.add(second);
        await s.plans.add(first);
        expect(await s.plans.latest(maker.id)).toEqual(second);
        const owen = await s.makers.held('U2', 'Owen', AT);
        expect(await s.plans.latest(owen.id)).toBeUndefined();
      });
    });
  });
}
