import type { Kysely } from 'kysely';
import { retried } from './retried.js';
import type { Tables } from './schema.js';

const WEEK_MS = 7 * 24 * 3_600_000;

/** Forgets what `Store.purge` names, one workspace after the other, so that no lock is held for long. */
export async function purge(db: Kysely<Tables>, at: number): Promise<void> {
  const weekAgo = at - WEEK_MS;
  for (const { workspace_id } of await db.selectFrom('workspace').select('workspace_id').execute()) {
    const lapsed = db.deleteFrom('conversation').where('workspace_id', '=', workspace_id).where('until_ms', '<=', at);
    const claimed = db.deleteFrom('delivery').where('workspace_id', '=', workspace_id).where('at_ms', '<', weekAgo);
    const sent = db.deleteFrom('outbox').where('workspace_id', '=', workspace_id).where('posted_at_ms', '<', weekAgo);
    for (const forgotten of [lapsed, claimed, sent]) await retried(() => forgotten.execute());
  }
}
