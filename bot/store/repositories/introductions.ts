import type { Kysely } from 'kysely';
import type { Bound } from '../ports.js';
import type { Tables } from '../schema.js';

export function introductions(db: Kysely<Tables>, workspaceId: string): Bound['introductions'] {
  return {
    async first(makerId, at) {
      const row = await db
        .insertInto('introduction')
        .values({ workspace_id: workspaceId, maker_id: makerId, at_ms: at })
        .onConflict((on) => on.columns(['workspace_id', 'maker_id']).doNothing())
        .returning('maker_id')
        .executeTakeFirst();
      return row !== undefined;
    },
  };
}
