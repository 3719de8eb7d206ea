import type { Kysely, Selectable } from 'kysely';
import { newId } from '../../ids.js';
import type { Bound, Yarn } from '../ports.js';
import { prepared } from '../prepared.js';
import type { Tables } from '../schema.js';
import { named } from './named.js';

/** The id of the maker's yarn of this name, made on first use. */
export async function openedYarn(
  db: Kysely<Tables>,
  workspaceId: string,
  makerId: string,
  name: string,
): Promise<string> {
  const names = named(name);
  const { id } = await db
    .insertInto('yarn')
    .values({ workspace_id: workspaceId, id: newId(), maker_id: makerId, ...names })
    .onConflict((on) => on.columns(['workspace_id', 'maker_id', 'name_key']).doUpdateSet({ name_key: names.name_key }))
    .returning('id')
    .executeTakeFirstOrThrow();
  return id;
}

/** Gives a profile of unnamed yarn a yarn that no profile has yet, so that its measurements stay with it. */
export async function nameYarn(
  db: Kysely<Tables>,
  workspaceId: string,
  profileId: string,
  yarnId: string,
): Promise<void> {
  await db
    .updateTable('profile')
    .set({ yarn_id: yarnId })
    .where('workspace_id', '=', workspaceId)
    .where('id', '=', profileId)
    .where(({ not, exists, selectFrom }) =>
      not(
        exists(
          selectFrom('profile as other')
            .select('other.id')
            .where('other.workspace_id', '=', workspaceId)
            .where('other.yarn_id', '=', yarnId),
        ),
      ),
    )
    .execute();
}

export function yarns(db: Kysely<Tables>, workspaceId: string): Bound['yarns'] {
  return {
    async of(makerId) {
      return (await ofMaker(db, { workspaceId, makerId })).map(yarn);
    },

    async opened(makerId, name) {
      const id = await openedYarn(db, workspaceId, makerId, name);
      return yarn(await known(db, workspaceId).where('id', '=', id).executeTakeFirstOrThrow());
    },

    async describe(id, { category, tex, since }) {
      await db
        .updateTable('yarn')
        .set({ category, tex, since_day: since })
        .where('workspace_id', '=', workspaceId)
        .where('id', '=', id)
        .execute();
    },
  };
}

const known = (db: Kysely<Tables>, workspaceId: string) =>
  db.selectFrom('yarn').select(['id', 'name', 'category', 'tex', 'since_day']).where('workspace_id', '=', workspaceId);

const ofMaker = prepared((db, { workspaceId, makerId }: { workspaceId: string; makerId: string }) =>
  known(db, workspaceId).where('maker_id', '=', makerId).where('name_key', '<>', '').orderBy('name_key'),
);

const yarn = (row: Pick<Selectable<Tables['yarn']>, 'id' | 'name' | 'category' | 'tex' | 'since_day'>): Yarn => ({
  id: row.id,
  name: row.name,
  category: row.category ?? undefined,
  tex: row.tex ?? undefined,
  since: row.since_day ?? undefined,
});
