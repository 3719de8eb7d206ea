import type { Kysely } from 'kysely';
import { z } from 'zod';
import { jsonColumn } from '../json.js';
import type { BatchPart, Bound, StoredBatch } from '../ports.js';
import type { Tables } from '../schema.js';

const awayJson = jsonColumn<BatchPart['away']>(z.array(z.object({ from: z.number(), to: z.number() })));

export function batches(db: Kysely<Tables>, workspaceId: string): Bound['batches'] {
  const rows = () => db.selectFrom('batch').where('batch.workspace_id', '=', workspaceId).selectAll('batch');

  async function withParts(row: Tables['batch'] | undefined): Promise<StoredBatch | undefined> {
    if (row === undefined) return undefined;
    const parts = await db
      .selectFrom('batch_part')
      .selectAll()
      .where('workspace_id', '=', workspaceId)
      .where('batch_id', '=', row.id)
      .orderBy('maker_id')
      .orderBy('stage')
      .execute();
    return {
      id: row.id,
      ownerId: row.owner_id,
      planId: row.plan_id,
      pieces: row.pieces,
      dueDay: row.due_day,
      readyDay: row.ready_day,
      version: row.version,
      endedAt: row.ended_at_ms ?? undefined,
      parts: parts.map(({ maker_id, stage, share, done, away_json, is_out }) => ({
        makerId: maker_id,
        stage,
        share,
        done,
        away: awayJson.value(away_json),
        isOut: is_out === 1,
      })),
    };
  }

  async function setPart(batchId: string, { makerId, stage, share, away, isOut }: BatchPart): Promise<void> {
    const set = { share, away_json: awayJson.text(away), is_out: isOut ? 1 : 0 };
    await db
      .insertInto('batch_part')
      .values({
        workspace_id: workspaceId,
        batch_id: batchId,
        maker_id: makerId,
        stage,
        done: 0,
        version: 0,
        ...set,
      })
      .onConflict((on) =>
        on
          .columns(['workspace_id', 'batch_id', 'maker_id', 'stage'])
          .doUpdateSet((eb) => ({ ...set, version: eb('batch_part.version', '+', 1) })),
      )
      .execute();
  }

  return {
    async add({ id, ownerId, planId, pieces, dueDay, readyDay, parts }, at) {
      await db
        .insertInto('batch')
        .values({
          workspace_id: workspaceId,
          id,
          owner_id: ownerId,
          plan_id: planId,
          pieces,
          due_day: dueDay,
          ready_day: readyDay,
          version: 0,
          at_ms: at,
          ended_at_ms: null,
        })
        .execute();
      for (const part of parts) await setPart(id, part);
    },

    get: async (id) => withParts(await rows().where('batch.id', '=', id).executeTakeFirst()),

    ofPlan: async (planId) =>
      withParts(
        await rows()
          .where('batch.plan_id', '=', planId)
          .where('batch.ended_at_ms', 'is', null)
          .orderBy('batch.at_ms', 'desc')
          .limit(1)
          .executeTakeFirst(),
      ),

    openOf: async (makerId) =>
      withParts(
        await rows()
          .where('batch.ended_at_ms', 'is', null)
          .where((eb) =>
            eb.or([
              eb('batch.owner_id', '=', makerId),
              eb.exists(
                eb
                  .selectFrom('batch_part')
                  .select('batch_part.batch_id')
                  .whereRef('batch_part.workspace_id', '=', 'batch.workspace_id')
                  .whereRef('batch_part.batch_id', '=', 'batch.id')
                  .where('batch_part.maker_id', '=', makerId),
              ),
            ]),
          )
          .orderBy('batch.at_ms', 'desc')
          .orderBy('batch.id', 'desc')
          .limit(1)
          .executeTakeFirst(),
      ),

    async replace({ id, planId, pieces, dueDay, readyDay, version, parts }) {
      const { numUpdatedRows } = await db
        .updateTable('batch')
        .set({ plan_id: planId, pieces, due_day: dueDay, ready_day: readyDay, version: version + 1 })
        .where('workspace_id', '=', workspaceId)
        .where('id', '=', id)
        .where('version', '=', version)
        .executeTakeFirst();
      if (numUpdatedRows === 0n) return false;
      await db
        .updateTable('batch_part')
        .set((eb) => ({ is_out: 1, version: eb('version', '+', 1) }))
        .where('workspace_id', '=', workspaceId)
        .where('batch_id', '=', id)
        .execute();
      for (const part of parts) await setPart(id, part);
      return true;
    },

    async addDone(id, makerId, stage, by) {
      const { numUpdatedRows } = await db
        .updateTable('batch_part')
        .set((eb) => ({ done: eb('done', '+', by), version: eb('version', '+', 1) }))
        .where('workspace_id', '=', workspaceId)
        .where('batch_id', '=', id)
        .where('maker_id', '=', makerId)
        .where('stage', '=', stage)
        .where('done', '>=', -by)
        .executeTakeFirst();
      return numUpdatedRows > 0n;
    },

    async end(id, at) {
      await db
        .updateTable('batch')
        .set({ ended_at_ms: at ?? null })
        .where('workspace_id', '=', workspaceId)
        .where('id', '=', id)
        .execute();
    },
  };
}
