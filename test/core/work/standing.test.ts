import { describe, expect, test } from 'vitest';
import { doubtOf, pitchChange } from '../../../core/work/standing.js';
import { hanging, rested, workOf } from './samples.js';

const WORK = workOf();
const HALF = rested(50, 254);

describe('a reading that cannot be true is asked about', () => {
  test('shorter than an earlier one, by more than rulers err', () => {
    expect(doubtOf(WORK, rested(60, 240), [HALF])).toEqual({ is: 'shorter_than_before', before: HALF });
    expect(doubtOf(WORK, rested(51, 252), [HALF])).toBeUndefined();
  });

  test('at an earlier row but longer', () => {
    expect(doubtOf(WORK, rested(40, 270), [HALF])).toMatchObject({ is: 'shorter_than_before' });
  });

  test('but not when it hung before and lies at rest now', () => {
    expect(doubtOf(WORK, rested(52, 260), [hanging(50, 268)])).toBeUndefined();
  });

  test('more than twice what is expected, or less than half, with the row its length would fit', () => {
    expect(doubtOf(WORK, rested(30, 310), [])).toEqual({
      is: 'twice_expected',
      expectedMm: expect.closeTo(152.4, 6),
      likelyRow: 61,
    });
    expect(doubtOf(WORK, rested(60, 150), [])).toMatchObject({ is: 'twice_expected', likelyRow: 30 });
  });

  // t of .995 at 4 degrees is 4.604: 4.604·√(.0425229² + v) = .20 at row 60, so 22 % is beyond it and 20 % is not.
  test('beyond what one sound piece in a hundred shows', () => {
    expect(doubtOf(WORK, rested(60, 60 * 5.08 * 1.25), [])).toMatchObject({ is: 'unusual', likelyRow: 75 });
    expect(doubtOf(WORK, rested(60, 60 * 5.08 * 1.2), [])).toBeUndefined();
  });

  test('and any sound one is not', () => {
    expect(doubtOf(WORK, rested(60, 306), [HALF])).toBeUndefined();
  });
});

describe('a change of tension on the way', () => {
  test('shows where the rows since differ by more than rulers and rows explain', () => {
    const change = pitchChange(rested(40, 203), rested(80, 203 + 40 * 5.6), 107);
    expect(change).toBeCloseTo(Math.log(5.6 / (203 / 40)), 9);
  });

  test('does not show in a slip of the ruler, or between two states', () => {
    expect(pitchChange(rested(40, 203), rested(80, 410), 107)).toBeUndefined();
    expect(pitchChange(hanging(40, 203), rested(80, 430), 107)).toBeUndefined();
  });
});

test('a reading far from what the piece itself has shown is asked about, though the profile would allow it', () => {
  const earlier = [rested(60, 305)];
  expect(doubtOf(WORK, rested(70, 70 * 5.08 * 1.14), [])).toBeUndefined();
  expect(doubtOf(WORK, rested(70, 70 * 5.08 * 1.14), earlier)).toMatchObject({ is: 'unusual' });
});
