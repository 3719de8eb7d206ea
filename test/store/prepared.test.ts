import Database from 'better-sqlite3';
import { Kysely, SqliteDialect } from 'kysely';
import { expect, test } from 'vitest';
import { prepared } from '../../bot/store/prepared.js';
import type { Tables } from '../../bot/store/schema.js';

function opened(): Kysely<Tables> {
  const database = new Database(':memory:');
  database.exec('create table delivery (workspace_id text, key text, at_ms integer)');
  return new Kysely<Tables>({ dialect: new SqliteDialect({ database }) });
}

test('a statement is built once a store, in and out of transactions, and given its values each time', async () => {
  let built = 0;
  const added = prepared((db, { key, at }: { key: string; at: number }) => {
    built++;
    return db.insertInto('delivery').values({ workspace_id: 'W', key, at_ms: at }).returning(['key', 'at_ms']);
  });
  const [one, other] = [opened(), opened()];
  expect(await added(one, { key: 'a', at: 1 })).toEqual([{ key: 'a', at_ms: 1 }]);
  expect(await one.transaction().execute((tx) => added(tx, { key: 'b', at: 2 }))).toEqual([{ key: 'b', at_ms: 2 }]);
  expect(built).toBe(1);
  expect(await added(other, { key: 'c', at: 3 })).toEqual([{ key: 'c', at_ms: 3 }]);
  expect(built).toBe(2);
  expect(await one.selectFrom('delivery').select('key').execute()).toEqual([{ key: 'a' }, { key: 'b' }]);
  await one.destroy();
  await other.destroy();
});

test('a value that stands in two places is given to both', async () => {
  const known = prepared((db, { key }: { key: string }) =>
    db.selectFrom('delivery').select('key').where('key', '=', key).where('workspace_id', '=', key),
  );
  const db = opened();
  await db.insertInto('delivery').values({ workspace_id: 'x', key: 'x', at_ms: 0 }).execute();
  expect(await known(db, { key: 'x' })).toEqual([{ key: 'x' }]);
  expect(await known(db, { key: 'y' })).toEqual([]);
  await db.destroy();
});
