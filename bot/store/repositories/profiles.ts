import type { Kysely } from 'kysely';
import { newId } from '../../ids.js';
import type { Bound, Profile } from '../ports.js';
import { prepared } from '../prepared.js';
import type { Tables } from '../schema.js';
import { openedMachine } from './machines.js';
import { nameYarn, openedYarn } from './yarns.js';

export function profiles(db: Kysely<Tables>, workspaceId: string): Bound['profiles'] {
  async function of(makerId: string): Promise<Profile[]> {
    return (await ofMaker(db, { workspaceId, makerId })).map(profile);
  }

  return {
    of,

    async opened(makerId, { name, needles }, yarn, tension, at) {
      const machineId = await openedMachine(db, workspaceId, makerId, name, needles);
      const [last] = await of(makerId);
      const yarnId = await openedYarn(db, workspaceId, makerId, yarn);
      if (last?.machine.id === machineId && last.yarn.name === '') {
        await nameYarn(db, workspaceId, last.id, yarnId);
      }
      const { id } = await db
        .insertInto('profile')
        .values({
          workspace_id: workspaceId,
          id: newId(),
          maker_id: makerId,
          machine_id: machineId,
          yarn_id: yarnId,
          tension: tension.trim().toLowerCase(),
          used_at_ms: at,
        })
        .onConflict((on) =>
          on.columns(['workspace_id', 'maker_id', 'machine_id', 'yarn_id', 'tension']).doUpdateSet({ used_at_ms: at }),
        )
        .returning('id')
        .executeTakeFirstOrThrow();
      return profile(await joined(db, workspaceId).where('profile.id', '=', id).executeTakeFirstOrThrow());
    },

    async used(profileId, at) {
      await usedNow(db, { workspaceId, profileId, at });
    },
  };
}

function joined(db: Kysely<Tables>, workspaceId: string) {
  return db
    .selectFrom('profile')
    .innerJoin('machine', (on) =>
      on.onRef('machine.workspace_id', '=', 'profile.workspace_id').onRef('machine.id', '=', 'profile.machine_id'),
    )
    .innerJoin('yarn', (on) =>
      on.onRef('yarn.workspace_id', '=', 'profile.workspace_id').onRef('yarn.id', '=', 'profile.yarn_id'),
    )
    .where('profile.workspace_id', '=', workspaceId)
    .select([
      'profile.id',
      'profile.machine_id',
      'machine.name as machine_name',
      'machine.needles',
      'profile.yarn_id',
      'yarn.name as yarn_name',
      'yarn.category',
      'yarn.tex',
      'yarn.since_day',
      'profile.tension',
      'profile.used_at_ms',
    ]);
}

const ofMaker = prepared((db, { workspaceId, makerId }: { workspaceId: string; makerId: string }) =>
  joined(db, workspaceId)
    .where('profile.maker_id', '=', makerId)
    .orderBy('profile.used_at_ms', 'desc')
    .orderBy('profile.id', 'desc'),
);

const usedNow = prepared((db, { workspaceId, profileId, at }: { workspaceId: string; profileId: string; at: number }) =>
  db.updateTable('profile').set({ used_at_ms: at }).where('workspace_id', '=', workspaceId).where('id', '=', profileId),
);

function profile(row: Awaited<ReturnType<ReturnType<typeof joined>['executeTakeFirstOrThrow']>>): Profile {
  return {
    id: row.id,
    machine: { id: row.machine_id, name: row.machine_name, needles: row.needles ?? undefined },
    yarn: {
      id: row.yarn_id,
      name: row.yarn_name,
      category: row.category ?? undefined,
      tex: row.tex ?? undefined,
      since: row.since_day ?? undefined,
    },
    tension: row.tension,
    usedAt: row.used_at_ms,
  };
}
