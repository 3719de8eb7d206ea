import { describe, expect, test } from 'vitest';
import { isReached, middleMm, mostNeedles, panelRefused, panelsInstead } from '../../../core/sizing/panels.js';

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

describe('panels in the place of a tube of 46 needles', () => {
  const along = { loMm: 500, hiMm: 510 };
  const flat = (loMm: number, hiMm: number) => ({
    window: { loMm, hiMm },
    measure: { share: 1 / 2, extra: 0, fixedMm: 0 },
    stitchMm: 7.5,
  });

  // 203/7.5 = 27.1 stitches that show, and 2 in the seams.
  test('are one of W/w + 2 needles where one layer is as wide', () => {
    const made = panelsInstead({ way: 'one_layer', along }, flat(198, 208), 46);
    expect(made).toEqual({ way: 'one_layer', count: 1, needles: 29, along });
  });

  // 2·203/7.5 = 54.1 stitches round: 42 of a panel show at most, so 2 of 27 + 2.
  test('are several where they are sewn to go all round', () => {
    const made = panelsInstead({ way: 'sewn_round', along }, flat(198, 208), 46);
    expect(made).toEqual({ way: 'sewn_round', count: 2, needles: 29, along });
  });

  test('are none where they would be a blanket, whole stitches miss the size, or no needles are left', () => {
    expect(panelsInstead({ way: 'one_layer', along }, flat(4000, 4100), 46)).toBeUndefined();
    expect(panelsInstead({ way: 'one_layer', along }, flat(202, 202.2), 46)).toBeUndefined();
    expect(panelsInstead({ way: 'one_layer', along }, flat(198, 208), 4)).toBeUndefined();
  });
});
