import { type Migration, sql } from 'kysely';

const statements = [
  "alter table maker add column currency text not null default ''",

  // A way a yarn is sold: balls of one mass and length, one or several at a price.
  `create table put_up (
    workspace_id text not null,
    id text not null,
    yarn_id text not null,
    ball_mg bigint not null check (ball_mg > 0),
    ball_mm double precision not null check (ball_mm > 0),
    balls integer not null check (balls > 0),
    price_minor bigint check (price_minor >= 0),
    currency text not null,
    said text not null,
    at_ms bigint not null,
    withdrawn_at_ms bigint,
    primary key (workspace_id, id),
    foreign key (workspace_id, yarn_id) references yarn (workspace_id, id)
  )`,
  'create index put_up_by_yarn on put_up (workspace_id, yarn_id)',

  // Owned by a maker, or by the team where owner is ''. Amounts are mg of yarn, pieces of a notion.
  `create table lot (
    workspace_id text not null references workspace (workspace_id),
    id text not null,
    owner text not null,
    kind text not null check (kind in ('yarn', 'notion')),
    name text not null,
    name_key text not null,
    dye_lot text not null,
    ball_mg bigint check (ball_mg > 0),
    ball_mm double precision check (ball_mm > 0),
    price_minor bigint check (price_minor >= 0),
    currency text not null,
    left_amount bigint not null check (left_amount >= 0),
    aside_amount bigint not null check (aside_amount >= 0 and aside_amount <= left_amount),
    at_ms bigint not null,
    primary key (workspace_id, id),
    unique (workspace_id, owner, kind, name_key, dye_lot)
  )`,

  `create table lot_move (
    workspace_id text not null,
    id text not null,
    lot_id text not null,
    work_id text not null,
    left_change bigint not null,
    aside_change bigint not null,
    said text not null,
    at_ms bigint not null,
    undone_at_ms bigint,
    primary key (workspace_id, id),
    foreign key (workspace_id, lot_id) references lot (workspace_id, id)
  )`,
  'create index lot_move_by_lot on lot_move (workspace_id, lot_id, at_ms)',
  'create index lot_move_by_work on lot_move (workspace_id, work_id)',
];

export const shelf: Migration = {
  async up(db) {
    for (const statement of statements) await sql.raw(statement).execute(db);
  },
};
