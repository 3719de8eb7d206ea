import { type ExpressionBuilder, type Kysely, sql } from 'kysely';
import { addressJson, bodyJson } from './letters.js';
import type { Address, OutboxRow, Store } from './ports.js';
import { retried } from './retried.js';
import type { Tables } from './schema.js';

/** The outbox of every workspace, for bot/delivery. `attempts` counts the taking that returned the row. */
export function outgoing(db: Kysely<Tables>): Store['outbox'] {
  async function set({ workspaceId, id }: OutboxRow, values: Partial<Tables['outbox']>): Promise<void> {
    const update = db.updateTable('outbox').set(values).where('workspace_id', '=', workspaceId).where('id', '=', id);
    await retried(() => update.execute());
  }

  /** Where a card that is made anew stands; as it is while, or where, it was never posted. */
  async function resolved({ workspaceId, address }: OutboxRow): Promise<Address> {
    if (address.to !== 'again') return address;
    const { to: _, row, ...card } = address;
    const posted = await db
      .selectFrom('outbox')
      .select('slack_ts')
      .where('workspace_id', '=', workspaceId)
      .where('id', '=', row)
      .executeTakeFirst();
    return posted?.slack_ts ? { to: 'card', ts: posted.slack_ts, ...card } : address;
  }

  return {
    async take(at, leaseMs, limit) {
      const due = (eb: ExpressionBuilder<Tables, 'outbox'>) =>
        eb.and([
          eb('posted_at_ms', 'is', null),
          eb('not_before_ms', '<=', at),
          eb.or([eb('taken_until_ms', 'is', null), eb('taken_until_ms', '<=', at)]),
        ]);
      const taking = db
        .updateTable('outbox')
        .set((eb) => ({ taken_until_ms: at + leaseMs, attempts: eb('attempts', '+', 1) }))
        .where((eb) =>
          eb(
            eb.refTuple('workspace_id', 'id'),
            'in',
            eb
              .selectFrom('outbox')
              .select(['workspace_id', 'id'])
              .where(due)
              .orderBy('id')
              .limit(limit)
              .$asTuple('workspace_id', 'id'),
          ),
        )
        // Asked again of the row itself: on PostgreSQL another sender may have taken it since the inner select.
        .where(due)
        .returning(['workspace_id', 'id', 'address_json', 'body_json', 'attempts', 'expires_at_ms'])
        .returning((eb) =>
          eb
            .selectFrom('workspace')
            .select('slack_team_id')
            .whereRef('workspace.workspace_id', '=', 'outbox.workspace_id')
            .$asScalar()
            .$notNull()
            .as('slack_team_id'),
        );
      const rows = await retried(() => taking.execute());
      return rows
        .map((row) => ({
          workspaceId: row.workspace_id,
          slackTeamId: row.slack_team_id,
          id: row.id,
          address: addressJson.value(row.address_json),
          body: bodyJson.value(row.body_json),
          attempts: row.attempts,
          expires: row.expires_at_ms,
        }))
        .sort((a, b) => (a.id < b.id ? -1 : 1));
    },

    async sealed(row) {
      const sealing = db
        .updateTable('outbox')
        .set({ coalesce_key: '' })
        .where('workspace_id', '=', row.workspaceId)
        .where('id', '=', row.id)
        .returning('body_json');
      const { body_json } = await retried(() => sealing.executeTakeFirstOrThrow());
      return { ...row, address: await resolved(row), body: bodyJson.value(body_json) };
    },
    posted: (row, at, slackTs) => set(row, { posted_at_ms: at, slack_ts: slackTs ?? null }),
    later: (row, notBefore) => set(row, { not_before_ms: notBefore, taken_until_ms: null }),
    dropped: (row, at, why) => set(row, { posted_at_ms: at, dropped_why: why }),

    async nextAt() {
      const next = await db
        .selectFrom('outbox')
        .select('workspace_id')
        .select(
          sql<number>`case when taken_until_ms > not_before_ms then taken_until_ms else not_before_ms end`.as(
            'due_at_ms',
          ),
        )
        .where('posted_at_ms', 'is', null)
        .orderBy('due_at_ms')
        .limit(1)
        .executeTakeFirst();
      return next?.due_at_ms;
    },
  };
}
