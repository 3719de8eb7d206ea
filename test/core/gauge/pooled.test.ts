import { describe, expect, test } from 'vitest';
import { factorsFrom, pairsIn, UNPAIRED } from '../../../core/gauge/factors.js';
import type { Measurement, Setting } from '../../../core/gauge/measurement.js';
import { pooled } from '../../../core/gauge/pooled.js';
import { ONE_SWATCH, rowsIn, tube } from '../samples.js';

const RESTED: Setting = { state: 'rested', form: 'tube' };
const inRest = (...measurements: Measurement[]) => pooled(RESTED, rowsIn(measurements))?.estimate;
const hung = (swatch: string, rows: number, overMm: number) => tube(swatch, rows, overMm, { state: 'hanging' });
const many = (howMany: number, of: (swatch: string) => Measurement) =>
  Array.from({ length: howMany }, (_, i) => of(`${i}`));
const TWO_PAIRS = factorsFrom(
  pairsIn(rowsIn([hung('p', 60, 320), tube('p', 60, 306), hung('q', 60, 302), tube('q', 60, 291)])),
);

describe('gauge at rest', () => {
  test('from readings at rest alone is the plain estimate', () => {
    expect(inRest(tube('a', 110, 558.8))).toEqual(ONE_SWATCH);
  });

  // Worked independently: weights .96936 and .87511, the hanging group 1/(1/(4·.87511) + 1) = .77780.
  test('from two rested and four hanging swatches of 300 mm weighs 2.71653', () => {
    const found = inRest(...many(2, (s) => tube(`rested ${s}`, 60, 300)), ...many(4, (s) => hung(s, 60, 300)));
    expect(found?.weight).toBeCloseTo(2.71653, 5);
    expect((found?.weight ?? 0) - 2 * 0.96936).toBeCloseTo(0.7778, 4);
    expect(found?.nu).toBe(4 + 6 - 1);
    expect(found?.mu).toBeCloseTo(Math.log(5), 12);
  });

  test('from any number of hanging swatches weighs less than one rested swatch', () => {
    const ten = inRest(...many(10, (s) => hung(s, 60, 300)));
    const thousand = inRest(...many(1000, (s) => hung(s, 60, 300)));
    expect(thousand?.weight).toBeGreaterThan(ten?.weight ?? 1);
    expect(thousand?.weight).toBeLessThan(1);
  });

  test('counts a difference between rested and hanging swatches as scatter', () => {
    const apart = inRest(tube('a', 60, 300), hung('b', 60, 318));
    const alike = inRest(tube('a', 60, 300), hung('b', 60, 300));
    expect(apart?.s2).toBeGreaterThan(alike?.s2 ?? 1);
    expect(apart?.mu).toBeGreaterThan(Math.log(5));
    expect(apart?.mu).toBeLessThan(Math.log(5.3));
  });

  test('is not known without a reading', () => {
    expect(inRest()).toBeUndefined();
  });

  // Worked independently: after the two pairs the hanging group weighs 2.73908.
  test('weighs hanging swatches more once pairs have taught the change', () => {
    const measured = [...many(2, (s) => tube(`rested ${s}`, 60, 300)), ...many(4, (s) => hung(s, 60, 300))];
    const known = pooled(RESTED, rowsIn(measured), TWO_PAIRS)?.estimate;
    expect(known?.weight).toBeCloseTo(4.6778, 4);
    const alone = pooled(RESTED, rowsIn(many(4, (s) => hung(s, 60, 300))), TWO_PAIRS)?.estimate;
    expect(alone?.weight).toBeCloseTo(2.73908, 5);
    expect(alone?.mu).toBeCloseTo(Math.log(5) - 0.037738, 6);
  });

  test('of a swatch read in several states uses the reading nearest to rest', () => {
    const three = [hung('a', 110, 575), tube('a', 110, 558.8), tube('a', 110, 540, { state: 'washed' })];
    expect(pooled(RESTED, rowsIn(three), UNPAIRED)?.estimate).toEqual(ONE_SWATCH);
  });
});
