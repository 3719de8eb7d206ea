import { v7 } from 'uuid';
import { describe, expect, test } from 'vitest';
import type { Bound, Store } from '../../bot/store/ports.js';
import { AT, openedProfile, plan } from './samples.js';

const HOME = { to: 'home', user: 'U1', channel: 'D1' } as const;
const page = (text: string) => ({ text: '', blocks: [{ type: 'header', text }] });

/** The Home tab: who opened it, what it shows, and pages that wait for it. */
export function homesContract(name: string, store: () => Store): void {
  const add = (s: Bound, text: string, address: Parameters<Bound['outbox']['add']>[1] = HOME) =>
    s.outbox.add(v7(), address, page(text), AT, AT + 60_000);
  const bodies = async () => (await store().outbox.take(AT, 1000, 10)).map(({ body }) => body);

  describe(`${name}: Home`, () => {
    test('is known once it is opened, with the direct message of its last visit and the page shown', async () => {
      await store().within('T1', async (s) => {
        const { maker } = await openedProfile(s);
        expect(await s.homes.of(maker.id)).toBeUndefined();
        await s.homes.opened(maker.id, 'D1', AT);
        await s.homes.shows(maker.id, 'p1');
        await s.homes.opened(maker.id, 'D2', AT + 1);
        expect(await s.homes.of(maker.id)).toEqual({ channel: 'D2', page: 'p1' });
      });
      await store().within('T2', async (s) => {
        const { maker } = await openedProfile(s);
        expect(await s.homes.of(maker.id)).toBeUndefined();
      });
    });

    test('gets one page of those that wait, the last; another maker and a message keep theirs', async () => {
      await store().within('T1', async (s) => {
        await add(s, 'first');
        await add(s, 'of Owen', { ...HOME, user: 'U2' });
        await add(s, 'a message', { to: 'post', channel: 'D1' });
        await add(s, 'a message', { to: 'post', channel: 'D1' });
        await add(s, 'second');
      });
      await store().within('T2', (s) => add(s, 'in another workspace'));
      const texts = ['second', 'of Owen', 'a message', 'a message', 'in another workspace'];
      expect(await bodies()).toEqual(texts.map(page));
    });

    test('a card of ours made anew waits once, whatever is pressed meanwhile', async () => {
      const CARD = { to: 'card', channel: 'D1', ts: '1.5' } as const;
      await store().within('T1', async (s) => {
        await add(s, 'row 1', CARD);
        await add(s, 'another card', { ...CARD, ts: '1.6' });
        await add(s, 'row 2', CARD);
      });
      expect(await bodies()).toEqual([page('row 2'), page('another card')]);
    });

    test('a page taken is still replaced until it is sealed, and then no more', async () => {
      await store().within('T1', (s) => add(s, 'first'));
      const [row] = await store().outbox.take(AT, 1000, 1);
      if (row === undefined) throw new Error('nothing taken');
      await store().within('T1', (s) => add(s, 'second'));
      expect(await bodies()).toEqual([]);
      expect(await store().outbox.sealed(row)).toEqual({ ...row, body: page('second') });
      await store().within('T1', (s) => add(s, 'third'));
      expect(await bodies()).toEqual([page('third')]);
    });

    test('once a page is posted the next is one of its own', async () => {
      for (const text of ['first', 'second']) {
        await store().within('T1', (s) => add(s, text));
        const [row] = await store().outbox.take(AT, 1000, 1);
        expect(row?.body).toEqual(page(text));
        if (row) await store().outbox.posted(row, AT, undefined);
      }
    });

    test('the last plan is unstarted until a work of it begins, and again when that is given up', async () => {
      await store().within('T1', async (s) => {
        const { maker, profile } = await openedProfile(s);
        expect(await s.plans.unstarted(maker.id)).toBeUndefined();
        const made = plan(maker.id, profile.id);
        await s.plans.add(made);
        expect(await s.plans.unstarted(maker.id)).toEqual(made);
        const work = { id: 'w1', makerId: maker.id, planId: made.id, profileId: profile.id, stopAt: 106, at: AT };
        await s.works.start(work);
        expect(await s.plans.unstarted(maker.id)).toBeUndefined();
        await s.works.end('w1', AT, 'done');
        expect(await s.plans.unstarted(maker.id)).toBeUndefined();
        await s.works.end('w1', AT, 'given_up');
        expect(await s.plans.unstarted(maker.id)).toEqual(made);
      });
    });

    test('a maker is introduced once', async () => {
      await store().within('T1', async (s) => {
        const { maker } = await openedProfile(s);
        expect([await s.introductions.first(maker.id, AT), await s.introductions.first(maker.id, AT)]).toEqual([
          true,
          false,
        ]);
      });
    });
  });
}
