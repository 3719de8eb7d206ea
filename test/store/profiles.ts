import { describe, expect, test } from 'vitest';
import type { Store } from '../../bot/store/ports.js';
import { AT, reading } from './samples.js';

/** Machines and yarns, named or not yet. */
export function profilesContract(name: string, store: () => Store): void {
  describe(`${name}: profiles`, () => {
    test('the profile used last comes first', async () => {
      await store().within('T1', async (s) => {
        const { id } = await s.makers.held('U1', 'Nadia', AT);
        const grey = await s.profiles.opened(id, { name: '46', needles: 46 }, 'grey', '', AT);
        const blue = await s.profiles.opened(id, { name: '46', needles: 46 }, 'blue', '', AT + 1);
        expect(await s.profiles.of(id)).toEqual([blue, grey]);
        await s.profiles.used(grey.id, AT + 2);
        expect(await s.profiles.of(id)).toEqual([{ ...grey, usedAt: AT + 2 }, blue]);
      });
    });

    test('a machine and yarn of the same name in other letters are the same profile, used again', async () => {
      await store().within('T1', async (s) => {
        const { id } = await s.makers.held('U1', 'Nadia', AT);
        const first = await s.profiles.opened(id, { name: 'The Red One', needles: 46 }, 'Grey', '', AT);
        const again = await s.profiles.opened(id, { name: ' the red one ', needles: undefined }, 'GREY ', '', AT + 1);
        expect(again).toEqual({ ...first, usedAt: AT + 1 });
      });
    });

    test('a yarn is made once, with or without a machine it is knitted on', async () => {
      await store().within('T1', async (s) => {
        const { id } = await s.makers.held('U1', 'Nadia', AT);
        const oat = await s.yarns.opened(id, 'Oat');
        expect(await s.yarns.opened(id, ' oat')).toEqual(oat);
        expect((await s.profiles.opened(id, { name: '46', needles: 46 }, 'oat', '', AT)).yarn).toEqual(oat);
        const grey = await s.yarns.opened(id, 'grey');
        await s.yarns.opened(id, '');
        expect(await s.yarns.of(id)).toEqual([grey, oat]);
        expect(await s.yarns.of((await s.makers.held('U2', 'Owen', AT)).id)).toEqual([]);
      });
    });

    test('needles fill in what was unknown and never change what was known', async () => {
      await store().within('T1', async (s) => {
        const { id } = await s.makers.held('U1', 'Nadia', AT);
        const needles = [];
        for (const said of [undefined, 46, 72, undefined]) {
          needles.push((await s.profiles.opened(id, { name: 'red', needles: said }, 'grey', '', AT)).machine.needles);
        }
        expect(needles).toEqual([undefined, 46, 46, 46]);
      });
    });

    test('an unnamed machine without needles takes the name and needles first given', async () => {
      await store().within('T1', async (s) => {
        const { id } = await s.makers.held('U1', 'Nadia', AT);
        const unnamed = await s.profiles.opened(id, { name: '', needles: undefined }, 'grey', '', AT);
        const named = await s.profiles.opened(id, { name: 'Red', needles: 46 }, 'grey', '', AT);
        expect(named).toEqual({ ...unnamed, machine: { id: unnamed.machine.id, name: 'Red', needles: 46 } });
        expect(await s.profiles.of(id)).toEqual([named]);
      });
    });

    test('a named machine keeps its name, and so does the unnamed machine of another maker', async () => {
      await store().within('T1', async (s) => {
        const { id } = await s.makers.held('U1', 'Nadia', AT);
        const owen = await s.makers.held('U2', 'Owen', AT);
        const unnamed = await s.profiles.opened(owen.id, { name: '', needles: undefined }, 'grey', '', AT);
        const red = await s.profiles.opened(id, { name: 'red', needles: undefined }, 'grey', '', AT);
        const blue = await s.profiles.opened(id, { name: 'blue', needles: undefined }, 'grey', '', AT + 1);
        expect(await s.profiles.of(id)).toEqual([blue, red]);
        expect(await s.profiles.of(owen.id)).toEqual([unnamed]);
        const named = await s.profiles.opened(owen.id, { name: 'red', needles: undefined }, 'grey', '', AT);
        expect(named.machine.id).toBe(unnamed.machine.id);
      });
    });

    test('an unnamed machine keeps to itself once its needles are known or the name is another machine', async () => {
      await store().within('T1', async (s) => {
        const { id } = await s.makers.held('U1', 'Nadia', AT);
        const red = await s.profiles.opened(id, { name: 'red', needles: 46 }, 'grey', '', AT);
        const unnamed = await s.profiles.opened(id, { name: '', needles: undefined }, 'grey', '', AT);
        expect((await s.profiles.opened(id, { name: 'red', needles: 46 }, 'grey', '', AT)).id).toBe(red.id);
        await s.profiles.opened(id, { name: '', needles: 72 }, 'grey', '', AT);
        const blue = await s.profiles.opened(id, { name: 'blue', needles: 72 }, 'grey', '', AT);
        expect(new Set([red, unnamed, blue].map(({ machine }) => machine.id)).size).toBe(3);
      });
    });

    test('the unnamed yarn of the profile used last takes the first name given, with its measurements', async () => {
      await store().within('T1', async (s) => {
        const { id } = await s.makers.held('U1', 'Nadia', AT);
        const elsewhere = await s.profiles.opened(id, { name: '72', needles: 72 }, '', '', AT);
        const unnamed = await s.profiles.opened(id, { name: '46', needles: 46 }, '', '', AT + 1);
        const kept = reading(unnamed.id);
        await s.measurements.add(kept);
        const named = await s.profiles.opened(id, { name: '46', needles: 46 }, 'Grey', '', AT + 2);
        expect(named).toMatchObject({ id: unnamed.id, yarn: { name: 'Grey' } });
        expect(await s.measurements.of(named.id)).toEqual([kept]);
        expect(await s.profiles.of(id)).toEqual([named, elsewhere]);
      });
    });

    test('unnamed yarn stays unnamed when the name is a yarn already known or another profile was used last', async () => {
      await store().within('T1', async (s) => {
        const { id } = await s.makers.held('U1', 'Nadia', AT);
        await s.profiles.opened(id, { name: '72', needles: 72 }, 'grey', '', AT);
        const unnamed = await s.profiles.opened(id, { name: '46', needles: 46 }, '', '', AT + 1);
        const grey = await s.profiles.opened(id, { name: '46', needles: 46 }, 'grey', '', AT + 2);
        const blue = await s.profiles.opened(id, { name: '46', needles: 46 }, 'blue', '', AT + 3);
        expect(new Set([unnamed.id, grey.id, blue.id]).size).toBe(3);
        expect(await s.profiles.of(id)).toContainEqual(unnamed);
      });
    });

    test('another tension on the same machine in the same yarn is another profile', async () => {
      await store().within('T1', async (s) => {
        const { id } = await s.makers.held('U1', 'Nadia', AT);
        const five = await s.profiles.opened(id, { name: '46', needles: 46 }, 'grey', '5', AT);
        const six = await s.profiles.opened(id, { name: '46', needles: 46 }, 'grey', '6', AT + 1);
        expect(six.id).not.toBe(five.id);
        expect([five.tension, six.tension]).toEqual(['5', '6']);
        expect((await s.profiles.opened(id, { name: '46', needles: 46 }, 'grey', '5', AT + 2)).id).toBe(five.id);
      });
    });

    test.each([
      { category: 8, tex: null, since: null },
      { category: -1, tex: null, since: null },
      { category: null, tex: 0, since: null },
    ])('a yarn of %o is refused', async (wrong) => {
      const refused = store().within('T1', async (s) => {
        const { id } = await s.makers.held('U1', 'Nadia', AT);
        const { yarn } = await s.profiles.opened(id, { name: '46', needles: 46 }, 'grey', '', AT);
        await s.yarns.describe(yarn.id, wrong);
      });
      await expect(refused).rejects.toThrow(/check/i);
    });

    test('what is known of a yarn is kept, and taken back', async () => {
      await store().within('T1', async (s) => {
        const { id } = await s.makers.held('U1', 'Nadia', AT);
        const { yarn } = await s.profiles.opened(id, { name: '46', needles: 46 }, 'grey', '', AT);
        expect(yarn).toMatchObject({ category: undefined, tex: undefined });
        await s.yarns.describe(yarn.id, { category: 4, tex: 500, since: 20_416 });
        expect((await s.profiles.of(id))[0]?.yarn).toEqual({
          id: yarn.id,
          name: 'grey',
          category: 4,
          tex: 500,
          since: 20_416,
        });
      });
    });
  });
}
