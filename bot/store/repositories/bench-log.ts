import type { Kysely } from 'kysely';
import type { Bound } from '../ports.js';
import type { Tables } from '../schema.js';

export function benchLog(db: Kysely<Tables>, workspaceId: string): Bound['benchLog'] {
  async function setWithdrawn(session: string, at: number | null): Promise<void> {
    await db
      .updateTable('bench_log')
      .set({ withdrawn_at_ms: at })
      .where('workspace_id', '=', workspaceId)
      .where('session', '=', session)
      .execute();
  }

  return {
    async add({ id, makerId, session, workId, driver, count, seconds, day, said, at }) {
      await db
        .insertInto('bench_log')
        .values({
          workspace_id: workspaceId,
          id,
          maker_id: makerId,
          session,
          work_id: workId,
          driver,
          amount: count,
          seconds,
          day,
          said,
          at_ms: at,
          withdrawn_at_ms: null,
        })
        .execute();
    },

    async of(makerId) {
      const rows = await db
        .selectFrom('bench_log')
        .selectAll()
        .where('workspace_id', '=', workspaceId)
        .where('maker_id', '=', makerId)
        .where('withdrawn_at_ms', 'is', null)
        .orderBy('at_ms')
        .orderBy('id')
        .execute();
      return rows.map(({ id, session, work_id, driver, amount, seconds, day, said, at_ms }) => ({
        id,
        makerId,
        session,
        workId: work_id,
        driver,
        count: amount,
        seconds,
        day,
        said,
        at: at_ms,
      }));
    },

    withdraw: setWithdrawn,
    restore: (session) => setWithdrawn(session, null),
  };
}

export function clocks(db: Kysely<Tables>, workspaceId: string): Bound['clocks'] {
  return {
    async of(makerId) {
      const row = await db
        .selectFrom('bench_clock')
        .selectAll()
        .where('workspace_id', '=', workspaceId)
        .where('maker_id', '=', makerId)
        .executeTakeFirst();
      return row && { makerId, workId: row.work_id, rows: row.rows, startedAt: row.started_at_ms };
    },

    async start({ makerId, workId, rows, startedAt }) {
      const set = { work_id: workId, rows, started_at_ms: startedAt };
      await db
        .insertInto('bench_clock')
        .values({ workspace_id: workspaceId, maker_id: makerId, ...set })
        .onConflict((on) => on.columns(['workspace_id', 'maker_id']).doUpdateSet(set))
        .execute();
    },

    async stop(makerId) {
      await db
        .deleteFrom('bench_clock')
        .where('workspace_id', '=', workspaceId)
        .where('maker_id', '=', makerId)
        .execute();
    },
  };
}
