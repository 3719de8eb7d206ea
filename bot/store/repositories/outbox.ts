import { type Kysely, sql } from 'kysely';
import { addressJson, bodyJson } from '../letters.js';
import type { Address, Bound } from '../ports.js';
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
          coalesce_key: keyOf(address),
          not_before_ms: at,
          taken_until_ms: null,
          attempts: 0,
          expires_at_ms: expires,
          posted_at_ms: null,
          slack_ts: null,
          dropped_why: null,
        })
        .onConflict((on) =>
          on
            .columns(['workspace_id', 'coalesce_key'])
            .where('posted_at_ms', 'is', null)
            // As the index says it: a bound value would not match.
            .where(sql<boolean>`coalesce_key <> ''`)
            .doUpdateSet({
              address_json: addressJson.text(address),
              body_json: bodyJson.text(body),
              expires_at_ms: expires,
            }),
        )
        .execute();
    },
  };
}

/** Rows of one key that wait become one; '' for those that each count. */
function keyOf(address: Address): string {
  if (address.to === 'home') return `home:${address.user}`;
  return address.to === 'card' ? `card:${address.channel}:${address.ts}` : '';
}
