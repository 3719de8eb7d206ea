import type { Kysely } from 'kysely';
import { Conversation } from '../../conversation.js';
import type { Bound } from '../ports.js';
import type { Tables } from '../schema.js';

export function conversations(db: Kysely<Tables>, workspaceId: string): Bound['conversations'] {
  return {
    async of(place, makerId, at) {
      const row = await db
        .selectFrom('conversation')
        .select('state_json')
        .where('workspace_id', '=', workspaceId)
        .where('place', '=', place)
        .where('maker_id', '=', makerId)
        .where('until_ms', '>', at)
        .executeTakeFirst();
      // A talk kept in a shape that is no longer known is a talk forgotten; nothing but its follow-ups is lost.
      const kept = Conversation.safeParse(row ? JSON.parse(row.state_json) : {});
      return kept.success ? kept.data : Conversation.parse({});
    },

    async keep(place, makerId, talk, until) {
      const kept = { state_json: JSON.stringify(talk), until_ms: until };
      await db
        .insertInto('conversation')
        .values({ workspace_id: workspaceId, place, maker_id: makerId, ...kept })
        .onConflict((on) => on.columns(['workspace_id', 'place', 'maker_id']).doUpdateSet(kept))
        .execute();
    },
  };
}
