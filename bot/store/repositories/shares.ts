import type { Kysely } from 'kysely';
import { PlanAsk, SharedCounts } from '../../request.js';
import { jsonColumn } from '../json.js';
import type { Bound, Share } from '../ports.js';
import type { Tables } from '../schema.js';

const askJson = jsonColumn(PlanAsk);
const countsJson = jsonColumn(SharedCounts);

export function shares(db: Kysely<Tables>, workspaceId: string): Bound['shares'] {
  const one = (id: string) => db.updateTable('share').where('workspace_id', '=', workspaceId).where('id', '=', id);
  const shown = () => withRevision(db, workspaceId).where('share.withdrawn_at_ms', 'is', null);

  const revise: Bound['shares']['revise'] = async (id, ask, counts) => {
    const { last } = await db
      .selectFrom('share_revision')
      .select(({ fn }) => fn.max('revision').as('last'))
      .where('workspace_id', '=', workspaceId)
      .where('share_id', '=', id)
      .executeTakeFirstOrThrow();
    const revision = Number(last ?? 0) + 1;
    await db
      .insertInto('share_revision')
      .values({
        workspace_id: workspaceId,
        share_id: id,
        revision,
        ask_json: askJson.text(ask),
        counts_json: counts === undefined ? '' : countsJson.text(counts),
      })
      .execute();
    await one(id).set({ revision }).execute();
    return revision;
  };

  return {
    revise,
    async add({ id, ownerId, origin, to, ask, counts, at }) {
      const made = await db
        .insertInto('share')
        .values({
          workspace_id: workspaceId,
          id,
          owner_id: ownerId,
          origin,
          to_maker: 'makerId' in to ? to.makerId : '',
          to_channel: 'channel' in to ? to.channel : '',
          to_thread: ('channel' in to && to.threadTs) || '',
          revision: 0,
          at_ms: at,
          withdrawn_at_ms: null,
        })
        .onConflict((on) =>
          on
            .columns(['workspace_id', 'origin', 'to_maker', 'to_channel'])
            .doUpdateSet({ at_ms: at, withdrawn_at_ms: null }),
        )
        .returning('id')
        .executeTakeFirstOrThrow();
      await revise(made.id, ask, counts);
      return made.id;
    },

    async get(id) {
      const row = await withRevision(db, workspaceId).where('share.id', '=', id).executeTakeFirst();
      return row && share(row);
    },

    async of(ownerId, origin) {
      const own = shown().where('share.owner_id', '=', ownerId);
      const rows = await (origin === undefined ? own : own.where('share.origin', '=', origin))
        .orderBy('share.at_ms')
        .orderBy('share.id')
        .execute();
      return rows.map(share);
    },

    async shownTo(to, most) {
      const rows = await ('makerId' in to
        ? shown().where('share.to_maker', '=', to.makerId)
        : shown().where('share.to_channel', '=', to.channel)
      )
        .orderBy('share.at_ms', 'desc')
        .orderBy('share.id', 'desc')
        .limit(most)
        .execute();
      return rows.map(share);
    },

    async setRevision(id, revision) {
      await one(id).set({ revision }).execute();
    },
    async withdraw(id, at) {
      await one(id).set({ withdrawn_at_ms: at }).execute();
    },
    async restore(id) {
      await one(id).set({ withdrawn_at_ms: null }).execute();
    },

    async take({ shareId, makerId, revision, answered }) {
      await db
        .insertInto('share_taken')
        .values({ workspace_id: workspaceId, share_id: shareId, maker_id: makerId, revision, answered })
        .onConflict((on) => on.columns(['workspace_id', 'share_id', 'maker_id']).doUpdateSet({ revision, answered }))
        .execute();
    },

    async release(shareId, makerId) {
      await db
        .deleteFrom('share_taken')
        .where('workspace_id', '=', workspaceId)
        .where('share_id', '=', shareId)
        .where('maker_id', '=', makerId)
        .execute();
    },

    async takenBy(shareId) {
      const rows = await db
        .selectFrom('share_taken')
        .where('workspace_id', '=', workspaceId)
        .where('share_id', '=', shareId)
        .orderBy('maker_id')
        .selectAll()
        .execute();
      return rows.map(({ maker_id, revision, answered }) => ({ shareId, makerId: maker_id, revision, answered }));
    },

    async ownerOf(origin) {
      const row = await db
        .selectFrom('share')
        .where('workspace_id', '=', workspaceId)
        .where('origin', '=', origin)
        .select('owner_id')
        .executeTakeFirst();
      return row?.owner_id;
    },

    async askOf(shareId, revision) {
      const row = await db
        .selectFrom('share_revision')
        .where('workspace_id', '=', workspaceId)
        .where('share_id', '=', shareId)
        .where('revision', '=', revision)
        .select('ask_json')
        .executeTakeFirst();
      return row && askJson.value(row.ask_json);
    },
  };
}

const withRevision = (db: Kysely<Tables>, workspaceId: string) =>
  db
    .selectFrom('share')
    .innerJoin('share_revision', (on) =>
      on
        .onRef('share_revision.workspace_id', '=', 'share.workspace_id')
        .onRef('share_revision.share_id', '=', 'share.id')
        .onRef('share_revision.revision', '=', 'share.revision'),
    )
    .where('share.workspace_id', '=', workspaceId)
    .selectAll('share')
    .select(['share_revision.ask_json', 'share_revision.counts_json']);

const share = (row: Awaited<ReturnType<ReturnType<typeof withRevision>['executeTakeFirstOrThrow']>>): Share => ({
  id: row.id,
  ownerId: row.owner_id,
  origin: row.origin,
  to:
    row.to_maker === '' ? { channel: row.to_channel, threadTs: row.to_thread || undefined } : { makerId: row.to_maker },
  ask: askJson.value(row.ask_json),
  counts: row.counts_json === '' ? undefined : countsJson.value(row.counts_json),
  revision: row.revision,
  isWithdrawn: row.withdrawn_at_ms !== null,
});
