import type { Kysely } from 'kysely';
import type { Bound, Work } from '../ports.js';
import { prepared } from '../prepared.js';
import type { Tables } from '../schema.js';
import { tally } from './tally.js';

export function works(db: Kysely<Tables>, workspaceId: string): Bound['works'] {
  const one = (id: string) => db.updateTable('work').where('workspace_id', '=', workspaceId).where('id', '=', id);
  const counts = tally(db, workspaceId);
  const done = (makerId: string) =>
    counted(db, workspaceId)
      .where('work.maker_id', '=', makerId)
      .where('work.outcome', '=', 'done')
      .orderBy('work.ended_at_ms', 'desc')
      .limit(1);

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
      await counts.count(id, { kind: 'start', rows: 0, said: '', at });
    },

    async open(makerId) {
      return (await inHand(db, { workspaceId, makerId })).map(work);
    },

    async get(id, makerId) {
      const row = await counted(db, workspaceId)
        .where('work.maker_id', '=', makerId)
        .where('work.id', '=', id)
        .executeTakeFirst();
      return row && work(row);
    },

    async unmeasured(makerId) {
      const row = await done(makerId)
        .where(({ not, exists, selectFrom }) =>
          not(
            exists(
              selectFrom('measurement')
                .select('measurement.id')
                .where('measurement.workspace_id', '=', workspaceId)
                .whereRef('measurement.work_id', '=', 'work.id')
                .where('measurement.withdrawn_at_ms', 'is', null),
            ),
          ),
        )
        .executeTakeFirst();
      return row && work(row);
    },

    async doneLast(makerId) {
      const row = await done(makerId).executeTakeFirst();
      return row && work(row);
    },

    async ofPlan(planId) {
      const rows = await db
        .selectFrom('work')
        .select('outcome')
        .where('workspace_id', '=', workspaceId)
        .where('plan_id', '=', planId)
        .execute();
      return rows.map(({ outcome }) => ({ outcome: outcome === '' ? undefined : outcome }));
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

    ...counts,
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

const inHand = prepared((db, { workspaceId, makerId }: { workspaceId: string; makerId: string }) =>
  counted(db, workspaceId)
    .where('work.maker_id', '=', makerId)
    .where('work.ended_at_ms', 'is', null)
    .orderBy('work.touched_at_ms', 'desc')
    .orderBy('work.id', 'desc'),
);

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
