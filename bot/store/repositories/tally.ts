import type { Kysely } from 'kysely';
import type { Bound } from '../ports.js';
import type { Tables } from '../schema.js';

type Tally = Pick<Bound['works'], 'count' | 'undoCount' | 'redoCount' | 'tally'>;

/** The counts of works: the part of `Bound.works` that its own table keeps. */
export function tally(db: Kysely<Tables>, workspaceId: string): Tally {
  async function setUndone(workId: string, seq: number, at: number | null): Promise<void> {
    await db
      .updateTable('tally_entry')
      .set({ undone_at_ms: at })
      .where('workspace_id', '=', workspaceId)
      .where('work_id', '=', workId)
      .where('seq', '=', seq)
      .execute();
  }

  return {
    async count(id, { kind, rows, said, at }) {
      const { version } = await db
        .updateTable('work')
        .set(({ eb }) => ({ version: eb('version', '+', 1), touched_at_ms: at }))
        .where('workspace_id', '=', workspaceId)
        .where('id', '=', id)
        .returning('version')
        .executeTakeFirstOrThrow();
      await db
        .insertInto('tally_entry')
        .values({
          workspace_id: workspaceId,
          work_id: id,
          seq: version,
          kind,
          rows,
          said,
          at_ms: at,
          undone_at_ms: null,
        })
        .execute();
      return version;
    },

    undoCount: setUndone,
    redoCount: (id, seq) => setUndone(id, seq, null),

    async tally(id) {
      const entries = await db
        .selectFrom('tally_entry')
        .selectAll()
        .where('workspace_id', '=', workspaceId)
        .where('work_id', '=', id)
        .orderBy('seq')
        .execute();
      return entries.map(({ seq, kind, rows, said, at_ms, undone_at_ms }) => ({
        seq,
        kind,
        rows,
        said,
        at: at_ms,
        undone: undone_at_ms !== null,
      }));
    },
  };
}
