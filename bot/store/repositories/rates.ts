import type { Kysely } from 'kysely';
import { jsonColumn } from '../json.js';
import { RateValue } from '../ports/rates.js';
import type { Bound } from '../ports.js';
import type { Tables } from '../schema.js';
import { named } from './named.js';

const values = jsonColumn(RateValue);

export function rates(db: Kysely<Tables>, workspaceId: string): Bound['rates'] {
  return {
    async of(makerId) {
      const rows = await db
        .selectFrom('rate')
        .selectAll()
        .where('workspace_id', '=', workspaceId)
        .where('owner', 'in', [makerId, ''])
        .orderBy('of_what')
        .orderBy('name_key')
        .execute();
      return rows.map((row) => ({
        owner: row.owner,
        of: row.of_what,
        name: row.name,
        value: values.value(row.value_json),
      }));
    },

    async set({ owner, of, name }, value) {
      const key = { workspace_id: workspaceId, owner, of_what: of, name_key: named(name).name_key };
      if (value === null) {
        await db
          .deleteFrom('rate')
          .where('workspace_id', '=', workspaceId)
          .where('owner', '=', owner)
          .where('of_what', '=', of)
          .where('name_key', '=', key.name_key)
          .execute();
        return;
      }
      const kept = { name, value_json: values.text(value) };
      await db
        .insertInto('rate')
        .values({ ...key, ...kept })
        .onConflict((on) => on.columns(['workspace_id', 'owner', 'of_what', 'name_key']).doUpdateSet(kept))
        .execute();
    },
  };
}
