import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { Conversation } from '../../bot/conversation.js';
import { openSqlite } from '../../bot/store/sqlite.js';
import { storeContract } from './contract.js';
import { killedWithin, together } from './processes.js';
import { AT } from './samples.js';

let folder: string;
let files = 0;
const newPath = () => join(folder, `made ${++files}`, 'store.db');
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'store-'));
});
afterAll(() => rmSync(folder, { recursive: true }));

const TRANSACTION_CONTROL = /^(begin|commit|rollback)/;

storeContract('SQLite', async (heard) => {
  let isOpen = false;
  const store = await openSqlite(newPath(), ({ query }) => {
    if (isOpen && !TRANSACTION_CONTROL.test(query.sql)) heard?.(query.sql);
  });
  isOpen = true;
  return store;
});

describe('a SQLite file', () => {
  test('keeps its data when it is opened again', async () => {
    const path = newPath();
    const first = await openSqlite(path);
    const made = await first.within('T1', (s) => s.makers.held('U1', 'Nadia', AT));
    await first.close();
    const second = await openSqlite(path);
    expect(await second.within('T1', (s) => s.makers.held('U1', 'Nadia', AT))).toEqual(made);
    await second.close();
  });

  test('holds a talk as text that any process reads as it was kept', async () => {
    const path = newPath();
    const store = await openSqlite(path);
    const start = { kind: 'start', planId: 'P1' } as const;
    const offer = { turn: 'turn', named: false, choices: [start], says: ['start'] };
    const first = Conversation.parse({
      planId: 'P1',
      offered: [offer],
      changes: [{ kind: 'plan', other: {}, said: '"x"' }],
    });
    const next = { ...first, offered: [...first.offered, { ...offer, turn: 'next' }] };
    for (const talk of [first, next]) {
      await store.within('T1', async (s) => {
        const { id } = await s.makers.held('U1', 'Nadia', AT);
        await s.conversations.keep('dm:D1', id, talk, AT + 1);
      });
      const file = new Database(path, { readonly: true });
      const text = file.prepare('select state_json from conversation').pluck().get() as string;
      file.close();
      expect(Conversation.parse(JSON.parse(text))).toEqual(talk);
    }
    await store.close();
  });

  test('is refused a second time by the process that has it open, and a failed opening lets go of it', async () => {
    const path = newPath();
    const store = await openSqlite(path);
    await expect(openSqlite(path)).rejects.toThrow('open already');
    await store.close();
    const file = new Database(path);
    file.exec("insert into kysely_migration values ('9999-from-the-future', '')");
    await expect(openSqlite(path)).rejects.toThrow('9999-from-the-future');
    file.exec("delete from kysely_migration where name like '9999%'");
    file.close();
    await (await openSqlite(path)).close();
  });

  test('lives in memory alone when asked to', async () => {
    const [one, other] = [await openSqlite(':memory:'), await openSqlite(':memory:')];
    expect(await one.within('T1', (s) => s.deliveries.claim('event:1', AT))).toBe(true);
    expect(await other.within('T1', (s) => s.deliveries.claim('event:1', AT))).toBe(true);
    await one.close();
    await other.close();
  });

  test('holds one waiting row for a coalesce key, and another once that is posted', async () => {
    const path = newPath();
    const store = await openSqlite(path);
    await store.within('T1', (s) => s.deliveries.claim('event:1', AT));
    await store.close();
    const file = new Database(path);
    const put =
      file.prepare(`insert into outbox (workspace_id, id, address_json, body_json, coalesce_key, not_before_ms,
      attempts, expires_at_ms) select workspace_id, ?, '', ?, ?, 0, 0, 0 from workspace where true
      on conflict (workspace_id, coalesce_key) where posted_at_ms is null and coalesce_key <> ''
      do update set body_json = excluded.body_json`);
    const kept = () => file.prepare('select id, body_json as body from outbox order by id').all();
    put.run('1', 'ten', 'home:m1');
    put.run('2', 'eleven', 'home:m1');
    expect(kept()).toEqual([{ id: '1', body: 'eleven' }]);
    file.exec('update outbox set posted_at_ms = 1');
    put.run('3', 'twelve', 'home:m1');
    put.run('4', 'apart', '');
    put.run('5', 'apart', '');
    expect(kept()).toMatchObject([{ id: '1' }, { id: '3', body: 'twelve' }, { id: '4' }, { id: '5' }]);
    file.close();
  });
});

test('a process killed half way through a change of the shelf leaves the shelf as it was', async () => {
  const path = newPath();
  const lotOf = { owner: '', kind: 'yarn', name: 'grey', dyeLot: '12' } as const;
  const move = { workId: '', left: 150_000, aside: 0, said: '3 balls', at: AT };
  const first = await openSqlite(path);
  const lot = await first.within('T1', async (s) => {
    const { id } = await s.shelf.opened(lotOf, AT);
    await s.shelf.move({ ...move, id: 'm1', lotId: id });
    return id;
  });
  await first.close();
  const taking = JSON.stringify({ ...move, id: 'm2', lotId: lot, left: -50_000 });
  await killedWithin(
    path,
    `if (!(await s.shelf.move(${taking}))) throw new Error('nothing was taken');
    const [{ left }] = await s.shelf.of('');
    if (left !== 100_000) throw new Error('the move was not seen');`,
  );
  const second = await openSqlite(path);
  await second.within('T1', async (s) => {
    expect(await s.shelf.of('')).toMatchObject([{ dyeLot: '12', left: 150_000 }]);
    expect(await s.shelf.move({ ...move, id: 'm2', lotId: lot, left: -50_000 })).toBe(true);
  });
  await second.close();
});

describe('processes that share a SQLite file', () => {
  test('three that open a new file at once all find it ready', async () => {
    const path = newPath();
    const claims = await together(3, path, `return store.within('T1', (s) => s.deliveries.claim('event:1', 1))`);
    expect(claims.toSorted()).toEqual([false, false, true]);
  });

  test('two that write first and then read lose no update', async () => {
    const path = newPath();
    const turns = `for (let turn = 0; turn < 60; turn += 1) await store.within('T1', async (s) => {
      await s.deliveries.claim(process.pid + ':' + turn, 1);
      const { id } = await s.makers.held('U1', 'Nadia', 1);
      const talk = await s.conversations.of('dm:D1', id, 1);
      await new Promise(setImmediate);
      await s.conversations.keep('dm:D1', id, { ...talk, planId: String(Number(talk.planId ?? 0) + 1) }, 9);
    })`;
    await together(2, path, turns);
    const store = await openSqlite(path);
    const talk = await store.within('T1', async (s) => {
      const { id } = await s.makers.held('U1', 'Nadia', 1);
      return s.conversations.of('dm:D1', id, 1);
    });
    expect(talk.planId).toBe('120');
    await store.close();
  });
});
