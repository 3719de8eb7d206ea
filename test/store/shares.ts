import { v7 } from 'uuid';
import { describe, expect, test } from 'vitest';
import { PlanAsk } from '../../bot/request.js';
import type { Bound, Result, Store } from '../../bot/store/ports.js';
import { AT } from './samples.js';

const SMALL = PlanAsk.parse({ piece: 'x', values: { width: { is: 'window', loMm: 265, hiMm: 280 } } });
const LARGE = PlanAsk.parse({ piece: 'x', values: { width: { is: 'window', loMm: 290, hiMm: 305 } } });
const COUNTS = { rows: 109, needles: 46, rowMm: 5.08, stitchMm: 7.45, across: { adjective: 'tall', mm: 168 } };

async function pair(s: Bound) {
  const nadia = await s.makers.held('U1', 'Nadia', AT);
  const owen = await s.makers.held('U2', 'Owen', AT);
  const share = { id: v7(), ownerId: nadia.id, origin: 'p1', to: { makerId: owen.id }, ask: SMALL, counts: undefined };
  return { nadia, owen, share };
}

/** Plans that makers show each other, and what came of them. */
export function sharesContract(name: string, store: () => Store): void {
  describe(`${name}: makers by name`, () => {
    test('are found by name or Slack id in whatever case, in their own workspace alone', async () => {
      const { id } = await store().within('T1', (s) => s.makers.held('U2', 'Owen', AT));
      await store().within('T1', async (s) => {
        expect((await s.makers.named(' oWEN '))[0]?.id).toBe(id);
        expect((await s.makers.named('u2'))[0]?.id).toBe(id);
        expect(await s.makers.named('')).toEqual([]);
        expect((await s.makers.get(id))?.name).toBe('Owen');
      });
      await store().within('T2', async (s) => {
        expect(await s.makers.named('Owen')).toEqual([]);
        expect(await s.makers.get(id)).toBeUndefined();
      });
    });
  });

  describe(`${name}: shares`, () => {
    test('come back to their owner and their reader as they were shown last, until withdrawn', async () => {
      await store().within('T1', async (s) => {
        const { nadia, owen, share } = await pair(s);
        const id = await s.shares.add({ ...share, at: AT });
        const first = { ...share, revision: 1, isWithdrawn: false };
        expect(await s.shares.of(nadia.id)).toEqual([first]);
        expect(await s.shares.of(owen.id)).toEqual([]);
        expect(await s.shares.shownTo({ makerId: owen.id }, 9)).toEqual([first]);
        expect(await s.shares.shownTo({ channel: 'C1' }, 9)).toEqual([]);
        expect(await s.shares.ownerOf('p1')).toBe(nadia.id);

        expect(await s.shares.revise(id, LARGE, COUNTS)).toBe(2);
        expect(await s.shares.get(id)).toEqual({ ...first, ask: LARGE, counts: COUNTS, revision: 2 });
        await s.shares.setRevision(id, 1);
        expect(await s.shares.get(id)).toEqual(first);
        expect(await s.shares.revise(id, LARGE, undefined)).toBe(3);
        expect(await s.shares.askOf(id, 1)).toEqual(SMALL);

        await s.shares.withdraw(id, AT + 1);
        expect(await s.shares.of(nadia.id)).toEqual([]);
        expect(await s.shares.shownTo({ makerId: owen.id }, 9)).toEqual([]);
        expect((await s.shares.get(id))?.isWithdrawn).toBe(true);
        await s.shares.restore(id);
        expect(await s.shares.of(nadia.id, 'p1')).toHaveLength(1);
        expect(await s.shares.of(nadia.id, 'p2')).toEqual([]);
      });
    });

    test('with the same maker twice are one share', async () => {
      await store().within('T1', async (s) => {
        const { nadia, share } = await pair(s);
        const id = await s.shares.add({ ...share, at: AT });
        await s.shares.withdraw(id, AT + 1);
        expect(await s.shares.add({ ...share, id: v7(), ask: LARGE, counts: COUNTS, at: AT + 2 })).toBe(id);
        expect(await s.shares.of(nadia.id)).toEqual([
          { ...share, ask: LARGE, counts: COUNTS, revision: 2, isWithdrawn: false },
        ]);
      });
    });

    test('in a channel keep the thread they stand in', async () => {
      await store().within('T1', async (s) => {
        const { share } = await pair(s);
        const to = { channel: 'C1', threadTs: '17.1' };
        await s.shares.add({ ...share, to, at: AT });
        expect((await s.shares.shownTo({ channel: 'C1' }, 9)).map((one) => one.to)).toEqual([to]);
      });
    });

    test('know who took which revision, and forget it', async () => {
      await store().within('T1', async (s) => {
        const { owen, share } = await pair(s);
        const id = await s.shares.add({ ...share, at: AT });
        const taken = { shareId: id, makerId: owen.id, revision: 1, answered: 1 };
        await s.shares.take(taken);
        await s.shares.take({ ...taken, answered: 2 });
        expect(await s.shares.takenBy(id)).toEqual([{ ...taken, answered: 2 }]);
        await s.shares.release(id, owen.id);
        expect(await s.shares.takenBy(id)).toEqual([]);
      });
    });

    test('of one workspace are unknown in another', async () => {
      const id = await store().within('T1', async (s) => s.shares.add({ ...(await pair(s)).share, at: AT }));
      await store().within('T2', async (s) => {
        expect(await s.shares.get(id)).toBeUndefined();
        expect(await s.shares.ownerOf('p1')).toBeUndefined();
        expect(await s.shares.askOf(id, 1)).toBeUndefined();
        expect(await s.results.of('p1')).toEqual([]);
      });
    });
  });

  describe(`${name}: results`, () => {
    test('come back oldest first, in what was sent of them, until withdrawn', async () => {
      await store().within('T1', async (s) => {
        const { owen } = await pair(s);
        const made: Result = {
          id: v7(),
          makerId: owen.id,
          origin: 'p1',
          cameMm: 276.2,
          window: { loMm: 273, hiMm: 286 },
          rows: 120,
          needles: undefined,
          sent: '',
          at: AT + 1,
        };
        const earlier: Result = { ...made, id: v7(), needles: 48, at: AT };
        await s.results.add(made);
        await s.results.add(earlier);
        expect(await s.results.of('p1')).toEqual([earlier, made]);
        expect(await s.results.latest(owen.id)).toEqual(made);
        await s.results.send(made.id, 'size');
        await s.results.withdraw(earlier.id, AT + 2);
        expect(await s.results.of('p1')).toEqual([{ ...made, sent: 'size' }]);
        await s.results.restore(earlier.id);
        expect(await s.results.of('p1')).toHaveLength(2);
      });
    });
  });
}
