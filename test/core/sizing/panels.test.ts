import { describe, expect, test } from 'vitest';
import { isReached, middleMm, mostNeedles, panelRefused } from '../../../core/sizing/panels.js';

const panel = {
  field: { id: 'girth', label: 'Girth' },
  window: { loMm: 90, hiMm: 160 },
  needles: 20,
  measure: { share: 1, extra: -2, fixedMm: 0 },
  stitchMm: 10,
};

test('a panel leaves two needles free, of a machine that is known', () => {
  expect(mostNeedles(48)).toBe(46);
  expect(mostNeedles(undefined)).toBe(Number.POSITIVE_INFINITY);
});

test('a size is reached within 8 % of the middle of its window', () => {
  expect(middleMm(panel.window)).toBeCloseTo(120, 9);
  expect([110, 111, 129, 130].map((mm) => isReached(mm, panel.window))).toEqual([false, true, true, false]);
});

describe('a panel that cannot be made', () => {
  test('for want of needles says how many it would take', () => {
    expect(panelRefused(panel, 10, [])).toMatchObject({ code: 'too_many_needles', given: 20, max: 10, machine: 12 });
  });

  // 18·10 = 180 against 120: a third tighter.
  test('to its size says what its needles make', () => {
    expect(panelRefused(panel, 46, [])).toMatchObject({
      code: 'needles_set_it',
      expectedMm: 180,
      needles: 20,
      stitchChange: expect.closeTo(-1 / 3, 9),
    });
  });
});
