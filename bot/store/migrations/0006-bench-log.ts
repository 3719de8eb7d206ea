import { type Migration, sql } from 'kysely';

const statements = [
  "alter table maker add column hours_json text not null default ''",
  "alter table maker add column days_off_json text not null default ''",

  // One look at the clock is a session: a row for each driver that its time was divided over.
  `create table bench_log (
    workspace_id text not null,
    id text not null,
    maker_id text not null,
    session text not null,
    work_id text not null,
    driver text not null,
    amount double precision not null check (amount > 0),
    seconds double precision not null check (seconds > 0),
    day integer not null,
    said text not null,
    at_ms bigint not null,
    withdrawn_at_ms bigint,
    primary key (workspace_id, id),
    foreign key (workspace_id, maker_id) references maker (workspace_id, id)
  )`,
  'create index bench_log_by_maker on bench_log (workspace_id, maker_id, at_ms)',
  'create index bench_log_by_session on bench_log (workspace_id, session)',

  // The clock a maker has running, and the row of its work at which it began.
  `create table bench_clock (
    workspace_id text not null,
    maker_id text not null,
    work_id text not null,
    rows integer not null,
    started_at_ms bigint not null,
    primary key (workspace_id, maker_id),
    foreign key (workspace_id, maker_id) references maker (workspace_id, id)
  )`,
];

export const benchLog: Migration = {
  async up(db) {
    for (const statement of statements) await sql.raw(statement).execute(db);
  },
};
