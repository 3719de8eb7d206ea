import { type Migration, sql } from 'kysely';

const statements = [
  // `version` counts the changes of what is shared: pieces, day, who makes what.
  `create table batch (
    workspace_id text not null,
    id text not null,
    owner_id text not null,
    plan_id text not null,
    pieces integer not null check (pieces > 0),
    due_day integer not null,
    ready_day integer not null,
    version integer not null,
    at_ms bigint not null,
    ended_at_ms bigint,
    primary key (workspace_id, id),
    foreign key (workspace_id, owner_id) references maker (workspace_id, id),
    foreign key (workspace_id, plan_id) references plan (workspace_id, id)
  )`,
  'create index batch_by_plan on batch (workspace_id, plan_id)',

  `create table batch_part (
    workspace_id text not null,
    batch_id text not null,
    maker_id text not null,
    stage text not null check (stage in ('whole', 'knit', 'finish')),
    share integer not null check (share >= 0),
    done integer not null check (done >= 0),
    away_json text not null,
    is_out integer not null,
    version integer not null,
    primary key (workspace_id, batch_id, maker_id, stage),
    foreign key (workspace_id, batch_id) references batch (workspace_id, id),
    foreign key (workspace_id, maker_id) references maker (workspace_id, id)
  )`,
  'create index batch_part_by_maker on batch_part (workspace_id, maker_id)',
];

export const batch: Migration = {
  async up(db) {
    for (const statement of statements) await sql.raw(statement).execute(db);
  },
};
