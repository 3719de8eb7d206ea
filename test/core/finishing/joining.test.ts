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
    expect(text(graft?.say)).toContain('this is row 107');
  });

  test('begins with the ends laid together so that a twist shows', () => {
    expect(text(steps[1]?.say)).toContain('the two threads run without a twist');
  });

  test('stops five pairs short, takes out the waste of both ends, and only then closes', () => {
    expect(text(steps[2]?.say)).toContain('stop 5 pairs short');
    expect(steps.slice(2).map((s) => [s.driver, s.count])).toEqual([
      ['graft', 46],
      ['take_out_waste', 10],
      [undefined, 0],
    ]);
    expect(text(steps.at(-1)?.say)).toBe('Graft the last 5 pairs; fasten.');
  });

  test('without known needles goes by the fabric instead', () => {
    const bare = { needles: undefined, rows: 106, loopMm: undefined };
    expect(text(ringGraftSteps(bare)[2]?.say)).toContain('every pair of stitches');
    expect(graftTail(bare).lengthMm).toBeUndefined();
    expect(text(graftTail(bare).say)).toBe('leave 4 times the girth of the tube to graft with');
  });
});

describe('the seam of a folded ring', () => {
  test.each([
    [107, 53, true],
    [111, 55, true],
    [108, 54, false],
  ])('of %d rows sews %d pairs of bars', (rowsInPiece, pairs, odd) => {
    const seam = foldSeamSteps(rowsInPiece).at(-1);
    expect(seam?.count).toBe(pairs);
    expect(text(seam?.say).includes('ease the odd bar in')).toBe(odd);
  });
});

test('casting off counts every stitch at each end', () => {
  expect(castOffSteps(46)[0]?.count).toBe(92);
  expect(castOffSteps(40)[0]?.count).toBe(80);
  expect(castOffSteps(undefined)[0]?.count).toBe(0);
});
