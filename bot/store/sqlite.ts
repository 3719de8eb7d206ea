import { mkdirSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import Database from 'better-sqlite3';
import { Kysely, type Logger, Migrator, SqliteDialect, sql } from 'kysely';
import { migrations } from './migrations/index.js';
import { outgoing } from './outgoing.js';
import type { Store } from './ports.js';
import { purge } from './purge.js';
import { reminding } from './reminding.js';
import { retried } from './retried.js';
import type { Tables } from './schema.js';
import { within } from './within.js';

const MEMORY = ':memory:';

/** Two connections to one file in one process would each block the thread that the other needs to finish. */
const openPaths = new Set<string>();

/**
 * The store in the SQLite file at `path`, made with its folder on first use and brought up to date; ':memory:' keeps
 * nothing. Throws when this process has the file open already. `log` hears every statement.
 */
export async function openSqlite(path: string, log?: Logger): Promise<Store> {
  const file = path === MEMORY ? MEMORY : resolve(path);
  if (openPaths.has(file)) throw new Error('this process has the store open already');
  if (file !== MEMORY) {
    mkdirSync(dirname(file), { recursive: true });
    openPaths.add(file);
  }
  const db = new Kysely<Tables>({
    dialect: new SqliteDialect({ database: async () => connection(file) }),
    ...(log && { log }),
  });
  const close = async () => {
    await db.destroy();
    openPaths.delete(file);
  };
  try {
    await retried(() => migrate(db));
  } catch (error) {
    await close();
    throw error;
  }
  return { within: within(db), outbox: outgoing(db), reminders: reminding(db), purge: (at) => purge(db, at), close };
}

function connection(file: string): Database.Database {
  const database = new Database(file, { timeout: 5000 });
  try {
    database.pragma('journal_mode = WAL');
    database.pragma('foreign_keys = ON');
    database.pragma('synchronous = FULL');
    return preparingOnce(database);
  } catch (error) {
    database.close();
    throw error;
  }
}

/** More different statements than the bot has; those whose length varies, as of lists, may come to more in time. */
const MOST_PREPARED = 500;

/** The database, which prepares each statement once: that takes longer than most of them run. */
function preparingOnce(database: Database.Database): Database.Database {
  const prepare = database.prepare.bind(database);
  const prepared = new Map<string, Database.Statement>();
  database.prepare = ((source: string) => {
    const known = prepared.get(source);
    if (known !== undefined) return known;
    if (prepared.size >= MOST_PREPARED) prepared.clear();
    const made = prepare(source);
    prepared.set(source, made);
    return made;
  }) as typeof database.prepare;
  return database;
}

/**
 * Kysely's own lock does nothing on SQLite, and its migrations there are not transactional: hence our own. Foreign keys
 * are off meanwhile, as the SQLite manual asks where a table is made again, and checked before the commit.
 */
async function migrate(db: Kysely<Tables>): Promise<void> {
  await db.connection().execute(async (one) => {
    await sql`pragma foreign_keys = off`.execute(one);
    await sql`begin immediate`.execute(one);
    try {
      const migrator = new Migrator({ db: one, provider: { getMigrations: async () => migrations } });
      const { error, results = [] } = await migrator.migrateToLatest();
      if (error) throw error;
      const { rows } = results.length === 0 ? { rows: [] } : await sql`pragma foreign_key_check`.execute(one);
      if (rows.length > 0) throw new Error(`a migration left ${rows.length} rows that point nowhere`);
      await sql`commit`.execute(one);
    } catch (error) {
      await sql`rollback`.execute(one);
      throw error;
    } finally {
      await sql`pragma foreign_keys = on`.execute(one);
    }
  });
}
