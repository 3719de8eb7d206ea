import { v7 } from 'uuid';
import { describe, expect, test } from 'vitest';
import { Conversation } from '../../bot/conversation.js';
import type { Store } from '../../bot/store/ports.js';
import { AT, CARD, HERE, type Open, openedProfile, plan, reading } from './samples.js';

const WEEK_MS = 7 * 24 * 3_600_000;

/** What is forgotten, and what every statement says. */
export function upkeepContract(name: string, store: () => Store, open: Open): void {
  describe(`${name}: upkeep`, () => {
    test('a purge forgets what is over a week old or lapsed, and nothing else', async () => {
      const waiting = v7();
      const id = await store().within('T1', async (s) => {
        const maker = await s.makers.held('U1', 'Nadia', AT);
        await s.deliveries.claim('old', AT - 1);
        await s.deliveries.claim('young', AT);
        await s.conversations.keep('dm:D1', maker.id, Conversation.parse({ planId: 'p' }), AT + WEEK_MS);
        await s.conversations.keep('dm:D2', maker.id, Conversation.parse({ planId: 'p' }), AT + WEEK_MS + 1);
        await s.outbox.add(waiting, HERE, CARD, AT - 1, AT);
        return maker.id;
      });
      await store().purge(AT + WEEK_MS);
      await store().within('T1', async (s) => {
        expect(await s.deliveries.claim('young', AT)).toBe(false);
        expect(await s.deliveries.claim('old', AT)).toBe(true);
        expect((await s.conversations.of('dm:D1', id, AT)).planId).toBeUndefined();
        expect((await s.conversations.of('dm:D2', id, AT)).planId).toBe('p');
      });
      const [row] = await store().outbox.take(AT, 1000, 1);
      expect(row?.id).toBe(waiting);
      const addedAgain = () => store().within('T1', (s) => s.outbox.add(waiting, HERE, CARD, AT, AT));
      if (row) await store().outbox.posted(row, AT, undefined);
      await store().purge(AT + WEEK_MS);
      await expect(addedAgain()).rejects.toThrow(/unique/i);
      await store().purge(AT + WEEK_MS + 1);
      await addedAgain();
    });

    test('a workspace is looked up once', async () => {
      const statements: string[] = [];
      const heard = await open((statement) => statements.push(statement));
      for (const key of ['event:1', 'event:2']) await heard.within('T1', (s) => s.deliveries.claim(key, AT));
      await heard.close();
      expect(statements.map((statement) => statement.match(/into "(\w+)"/)?.[1])).toEqual([
        'workspace',
        'delivery',
        'delivery',
      ]);
    });

    test('every statement names workspace_id', async () => {
      const statements: string[] = [];
      const heard = await open((statement) => statements.push(statement));
      await heard.within('T1', async (s) => {
        await s.deliveries.claim('event:1', AT);
        const { maker, profile } = await openedProfile(s);
        await s.makers.setUnits(maker.id, 'cm');
        await s.profiles.used(profile.id, AT);
        await s.profiles.opened(maker.id, { name: 'red', needles: 46 }, '', '', AT);
        await s.profiles.opened(maker.id, { name: 'red', needles: 46 }, 'green', '', AT + 1);
        const measurement = reading(profile.id);
        await s.measurements.add(measurement);
        await s.measurements.of(profile.id);
        await s.measurements.get(measurement.id);
        await s.measurements.withdraw(measurement.id, AT);
        await s.measurements.restore(measurement.id);
        const made = plan(maker.id, profile.id);
        await s.plans.add(made);
        await s.plans.get(made.id, maker.id);
        await s.plans.unstarted(maker.id);
        await s.homes.opened(maker.id, 'D1', AT);
        await s.homes.shows(maker.id, 'p');
        await s.homes.of(maker.id);
        await s.introductions.first(maker.id, AT);
        await s.measurements.inYarn(maker.id, profile.yarn.id);
        await s.yarns.describe(profile.yarn.id, { category: 4, tex: 500, since: null });
        await s.yarns.opened(maker.id, 'oat');
        await s.yarns.of(maker.id);
        await s.makers.setCurrency(maker.id, 'EUR');
        const ball = { massG: 50, lengthMm: 105_000 };
        const putUp = { id: 'p1', yarnId: profile.yarn.id, ball, balls: 1, price: undefined, said: '', at: AT };
        await s.putUps.add(putUp);
        await s.putUps.of(profile.yarn.id);
        await s.putUps.withdraw('p1', AT);
        await s.putUps.restore('p1');
        const lot = await s.shelf.opened({ owner: '', kind: 'yarn', name: 'oat', dyeLot: '7' }, AT);
        await s.shelf.describe(lot.id, { ball, price: undefined });
        await s.shelf.of(maker.id);
        await s.shelf.move({ id: 'm1', lotId: lot.id, workId: 'w1', left: 1, aside: 0, said: '', at: AT });
        await s.shelf.movesFor('w1');
        await s.shelf.canTurn(['m1'], false);
        await s.shelf.undoMove('m1', AT);
        await s.shelf.redoMove('m1');
        await s.works.start({
          id: 'w1',
          makerId: maker.id,
          planId: made.id,
          profileId: profile.id,
          stopAt: 106,
          at: AT,
        });
        await s.works.open(maker.id);
        await s.works.get('w1', maker.id);
        await s.works.unmeasured(maker.id);
        await s.works.doneLast(maker.id);
        const seq = await s.works.count('w1', { kind: 'by', rows: 1, said: '+1', at: AT });
        await s.works.undoCount('w1', seq, AT);
        await s.works.redoCount('w1', seq);
        await s.works.tally('w1');
        await s.works.stopAt('w1', 102);
        await s.works.end('w1', AT, 'done');
        await s.works.reopen('w1');
        await s.readings.add({ id: 'r1', workId: 'w1', row: 60, lengthMm: 320, state: 'hanging', said: '', at: AT });
        await s.readings.of('w1');
        await s.readings.withdraw('r1', AT);
        await s.readings.restore('r1');
        await s.conversations.keep('dm:D1', maker.id, Conversation.parse({}), AT);
        await s.conversations.of('dm:D1', maker.id, AT);
        for (let row = 0; row < 3; row += 1) await s.outbox.add(v7(), HERE, CARD, AT, AT);
        await s.outbox.replace('none', CARD, AT, AT);
      });
      const [posted, later, dropped] = await heard.outbox.take(AT, 1000, 3);
      if (posted) await heard.outbox.sealed(posted);
      if (posted) await heard.outbox.posted(posted, AT, '1.5');
      if (later) await heard.outbox.later(later, AT);
      if (dropped) await heard.outbox.dropped(dropped, AT, 'expired');
      await heard.outbox.nextAt();
      await heard.purge(AT);
      await heard.close();
      expect(statements.length).toBeGreaterThan(30);
      expect(statements.filter((statement) => !statement.includes('workspace_id'))).toEqual([]);
    });
  });
}
