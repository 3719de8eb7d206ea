import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { Kysely, type Migration, Migrator, SqliteDialect } from 'kysely';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { Conversation } from '../../bot/conversation.js';
import { migrations } from '../../bot/store/migrations/index.js';
import type { Tables } from '../../bot/store/schema.js';
import { openSqlite } from '../../bot/store/sqlite.js';
import { together } from './processes.js';
import { AT, HERE, plan, reading } from './samples.js';

let folder: string;
let files = 0;
let path: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'migrations-'));
});
afterAll(() => rmSync(folder, { recursive: true }));
beforeEach(async () => {
  path = join(folder, `${++files}.db`);
  await makeFirstVersion(path);
});

const { ask } = plan('m', 'p');
const talk = Conversation.parse({ planId: 'pl' });

/** A file as the first migration left it, with a row in every table. */
async function makeFirstVersion(path: string): Promise<void> {
  const db = new Kysely<Tables>({ dialect: new SqliteDialect({ database: new Database(path) }) });
  const provider = { getMigrations: async () => ({ '0001-first': migrations['0001-first'] as Migration }) };
  expect((await new Migrator({ db, provider }).migrateToLatest()).error).toBeUndefined();
  await db.destroy();
  inFile(path, (file) =>
    file.exec(`
      insert into workspace values ('w', 'T1');
      insert into maker values ('w', 'm', 'U1', 'Nadia', 'in', 'UTC');
      insert into machine values ('w', 'mc', 'm', '46', '46', 46);
      insert into yarn values ('w', 'y', 'm', 'grey', 'grey');
      insert into profile values ('w', 'p', 'm', 'mc', 'y', 5);
      insert into measurement values ('w', 'ms', 'p', 's', 'rested', 'tube', 110, 558.8, 'read', null, null, null,
        'as said', ${AT}, null);
      insert into plan values ('w', 'pl', 'm', 'any', 'p', 1, ${AT});
      insert into plan_revision values ('w', 'pl', 1, '1', '${json({ v: 1, value: ask })}', '{"v":1,"value":[108]}');
      insert into conversation values ('w', 'dm:D1', 'm', '${json(talk)}', ${AT + 1});
      insert into delivery values ('w', 'event:1', ${AT});
      insert into outbox values ('w', 'o', '${json({ v: 1, value: HERE })}', '{"v":1,"value":{"text":"","blocks":[]}}',
        '', 0, null, 0, ${AT + 1}, null, null, null);
    `),
  );
}

const json = (value: unknown) => JSON.stringify(value).replaceAll("'", "''");

function inFile<T>(path: string, work: (file: Database.Database) => T): T {
  const file = new Database(path);
  try {
    return work(file);
  } finally {
    file.close();
  }
}

/** Every row of every table, without the migrator's own. */
const contents = (path: string) =>
  inFile(path, (file) => {
    const tables = file.prepare("select name from sqlite_master where type = 'table'").pluck().all() as string[];
    const own = tables.filter((table) => !table.startsWith('kysely_'));
    return Object.fromEntries(own.map((table) => [table, file.prepare(`select * from ${table}`).all()]));
  });

describe('a SQLite file of the first version', () => {
  test('keeps every row of every table when it is brought up to date', async () => {
    const before = contents(path);
    expect(Object.entries(before).filter(([, rows]) => rows.length !== 1)).toEqual([]);
    await (await openSqlite(path)).close();
    expect(contents(path)).toMatchObject(before);
  });

  test('is read as before, what it did not know yet left empty', async () => {
    const store = await openSqlite(path);
    await store.within('T1', async (s) => {
      const maker = await s.makers.held('U1', 'Nadia', AT);
      const [profile] = await s.profiles.of(maker.id);
      expect(profile).toEqual({
        id: 'p',
        machine: { id: 'mc', name: '46', needles: 46 },
        yarn: { id: 'y', name: 'grey', category: undefined, tex: undefined, since: undefined },
        tension: '',
        usedAt: 5,
      });
      expect(await s.measurements.of('p')).toEqual([
        {
          ...{ id: 'ms', profileId: 'p', swatch: 's', state: 'rested', form: 'tube', at: AT },
          ...{ rows: { count: 110, overMm: 558.8, how: 'read' }, stitches: undefined },
          ...{ needles: undefined, massG: undefined, unravelled: undefined },
          ...{ said: 'as said', note: '', day: Math.floor(AT / 86_400_000), workId: '', replaces: '' },
        },
      ]);
      expect(await s.plans.latest('m')).toMatchObject({ id: 'pl', ask, numbers: [108] });
      expect(await s.conversations.of('dm:D1', 'm', AT)).toEqual(talk);
      expect(await s.deliveries.claim('event:1', AT)).toBe(false);
    });
    expect(await store.outbox.take(AT, 1000, 9)).toMatchObject([{ id: 'o', address: HERE }]);
    await store.close();
  });

  test('still refuses a row that points nowhere', async () => {
    const store = await openSqlite(path);
    const lost = store.within('T1', (s) => s.measurements.add(reading('nowhere')));
    await expect(lost).rejects.toThrow(/foreign key/i);
    await store.close();
    inFile(path, (file) => {
      expect(file.pragma('foreign_key_check')).toEqual([]);
      for (const made of ['profile', 'yarn', 'maker']) {
        expect(() => file.exec(`delete from ${made}`)).toThrow(/foreign key/i);
      }
    });
  });

  test('stays as it was when a row in it points nowhere, and is brought up to date once that is mended', async () => {
    inFile(path, (file) => {
      file.pragma('foreign_keys = off');
      file.exec("update measurement set profile_id = 'nowhere'");
    });
    const before = contents(path);
    await expect(openSqlite(path)).rejects.toThrow('1 rows that point nowhere');
    expect(contents(path)).toEqual(before);
    inFile(path, (file) => file.exec("update measurement set profile_id = 'p'"));
    const store = await openSqlite(path);
    expect(await store.within('T1', (s) => s.measurements.get('ms'))).toMatchObject({ profileId: 'p' });
    await store.close();
  });

  test('is brought up to date once by three processes that open it at the same moment', async () => {
    const work = `return store.within('T1', async (s) => (await s.measurements.inYarn('m', 'y')).map(({ id }) => id))`;
    expect(await together(3, path, work)).toEqual([['ms'], ['ms'], ['ms']]);
    expect(inFile(path, (file) => file.prepare('select name from kysely_migration').pluck().all())).toEqual(
      Object.keys(migrations),
    );
  });
});
