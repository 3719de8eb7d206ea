import type { Kysely } from 'kysely';
import { addressJson, bodyJson } from '../letters.js';
import type { Bound } from '../ports.js';
import type { Tables } from '../schema.js';

export function outbox(db: Kysely<Tables>, workspaceId: string): Bound['outbox'] {
  return {
    async add(id, address, body, at, expires) {
      await db
        .insertInto('outbox')
        .values({
          workspace_id: workspaceId,
          id,
          address_json: addressJson.text(address),
          body_json: bodyJson.text(body),
          coalesce_key: '',
          not_before_ms: at,
          taken_until_ms: null,
          attempts: 0,
          expires_at_ms: expires,
          posted_at_ms: null,
          slack_ts: null,
          dropped_why: null,
        })
        .execute();
    },
  };
}
