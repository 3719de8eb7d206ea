import { expect, test } from 'vitest';
import { fringeYarnMm, strandMm, tasselsAlong } from '../../../core/finishing/fringe.js';

// Worked by hand: 180/30 + 1 = 7; 2·(120 + 20) = 280; 2·7·3·280 = 11,760.
test('a fringe of 120 mm, 3 strands every 30 mm over 180 mm, takes 42 strands of 280 mm: 11.76 m', () => {
  expect(tasselsAlong(180, 30)).toBe(7);
  expect(strandMm(120)).toBe(280);
  expect(fringeYarnMm({ tassels: 7, strands: 3, hangsMm: 120 })).toBe(11_760);
});

test.each([
  [179, 6],
  [29, 1],
])('an edge of %d mm takes %d tassels 30 mm apart', (edgeMm, tassels) => {
  expect(tasselsAlong(edgeMm, 30)).toBe(tassels);
});
