import type { Kysely } from 'kysely';
import type { Bound } from '../ports.js';
import type { Tables } from '../schema.js';

export function deliveries(db: Kysely<Tables>, workspaceId: string): Bound['deliveries'] {
  return {
    async claim(key, at) {
      const claimed = await db
        .insertInto('delivery')
        .values({ workspace_id: workspaceId, key, at_ms: at })
        .onConflict((on) => on.columns(['workspace_id', 'key']).doNothing())
        .returning('key')
        .executeTakeFirst();
      return claimed !== undefined;
    },
  };
}
