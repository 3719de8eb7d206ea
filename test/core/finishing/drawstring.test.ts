import { expect, test } from 'vitest';
import { CHANNEL_MM, drawstringMm, drawstringSteps, eyelets } from '../../../core/finishing/drawstring.js';
import { printed } from '../../../core/units/print.js';

test('a cord goes once round and leaves 140 mm at each end', () => {
  expect(drawstringMm(360)).toBe(640);
});

// (π/2)·5 + 5.
test('a hem of 12.9 mm holds a cord of 5 mm', () => {
  expect(CHANNEL_MM).toBeCloseTo(12.854, 3);
  const words = (hemMm: number) => drawstringSteps(48, hemMm, 25).map(({ say }) => printed(say, { units: 'cm' }))[0];
  expect(words(13)).toContain('through the hem');
  expect(words(12)).toContain('2.5 cm below the edge, 6 times');
});

test.each([
  [48, 6],
  [46, 6],
  [100, 14],
  [12, 2],
  [3, 2],
])('%d stitches take %d eyelets, 6 to 8 stitches apart where there are enough, always even', (stitches, places) => {
  expect(eyelets(stitches)).toBe(places);
});
