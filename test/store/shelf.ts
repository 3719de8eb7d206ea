import { describe, expect, test } from 'vitest';
import type { Bound, Lot, LotMove, Store } from '../../bot/store/ports.js';
import { AT, openedProfile } from './samples.js';

const BALL = { massG: 50, lengthMm: 105_000 };
const GREY = { owner: '', kind: 'yarn', name: 'Grey medium', dyeLot: '2117' } as const;

const moved = (lot: Lot, left: number, aside: number, more: Partial<LotMove> = {}): LotMove => ({
  id: `m${left}:${aside}`,
  lotId: lot.id,
  workId: '',
  left,
  aside,
  said: '3 balls',
  at: AT,
  ...more,
});

/** Grey of the team, 3 balls of 50 g. */
async function threeBalls(s: Bound): Promise<Lot> {
  const lot = await s.shelf.opened(GREY, AT);
  await s.shelf.move(moved(lot, 150_000, 0, { id: 'in' }));
  return lot;
}

const leftOf = async (s: Bound, makerId = 'nobody') =>
  (await s.shelf.of(makerId)).map(({ left, aside }) => [left, aside]);

/** Yarn and notions on hand, and the ways a yarn is sold. */
export function shelfContract(name: string, store: () => Store): void {
  describe(`${name}: the shelf`, () => {
    test('makes a lot once, and what is told of its ball and price takes the place of what was', async () => {
      const price = { minor: 620, currency: 'EUR' };
      const id = await store().within('T1', async (s) => {
        const first = await s.shelf.opened(GREY, AT);
        expect(first).toMatchObject({ ball: undefined, price: undefined, left: 0, aside: 0 });
        await s.shelf.describe(first.id, { ball: BALL, price });
        const again = await s.shelf.opened({ ...GREY, name: 'grey MEDIUM' }, AT);
        expect(again).toEqual({ ...first, ball: BALL, price });
        await s.shelf.describe(first.id, { ball: undefined, price: undefined });
        expect(await s.shelf.opened(GREY, AT)).toEqual(first);
        await s.shelf.describe(first.id, { ball: BALL, price });
        return first.id;
      });
      await store().within('T2', (s) => s.shelf.describe(id, { ball: undefined, price: undefined }));
      expect(await store().within('T1', (s) => s.shelf.of('nobody'))).toMatchObject([{ ball: BALL, price }]);
    });

    test('never holds less than nothing, nor sets aside more than it holds', async () => {
      await store().within('T1', async (s) => {
        const lot = await threeBalls(s);
        expect(await s.shelf.move(moved(lot, 0, 100_000))).toBe(true);
        expect(await s.shelf.move(moved(lot, 0, 50_001))).toBe(false);
        expect(await s.shelf.move(moved(lot, -50_001, 0))).toBe(false);
        expect(await s.shelf.move(moved(lot, 0, -100_001))).toBe(false);
        expect(await leftOf(s)).toEqual([[150_000, 100_000]]);
        expect(await s.shelf.move(moved(lot, -100_000, -100_000))).toBe(true);
        expect(await leftOf(s)).toEqual([[50_000, 0]]);
      });
    });

    test('turns a move back and puts it in again, each once', async () => {
      await store().within('T1', async (s) => {
        const lot = await threeBalls(s);
        await s.shelf.move(moved(lot, -60_000, 0, { id: 'used' }));
        expect(await s.shelf.undoMove('used', AT)).toBe(true);
        expect(await s.shelf.undoMove('used', AT)).toBe(false);
        expect(await leftOf(s)).toEqual([[150_000, 0]]);
        expect(await s.shelf.redoMove('used')).toBe(true);
        expect(await s.shelf.redoMove('used')).toBe(false);
        expect(await leftOf(s)).toEqual([[90_000, 0]]);
      });
    });

    test('refuses to take back yarn that has been used since', async () => {
      await store().within('T1', async (s) => {
        const lot = await threeBalls(s);
        await s.shelf.move(moved(lot, -1, 0));
        expect(await s.shelf.undoMove('in', AT)).toBe(false);
        expect(await leftOf(s)).toEqual([[149_999, 0]]);
      });
    });

    test('tells beforehand whether several moves can be turned together', async () => {
      await store().within('T1', async (s) => {
        const lot = await threeBalls(s);
        await s.shelf.move(moved(lot, -150_000, 0, { id: 'all' }));
        expect(await s.shelf.canTurn(['in'], false)).toBe(false);
        expect(await s.shelf.canTurn(['in', 'all'], false)).toBe(true);
        expect(await s.shelf.canTurn(['all'], true)).toBe(false);
        await s.shelf.undoMove('all', AT);
        expect(await s.shelf.canTurn(['all'], true)).toBe(true);
        expect(await s.shelf.canTurn(['none'], false)).toBe(false);
      });
    });

    test('tells what was moved for a work, what was taken back left out', async () => {
      await store().within('T1', async (s) => {
        const lot = await threeBalls(s);
        const aside = moved(lot, 0, 90_000, { id: 'a', workId: 'w1' });
        const more = moved(lot, 0, 10_000, { id: 'b', workId: 'w1', at: AT + 1 });
        await s.shelf.move(more);
        await s.shelf.move(aside);
        expect(await s.shelf.movesFor('w1')).toEqual([aside, more]);
        await s.shelf.undoMove('b', AT);
        expect(await s.shelf.movesFor('w1')).toEqual([aside]);
      });
    });

    test('shows a maker their own lots and those of the team, and nobody those of another', async () => {
      await store().within('T1', async (s) => {
        const { maker } = await openedProfile(s);
        await s.shelf.opened({ ...GREY, owner: maker.id }, AT);
        await s.shelf.opened(GREY, AT);
        expect((await s.shelf.of(maker.id)).map(({ owner }) => owner)).toEqual([maker.id, '']);
        const owen = await s.makers.held('U2', 'Owen', AT);
        expect((await s.shelf.of(owen.id)).map(({ owner }) => owner)).toEqual(['']);
      });
    });

    test('is seen and changed from its own workspace alone', async () => {
      const lot = await store().within('T1', threeBalls);
      await store().within('T2', async (s) => {
        expect(await s.shelf.of('nobody')).toEqual([]);
        expect(await s.shelf.move(moved(lot, -1, 0))).toBe(false);
        expect(await s.shelf.undoMove('in', AT)).toBe(false);
        expect(await s.shelf.canTurn(['in'], false)).toBe(false);
      });
      expect(await store().within('T1', leftOf)).toEqual([[150_000, 0]]);
    });

    test('gives the last ball to one of two who take it at once', async () => {
      const lot = await store().within('T1', async (s) => {
        const made = await threeBalls(s);
        await s.shelf.move(moved(made, -100_000, 0));
        return made;
      });
      const taken = (id: string) => store().within('T1', (s) => s.shelf.move(moved(lot, -50_000, 0, { id })));
      expect((await Promise.all([taken('a'), taken('b')])).toSorted()).toEqual([false, true]);
      expect(await store().within('T1', leftOf)).toEqual([[0, 0]]);
    });
  });

  describe(`${name}: ways a yarn is sold`, () => {
    test('come back oldest first, those withdrawn left out until restored', async () => {
      await store().within('T1', async (s) => {
        const { profile } = await openedProfile(s);
        const yarnId = profile.yarn.id;
        const one = { id: 'one', yarnId, ball: BALL, balls: 1, price: undefined, said: '50 g / 105 m', at: AT };
        const ten = {
          ...one,
          id: 'ten',
          balls: 10,
          price: { minor: 5600, currency: '' },
          said: 'ten for 56',
          at: AT + 1,
        };
        await s.putUps.add(ten);
        await s.putUps.add(one);
        expect(await s.putUps.of(yarnId)).toEqual([one, ten]);
        await s.putUps.withdraw('one', AT);
        expect(await s.putUps.of(yarnId)).toEqual([ten]);
        await s.putUps.restore('one');
        expect(await s.putUps.of(yarnId)).toEqual([one, ten]);
      });
      await store().within('T2', async (s) => {
        const { profile } = await openedProfile(s);
        expect(await s.putUps.of(profile.yarn.id)).toEqual([]);
        await s.putUps.withdraw('one', AT);
      });
    });

    test('are priced in the currency that a maker named, once they have', async () => {
      await store().within('T1', async (s) => {
        const maker = await s.makers.held('U1', 'Nadia', AT);
        expect(maker.currency).toBeUndefined();
        await s.makers.setCurrency(maker.id, 'EUR');
        expect((await s.makers.held('U1', 'Nadia', AT)).currency).toBe('EUR');
        await s.makers.setCurrency(maker.id, undefined);
        expect((await s.makers.held('U1', 'Nadia', AT)).currency).toBeUndefined();
      });
    });
  });
}
