import { describe, expect, test } from 'vitest';
import { castOffSteps, foldSeamSteps, graftTail, ringGraftSteps } from '../../../core/finishing/joining.js';
import { printed } from '../../../core/units/print.js';
import type { Words } from '../../../core/words.js';

const text = (words: Words | undefined) => (words === undefined ? '' : printed(words, { units: 'in' }));

describe('grafting a ring', () => {
  const steps = ringGraftSteps({ needles: 46, rows: 106, loopMm: 26.8234 });

  test('joins one pair a needle and makes one row more', () => {
    const graft = steps.find((s) => s.driver === 'graft');
    expect(graft?.count).toBe(46);
    expect(text(graft?.say)).toContain('The graft makes row 107.');
  });

  test('begins with the ends laid together so that a twist shows', () => {
    expect(text(steps[0]?.say)).toContain('the two contrast threads must run without a twist');
  });

  test('takes out the waste of both ends', () => {
    expect(steps.find((s) => s.driver === 'take_out_waste')?.count).toBe(10);
  });

  test('without known needles goes by the fabric instead', () => {
    const bare = { needles: undefined, rows: 106, loopMm: undefined };
    expect(text(ringGraftSteps(bare)[1]?.say)).toContain('every pair of stitches');
    expect(graftTail(bare).lengthMm).toBeUndefined();
    expect(text(graftTail(bare).say)).toBe('a tail 4 times as long as the tube is round');
  });
});

describe('the seam of a folded ring', () => {
  test.each([
    [107, 53, true],
    [111, 55, true],
    [108, 54, false],
  ])('of %d rows sews %d pairs of bars', (rowsInPiece, pairs, odd) => {
    const [seam] = foldSeamSteps(rowsInPiece);
    expect(seam?.count).toBe(pairs);
    expect(text(seam?.say).includes('Ease the odd bar in')).toBe(odd);
  });
});

test('casting off counts every stitch at each end', () => {
  expect(castOffSteps(46)[0]?.count).toBe(92);
  expect(castOffSteps(40)[0]?.count).toBe(80);
  expect(castOffSteps(undefined)[0]?.count).toBe(0);
});
