import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { v7 } from 'uuid';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { blocks } from '../../../bot/cards/blocks.js';
import { reminderCard } from '../../../bot/cards/reminder.js';
import { reminders } from '../../../bot/delivery/reminders.js';
import { reminded } from '../../../bot/reminded.js';
import type { Store } from '../../../bot/store/ports.js';
import { openSqlite } from '../../../bot/store/sqlite.js';
import { silentLog } from '../../../bot/surroundings.js';
import { killedWithin, together } from '../../store/processes.js';
import { blockFaults } from '../cards/block-faults.js';
import { codesOf, MEDIUM, type Talk, talk } from '../talk.js';

let folder: string;
let path: string;
let open: Talk;
beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'reminders-'));
  path = join(folder, 'store.db');
  open = await talk(undefined, path);
  for (const line of [MEDIUM, 'Mon to Fri 19:00 to 21:00']) await open.say(line);
});
afterEach(async () => {
  await open.close();
  rmSync(folder, { recursive: true });
});

const at = (iso: string): number => Date.parse(iso);

/** Runs the sender for a moment as if at `now`, and gives what then stands in the outbox, taken out of it. */
async function sentAt(now: number, store: Store = open.store): Promise<string[]> {
  const sender = reminders({ store, log: silentLog, newId: v7, now: () => now }, reminded, () => {});
  await sender.stop();
  const rows = await store.outbox.take(now, 1000, 10);
  for (const row of rows) await store.outbox.posted(row, now, undefined);
  return rows.map(
    ({ address, body }) => `${address.to === 'post' ? address.channel : ''}: ${body.text.split('\n')[0]}`,
  );
}

const PLAN = '12 pouches 11 in wide by 11 december';
const START = at('2026-11-20T19:00:00Z');
const START_SAID = ['U1: Begin today: the pouch, 12 of them, ready by Friday 11 December'];

test('is sent on its day, once, to its maker', async () => {
  await open.say(PLAN);
  await open.say('remind me');
  const waiting = await open.within(async (s) => s.reminders.waiting((await s.makers.held('U1', '', 0)).id));
  const [checkpoint, start, handOver] = waiting;
  expect(waiting.map(({ what }) => what)).toEqual(['checkpoint', 'start', 'hand_over']);
  expect(await sentAt((checkpoint?.dueAt ?? 0) - 1)).toEqual([]);
  expect(await sentAt(checkpoint?.dueAt ?? 0)).toHaveLength(1);
  expect(await sentAt(start?.dueAt ?? 0)).toEqual(START_SAID);
  expect(await sentAt((start?.dueAt ?? 0) + 3_600_000)).toEqual([]);
  expect(await sentAt(handOver?.dueAt ?? 0)).toEqual(['U1: Ready today: the pouch, 12 of them']);
});

test('is sent once where the sender is killed with it in hand, and again right before its commit', async () => {
  await open.say(PLAN);
  await open.say('remind me');
  const [first] = await open.within(async (s) => s.reminders.waiting((await s.makers.held('U1', '', 0)).id));
  const due = first?.dueAt ?? 0;
  await open.close();
  const taken = await together(1, path, `return (await store.reminders.take(${due}, 60000, 20)).length;`);
  expect(taken).toEqual([1]);
  await killedWithin(
    path,
    `await s.reminders.settle(${JSON.stringify(first?.id)}, 'sent', ${due});
     await s.outbox.add('o1', { to: 'post', channel: 'U1' }, { text: 'half sent', blocks: [] }, ${due}, ${due + 1e6});`,
  );
  const again = await openSqlite(path);
  expect(await sentAt(due + 59_999, again)).toEqual([]);
  const caughtUp = await sentAt(due + 60_000, again);
  expect(caughtUp).toEqual(['U1: Half-way day: the pouch, 12 of them, ready by Friday 11 December']);
  expect(await sentAt(due + 120_000, again)).toEqual([]);
  await again.close();
  open = await talk(undefined, path);
});

test('waits, where it is caught up outside the hours, for the next start of them', async () => {
  await open.say(PLAN);
  await open.say('remind me');
  // Down from Monday 16 to the night after Thursday 19 November.
  expect(await sentAt(at('2026-11-19T23:00:00Z'))).toEqual([]);
  expect(await sentAt(at('2026-11-20T18:59:00Z'))).toEqual([]);
  expect(await sentAt(START)).toHaveLength(2);
});

test('of a plan that moved comes for the new day and not for the old', async () => {
  await open.say(PLAN);
  await open.say('remind me');
  await open.say('by 18 december');
  const days = (await open.within(async (s) => s.reminders.waiting((await s.makers.held('U1', '', 0)).id))).map(
    ({ what, dueDay, dueAt }) => [what, dueDay, new Date(dueAt).toISOString().slice(0, 10)],
  );
  const moved = at('2026-12-18') / 86_400_000;
  expect(days).toContainEqual(['start', moved, '2026-11-27']);
  expect(days.every(([, day]) => day === moved)).toBe(true);
  await open.say('undo');
  const back = await open.within(async (s) => s.reminders.waiting((await s.makers.held('U1', '', 0)).id));
  expect(back.find(({ what }) => what === 'start')?.dueAt).toBe(START);
});

test('of what ended, was begun or was stopped is not sent', async () => {
  await open.say('pouch 11 in wide by 11 december');
  await open.say('remind me');
  await open.say('start');
  const [first] = await open.within(async (s) => s.reminders.waiting((await s.makers.held('U1', '', 0)).id));
  expect(first?.what).toBe('start');
  expect(await sentAt(first?.dueAt ?? 0)).toEqual([]);
  await open.say('stop reminding me');
  expect(await sentAt(at('2026-12-11T19:00:00Z'))).toEqual([]);
  expect(codesOf(await open.say('stop reminding me'))).toEqual(['no_reminders']);
});

test('of a batch whose day moved is not sent', async () => {
  const owen = { user: { slackUserId: 'U2', name: 'Owen' }, place: 'dm:D2' };
  for (const line of [MEDIUM, '3 hours on weekends']) await open.say(line, owen);
  await open.say('12 pouches 11 in wide with Owen by 5 december');
  await open.say('remind me', owen);
  const [first] = await open.within(async (s) => s.reminders.waiting((await s.makers.held('U2', '', 0)).id));
  await open.say('by 12 december');
  expect(await sentAt(first?.dueAt ?? 0)).toEqual([]);
});

test('without a day to remind of is refused', async () => {
  expect(codesOf(await open.say('remind me'))).toEqual(['nothing_to_remind']);
});

test.each(['start', 'checkpoint', 'hand_over'] as const)('the card of %s keeps to the limits of blocks', (what) => {
  const card = reminderCard({ what, label: 'pouch', pieces: 12, done: 3, dueDay: 20_500, today: 20_490 });
  expect(blockFaults(blocks(card, 'r1'))).toEqual([]);
  expect(card.lead.length).toBeLessThanOrEqual(80);
});
