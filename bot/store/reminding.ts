import type { ExpressionBuilder, Kysely } from 'kysely';
import type { Store } from './ports.js';
import { reminder } from './repositories/reminders.js';
import { retried } from './retried.js';
import type { Tables } from './schema.js';

/** The reminders of every workspace, for bot/delivery. */
export function reminding(db: Kysely<Tables>): Store['reminders'] {
  const waits = (eb: ExpressionBuilder<Tables, 'reminder'>) =>
    eb.and([eb('sent_at_ms', 'is', null), eb('dropped_at_ms', 'is', null)]);

  return {
    async take(at, leaseMs, limit) {
      const due = (eb: ExpressionBuilder<Tables, 'reminder'>) =>
        eb.and([
          waits(eb),
          eb('due_at_ms', '<=', at),
          eb.or([eb('taken_until_ms', 'is', null), eb('taken_until_ms', '<=', at)]),
        ]);
      const taking = db
        .updateTable('reminder')
        .set({ taken_until_ms: at + leaseMs })
        .where((eb) =>
          eb(
            eb.refTuple('workspace_id', 'id'),
            'in',
            eb
              .selectFrom('reminder')
              .select(['workspace_id', 'id'])
              .where(due)
              .orderBy('due_at_ms')
              .limit(limit)
              .$asTuple('workspace_id', 'id'),
          ),
        )
        .where(due)
        .returningAll()
        .returning((eb) =>
          eb
            .selectFrom('workspace')
            .select('slack_team_id')
            .whereRef('workspace.workspace_id', '=', 'reminder.workspace_id')
            .$asScalar()
            .$notNull()
            .as('slack_team_id'),
        );
      const rows = await retried(() => taking.execute());
      return rows.map((row) => ({ ...reminder(row), slackTeamId: row.slack_team_id }));
    },

    async nextAt() {
      const next = await db
        .selectFrom('reminder')
        .select(({ fn }) => fn.min('due_at_ms').as('due_at_ms'))
        .where(waits)
        .executeTakeFirst();
      return next?.due_at_ms ?? undefined;
    },
  };
}
