import { expect, test } from 'vitest';
import {
  FIBRE_DENSITY,
  guessCv,
  jams,
  loopLengthMm,
  peirceLoopMm,
  tightness,
  yarnDiameterMm,
} from '../../../core/yarn/loop.js';

const STITCH_MM = 342.9 / 46;

// Worked by hand: √(19·(342.9/46)·5.08) = 26.8234, √(21.6·…) = 28.600, √(23.1·…) = 29.576, √(19·9.5·6.5) = 34.253.
test('a stitch of 7.454 by 5.08 mm holds 26.82 mm of yarn at rest, 28.60 mm washed and 29.58 mm fully relaxed', () => {
  expect(loopLengthMm(STITCH_MM, 5.08, 'rested')).toBeCloseTo(26.8234, 4);
  expect(loopLengthMm(STITCH_MM, 5.08, 'washed')).toBeCloseTo(28.6, 3);
  expect(loopLengthMm(STITCH_MM, 5.08, 'fully_relaxed')).toBeCloseTo(29.576, 3);
  expect(loopLengthMm(9.5, 6.5, 'rested')).toBeCloseTo(34.253, 3);
});

// Worked by hand: .0444·√(500/1.31) = .8674; 2·5.08 + 7.45435 + 5.94·.8674 = 22.77.
test('the geometry of a loop reads 15% less on that open fabric in a wool of 500 tex', () => {
  expect(yarnDiameterMm(500)).toBeCloseTo(0.8674, 4);
  expect(peirceLoopMm(STITCH_MM, 5.08, 500)).toBeCloseTo(22.77, 2);
  expect(1 - peirceLoopMm(STITCH_MM, 5.08, 500) / loopLengthMm(STITCH_MM, 5.08, 'rested')).toBeCloseTo(0.15, 2);
});

// 20 tex cotton of 18 courses and 13 wales to the cm.
test('on close industrial fabric both agree within 1%: 2.84 and 2.85 mm', () => {
  const peirce = peirceLoopMm(10 / 13, 10 / 18, 20, FIBRE_DENSITY.cotton);
  const constant = loopLengthMm(10 / 13, 10 / 18, 'rested');
  expect(peirce).toBeCloseTo(2.84, 2);
  expect(constant).toBeCloseTo(2.85, 2);
  expect(Math.abs(peirce / constant - 1)).toBeLessThan(0.01);
});

// √500/2.68234 = 8.336.
test('500 tex in loops of 26.8 mm has tightness 8.3, below that of the fabric the constants come from', () => {
  expect(tightness(500, 26.8234)).toBeCloseTo(8.34, 2);
  expect(guessCv(26.8234, 500)).toBe(0.2);
});

// 48 needles 28 cm round, 120 courses in 48 cm: 16²/(5.8333·4) = 10.97; 2·4 + 5.8333 + 5.94·.8674 = 18.99.
test('loops of 16 mm at 5.83 by 4 mm lie far below the constant, and 16% below the geometry of a loop', () => {
  expect(16 / loopLengthMm(280 / 48, 4, 'rested')).toBeCloseTo(Math.sqrt(10.971 / 19), 3);
  expect(1 - 16 / peirceLoopMm(280 / 48, 4, 500)).toBeCloseTo(0.16, 2);
});

test('a guess from gauge is given 15% on close fabric, 20% on open fabric and where the tex is not known', () => {
  expect(guessCv(22, 500)).toBe(0.15);
  expect(guessCv(22.37, 500)).toBe(0.2);
  expect(guessCv(22, undefined)).toBe(0.2);
});

test('a loop jams below 16.67 diameters of its yarn', () => {
  const diameterMm = yarnDiameterMm(500);
  expect(jams(500, 16.6 * diameterMm)).toBe(true);
  expect(jams(500, 16.7 * diameterMm)).toBe(false);
});
