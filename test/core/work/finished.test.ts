import { describe, expect, test } from 'vitest';
import { finishedCount } from '../../../core/work/finished.js';
import { FOLDED_RING } from '../samples.js';

describe('a finished piece', () => {
  test('of 106 rows, grafted and folded to 10 7/8 in, measures rows of 276.225/53.5 mm over its own width', () => {
    const { count, overMm, how } = finishedCount(FOLDED_RING, 106, 276.225);
    expect([count, overMm, how]).toEqual([53.5, 276.225, 'read']);
  });

  test('is measured without the part that its rows do not make', () => {
    expect(finishedCount({ share: 1, extra: 0, fixedMm: -25 }, 100, 483)).toMatchObject({ count: 100, overMm: 508 });
  });
});
