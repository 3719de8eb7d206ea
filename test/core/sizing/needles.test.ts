import { describe, expect, test } from 'vitest';
import { evidence, gauge } from '../../../core/gauge/gauge.js';
import { needleDimension, needlesFor } from '../../../core/sizing/needles.js';
import type { Window } from '../../../core/sizing/rows.js';
import { MEDIUM } from '../samples.js';

const FLAT_TUBE = { share: 1 / 2, extra: 0, fixedMm: 0 };
const STITCH_MM = 342.9 / 46;
const { stitch } = gauge(evidence(MEDIUM));
if (stitch === undefined) throw new Error('no stitch was measured');
const STITCH = stitch;
const WINDOW = { loMm: 165, hiMm: 180 };
const flat = (needles: number, window?: Window) => needleDimension(FLAT_TUBE, needles, STITCH, window);

// Worked independently: one swatch read over its flat width of 171.45 mm.
describe('a flat tube', () => {
  test('on 46 needles is 171.45 mm wide, 160.4 to 183.3 mm eight times in ten', () => {
    const { expectedMm, likelyMm, asked } = flat(46);
    expect(expectedMm).toBeCloseTo(171.45, 9);
    expect(likelyMm.loMm).toBeCloseTo(160.4, 1);
    expect(likelyMm.hiMm).toBeCloseTo(183.3, 1);
    expect(asked).toBeUndefined();
  });

  test.each([
    [46, 171.45, 0.62, true],
    [48, 178.9, 0.48, true],
    [40, 149.1, 0.03, false],
  ])('on %d needles is %d mm wide and lands in 165 to 180 mm with chance %d', (needles, mm, chance, inside) => {
    const { expectedMm, asked } = flat(needles, WINDOW);
    expect(expectedMm).toBeCloseTo(mm, 1);
    expect(asked).toMatchObject({ inside, needlesWanted: 46 });
    // Two printed digits.
    expect(Math.abs((asked?.chance ?? 0) - chance)).toBeLessThan(0.005);
  });

  test('names the needles and the change of stitch width that another window wants', () => {
    const { asked } = flat(46, { loMm: 195, hiMm: 205 });
    expect(asked).toMatchObject({ inside: false, needlesWanted: 54 });
    expect(asked?.stitchChange).toBeCloseTo(Math.sqrt(195 * 205) / 171.45 - 1, 9);
  });
});

describe('a seamed dimension', () => {
  test('loses its seam stitches from the needles, in size and in chance', () => {
    const seamed = { share: 1, extra: -2, fixedMm: 0 };
    const exact = { ...STITCH, mu: Math.log(7.5) };
    const { expectedMm, asked } = needleDimension(seamed, 40, exact, { loMm: 285 / 1.02, hiMm: 285 * 1.02 });
    expect(expectedMm).toBeCloseTo(285, 9);
    expect(asked?.needlesWanted).toBe(40);
    expect(asked?.stitchChange).toBeCloseTo(0, 9);
  });
});

describe('the needles for a window', () => {
  test('are the whole number nearest in logs', () => {
    expect(needlesFor({ loMm: 165, hiMm: 180 }, FLAT_TUBE, STITCH_MM)).toBe(46);
    const unit = { share: 1, extra: 0, fixedMm: 0 };
    expect(needlesFor({ loMm: 10, hiMm: 11 }, unit, 1)).toBe(10);
    // 10.4925 is nearer to 10, but its square, 110.09, is over 10·11.
    expect(needlesFor({ loMm: 10.49, hiMm: 10.495 }, unit, 1)).toBe(11);
  });

  test('are at least one', () => {
    expect(needlesFor({ loMm: 1, hiMm: 2 }, FLAT_TUBE, STITCH_MM)).toBe(1);
  });
});

test('a least size has the chance of coming to at least that', () => {
  const spread = { mu: Math.log(7.5), sd: 0.03, nu: Number.POSITIVE_INFINITY };
  const tube = { share: 1 / 2, extra: 0, fixedMm: 0 };
  expect(needleDimension(tube, 48, spread, undefined, 180).needed?.chance).toBeCloseTo(0.5, 9);
  // One standard deviation below the middle.
  expect(needleDimension(tube, 48, spread, undefined, 180 * Math.exp(-0.03)).needed?.chance).toBeCloseTo(0.8413, 4);
  expect(needleDimension(tube, 48, spread, undefined).needed).toBeUndefined();
});
