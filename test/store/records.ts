import { describe, expect, test } from 'vitest';
import { Conversation } from '../../bot/conversation.js';
import type { Store } from '../../bot/store/ports.js';
import { AT, openedProfile, plan, reading } from './samples.js';

/** What is kept of one maker. */
export function recordsContract(name: string, store: () => Store): void {
  describe(`${name}: makers`, () => {
    test('a maker is made once, follows a new name, and keeps the old one when none is given', async () => {
      await store().within('T1', async (s) => {
        const made = await s.makers.held('U1', 'Nadia', AT);
        expect(made).toMatchObject({ slackUserId: 'U1', name: 'Nadia', units: undefined });
        expect(await s.makers.held('U1', 'Nadia K', AT)).toEqual({ ...made, name: 'Nadia K' });
        expect(await s.makers.held('U1', '', AT)).toEqual({ ...made, name: 'Nadia K' });
        expect((await s.makers.held('U2', 'Owen', AT)).id).not.toBe(made.id);
      });
    });

    test('units are set for one maker and taken back', async () => {
      await store().within('T1', async (s) => {
        const { id } = await s.makers.held('U1', 'Nadia', AT);
        await s.makers.held('U2', 'Owen', AT);
        await s.makers.setUnits(id, 'cm');
        expect((await s.makers.held('U1', 'Nadia', AT)).units).toBe('cm');
        expect((await s.makers.held('U2', 'Owen', AT)).units).toBeUndefined();
        await s.makers.setUnits(id, undefined);
        expect((await s.makers.held('U1', 'Nadia', AT)).units).toBeUndefined();
      });
    });
  });

  describe(`${name}: measurements`, () => {
    test('come back whole and oldest first, withdrawn ones only by id until restored', async () => {
      await store().within('T1', async (s) => {
        const { maker, profile } = await openedProfile(s);
        const later = { ...reading(profile.id), at: AT + 1, stitches: undefined, state: 'washed' as const };
        const earlier = { ...reading(profile.id), rows: { count: 80.5, overMm: 378, how: 'read' as const } };
        await s.measurements.add(later);
        await s.measurements.add(earlier);
        const other = await s.profiles.opened(maker.id, { name: 'red', needles: 46 }, 'blue', '', AT);
        await s.measurements.add(reading(other.id));
        expect(await s.measurements.of(profile.id)).toEqual([earlier, later]);
        await s.measurements.withdraw(earlier.id, AT + 2);
        expect(await s.measurements.of(profile.id)).toEqual([later]);
        expect(await s.measurements.get(earlier.id)).toEqual(earlier);
        await s.measurements.restore(earlier.id);
        expect(await s.measurements.of(profile.id)).toEqual([earlier, later]);
      });
    });

    test('what was not measured comes back as not known', async () => {
      await store().within('T1', async (s) => {
        const { profile } = await openedProfile(s);
        const bare = { ...reading(profile.id), needles: undefined, massG: undefined, unravelled: undefined };
        await s.measurements.add(bare);
        expect(await s.measurements.of(profile.id)).toEqual([bare]);
      });
    });

    test.each([
      ['needles', { needles: 0 }],
      ['a mass', { massG: 0 }],
      ['stitches unravelled', { unravelled: { stitches: 0, lengthMm: 5 } }],
      ['a length unravelled', { unravelled: { stitches: 5, lengthMm: 0 } }],
    ])('%s of nought is refused', async (_, wrong) => {
      const refused = store().within('T1', async (s) => {
        const { profile } = await openedProfile(s);
        await s.measurements.add({ ...reading(profile.id), ...wrong });
      });
      await expect(refused).rejects.toThrow(/check/i);
    });

    test('a state outside the set is refused', async () => {
      const strange = store().within('T1', async (s) => {
        const { profile } = await openedProfile(s);
        await s.measurements.add({ ...reading(profile.id), state: 'ironed' as 'rested' });
      });
      await expect(strange).rejects.toThrow(/check/i);
    });
  });

  describe(`${name}: plans`, () => {
    test('a plan comes back with its first revision, to its own maker only', async () => {
      await store().within('T1', async (s) => {
        const { maker, profile } = await openedProfile(s);
        const owen = await s.makers.held('U2', 'Owen', AT);
        const made = plan(maker.id, profile.id);
        const other = { ...plan(maker.id, profile.id), numbers: { needles: 72 } };
        await s.plans.add(made);
        await s.plans.add(other);
        expect(await s.plans.get(made.id, maker.id)).toEqual(made);
        expect(await s.plans.get(other.id, maker.id)).toEqual(other);
        expect(await s.plans.get(made.id, owen.id)).toBeUndefined();
      });
    });
  });

  describe(`${name}: conversations`, () => {
    const talk = Conversation.parse({
      subject: { piece: 'x', values: { width: { is: 'window', loMm: 265, hiMm: 280, assumed: 'unit' } } },
      pending: { request: { kind: 'set_units', units: 'cm' }, holes: ['units'] },
      changes: [{ kind: 'units', id: 'm1', said: 'cm from now on' }],
    });
    const empty = Conversation.parse({});

    test('a talk comes back whole to its own maker and place, until it lapses', async () => {
      await store().within('T1', async (s) => {
        const { id } = await s.makers.held('U1', 'Nadia', AT);
        const owen = await s.makers.held('U2', 'Owen', AT);
        await s.conversations.keep('dm:D1', id, empty, AT + 5);
        await s.conversations.keep('dm:D1', id, talk, AT + 10);
        expect(await s.conversations.of('dm:D1', id, AT + 9)).toEqual(talk);
        expect(await s.conversations.of('dm:D1', id, AT + 10)).toEqual(empty);
        expect(await s.conversations.of('dm:D1', owen.id, AT)).toEqual(empty);
        expect(await s.conversations.of('dm:D2', id, AT)).toEqual(empty);
      });
    });
  });
}
