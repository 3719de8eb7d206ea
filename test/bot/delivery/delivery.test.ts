import { v7 } from 'uuid';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { type Delivery, delivery } from '../../../bot/delivery/delivery.js';
import { PACE } from '../../../bot/delivery/pace.js';
import type { Sender } from '../../../bot/delivery/sender.js';
import type { Address, OutboxRow, Store } from '../../../bot/store/ports.js';
import { openSqlite } from '../../../bot/store/sqlite.js';

let store: Store;
let out: Delivery;
let posted: string[];
let warnings: Record<string, unknown>[];

beforeEach(async () => {
  vi.useFakeTimers({ now: 1_000_000 });
  store = await openSqlite(':memory:');
  posted = [];
  warnings = [];
});
afterEach(async () => {
  await out.stop();
  await store.close();
  vi.useRealTimers();
});

const began = 1_000_000;
const note = ({ body }: OutboxRow) => posted.push(`${body.text} at ${Date.now() - began}`);

function start(send: Sender = async (row) => `ts ${note(row)}`, over: Store = store): void {
  const log = {
    info: () => {},
    warn: (fields: Record<string, unknown>) => void warnings.push(fields),
    error: () => {},
  };
  out = delivery({ store: over, log, now: Date.now }, send);
}

const channel = (name: string): Address => ({ to: 'post', channel: name });

const queue = (text: string, address = channel('C1'), expires = Date.now() + 1_800_000) =>
  store.within('T1', (bound) => bound.outbox.add(v7(), address, { text, blocks: [] }, Date.now(), expires));

/** Fails with each error in turn, then posts. */
function failing(...errors: unknown[]): Sender {
  return async (row) => {
    note(row);
    const error = errors.shift();
    if (error !== undefined) throw error;
    return undefined;
  };
}

async function run(ms: number): Promise<void> {
  out.wake();
  await vi.advanceTimersByTimeAsync(ms);
}

test('the cards of one channel go out in order, one a second', async () => {
  start();
  for (const text of ['first', 'second', 'third']) await queue(text);
  await run(5000);
  expect(posted).toEqual(['first at 0', 'second at 1000', 'third at 2000']);
});

test('another channel and a response url do not wait for a busy channel', async () => {
  start();
  await queue('first');
  await queue('second');
  await queue('other', channel('C2'));
  await queue('command', { to: 'response', url: 'https://hooks.slack.com/1' });
  await run(5000);
  expect(posted).toEqual(['first at 0', 'other at 0', 'command at 0', 'second at 1000']);
});

test('a card queued later is posted when it is woken again, and none is posted twice', async () => {
  start();
  await queue('first');
  await run(5000);
  await queue('second');
  await run(5000);
  expect(posted).toEqual(['first at 0', 'second at 5000']);
});

test('more cards than the hand holds all go out, in order', async () => {
  start();
  const texts = Array.from({ length: PACE.inHand + 5 }, (_, i) => `card ${i}`);
  for (const text of texts) await queue(text);
  await run(60_000);
  expect(posted.map((line) => line.split(' at ')[0])).toEqual(texts);
});

test('a rate limit holds the whole channel for as long as Slack says', async () => {
  start(failing({ retryAfter: 30 }));
  await queue('first');
  await queue('second');
  await run(40_000);
  expect(posted).toEqual(['first at 0', 'first at 30000', 'second at 31000']);
});

test('a passing failure is tried again after ever longer waits, and given up in the end', async () => {
  start(failing(...Array.from({ length: 9 }, () => ({ statusCode: 503 }))));
  await queue('card');
  await run(300_000);
  expect(posted).toEqual([0, 2000, 6000, 14_000, 30_000, 62_000].map((ms) => `card at ${ms}`));
  expect(warnings).toEqual([expect.objectContaining({ why: 'HTTP 503', attempts: PACE.tries })]);
});

test('a lasting failure is given up at once, and the next card goes out', async () => {
  start(failing({ data: { error: 'channel_not_found' } }));
  await queue('first');
  await queue('second');
  await run(5000);
  expect(posted).toEqual(['first at 0', 'second at 1000']);
  expect(warnings).toEqual([
    expect.objectContaining({ why: 'channel_not_found', advice: 'invite the bot to the channel' }),
  ]);
});

test('a card past its time is not posted', async () => {
  start();
  await queue('late', channel('C1'), Date.now());
  await run(5000);
  expect(posted).toEqual([]);
  expect(warnings).toEqual([expect.objectContaining({ why: 'expired' })]);
});

test('a card that another sender took goes out once its lease is over', async () => {
  start();
  await queue('card');
  await store.outbox.take(Date.now(), 20_000, 1);
  await run(30_000);
  expect(posted).toEqual(['card at 20000']);
});

test('no card is posted twice when the posts of a channel outlast the lease', async () => {
  start(async (row) => {
    note(row);
    await new Promise((resolve) => setTimeout(resolve, 9000));
    return undefined;
  });
  const texts = Array.from({ length: 10 }, (_, i) => `card ${i}`);
  for (const text of texts) await queue(text);
  await run(300_000);
  expect(posted.map((line) => line.split(' at ')[0])).toEqual(texts);
});

test('stopping finishes the post begun and leaves the others for the next start', async () => {
  const finished: string[] = [];
  start(async (row) => {
    note(row);
    await new Promise((resolve) => setTimeout(resolve, 500));
    finished.push(row.body.text);
    return undefined;
  });
  await queue('first');
  await queue('second');
  await run(100);
  const stopped = out.stop();
  await vi.advanceTimersByTimeAsync(2000);
  await stopped;
  expect(finished).toEqual(['first']);
  expect((await store.outbox.take(Date.now(), 1000, 10)).map(({ body }) => body.text)).toEqual(['second']);
});

test('a store that cannot be read is asked again', async () => {
  let faults = 1;
  const take: Store['outbox']['take'] = async (...args) => {
    if (faults-- > 0) throw new Error('disk full');
    return store.outbox.take(...args);
  };
  start(undefined, { ...store, outbox: { ...store.outbox, take } });
  await queue('card');
  await run(5000);
  expect(posted).toEqual([`card at ${PACE.retryMs}`]);
});
