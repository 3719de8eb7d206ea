import { describe, expect, test } from 'vitest';
import { Conversation } from '../../bot/conversation.js';
import type { Bound, Store } from '../../bot/store/ports.js';
import { AT, openedProfile, plan, reading } from './samples.js';

async function openedPlan(s: Bound) {
  const { maker, profile } = await openedProfile(s);
  const made = plan(maker.id, profile.id);
  await s.plans.add(made);
  return { maker, profile, made };
}

/** The walls between workspaces. */
export function workspacesContract(name: string, store: () => Store): void {
  describe(`${name}: workspaces`, () => {
    test('never see each other, though ids and Slack names are the same', async () => {
      const mine = await store().within('T1', async (s) => {
        const { maker, profile } = await openedProfile(s);
        const measurement = reading(profile.id);
        await s.measurements.add(measurement);
        const made = plan(maker.id, profile.id);
        await s.plans.add(made);
        await s.conversations.keep('dm:D1', maker.id, Conversation.parse({ planId: made.id }), AT + 10);
        return { maker, profile, measurement, plan: made };
      });
      await store().within('T2', async (s) => {
        const { maker, profile } = await openedProfile(s);
        expect(maker.id).not.toBe(mine.maker.id);
        await s.makers.setUnits(mine.maker.id, 'in');
        await s.profiles.used(mine.profile.id, AT + 99);
        expect(await s.profiles.of(mine.maker.id)).toEqual([]);
        expect(await s.measurements.of(mine.profile.id)).toEqual([]);
        expect(await s.measurements.get(mine.measurement.id)).toBeUndefined();
        expect(await s.plans.get(mine.plan.id, mine.maker.id)).toBeUndefined();
        await s.measurements.add({ ...mine.measurement, profileId: profile.id });
        await s.measurements.withdraw(mine.measurement.id, AT);
        expect(await s.conversations.of('dm:D1', mine.maker.id, AT)).toEqual(Conversation.parse({}));
      });
      await store().within('T1', async (s) => {
        expect(await s.makers.held('U1', 'Nadia', AT)).toEqual(mine.maker);
        expect(await s.profiles.of(mine.maker.id)).toEqual([mine.profile]);
        expect(await s.measurements.of(mine.profile.id)).toEqual([mine.measurement]);
      });
    });

    test('a button is found in the talk that offered it, in its place and its own workspace alone', async () => {
      const choices = [{ kind: 'help' as const }];
      const offered = [{ turn: 't1', named: false, choices, says: [] }];
      const makerId = await store().within('T1', async (s) => {
        const { id } = await s.makers.held('U1', 'Nadia', AT);
        await s.conversations.keep('thread:C1:1', id, Conversation.parse({ offered }), AT + 10);
        return id;
      });
      const found = (team: string, place: string, turn: string, at = AT) =>
        store().within(team, (s) => s.conversations.offering(place, turn, at));
      expect(await found('T1', 'thread:C1:1', 't1')).toEqual({ makerId, choices });
      expect(await found('T1', 'thread:C1:1', 't2')).toBeUndefined();
      expect(await found('T1', 'thread:C1:2', 't1')).toBeUndefined();
      expect(await found('T2', 'thread:C1:1', 't1')).toBeUndefined();
      expect(await found('T1', 'thread:C1:1', 't1', AT + 10)).toBeUndefined();
    });

    test('a row cannot point into another workspace', async () => {
      const { maker, profile, made } = await store().within('T1', openedPlan);
      await store().within('T1', (s) =>
        s.works.start({
          ...{ id: 'w1', makerId: maker.id, planId: made.id, profileId: profile.id },
          stopAt: 9,
          at: AT,
        }),
      );
      const red = { name: 'red', needles: 46 };
      const own = await store().within('T2', openedPlan);
      const work = {
        id: 'w2',
        makerId: own.maker.id,
        planId: own.made.id,
        profileId: own.profile.id,
        stopAt: 9,
        at: AT,
      };
      const pointers: ((s: Bound) => Promise<unknown>)[] = [
        (s) => s.measurements.add(reading(profile.id)),
        (s) => s.profiles.opened(maker.id, red, 'grey', '', AT),
        (s) => s.conversations.keep('dm:D1', maker.id, Conversation.parse({}), AT),
        async (s) => s.plans.add(plan((await openedProfile(s)).maker.id, profile.id)),
        async (s) => s.plans.add(plan(maker.id, (await openedProfile(s)).profile.id)),
        (s) => s.works.start({ ...work, makerId: maker.id }),
        (s) => s.works.start({ ...work, planId: made.id }),
        (s) => s.works.start({ ...work, profileId: profile.id }),
        (s) => s.readings.add({ id: 'r1', workId: 'w1', row: 1, lengthMm: 5, state: 'hanging', said: '', at: AT }),
      ];
      for (const point of pointers) await expect(store().within('T2', point)).rejects.toThrow(/foreign key/i);
      await store().within('T2', (s) => s.works.start(work));
    });
  });
}
