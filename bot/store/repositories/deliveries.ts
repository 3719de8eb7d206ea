import type { Kysely } from 'kysely';
import type { Bound } from '../ports.js';
import { prepared } from '../prepared.js';
import type { Tables } from '../schema.js';

export function deliveries(db: Kysely<Tables>, workspaceId: string): Bound['deliveries'] {
  return {
    async claim(key, at) {
      return (await claimed(db, { workspaceId, key, at })).length > 0;
    },
  };
}

const claimed = prepared((db, { workspaceId, key, at }: { workspaceId: string; key: string; at: number }) =>
  db
    .insertInto('delivery')
    .values({ workspace_id: workspaceId, key, at_ms: at })
    .onConflict((on) => on.columns(['workspace_id', 'key']).doNothing())
    .returning('key'),
);
