import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type PlanInput, plan } from '../../core/plan.js';
import { FIXED, input, unprintable } from './asking.js';

function frozen<T>(value: T): T {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    Object.values(value).forEach(frozen);
  }
  return value;
}

/** The size that a number of rows would come to, from the plan's own two ends: the size grows evenly with rows. */
const sizeAt = (rows: number, landing: { rows: number; rowsAtLo: number; expectedMm: number; loMm: number }): number =>
  landing.loMm + ((rows - landing.rowsAtLo) * (landing.expectedMm - landing.loMm)) / (landing.rows - landing.rowsAtLo);

describe('any plan', () => {
  test('holds only finite numbers and no minus zero, whatever was asked within the ranges', () => {
    fc.assert(
      fc.property(input, (asked) => {
        expect(unprintable(plan(asked))).toEqual([]);
      }),
      FIXED,
    );
  });

  test('is the same when made twice from the same input', () => {
    fc.assert(
      fc.property(input, (asked) => {
        expect(plan(asked)).toEqual(plan(structuredCloned(asked)));
      }),
      FIXED,
    );
  });

  test('is made without touching what it is made from', () => {
    fc.assert(
      fc.property(input, (asked) => {
        const { piece, ...rest } = asked;
        expect(() => plan({ piece, ...frozen(structuredClone(rest)) })).not.toThrow();
      }),
      FIXED,
    );
  });

  test('expects a size inside the window whenever some whole number of rows allows it', () => {
    let allowed = 0;
    fc.assert(
      fc.property(input, (asked) => {
        const outcome = plan(asked);
        if (!outcome.ok) return;
        const { landing } = outcome.value;
        const fewest = Math.max(1, Math.ceil(landing.rowsAtLo + 1e-9));
        if (fewest > landing.rowsAtHi - 1e-9) return;
        allowed += 1;
        expect(landing.expectedMm).toBeGreaterThanOrEqual(landing.loMm);
        expect(landing.expectedMm).toBeLessThanOrEqual(landing.hiMm);
        expect(sizeAt(landing.rowsAtHi, landing)).toBeCloseTo(landing.hiMm, 6);
      }),
      FIXED,
    );
    expect(allowed).toBeGreaterThan(FIXED.numRuns / 10);
  });
});

/** A copy of all that can be copied: a kind of piece is code and stays itself. */
const structuredCloned = ({ piece, ...rest }: PlanInput): PlanInput => ({ piece, ...structuredClone(rest) });
