import { type Migration, sql } from 'kysely';

const statements = [
  `create table workspace (
    workspace_id text primary key,
    slack_team_id text not null unique
  )`,

  `create table maker (
    workspace_id text not null references workspace (workspace_id),
    id text not null,
    slack_user_id text not null,
    name text not null,
    units text check (units in ('cm', 'in')),
    time_zone text not null,
    primary key (workspace_id, id),
    unique (workspace_id, slack_user_id)
  )`,

  `create table machine (
    workspace_id text not null,
    id text not null,
    maker_id text not null,
    name text not null,
    name_key text not null,
    needles integer check (needles > 0),
    primary key (workspace_id, id),
    unique (workspace_id, maker_id, name_key),
    foreign key (workspace_id, maker_id) references maker (workspace_id, id)
  )`,

  `create table yarn (
    workspace_id text not null,
    id text not null,
    maker_id text not null,
    name text not null,
    name_key text not null,
    primary key (workspace_id, id),
    unique (workspace_id, maker_id, name_key),
    foreign key (workspace_id, maker_id) references maker (workspace_id, id)
  )`,

  `create table profile (
    workspace_id text not null,
    id text not null,
    maker_id text not null,
    machine_id text not null,
    yarn_id text not null,
    used_at_ms bigint not null,
    primary key (workspace_id, id),
    unique (workspace_id, maker_id, machine_id, yarn_id),
    foreign key (workspace_id, maker_id) references maker (workspace_id, id),
    foreign key (workspace_id, machine_id) references machine (workspace_id, id),
    foreign key (workspace_id, yarn_id) references yarn (workspace_id, id)
  )`,
  'create index profile_by_use on profile (workspace_id, maker_id, used_at_ms)',

  `create table measurement (
    workspace_id text not null,
    id text not null,
    profile_id text not null,
    swatch text not null,
    state text not null check (state in ('hanging', 'rested', 'washed')),
    form text not null check (form in ('tube', 'panel')),
    rows double precision,
    rows_over_mm double precision,
    rows_how text check (rows_how in ('read', 'counted')),
    stitches double precision,
    stitches_over_mm double precision,
    stitches_how text check (stitches_how in ('read', 'counted')),
    said text not null,
    at_ms bigint not null,
    withdrawn_at_ms bigint,
    primary key (workspace_id, id),
    foreign key (workspace_id, profile_id) references profile (workspace_id, id),
    check ((rows is null) = (rows_over_mm is null) and (rows is null) = (rows_how is null)),
    check ((stitches is null) = (stitches_over_mm is null) and (stitches is null) = (stitches_how is null))
  )`,
  'create index measurement_by_time on measurement (workspace_id, profile_id, at_ms)',

  `create table plan (
    workspace_id text not null,
    id text not null,
    maker_id text not null,
    piece text not null,
    profile_id text not null,
    revision integer not null,
    at_ms bigint not null,
    primary key (workspace_id, id),
    foreign key (workspace_id, maker_id) references maker (workspace_id, id),
    foreign key (workspace_id, profile_id) references profile (workspace_id, id)
  )`,
  'create index plan_by_time on plan (workspace_id, maker_id, at_ms)',

  `create table plan_revision (
    workspace_id text not null,
    plan_id text not null,
    revision integer not null,
    engine text not null,
    ask_json text not null,
    numbers_json text not null,
    primary key (workspace_id, plan_id, revision),
    foreign key (workspace_id, plan_id) references plan (workspace_id, id)
  )`,

  `create table conversation (
    workspace_id text not null,
    place text not null,
    maker_id text not null,
    state_json text not null,
    until_ms bigint not null,
    primary key (workspace_id, place, maker_id),
    foreign key (workspace_id, maker_id) references maker (workspace_id, id)
  )`,
  'create index conversation_by_lapse on conversation (workspace_id, until_ms)',

  `create table delivery (
    workspace_id text not null references workspace (workspace_id),
    key text not null,
    at_ms bigint not null,
    primary key (workspace_id, key)
  )`,
  'create index delivery_by_time on delivery (workspace_id, at_ms)',

  `create table outbox (
    workspace_id text not null references workspace (workspace_id),
    id text not null,
    address_json text not null,
    body_json text not null,
    coalesce_key text not null,
    not_before_ms bigint not null,
    taken_until_ms bigint,
    attempts integer not null,
    expires_at_ms bigint not null,
    posted_at_ms bigint,
    slack_ts text,
    dropped_why text,
    primary key (workspace_id, id)
  )`,
  `create unique index outbox_coalesced on outbox (workspace_id, coalesce_key)
    where posted_at_ms is null and coalesce_key <> ''`,
  'create index outbox_waiting on outbox (not_before_ms) where posted_at_ms is null',
];

export const first: Migration = {
  async up(db) {
    for (const statement of statements) await sql.raw(statement).execute(db);
  },
};
