import { describe, expect, test } from 'vitest';
import { evidence, gauge, spacingMm, standing, sureness } from '../../../core/gauge/gauge.js';
import { MEDIUM, ONE_SWATCH, read, THREE_SWATCHES, tube } from '../samples.js';

describe('the gauge of a profile', () => {
  test('gives the height of a row and the width of a stitch', () => {
    const { row, stitch, pieces } = gauge(evidence(MEDIUM));
    expect(row && spacingMm(row)).toBeCloseTo(5.08, 10);
    expect(stitch && spacingMm(stitch)).toBeCloseTo(342.9 / 46, 10);
    expect(pieces).toBe(1);
  });

  test('leaves out what was never measured', () => {
    expect(gauge(evidence([tube('a', 110, 558.8)])).stitch).toBeUndefined();
    expect(gauge(evidence([tube('a', 1, 1, { rows: undefined, stitches: read(46, 342.9) })])).row).toBeUndefined();
    expect(gauge(evidence([]))).toEqual({ row: undefined, stitch: undefined, pieces: 0, drift: undefined });
  });

  test('of a swatch read at rest does not use its hanging reading as well', () => {
    const both = gauge(evidence([tube('a', 110, 575, { state: 'hanging' }), tube('a', 110, 558.8)]));
    expect(both.row).toEqual(ONE_SWATCH);
    expect(both.pieces).toBe(1);
  });

  test('uses a hanging reading where a swatch has no other, and is less sure of it', () => {
    const { row } = gauge(evidence([tube('a', 110, 558.8, { state: 'hanging' })]));
    expect(row?.mu).toBeCloseTo(ONE_SWATCH.mu, 12);
    expect(row?.sd).toBeGreaterThan(ONE_SWATCH.sd);
  });

  test('for a panel takes tubes with the doubt that brings', () => {
    const { row } = gauge(evidence(MEDIUM), { state: 'rested', form: 'panel' });
    expect(row?.mu).toBeCloseTo(ONE_SWATCH.mu, 12);
    expect(row?.weight).toBeLessThan(ONE_SWATCH.weight);
  });
});

describe('how sure a gauge is', () => {
  // Half-widths of 80 % worked by hand: e^(1.533·.04252) − 1 = 6.7 %, e^(1.440·.02994) − 1 = 4.4 %.
  test('is rough on one swatch and fair on three', () => {
    expect(sureness(ONE_SWATCH)).toBe('rough');
    expect(sureness(THREE_SWATCHES)).toBe('fair');
  });

  test('turns good under 3.5 % and firm under 2.5 %', () => {
    const spread = (halfWidth: number) => ({ ...ONE_SWATCH, sd: Math.log(1 + halfWidth) / 1.5332 });
    expect([0.051, 0.049, 0.036, 0.034, 0.026, 0.024].map((half) => sureness(spread(half)))).toEqual([
      'rough',
      'fair',
      'fair',
      'good',
      'good',
      'firm',
    ]);
  });
});

describe('a new measurement', () => {
  // 4.604 is the t quantile of one in a hundred at 4 degrees of freedom: here 0.0425 with a ruler of 1.6 on 558.8 mm.
  test('is unusual beyond what one piece in a hundred passes', () => {
    const limit = 4.604 * Math.hypot(0.0425229, 1.6 / 558.8);
    expect(standing(ONE_SWATCH, read(110, 558.8 * Math.exp(limit - 0.002)))).toBe('usual');
    expect(standing(ONE_SWATCH, read(110, 558.8 * Math.exp(limit + 0.002)))).toBe('unusual');
    expect(standing(ONE_SWATCH, read(110, 558.8 * Math.exp(-limit - 0.002)))).toBe('unusual');
  });

  test('in another state is judged by how that state changes', () => {
    const hung = { delta: -0.04, variance: 0.013 ** 2 };
    expect(standing(THREE_SWATCHES, read(100, 508 * 1.11))).toBe('usual');
    expect(standing(THREE_SWATCHES, read(100, 508 * 1.15))).toBe('unusual');
    expect(standing(THREE_SWATCHES, read(100, 508 * 1.15), hung)).toBe('usual');
  });

  test('over a short length is judged less hard', () => {
    expect(standing(THREE_SWATCHES, read(100, 508 * 1.13))).toBe('unusual');
    expect(standing(THREE_SWATCHES, read(4, 20.32 * 1.13))).toBe('usual');
  });
});
