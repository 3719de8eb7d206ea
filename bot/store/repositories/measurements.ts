import type { Kysely, Selectable } from 'kysely';
import type { Count } from '../../../core/index.js';
import type { Bound, StoredMeasurement } from '../ports.js';
import { prepared } from '../prepared.js';
import type { Tables } from '../schema.js';

export function measurements(db: Kysely<Tables>, workspaceId: string): Bound['measurements'] {
  async function setWithdrawn(id: string, at: number | null): Promise<void> {
    await db
      .updateTable('measurement')
      .set({ withdrawn_at_ms: at })
      .where('workspace_id', '=', workspaceId)
      .where('id', '=', id)
      .execute();
  }

  return {
    async add({ id, profileId, swatch, state, form, rows, stitches, unravelled, ...rest }) {
      await db
        .insertInto('measurement')
        .values({
          workspace_id: workspaceId,
          id,
          profile_id: profileId,
          swatch,
          state,
          form,
          rows: rows?.count ?? null,
          rows_over_mm: rows?.overMm ?? null,
          rows_how: rows?.how ?? null,
          rows_spread_mm: rows?.spreadMm ?? null,
          stitches: stitches?.count ?? null,
          stitches_over_mm: stitches?.overMm ?? null,
          stitches_how: stitches?.how ?? null,
          needles: rest.needles ?? null,
          mass_g: rest.massG ?? null,
          unravelled_stitches: unravelled?.stitches ?? null,
          unravelled_mm: unravelled?.lengthMm ?? null,
          said: rest.said,
          note: rest.note,
          day: rest.day,
          work_id: rest.workId,
          replaces: rest.replaces,
          at_ms: rest.at,
          withdrawn_at_ms: null,
        })
        .execute();
    },

    async of(profileId) {
      return (await ofProfile(db, { workspaceId, profileId })).map(measurement);
    },

    async inYarn(makerId, yarnId) {
      return (await ofYarn(db, { workspaceId, makerId, yarnId })).map(measurement);
    },

    async get(id) {
      const row = await all(db, workspaceId).where('id', '=', id).executeTakeFirst();
      return row && measurement(row);
    },

    withdraw: setWithdrawn,
    restore: (id) => setWithdrawn(id, null),
  };
}

const all = (db: Kysely<Tables>, workspaceId: string) =>
  db.selectFrom('measurement').selectAll().where('workspace_id', '=', workspaceId);

const standing = (db: Kysely<Tables>, workspaceId: string) =>
  all(db, workspaceId).where('withdrawn_at_ms', 'is', null).orderBy('at_ms').orderBy('id');

const ofProfile = prepared((db, { workspaceId, profileId }: { workspaceId: string; profileId: string }) =>
  standing(db, workspaceId).where('profile_id', '=', profileId),
);

type OfYarn = { workspaceId: string; makerId: string; yarnId: string };

const ofYarn = prepared((db, { workspaceId, makerId, yarnId }: OfYarn) =>
  standing(db, workspaceId).where('profile_id', 'in', ({ selectFrom }) =>
    selectFrom('profile')
      .select('profile.id')
      .where('profile.workspace_id', '=', workspaceId)
      .where('profile.maker_id', '=', makerId)
      .where('profile.yarn_id', '=', yarnId),
  ),
);

function measurement(row: Selectable<Tables['measurement']>): StoredMeasurement {
  return {
    id: row.id,
    profileId: row.profile_id,
    swatch: row.swatch,
    state: row.state,
    form: row.form,
    rows: count(row.rows, row.rows_over_mm, row.rows_how, row.rows_spread_mm),
    stitches: count(row.stitches, row.stitches_over_mm, row.stitches_how),
    needles: row.needles ?? undefined,
    massG: row.mass_g ?? undefined,
    unravelled:
      row.unravelled_stitches === null || row.unravelled_mm === null
        ? undefined
        : { stitches: row.unravelled_stitches, lengthMm: row.unravelled_mm },
    said: row.said,
    note: row.note,
    day: row.day,
    workId: row.work_id,
    replaces: row.replaces,
    at: row.at_ms,
  };
}

function count(
  count: number | null,
  overMm: number | null,
  how: Count['how'] | null,
  spreadMm: number | null = null,
): Count | undefined {
  if (count === null || overMm === null || how === null) return undefined;
  return spreadMm === null ? { count, overMm, how } : { count, overMm, how, spreadMm };
}
