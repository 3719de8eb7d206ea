import { describe, expect, test } from 'vitest';
import { exact, rounded, roundedDown, roundedUp, share, total } from '../../../core/money/exact.js';

describe('a figure as an exact rational', () => {
  test('is the decimal it prints as, not the binary behind it', () => {
    expect(exact(1.005).toFraction()).toBe('201/200');
    expect(exact(0.1).add(exact(0.2)).toFraction()).toBe('3/10');
    expect(exact(1e-7).toFraction()).toBe('1/10000000');
    expect(exact(8491.315).toFraction()).toBe('1698263/200');
    expect(exact(1.5e21).toFraction()).toBe('1500000000000000000000');
    expect(exact(-0.25).toFraction()).toBe('-1/4');
  });

  test('is nothing where it is finer than a million millionth', () => {
    expect(exact(5e-324).valueOf()).toBe(0);
    expect(exact(-0).valueOf()).toBe(0);
  });

  test('in per cent is a share', () => {
    expect(share(6.5).toFraction()).toBe('13/200');
  });

  test('sums to nothing where there is nothing', () => {
    expect(total([]).valueOf()).toBe(0);
  });
});

describe('rounding', () => {
  test.each([
    [0.5, 0],
    [1.5, 2],
    [2.5, 2],
    [2.500001, 3],
    [2.499999, 2],
    [-0.5, 0],
    [-1.5, -2],
    [-2.5, -2],
    [-2.6, -3],
  ])('takes %s to %s, a half to the even neighbour', (figure, whole) => {
    expect(rounded(exact(figure))).toBe(whole);
  });

  test('down and up end on either side, below nought too', () => {
    expect([roundedDown(exact(-1.2)), roundedUp(exact(-1.2))]).toEqual([-2, -1]);
    expect([roundedDown(exact(1.2)), roundedUp(exact(1.2)), roundedUp(exact(3))]).toEqual([1, 2, 3]);
  });
});
