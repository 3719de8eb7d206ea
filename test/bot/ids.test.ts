import { validate, version } from 'uuid';
import { expect, test, vi } from 'vitest';
import { newId } from '../../bot/ids.js';

test('ids are UUIDs of version 7, none twice, and sort in the order in which they were made', () => {
  const ids = Array.from({ length: 5000 }, newId);
  expect(ids.every((id) => validate(id) && version(id) === 7)).toBe(true);
  expect(new Set(ids).size).toBe(ids.length);
  expect([...ids].sort()).toEqual(ids);
});

test('a clock set back makes no id that sorts before those made', () => {
  const before = newId();
  vi.useFakeTimers({ now: Date.now() - 60_000 });
  try {
    expect(newId() > before).toBe(true);
  } finally {
    vi.useRealTimers();
  }
});
