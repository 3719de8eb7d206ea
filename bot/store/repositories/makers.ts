import type { Kysely } from 'kysely';
import { v7 } from 'uuid';
import type { Bound } from '../ports.js';
import type { Tables } from '../schema.js';

export function makers(db: Kysely<Tables>, workspaceId: string): Bound['makers'] {
  const one = (id: string) => db.updateTable('maker').where('workspace_id', '=', workspaceId).where('id', '=', id);

  return {
    async held(slackUserId, name) {
      const row = await db
        .insertInto('maker')
        .values({
          workspace_id: workspaceId,
          id: v7(),
          slack_user_id: slackUserId,
          name,
          units: null,
          time_zone: 'UTC',
          currency: '',
        })
        .onConflict((on) =>
          on
            .columns(['workspace_id', 'slack_user_id'])
            .doUpdateSet(name === '' ? { slack_user_id: slackUserId } : { name }),
        )
        .returningAll()
        .executeTakeFirstOrThrow();
      return {
        id: row.id,
        slackUserId: row.slack_user_id,
        name: row.name,
        units: row.units ?? undefined,
        timeZone: row.time_zone,
        currency: row.currency || undefined,
      };
    },

    async setUnits(makerId, units) {
      await one(makerId)
        .set({ units: units ?? null })
        .execute();
    },
    async setCurrency(makerId, currency) {
      await one(makerId)
        .set({ currency: currency ?? '' })
        .execute();
    },
  };
}
