import { describe, expect, test } from 'vitest';
import { finishedCount, readingCount } from '../../../core/work/finished.js';
import { FOLDED_RING } from '../samples.js';
import { hanging } from './samples.js';

describe('a finished piece', () => {
  test('of 106 rows, grafted and folded to 10 7/8 in, measures rows of 276.225/53.5 mm over its own width', () => {
    const { count, overMm, how } = finishedCount(FOLDED_RING, 106, 276.225);
    expect([count, overMm, how]).toEqual([53.5, 276.225, 'read']);
  });

  test('is measured without the part that its rows do not make', () => {
    expect(finishedCount({ share: 1, extra: 0, fixedMm: -25 }, 100, 483)).toMatchObject({ count: 100, overMm: 508 });
  });
});

describe('a reading on the way, once the piece is done', () => {
  // .005·√((107 − 20)/20) = 1.04 % of 101.6 mm.
  test('of row 20 of 107 stands for the whole within 1 %, and of the last row exactly', () => {
    expect(readingCount(hanging(20, 101.6), 107)).toMatchObject({ count: 20, spreadMm: expect.closeTo(1.06, 2) });
    expect(readingCount(hanging(107, 543.6), 107).spreadMm).toBe(0);
  });
});
