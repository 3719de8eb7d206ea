import { expect, test } from 'vitest';
import { STRAPS, strapMm, strapNotion, strapSteps } from '../../../core/finishing/strap.js';
import { printed } from '../../../core/units/print.js';

// Worked by hand: 2·√(250² + 90²) + 100 = 631.4; 2·√(120² + 100²) + 80 = 392.4; 80 mm are turned in.
test.each([
  ['a shoulder', 250, 711.4],
  ['a hand', 120, 472.4],
])('a strap for a piece 280 mm wide over %s, %d mm below, is cut %d mm', (_, dropMm, cutMm) => {
  expect(strapMm(dropMm, 280)).toBeCloseTo(cutMm, 1);
});

test('a strap is cut no shorter than it needs to be', () => {
  expect(strapNotion(711.4)).toMatchObject({ count: 1, cutMm: 711.4 });
});

test('a strap goes through its rings, or in at the folds where there are none, and is tried with a load', () => {
  const told = (rings: boolean) => strapSteps(rings).map(({ say }) => printed(say, { units: 'cm' }));
  expect(strapSteps(true).map(({ driver, count }) => [driver, count])).toEqual([
    ['strap', 2],
    [undefined, 0],
  ]);
  expect(told(true)).toEqual([
    'Turn 4 cm of each end of the strap through its ring; sew it down.',
    'Hang twice the load on it and look at the seams.',
  ]);
  expect(told(false)[0]).toContain('in at a side fold');
});

test('a hand, a shoulder and a hip have drops of their own: the middle of 10 to 15, 20 to 30 and 50 to 60 cm', () => {
  expect(STRAPS.map(({ mm }) => mm)).toEqual([(100 + 150) / 2, (200 + 300) / 2, (500 + 600) / 2]);
});
