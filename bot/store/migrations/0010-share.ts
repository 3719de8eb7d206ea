import { type Migration, sql } from 'kysely';

const statements = [
  // A plan shown to one maker, or in a channel. `origin` is the plan that was shared first: all that became of it share
  // that name. Absent is '' in what stands in a key.
  `create table share (
    workspace_id text not null,
    id text not null,
    owner_id text not null,
    origin text not null,
    to_maker text not null,
    to_channel text not null,
    to_thread text not null,
    revision integer not null,
    at_ms bigint not null,
    withdrawn_at_ms bigint,
    primary key (workspace_id, id),
    unique (workspace_id, origin, to_maker, to_channel),
    foreign key (workspace_id, owner_id) references maker (workspace_id, id),
    check ((to_maker = '') <> (to_channel = ''))
  )`,
  'create index share_by_owner on share (workspace_id, owner_id, at_ms)',
  'create index share_by_maker on share (workspace_id, to_maker, at_ms)',
  'create index share_by_channel on share (workspace_id, to_channel, at_ms)',

  // What was shown: the size, and where the owner chose so the rows as they stood then ('' where not).
  `create table share_revision (
    workspace_id text not null,
    share_id text not null,
    revision integer not null,
    ask_json text not null,
    counts_json text not null,
    primary key (workspace_id, share_id, revision),
    foreign key (workspace_id, share_id) references share (workspace_id, id)
  )`,

  // A maker who sized it: which revision theirs is of, and the last one they answered.
  `create table share_taken (
    workspace_id text not null,
    share_id text not null,
    maker_id text not null,
    revision integer not null,
    answered integer not null,
    primary key (workspace_id, share_id, maker_id),
    foreign key (workspace_id, share_id) references share (workspace_id, id),
    foreign key (workspace_id, maker_id) references maker (workspace_id, id)
  )`,

  // A finished piece of a shared plan, its maker's alone until sent.
  `create table result (
    workspace_id text not null,
    id text not null,
    maker_id text not null,
    origin text not null,
    came_mm double precision not null check (came_mm > 0),
    lo_mm double precision not null,
    hi_mm double precision not null,
    rows integer not null check (rows > 0),
    needles integer,
    sent text not null check (sent in ('', 'size', 'rows')),
    at_ms bigint not null,
    withdrawn_at_ms bigint,
    primary key (workspace_id, id),
    foreign key (workspace_id, maker_id) references maker (workspace_id, id)
  )`,
  'create index result_by_origin on result (workspace_id, origin, at_ms)',
];

export const share: Migration = {
  async up(db) {
    for (const statement of statements) await sql.raw(statement).execute(db);
  },
};
