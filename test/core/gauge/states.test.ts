import { describe, expect, test } from 'vitest';
import { swatchReadings } from '../../../core/gauge/observations.js';
import { estimateIn, type Setting, unpairedFactor } from '../../../core/gauge/states.js';
import { ONE_SWATCH, tube } from '../samples.js';

const RESTED: Setting = { state: 'rested', form: 'tube' };
const inRest = (...measurements: ReturnType<typeof tube>[]) =>
  estimateIn(
    RESTED,
    swatchReadings(measurements, (m) => m.rows),
  );
const hung = (swatch: string, rows: number, overMm: number) => tube(swatch, rows, overMm, { state: 'hanging' });
const many = (howMany: number, of: (swatch: string) => ReturnType<typeof tube>) =>
  Array.from({ length: howMany }, (_, i) => of(`${i}`));

describe('the change between two settings, before any pair is known', () => {
  test('is 3 % for weights off, 5 % for washing, both for both, and 3 % from tube to panel', () => {
    const spread = (from: Setting, to: Setting) => Math.sqrt(unpairedFactor(from, to).variance);
    expect(spread({ state: 'hanging', form: 'tube' }, RESTED)).toBeCloseTo(0.03, 12);
    expect(spread(RESTED, { state: 'washed', form: 'tube' })).toBeCloseTo(0.05, 12);
    expect(spread({ state: 'hanging', form: 'tube' }, { state: 'washed', form: 'tube' })).toBeCloseTo(0.0583, 4);
    expect(spread(RESTED, { state: 'rested', form: 'panel' })).toBeCloseTo(0.03, 12);
    expect(spread(RESTED, RESTED)).toBe(0);
  });
});

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
});
