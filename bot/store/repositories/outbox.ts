import { type Kysely, sql } from 'kysely';
import { addressJson, bodyJson } from '../letters.js';
import type { Address, Bound } from '../ports.js';
import { prepared } from '../prepared.js';
import type { Tables } from '../schema.js';

export function outbox(db: Kysely<Tables>, workspaceId: string): Bound['outbox'] {
  return {
    async add(id, address, body, at, expires) {
      await queued(db, {
        workspaceId,
        id,
        address: addressJson.text(address),
        body: bodyJson.text(body),
        key: keyOf(address),
        at,
        expires,
      });
    },

    async replace(id, body, at, expires) {
      const replaced = await db
        .updateTable('outbox')
        .set({ body_json: bodyJson.text(body), expires_at_ms: expires })
        .where('workspace_id', '=', workspaceId)
        .where('id', '=', id)
        .where('posted_at_ms', 'is', null)
        .where((eb) => eb.or([eb('taken_until_ms', 'is', null), eb('taken_until_ms', '<=', at)]))
        .returning('id')
        .executeTakeFirst();
      return replaced !== undefined;
    },
  };
}

type Row = { workspaceId: string; id: string; address: string; body: string; key: string; at: number; expires: number };

const queued = prepared((db, { workspaceId, id, address, body, key, at, expires }: Row) =>
  db
    .insertInto('outbox')
    .values({
      workspace_id: workspaceId,
      id,
      address_json: address,
      body_json: body,
      coalesce_key: key,
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
        .doUpdateSet({ address_json: address, body_json: body, expires_at_ms: expires }),
    ),
);

/** Rows of one key that wait become one; '' for those that each count. */
function keyOf(address: Address): string {
  if (address.to === 'home') return `home:${address.user}`;
  if (address.to === 'again') return `again:${address.row}`;
  return address.to === 'card' ? `card:${address.channel}:${address.ts}` : '';
}
