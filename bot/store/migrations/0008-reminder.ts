import { type Migration, sql } from 'kysely';

const statements = [
  // `subject_id`: the plan or the batch; `due_day`: the day it was for, so that one that moved is told.
  `create table reminder (
    workspace_id text not null,
    id text not null,
    maker_id text not null,
    subject text not null check (subject in ('plan', 'batch')),
    subject_id text not null,
    what text not null check (what in ('start', 'checkpoint', 'hand_over')),
    due_day integer not null,
    due_at_ms bigint not null,
    taken_until_ms bigint,
    sent_at_ms bigint,
    dropped_at_ms bigint,
    primary key (workspace_id, id),
    foreign key (workspace_id, maker_id) references maker (workspace_id, id)
  )`,
  'create index reminder_waiting on reminder (due_at_ms) where sent_at_ms is null and dropped_at_ms is null',
  'create index reminder_by_maker on reminder (workspace_id, maker_id)',
];

export const reminder: Migration = {
  async up(db) {
    for (const statement of statements) await sql.raw(statement).execute(db);
  },
};
