import type { Kysely, Selectable } from 'kysely';
import type { Bound, Result } from '../ports.js';
import type { Tables } from '../schema.js';

export function results(db: Kysely<Tables>, workspaceId: string): Bound['results'] {
  const one = (id: string) => db.updateTable('result').where('workspace_id', '=', workspaceId).where('id', '=', id);
  const kept = () =>
    db.selectFrom('result').where('workspace_id', '=', workspaceId).where('withdrawn_at_ms', 'is', null).selectAll();

  return {
    async add({ id, makerId, origin, cameMm, window, rows, needles, sent, at }) {
      await db
        .insertInto('result')
        .values({
          workspace_id: workspaceId,
          id,
          maker_id: makerId,
          origin,
          came_mm: cameMm,
          lo_mm: window.loMm,
          hi_mm: window.hiMm,
          rows,
          needles: needles ?? null,
          sent,
          at_ms: at,
          withdrawn_at_ms: null,
        })
        .execute();
    },
    async of(origin) {
      const rows = await kept().where('origin', '=', origin).orderBy('at_ms').orderBy('id').execute();
      return rows.map(result);
    },
    async latest(makerId) {
      const mine = kept().where('maker_id', '=', makerId);
      const row = await mine.orderBy('at_ms', 'desc').orderBy('id', 'desc').limit(1).executeTakeFirst();
      return row && result(row);
    },
    async send(id, sent) {
      await one(id).set({ sent }).execute();
    },
    async withdraw(id, at) {
      await one(id).set({ withdrawn_at_ms: at }).execute();
    },
    async restore(id) {
      await one(id).set({ withdrawn_at_ms: null }).execute();
    },
  };
}

const result = (row: Selectable<Tables['result']>): Result => ({
  id: row.id,
  makerId: row.maker_id,
  origin: row.origin,
  cameMm: row.came_mm,
  window: { loMm: row.lo_mm, hiMm: row.hi_mm },
  rows: row.rows,
  needles: row.needles ?? undefined,
  sent: row.sent,
  at: row.at_ms,
});
