import { expect, test } from 'vitest';
import { backwards } from '../../../core/batch/backwards.js';
import { at, EVENINGS, hours, MONDAY } from './samples.js';

test('tasks are placed one before another, a rest by the clock between them', () => {
  const placed = backwards(
    [
      { id: 'knit', workS: hours(3), restS: hours(12) },
      { id: 'seam', workS: hours(1) },
    ],
    EVENINGS,
    at(MONDAY + 4, 24),
  );
  expect(placed).toEqual([
    { id: 'knit', begin: at(MONDAY + 2, 19), done: at(MONDAY + 4, 7) },
    { id: 'seam', begin: at(MONDAY + 4, 19), done: at(MONDAY + 4, 24) },
  ]);
});
