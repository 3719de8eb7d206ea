import type { Kysely } from 'kysely';
import type { Bound } from '../ports.js';
import { prepared } from '../prepared.js';
import type { Tables } from '../schema.js';

export function homes(db: Kysely<Tables>, workspaceId: string): Bound['homes'] {
  return {
    async of(makerId) {
      const [home] = await ofMaker(db, { workspaceId, makerId });
      return home;
    },

    async opened(makerId, channel, at) {
      await db
        .insertInto('home')
        .values({ workspace_id: workspaceId, maker_id: makerId, channel, page: '', opened_at_ms: at })
        .onConflict((on) => on.columns(['workspace_id', 'maker_id']).doUpdateSet({ channel, opened_at_ms: at }))
        .execute();
    },

    async shows(makerId, page) {
      await db
        .updateTable('home')
        .set({ page })
        .where('workspace_id', '=', workspaceId)
        .where('maker_id', '=', makerId)
        .execute();
    },
  };
}

const ofMaker = prepared((db, { workspaceId, makerId }: { workspaceId: string; makerId: string }) =>
  db
    .selectFrom('home')
    .select(['channel', 'page'])
    .where('workspace_id', '=', workspaceId)
    .where('maker_id', '=', makerId),
);
