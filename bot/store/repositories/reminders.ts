import type { Kysely } from 'kysely';
import type { Bound, Reminder } from '../ports.js';
import type { Tables } from '../schema.js';

export function reminders(db: Kysely<Tables>, workspaceId: string): Bound['reminders'] {
  const one = (id: string) => db.updateTable('reminder').where('workspace_id', '=', workspaceId).where('id', '=', id);

  return {
    async add({ id, makerId, subject, subjectId, what, dueDay, dueAt }) {
      await db
        .insertInto('reminder')
        .values({
          workspace_id: workspaceId,
          id,
          maker_id: makerId,
          subject,
          subject_id: subjectId,
          what,
          due_day: dueDay,
          due_at_ms: dueAt,
          taken_until_ms: null,
          sent_at_ms: null,
          dropped_at_ms: null,
        })
        .execute();
    },

    async waiting(makerId) {
      const rows = await db
        .selectFrom('reminder')
        .selectAll()
        .where('workspace_id', '=', workspaceId)
        .where('maker_id', '=', makerId)
        .where('sent_at_ms', 'is', null)
        .where('dropped_at_ms', 'is', null)
        .orderBy('due_at_ms')
        .orderBy('id')
        .execute();
      return rows.map(reminder);
    },

    async settle(id, became, at) {
      const { numUpdatedRows } = await one(id)
        .set(became === 'sent' ? { sent_at_ms: at } : { dropped_at_ms: at })
        .where('sent_at_ms', 'is', null)
        .where('dropped_at_ms', 'is', null)
        .executeTakeFirst();
      return numUpdatedRows > 0n;
    },

    async restore(id) {
      await one(id).set({ dropped_at_ms: null }).execute();
    },
    async putOff(id, dueAt) {
      await one(id).set({ due_at_ms: dueAt, taken_until_ms: null }).execute();
    },
  };
}

export const reminder = (row: Tables['reminder']): Reminder => ({
  id: row.id,
  makerId: row.maker_id,
  subject: row.subject,
  subjectId: row.subject_id,
  what: row.what,
  dueDay: row.due_day,
  dueAt: row.due_at_ms,
});
