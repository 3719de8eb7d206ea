import type { Kysely } from 'kysely';
import { newId } from '../../ids.js';
import type { Tables } from '../schema.js';
import { named } from './named.js';

/**
 * The id of the maker's machine of this name, made on first use. A new name goes to the unnamed machine while its
 * needles are unknown. Needles fill in what was unknown and never change what was known.
 */
export async function openedMachine(
  db: Kysely<Tables>,
  workspaceId: string,
  makerId: string,
  name: string,
  needles: number | undefined,
): Promise<string> {
  const names = named(name);
  await db
    .updateTable('machine')
    .set(names)
    .where('workspace_id', '=', workspaceId)
    .where('maker_id', '=', makerId)
    .where('name_key', '=', '')
    .where('needles', 'is', null)
    .where(({ not, exists, selectFrom }) =>
      not(
        exists(
          selectFrom('machine as other')
            .select('other.id')
            .where('other.workspace_id', '=', workspaceId)
            .where('other.maker_id', '=', makerId)
            .where('other.name_key', '=', names.name_key),
        ),
      ),
    )
    .execute();
  const { id } = await db
    .insertInto('machine')
    .values({ workspace_id: workspaceId, id: newId(), maker_id: makerId, ...names, needles: needles ?? null })
    .onConflict((on) =>
      on
        .columns(['workspace_id', 'maker_id', 'name_key'])
        .doUpdateSet(({ fn }) => ({ needles: fn.coalesce('machine.needles', 'excluded.needles') })),
    )
    .returning('id')
    .executeTakeFirstOrThrow();
  return id;
}
