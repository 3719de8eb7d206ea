import { type Migration, sql } from 'kysely';

const statements = [
  // A table's own unique key cannot be changed on SQLite: the table is made again, as its manual advises.
  `create table profile_with_tension (
    workspace_id text not null,
    id text not null,
    maker_id text not null,
    machine_id text not null,
    yarn_id text not null,
    tension text not null,
    used_at_ms bigint not null,
    primary key (workspace_id, id),
    unique (workspace_id, maker_id, machine_id, yarn_id, tension),
    foreign key (workspace_id, maker_id) references maker (workspace_id, id),
    foreign key (workspace_id, machine_id) references machine (workspace_id, id),
    foreign key (workspace_id, yarn_id) references yarn (workspace_id, id)
  )`,
  `insert into profile_with_tension
    select workspace_id, id, maker_id, machine_id, yarn_id, '', used_at_ms from profile`,
  'drop table profile',
  'alter table profile_with_tension rename to profile',
  'create index profile_by_use on profile (workspace_id, maker_id, used_at_ms)',

  'alter table yarn add column category integer check (category between 0 and 7)',
  'alter table yarn add column tex double precision check (tex > 0)',
  'alter table yarn add column since_day integer',

  'alter table measurement add column rows_spread_mm double precision check (rows_spread_mm >= 0)',
  'alter table measurement add column needles integer check (needles > 0)',
  'alter table measurement add column mass_g double precision check (mass_g > 0)',
  'alter table measurement add column unravelled_stitches integer check (unravelled_stitches > 0)',
  'alter table measurement add column unravelled_mm double precision check (unravelled_mm > 0)',
  "alter table measurement add column note text not null default ''",
  'alter table measurement add column day integer not null default 0',
  'update measurement set day = at_ms / 86400000',
  "alter table measurement add column work_id text not null default ''",
  "alter table measurement add column replaces text not null default ''",

  `create table work (
    workspace_id text not null,
    id text not null,
    maker_id text not null,
    plan_id text not null,
    profile_id text not null,
    stop_rows integer not null check (stop_rows > 0),
    version integer not null,
    started_at_ms bigint not null,
    touched_at_ms bigint not null,
    ended_at_ms bigint,
    outcome text not null check (outcome in ('', 'done', 'given_up')),
    primary key (workspace_id, id),
    foreign key (workspace_id, maker_id) references maker (workspace_id, id),
    foreign key (workspace_id, plan_id) references plan (workspace_id, id),
    foreign key (workspace_id, profile_id) references profile (workspace_id, id)
  )`,
  'create index work_by_touch on work (workspace_id, maker_id, touched_at_ms)',

  `create table tally_entry (
    workspace_id text not null,
    work_id text not null,
    seq integer not null,
    kind text not null check (kind in ('start', 'by', 'to', 'lost', 'settled')),
    rows integer not null check (rows >= 0),
    said text not null,
    at_ms bigint not null,
    undone_at_ms bigint,
    primary key (workspace_id, work_id, seq),
    foreign key (workspace_id, work_id) references work (workspace_id, id)
  )`,

  `create table reading (
    workspace_id text not null,
    id text not null,
    work_id text not null,
    row_no integer not null check (row_no > 0),
    length_mm double precision not null check (length_mm > 0),
    state text not null check (state in ('hanging', 'rested', 'washed')),
    said text not null,
    at_ms bigint not null,
    withdrawn_at_ms bigint,
    primary key (workspace_id, id),
    foreign key (workspace_id, work_id) references work (workspace_id, id)
  )`,
  'create index reading_by_work on reading (workspace_id, work_id)',
];

export const work: Migration = {
  async up(db) {
    for (const statement of statements) await sql.raw(statement).execute(db);
  },
};
