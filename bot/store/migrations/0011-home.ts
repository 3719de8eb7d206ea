import { type Migration, sql } from 'kysely';

const statements = [
  `create table home (
    workspace_id text not null,
    maker_id text not null,
    channel text not null,
    page text not null,
    opened_at_ms bigint not null,
    primary key (workspace_id, maker_id),
    foreign key (workspace_id, maker_id) references maker (workspace_id, id)
  )`,

  // Makers whose name and time zone were taken from Slack.
  `create table introduction (
    workspace_id text not null,
    maker_id text not null,
    at_ms bigint not null,
    primary key (workspace_id, maker_id),
    foreign key (workspace_id, maker_id) references maker (workspace_id, id)
  )`,
];

export const home: Migration = {
  async up(db) {
    for (const statement of statements) await sql.raw(statement).execute(db);
  },
};
