import { type Kysely, type Selectable, sql } from 'kysely';
import { DaysOff, WeekHours } from '../../hours.js';
import { newId } from '../../ids.js';
import { jsonColumn } from '../json.js';
import type { Bound, Maker } from '../ports.js';
import { prepared } from '../prepared.js';
import type { Tables } from '../schema.js';

const weekJson = jsonColumn(WeekHours);
const daysOffJson = jsonColumn(DaysOff);

export function makers(db: Kysely<Tables>, workspaceId: string): Bound['makers'] {
  const one = (id: string) => db.updateTable('maker').where('workspace_id', '=', workspaceId).where('id', '=', id);

  return {
    async held(slackUserId, name) {
      const [row] = await opened(db, { workspaceId, id: newId(), slackUserId, name });
      if (row === undefined) throw new Error('a maker was neither made nor found');
      return maker(row);
    },

    async get(id) {
      const row = await db
        .selectFrom('maker')
        .where('workspace_id', '=', workspaceId)
        .where('id', '=', id)
        .selectAll()
        .executeTakeFirst();
      return row && maker(row);
    },

    async named(said) {
      const rows = await db.selectFrom('maker').where('workspace_id', '=', workspaceId).selectAll().execute();
      const key = said.trim().toLowerCase();
      return rows.filter((row) => [row.name, row.slack_user_id].some((name) => name.toLowerCase() === key)).map(maker);
    },

    async all() {
      const rows = await db
        .selectFrom('maker')
        .selectAll()
        .where('workspace_id', '=', workspaceId)
        .orderBy('id')
        .execute();
      return rows.map(maker);
    },

    async setUnits(makerId, units) {
      await one(makerId)
        .set({ units: units ?? null })
        .execute();
    },
    async setHours(makerId, { weekly, off }) {
      await one(makerId)
        .set({
          hours_json: weekly === undefined ? '' : weekJson.text(weekly),
          days_off_json: off.length === 0 ? '' : daysOffJson.text(off),
        })
        .execute();
    },
    async setTimeZone(makerId, timeZone) {
      await one(makerId).set({ time_zone: timeZone }).execute();
    },
    async setCurrency(makerId, currency) {
      await one(makerId)
        .set({ currency: currency ?? '' })
        .execute();
    },
  };
}

type Opened = { workspaceId: string; id: string; slackUserId: string; name: string };

/** An empty name, of a door that tells none, leaves the one that is known. */
const opened = prepared((db, { workspaceId, id, slackUserId, name }: Opened) =>
  db
    .insertInto('maker')
    .values({
      workspace_id: workspaceId,
      id,
      slack_user_id: slackUserId,
      name,
      units: null,
      time_zone: 'UTC',
      currency: '',
      hours_json: '',
      days_off_json: '',
    })
    .onConflict((on) =>
      on.columns(['workspace_id', 'slack_user_id']).doUpdateSet(({ ref }) => ({
        name: sql<string>`coalesce(nullif(${ref('excluded.name')}, ''), ${ref('maker.name')})`,
      })),
    )
    .returningAll(),
);

const maker = (row: Selectable<Tables['maker']>): Maker => ({
  id: row.id,
  slackUserId: row.slack_user_id,
  name: row.name,
  units: row.units ?? undefined,
  timeZone: row.time_zone,
  hours: {
    weekly: row.hours_json === '' ? undefined : weekJson.value(row.hours_json),
    off: row.days_off_json === '' ? [] : daysOffJson.value(row.days_off_json),
  },
  currency: row.currency || undefined,
});
