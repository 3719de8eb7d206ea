import { describe, expect, test } from 'vitest';
import { estimate, GAUGE_PRIOR, widened } from '../../../core/gauge/estimate.js';
import { ONE_SWATCH, observed, rowsIn, THREE_SWATCHES, tube } from '../samples.js';

const identical = (howMany: number, rows: number, overMm: number) =>
  estimate(
    rowsIn(Array.from({ length: howMany }, (_, i) => tube(`${i}`, rows, overMm))).flatMap((swatch) =>
      swatch.map(observed),
    ),
  );
const exact = (...ys: number[]) => ys.map((y) => ({ y, weight: 1 }));

// Worked independently: the closed form by hand, the chances it leads to by quadrature of the posterior.
describe('an estimate of gauge', () => {
  test('of one swatch of 110 rows in 558.8 mm rests on the scatter known beforehand', () => {
    expect(ONE_SWATCH.mu).toBeCloseTo(1.6253112616, 10);
    expect(ONE_SWATCH.s2).toBeCloseTo(0.0009, 12);
    expect(ONE_SWATCH.nu).toBe(4);
    expect(ONE_SWATCH.weight).toBeCloseTo(0.9909729374, 10);
    expect(ONE_SWATCH.sd).toBeCloseTo(0.0425229157, 10);
  });

  test('of three swatches weighs each by the length it was read over', () => {
    expect(THREE_SWATCHES.mu).toBeCloseTo(1.6265654103, 10);
    expect(THREE_SWATCHES.s2).toBeCloseTo(6.69367564e-4, 12);
    expect(THREE_SWATCHES.nu).toBe(6);
    expect(THREE_SWATCHES.weight).toBeCloseTo(0.990973 + 0.97123 + 0.982645, 5);
    expect(THREE_SWATCHES.sd).toBeCloseTo(0.0299444272, 10);
    expect(THREE_SWATCHES.pieces).toBe(3);
  });

  test('of eight identical swatches still keeps part of the scatter known beforehand', () => {
    const found = identical(8, 100, 508);
    expect(found?.s2).toBeCloseTo((0.0009 * 4) / 11, 12);
    expect(found?.sd).toBeCloseTo(0.0192, 6);
  });

  test('of a thousand identical swatches never claims less scatter than laying out has', () => {
    expect(identical(1000, 100, 508)?.s2).toBe(0.005 ** 2);
  });
});

describe('an estimate', () => {
  test('needs an observation, and without prior scatter two that differ', () => {
    const bare = { nu0: 0, tau0: 0.03 };
    expect(estimate([])).toBeUndefined();
    expect(estimate(exact(1.6), bare)).toBeUndefined();
    expect(estimate(exact(1.6, 1.6), bare)).toBeUndefined();
    expect(estimate(exact(1.6, 1.7), bare)?.nu).toBe(1);
  });

  // Worked independently: seconds a pair, 18 s expected, three logs.
  test('learns from a mean known beforehand: 14.0, 12.5 and 13.2 s against 18 s come to 13.826 s', () => {
    const prior = { nu0: 4, tau0: 0.25, k0: 0.25 ** 2 / 0.35 ** 2, m0: Math.log(18) };
    const found = estimate(exact(Math.log(14), Math.log(12.5), Math.log(13.2)), prior);
    expect(found?.weight).toBeCloseTo(3.5102, 4);
    expect(Math.exp(found?.mu ?? 0)).toBeCloseTo(13.826, 3);
    expect(found?.nu).toBe(7);
    expect(Math.sqrt(found?.s2 ?? 0)).toBeCloseTo(0.20632, 5);
    expect(found?.sd).toBeCloseTo(0.23387, 5);
  });

  test('with a mean known beforehand stands without any observation', () => {
    const prior = { nu0: 4, tau0: 0.25, k0: 0.5, m0: 3 };
    expect(estimate([], prior)).toMatchObject({ mu: 3, nu: 4, weight: 0.5, s2: 0.0625 });
  });

  test('widened by one unknown factor counts for no more than tau0²/variance pieces', () => {
    const wide = widened(THREE_SWATCHES, GAUGE_PRIOR.tau0 ** 2);
    expect(wide.weight).toBeCloseTo(1 / (1 / THREE_SWATCHES.weight + 1), 12);
    expect(wide.weight).toBeLessThan(1);
    expect(wide.sd).toBeCloseTo(Math.sqrt(THREE_SWATCHES.s2 * (1 + 1 / wide.weight)), 12);
    expect(widened(THREE_SWATCHES, 0)).toEqual(THREE_SWATCHES);
  });
});
