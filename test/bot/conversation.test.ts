import { expect, test } from 'vitest';
import { Conversation, openMs, rememberedMs } from '../../bot/conversation.js';

const HOUR_MS = 3_600_000;

test.each([
  ['command:C1', 2, 2],
  ['dm:D1', 12, 24],
  ['thread:C1:1', 30 * 24, 30 * 24],
])('%s is remembered for %d hours, and a question there stays open for %d', (place, remembered, open) => {
  expect(rememberedMs(place)).toBe(remembered * HOUR_MS);
  expect(openMs(place)).toBe(open * HOUR_MS);
});

test('an empty talk is a whole one, and survives being written and read', () => {
  const empty = Conversation.parse({});
  expect(empty).toEqual({ v: 1, offered: [], changes: [] });
  expect(Conversation.parse(JSON.parse(JSON.stringify(empty)))).toEqual(empty);
});
