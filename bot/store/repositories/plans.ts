import type { Kysely } from 'kysely';
import { z } from 'zod';
import { PlanAsk } from '../../request.js';
import { jsonColumn } from '../json.js';
import type { Bound, StoredPlan } from '../ports.js';
import { prepared } from '../prepared.js';
import type { Tables } from '../schema.js';

const askJson = jsonColumn(PlanAsk);
const numbersJson = jsonColumn(z.unknown());

export function plans(db: Kysely<Tables>, workspaceId: string): Bound['plans'] {
  const latest: Bound['plans']['latest'] = async (makerId) => {
    const row = await withRevision(db, workspaceId)
      .where('plan.maker_id', '=', makerId)
      .orderBy('plan.at_ms', 'desc')
      .orderBy('plan.id', 'desc')
      .limit(1)
      .executeTakeFirst();
    return row && plan(row);
  };

  return {
    async add({ id, makerId, piece, profileId, ask, numbers, engine, at }) {
      await added(db, { workspaceId, id, makerId, piece, profileId, at });
      await revised(db, { workspaceId, id, engine, ask: askJson.text(ask), numbers: numbersJson.text(numbers) });
    },

    async get(id, makerId) {
      const row = await withRevision(db, workspaceId)
        .where('plan.id', '=', id)
        .where('plan.maker_id', '=', makerId)
        .executeTakeFirst();
      return row && plan(row);
    },

    latest,

    async unstarted(makerId) {
      const last = await latest(makerId);
      if (last === undefined) return undefined;
      const begun = await db
        .selectFrom('work')
        .select('id')
        .where('workspace_id', '=', workspaceId)
        .where('plan_id', '=', last.id)
        .where('outcome', '<>', 'given_up')
        .limit(1)
        .executeTakeFirst();
      return begun === undefined ? last : undefined;
    },
  };
}

type Added = { workspaceId: string; id: string; makerId: string; piece: string; profileId: string; at: number };

const added = prepared((db, { workspaceId, id, makerId, piece, profileId, at }: Added) =>
  db
    .insertInto('plan')
    .values({ workspace_id: workspaceId, id, maker_id: makerId, piece, profile_id: profileId, revision: 1, at_ms: at }),
);

type Revised = { workspaceId: string; id: string; engine: string; ask: string; numbers: string };

const revised = prepared((db, { workspaceId, id, engine, ask, numbers }: Revised) =>
  db
    .insertInto('plan_revision')
    .values({ workspace_id: workspaceId, plan_id: id, revision: 1, engine, ask_json: ask, numbers_json: numbers }),
);

const withRevision = (db: Kysely<Tables>, workspaceId: string) =>
  db
    .selectFrom('plan')
    .innerJoin('plan_revision', (on) =>
      on
        .onRef('plan_revision.workspace_id', '=', 'plan.workspace_id')
        .onRef('plan_revision.plan_id', '=', 'plan.id')
        .onRef('plan_revision.revision', '=', 'plan.revision'),
    )
    .where('plan.workspace_id', '=', workspaceId)
    .selectAll();

const plan = (row: Awaited<ReturnType<ReturnType<typeof withRevision>['executeTakeFirstOrThrow']>>): StoredPlan => ({
  id: row.id,
  makerId: row.maker_id,
  piece: row.piece,
  profileId: row.profile_id,
  ask: askJson.value(row.ask_json),
  numbers: numbersJson.value(row.numbers_json),
  engine: row.engine,
  at: row.at_ms,
});
