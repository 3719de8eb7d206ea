import type { Kysely } from 'kysely';
import type { Bound } from '../ports.js';
import type { Tables } from '../schema.js';

export function readings(db: Kysely<Tables>, workspaceId: string): Bound['readings'] {
  async function setWithdrawn(id: string, at: number | null): Promise<void> {
    await db
      .updateTable('reading')
      .set({ withdrawn_at_ms: at })
      .where('workspace_id', '=', workspaceId)
      .where('id', '=', id)
      .execute();
  }

  return {
    async add({ id, workId, row, lengthMm, state, said, at }) {
      await db
        .insertInto('reading')
        .values({
          workspace_id: workspaceId,
          id,
          work_id: workId,
          row_no: row,
          length_mm: lengthMm,
          state,
          said,
          at_ms: at,
          withdrawn_at_ms: null,
        })
        .execute();
    },

    async of(workId) {
      const rows = await db
        .selectFrom('reading')
        .selectAll()
        .where('workspace_id', '=', workspaceId)
        .where('work_id', '=', workId)
        .where('withdrawn_at_ms', 'is', null)
        .orderBy('at_ms')
        .orderBy('id')
        .execute();
      return rows.map(({ id, row_no, length_mm, state, said, at_ms }) => ({
        id,
        workId,
        row: row_no,
        lengthMm: length_mm,
        state,
        said,
        at: at_ms,
      }));
    },

    withdraw: setWithdrawn,
    restore: (id) => setWithdrawn(id, null),
  };
}
