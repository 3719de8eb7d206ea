import { type Kysely, sql } from 'kysely';
import { newId } from '../ids.js';
import type { Bound, Store } from './ports.js';
import { batches } from './repositories/batches.js';
import { benchLog, clocks } from './repositories/bench-log.js';
import { conversations } from './repositories/conversations.js';
import { deliveries } from './repositories/deliveries.js';
import { homes } from './repositories/homes.js';
import { introductions } from './repositories/introductions.js';
import { makers } from './repositories/makers.js';
import { measurements } from './repositories/measurements.js';
import { outbox } from './repositories/outbox.js';
import { plans } from './repositories/plans.js';
import { profiles } from './repositories/profiles.js';
import { putUps } from './repositories/put-ups.js';
import { rates } from './repositories/rates.js';
import { readings } from './repositories/readings.js';
import { reminders } from './repositories/reminders.js';
import { results } from './repositories/results.js';
import { shares } from './repositories/shares.js';
import { shelf } from './repositories/shelf.js';
import { works } from './repositories/works.js';
import { yarns } from './repositories/yarns.js';
import { retried } from './retried.js';
import type { Tables } from './schema.js';

/** `Store.within` over one database. A busy database makes it run the whole work again, up to three times. */
export function within(db: Kysely<Tables>): Store['within'] {
  const known = new Map<string, string>();
  return (slackTeamId, work) =>
    retried(async () => {
      const { workspaceId, result } = await db.transaction().execute(async (tx) => {
        const workspaceId = known.get(slackTeamId) ?? (await heldWorkspace(tx, slackTeamId));
        return { workspaceId, result: await work(bound(tx, workspaceId)) };
      });
      // Only after the commit: a workspace made and rolled back must not be remembered.
      known.set(slackTeamId, workspaceId);
      return result;
    });
}

async function heldWorkspace(db: Kysely<Tables>, slackTeamId: string): Promise<string> {
  const row = await db
    .insertInto('workspace')
    .values({ workspace_id: newId(), slack_team_id: slackTeamId })
    .onConflict((on) => on.column('slack_team_id').doUpdateSet({ slack_team_id: slackTeamId }))
    .returning('workspace_id')
    .executeTakeFirstOrThrow();
  return row.workspace_id;
}

function bound(db: Kysely<Tables>, workspaceId: string): Bound {
  return {
    deliveries: deliveries(db, workspaceId),
    makers: makers(db, workspaceId),
    profiles: profiles(db, workspaceId),
    measurements: measurements(db, workspaceId),
    plans: plans(db, workspaceId),
    works: works(db, workspaceId),
    readings: readings(db, workspaceId),
    yarns: yarns(db, workspaceId),
    putUps: putUps(db, workspaceId),
    shelf: shelf(db, workspaceId),
    rates: rates(db, workspaceId),
    benchLog: benchLog(db, workspaceId),
    clocks: clocks(db, workspaceId),
    homes: homes(db, workspaceId),
    introductions: introductions(db, workspaceId),
    shares: shares(db, workspaceId),
    results: results(db, workspaceId),
    batches: batches(db, workspaceId),
    reminders: reminders(db, workspaceId),
    conversations: conversations(db, workspaceId),
    outbox: outbox(db, workspaceId),
    attempted: (work, isKept) => attempted(db, work, isKept),
  };
}

async function attempted<T>(db: Kysely<Tables>, work: () => Promise<T>, isKept: (result: T) => boolean): Promise<T> {
  await sql`savepoint attempt`.execute(db);
  const result = await work();
  if (!isKept(result)) await sql`rollback to savepoint attempt`.execute(db);
  await sql`release savepoint attempt`.execute(db);
  return result;
}
