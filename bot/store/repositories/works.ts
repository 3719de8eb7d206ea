import type { Kysely } from 'kysely';
import type { Bound, Work } from '../ports.js';
import type { Tables } from '../schema.js';

export function works(db: Kysely<Tables>, workspaceId: string): Bound['works'] {
  const one = (id: string) => db.updateTable('work').where('workspace_id', '=', workspaceId).where('id', '=', id);
  const entry = (workId: string, seq: number) =>
    db
      .updateTable('tally_entry')
      .where('workspace_id', '=', workspaceId)
      .where('work_id', '=', workId)
      .where('seq', '=', seq);

  const count: Bound['works']['count'] = async (id, { kind, rows, said, at }) => {
    const { version } = await one(id)
      .set(({ eb }) => ({ version: eb('version', '+', 1), touched_at_ms: at }))
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
  };

  return {
    async start({ id, makerId, planId, profileId, stopAt, at }) {
      await db
        .insertInto('work')
        .values({
          workspace_id: workspaceId,
          id,
          maker_id: makerId,
          plan_id: planId,
          profile_id: profileId,
          stop_rows: stopAt,
          version: 0,
          started_at_ms: at,
          touched_at_ms: at,
          ended_at_ms: null,
          outcome: '',
        })
        .execute();
      await count(id, { kind: 'start', rows: 0, said: '', at });
    },

    async open(makerId) {
      const rows = await counted(db, workspaceId)
        .where('work.maker_id', '=', makerId)
        .where('work.ended_at_ms', 'is', null)
        .orderBy('work.touched_at_ms', 'desc')
        .orderBy('work.id', 'desc')
        .execute();
      return rows.map(work);
    },

    async get(id, makerId) {
      const row = await counted(db, workspaceId)
        .where('work.maker_id', '=', makerId)
        .where('work.id', '=', id)
        .executeTakeFirst();
      return row && work(row);
    },

    async stopAt(id, rows) {
      await one(id).set({ stop_rows: rows }).execute();
    },
    async end(id, at, outcome) {
      await one(id).set({ ended_at_ms: at, outcome }).execute();
    },
    async reopen(id) {
      await one(id).set({ ended_at_ms: null, outcome: '' }).execute();
    },

    count,
    async undoCount(id, seq, at) {
      await entry(id, seq).set({ undone_at_ms: at }).execute();
    },
    async redoCount(id, seq) {
      await entry(id, seq).set({ undone_at_ms: null }).execute();
    },

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

/** Works with the rows of their last count that was not taken back. */
const counted = (db: Kysely<Tables>, workspaceId: string) =>
  db
    .selectFrom('work')
    .innerJoin('tally_entry', (on) =>
      on.onRef('tally_entry.workspace_id', '=', 'work.workspace_id').onRef('tally_entry.work_id', '=', 'work.id'),
    )
    .where('work.workspace_id', '=', workspaceId)
    .where('tally_entry.seq', '=', ({ selectFrom }) =>
      selectFrom('tally_entry as last')
        .select(({ fn }) => fn.max('last.seq').as('seq'))
        .whereRef('last.workspace_id', '=', 'work.workspace_id')
        .whereRef('last.work_id', '=', 'work.id')
        .where('last.undone_at_ms', 'is', null),
    )
    .selectAll('work')
    .select('tally_entry.rows');

const work = (row: Awaited<ReturnType<ReturnType<typeof counted>['executeTakeFirstOrThrow']>>): Work => ({
  id: row.id,
  makerId: row.maker_id,
  planId: row.plan_id,
  profileId: row.profile_id,
  stopAt: row.stop_rows,
  rows: row.rows,
  startedAt: row.started_at_ms,
  endedAt: row.ended_at_ms ?? undefined,
});
