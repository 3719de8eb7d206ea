import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { landingChance, type Measure, rowsFor, type Window } from '../../core/sizing/rows.js';
import { ONE_SWATCH, THREE_SWATCHES } from '../core/samples.js';
import { FIXED } from './asking.js';

/** Every way that rows make a size: whole or folded, ends grafted or not, hemmed or not. */
const measure: fc.Arbitrary<Measure> = fc.record({
  share: fc.constantFrom(1 / 2, 1),
  extra: fc.constantFrom(0, 1 / 2, 1),
  fixedMm: fc.constantFrom(0, -25),
});
const window: fc.Arbitrary<Window> = fc
  .tuple(fc.double({ min: 60, max: 2000, noNaN: true }), fc.double({ min: 0.5, max: 30, noNaN: true }))
  .map(([loMm, percent]) => ({ loMm, hiMm: loMm * (1 + percent / 100) }));
const row = fc.constantFrom(ONE_SWATCH, THREE_SWATCHES);

const moved = (window: Window, by: (mm: number) => number): Window => ({
  loMm: by(window.loMm),
  hiMm: by(window.hiMm),
});

describe('the rows chosen for a window', () => {
  test('land at least as often as one row fewer or more', () => {
    fc.assert(
      fc.property(window, measure, row, (window, measure, row) => {
        const { rowsInPiece, chance } = rowsFor(window, measure, row);
        const fewer = rowsInPiece - 1 > measure.extra ? landingChance(window, measure, rowsInPiece - 1, row) : 0;
        const best = Math.max(fewer, landingChance(window, measure, rowsInPiece + 1, row));
        expect(chance).toBeGreaterThanOrEqual(best - 1e-12);
      }),
      FIXED,
    );
  });

  test('are never fewer for a window further out', () => {
    fc.assert(
      fc.property(
        window,
        fc.double({ min: 0, max: 200, noNaN: true }),
        measure,
        row,
        (window, farther, measure, row) => {
          const beyond = moved(window, (mm) => mm + farther);
          expect(rowsFor(beyond, measure, row).rows).toBeGreaterThanOrEqual(rowsFor(window, measure, row).rows);
        },
      ),
      FIXED,
    );
  });

  test('with the graft come to twice as many, within one, when the part that rows make is doubled', () => {
    fc.assert(
      fc.property(window, measure, row, (window, measure, row) => {
        const { fixedMm, extra } = measure;
        const twice = moved(window, (mm) => 2 * (mm - fixedMm) + fixedMm);
        const off = rowsFor(twice, measure, row).rowsInPiece - 2 * rowsFor(window, measure, row).rowsInPiece;
        // An end shut flat makes half a row, so only every other half can be met.
        expect(Math.abs(off)).toBeLessThanOrEqual(Number.isInteger(extra) ? 1 : 1.5);
      }),
      FIXED,
    );
  });

  test('with the graft are a multiple of a stripe repeat, and the nearest one in chance', () => {
    fc.assert(
      fc.property(window, fc.integer({ min: 2, max: 12 }), row, (window, repeat, row) => {
        const ring: Measure = { share: 1 / 2, extra: 1, fixedMm: 0 };
        const { rowsInPiece, chance } = rowsFor(window, ring, row, repeat);
        expect(rowsInPiece % repeat).toBe(0);
        expect(chance).toBeGreaterThanOrEqual(landingChance(window, ring, rowsInPiece + repeat, row));
        expect(chance).toBeGreaterThanOrEqual(
          rowsInPiece > repeat ? landingChance(window, ring, rowsInPiece - repeat, row) : 0,
        );
      }),
      FIXED,
    );
  });
});
