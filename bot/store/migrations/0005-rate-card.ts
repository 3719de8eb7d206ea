import { type Migration, sql } from 'kysely';

const statements = [
  // A line of a rate card, of a maker or of the team where owner is ''. `name` is '' for all but notions.
  `create table rate (
    workspace_id text not null references workspace (workspace_id),
    owner text not null,
    of_what text not null,
    name text not null,
    name_key text not null,
    value_json text not null,
    primary key (workspace_id, owner, of_what, name_key)
  )`,
];

export const rateCard: Migration = {
  async up(db) {
    for (const statement of statements) await sql.raw(statement).execute(db);
  },
};
