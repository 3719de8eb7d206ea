import { type Kysely, type Selectable, sql } from 'kysely';
import { newId } from '../../ids.js';
import type { Bound, Lot, LotMove } from '../ports.js';
import { prepared } from '../prepared.js';
import type { Tables } from '../schema.js';
import { named } from './named.js';
import { ballColumns, priceColumns, priceOf } from './put-ups.js';

export function shelf(db: Kysely<Tables>, workspaceId: string): Bound['shelf'] {
  /** Changes what a lot holds where the result is possible: the test and the change are one statement. */
  async function changed(lotId: string, left: number, aside: number): Promise<boolean> {
    const row = await db
      .updateTable('lot')
      .set({ left_amount: sql`left_amount + ${left}`, aside_amount: sql`aside_amount + ${aside}` })
      .where('workspace_id', '=', workspaceId)
      .where('id', '=', lotId)
      .where(sql<boolean>`left_amount + ${left} >= 0`)
      .where(sql<boolean>`aside_amount + ${aside} >= 0`)
      .where(sql<boolean>`aside_amount + ${aside} <= left_amount + ${left}`)
      .returning('id')
      .executeTakeFirst();
    return row !== undefined;
  }

  /** Changes the lot of a move back or again, unless that was done already, and marks the move. */
  async function turned(id: string, undoneAt: number | null): Promise<boolean> {
    const move = await db
      .selectFrom('lot_move')
      .selectAll()
      .where('workspace_id', '=', workspaceId)
      .where('id', '=', id)
      .where('undone_at_ms', undoneAt === null ? 'is not' : 'is', null)
      .executeTakeFirst();
    const way = undoneAt === null ? 1 : -1;
    if (move === undefined || !(await changed(move.lot_id, way * move.left_change, way * move.aside_change)))
      return false;
    await db
      .updateTable('lot_move')
      .set({ undone_at_ms: undoneAt })
      .where('workspace_id', '=', workspaceId)
      .where('id', '=', id)
      .execute();
    return true;
  }

  return {
    async of(makerId) {
      return (await ofMaker(db, { workspaceId, makerId })).map(lot);
    },

    async opened({ owner, kind, name, dyeLot }, at) {
      const { name_key, ...names } = named(name);
      const row = await db
        .insertInto('lot')
        .values({
          workspace_id: workspaceId,
          id: newId(),
          owner,
          kind,
          ...names,
          name_key,
          dye_lot: dyeLot,
          ball_mg: null,
          ball_mm: null,
          price_minor: null,
          currency: '',
          left_amount: 0,
          aside_amount: 0,
          at_ms: at,
        })
        .onConflict((on) =>
          on.columns(['workspace_id', 'owner', 'kind', 'name_key', 'dye_lot']).doUpdateSet({ name_key }),
        )
        .returningAll()
        .executeTakeFirstOrThrow();
      return lot(row);
    },

    async describe(id, { ball, price }) {
      await db
        .updateTable('lot')
        .set({ ball_mg: null, ball_mm: null, ...(ball && ballColumns(ball)), ...priceColumns(price) })
        .where('workspace_id', '=', workspaceId)
        .where('id', '=', id)
        .execute();
    },

    async move({ id, lotId, workId, left, aside, said, at }) {
      if (!(await changed(lotId, left, aside))) return false;
      await db
        .insertInto('lot_move')
        .values({
          workspace_id: workspaceId,
          id,
          lot_id: lotId,
          work_id: workId,
          left_change: left,
          aside_change: aside,
          said,
          at_ms: at,
          undone_at_ms: null,
        })
        .execute();
      return true;
    },

    undoMove: (id, at) => turned(id, at),
    redoMove: (id) => turned(id, null),

    async canTurn(ids, redo) {
      const rows = await db
        .selectFrom('lot_move')
        .innerJoin('lot', (on) =>
          on.onRef('lot.workspace_id', '=', 'lot_move.workspace_id').onRef('lot.id', '=', 'lot_move.lot_id'),
        )
        .select(['lot_move.id', 'lot_id', 'left_change', 'aside_change', 'left_amount', 'aside_amount', 'undone_at_ms'])
        .where('lot_move.workspace_id', '=', workspaceId)
        .where('lot_move.id', 'in', ids)
        .execute();
      const lots = new Map(rows.map((row) => [row.lot_id, { left: row.left_amount, aside: row.aside_amount }]));
      for (const id of redo ? ids : ids.toReversed()) {
        const row = rows.find((one) => one.id === id);
        const held = lots.get(row?.lot_id ?? '');
        const way = redo ? 1 : -1;
        if (row === undefined || held === undefined || (row.undone_at_ms !== null) !== redo) return false;
        held.left += way * row.left_change;
        held.aside += way * row.aside_change;
        if (held.aside < 0 || held.aside > held.left) return false;
      }
      return true;
    },

    async movesFor(workId) {
      const rows = await db
        .selectFrom('lot_move')
        .selectAll()
        .where('workspace_id', '=', workspaceId)
        .where('work_id', '=', workId)
        .where('undone_at_ms', 'is', null)
        .orderBy('at_ms')
        .orderBy('id')
        .execute();
      return rows.map(
        (row): LotMove => ({
          id: row.id,
          lotId: row.lot_id,
          workId,
          left: row.left_change,
          aside: row.aside_change,
          said: row.said,
          at: row.at_ms,
        }),
      );
    },
  };
}

const ofMaker = prepared((db, { workspaceId, makerId }: { workspaceId: string; makerId: string }) =>
  db
    .selectFrom('lot')
    .selectAll()
    .where('workspace_id', '=', workspaceId)
    .where('owner', 'in', [makerId, ''])
    .orderBy('name_key')
    .orderBy('dye_lot')
    .orderBy('owner', 'desc'),
);

const lot = (row: Selectable<Tables['lot']>): Lot => ({
  id: row.id,
  owner: row.owner,
  kind: row.kind,
  name: row.name,
  dyeLot: row.dye_lot,
  ball: row.ball_mg === null || row.ball_mm === null ? undefined : { massG: row.ball_mg / 1000, lengthMm: row.ball_mm },
  price: priceOf(row),
  left: row.left_amount,
  aside: row.aside_amount,
});
