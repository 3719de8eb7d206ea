import { describe, expect, test } from 'vitest';
import type { BatchPart, Bound, Store } from '../../bot/store/ports.js';
import { AT, openedProfile, plan } from './samples.js';

const part = (makerId: string, more: Partial<BatchPart> = {}): BatchPart => ({
  makerId,
  stage: 'whole',
  share: 6,
  done: 0,
  away: [],
  isOut: false,
  ...more,
});

/** A batch of twelve between two makers. */
async function dealt(s: Bound) {
  const { maker, profile } = await openedProfile(s);
  const owen = await s.makers.held('U2', 'Owen', AT);
  const made = plan(maker.id, profile.id);
  await s.plans.add(made);
  const parts = [part(maker.id), part(owen.id, { away: [{ from: 20_450, to: 20_456 }] })];
  const batch = { id: 'b1', ownerId: maker.id, planId: made.id, pieces: 12, dueDay: 20_470, readyDay: 20_460, parts };
  await s.batches.add(batch, AT);
  return { maker, owen, batch };
}

/** Batches with their parts, and reminders. */
export function batchesContract(name: string, store: () => Store): void {
  describe(`${name}: batches`, () => {
    test('are found by each who has a part, by their plan, and by nobody of another workspace', async () => {
      const { owen, batch } = await store().within('T1', async (s) => {
        const { maker, owen, batch } = await dealt(s);
        expect(await s.batches.openOf(maker.id)).toMatchObject({ id: 'b1', version: 0, pieces: 12 });
        expect((await s.batches.openOf(owen.id))?.parts).toEqual(expect.arrayContaining([...batch.parts]));
        expect((await s.batches.ofPlan(batch.planId))?.id).toBe('b1');
        return { owen, batch };
      });
      await store().within('T2', async (s) => {
        expect(await s.batches.openOf(owen.id)).toBeUndefined();
        expect(await s.batches.get(batch.id)).toBeUndefined();
      });
    });

    test('are replaced only as they were seen; done stays, and who is no longer named is out', async () => {
      await store().within('T1', async (s) => {
        const { maker, owen, batch } = await dealt(s);
        expect(await s.batches.addDone('b1', owen.id, 'whole', 2)).toBe(true);
        const next = { ...batch, version: 0, pieces: 10, parts: [part(maker.id, { share: 8 })] };
        expect(await s.batches.replace(next)).toBe(true);
        expect(await s.batches.replace({ ...next, pieces: 9 })).toBe(false);
        const now = await s.batches.get('b1');
        expect(now).toMatchObject({ version: 1, pieces: 10 });
        expect(now?.parts.find(({ makerId }) => makerId === owen.id)).toMatchObject({ done: 2, isOut: true });
        expect(now?.parts.find(({ makerId }) => makerId === maker.id)).toMatchObject({ share: 8, isOut: false });
      });
    });

    test('never have fewer done than none, and are open until they end', async () => {
      await store().within('T1', async (s) => {
        const { maker } = await dealt(s);
        expect(await s.batches.addDone('b1', maker.id, 'whole', -1)).toBe(false);
        await s.batches.end('b1', AT + 1);
        expect(await s.batches.openOf(maker.id)).toBeUndefined();
        await s.batches.end('b1', undefined);
        expect((await s.batches.openOf(maker.id))?.id).toBe('b1');
      });
    });
  });

  describe(`${name}: reminders`, () => {
    const reminder = (makerId: string) => ({
      id: 'r1',
      makerId,
      subject: 'plan' as const,
      subjectId: 'p1',
      what: 'start' as const,
      dueDay: 20_470,
      dueAt: AT + 100,
    });
    const kept = () =>
      store().within('T1', async (s) => {
        const { id } = await s.makers.held('U1', 'Nadia', AT);
        await s.reminders.add(reminder(id));
        return reminder(id);
      });

    test('are taken at their time by one, and again when the lease ends', async () => {
      const one = await kept();
      const { reminders } = store();
      expect(await reminders.nextAt()).toBe(AT + 100);
      expect(await reminders.take(AT + 99, 1000, 10)).toEqual([]);
      const takes = await Promise.all([reminders.take(AT + 100, 1000, 10), reminders.take(AT + 100, 1000, 10)]);
      expect(takes.flat()).toEqual([{ ...one, slackTeamId: 'T1' }]);
      expect(await reminders.take(AT + 1099, 1000, 10)).toEqual([]);
      expect(await reminders.take(AT + 1100, 1000, 10)).toHaveLength(1);
    });

    test('end once, and wait again when put off or restored', async () => {
      const { id, makerId } = await kept();
      await store().within('T1', async (s) => {
        await s.reminders.putOff(id, AT + 200);
        expect((await s.reminders.waiting(makerId)).map(({ dueAt }) => dueAt)).toEqual([AT + 200]);
        expect(await s.reminders.settle(id, 'dropped', AT)).toBe(true);
        expect(await s.reminders.settle(id, 'sent', AT)).toBe(false);
        expect(await s.reminders.waiting(makerId)).toEqual([]);
        await s.reminders.restore(id);
        expect(await s.reminders.waiting(makerId)).toHaveLength(1);
      });
      expect(await store().reminders.nextAt()).toBe(AT + 200);
    });
  });
}
