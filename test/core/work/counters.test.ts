import { describe, expect, test } from 'vitest';
import { weighed } from '../../../core/work/counters.js';
import { THREE_SWATCHES } from '../samples.js';
import { hanging, rested, TWO_PAIRS, workOf } from './samples.js';

const WORK = workOf(THREE_SWATCHES);
const LENGTH = { lengthMm: 323.85, state: 'rested' as const };
const AGREED = rested(40, 203.6);

// Worked independently.
describe('two counters, 64 and 62, and 323.85 mm', () => {
  test('by the profile alone are 63.67 rows, 59.1 to 68.6, odds 1.5: it cannot tell', () => {
    const verdict = weighed(WORK, [64, 62], LENGTH);
    expect(verdict.rows.expected).toBeCloseTo(63.67, 2);
    expect(verdict.rows.lo).toBeCloseTo(59.1, 1);
    expect(verdict.rows.hi).toBeCloseTo(68.6, 1);
    expect(verdict.odds).toBeCloseTo(1.48, 2);
    expect(verdict).toMatchObject({ trust: undefined, canTell: false });
  });

  test('after a reading at row 40 on which both agreed, odds are about 9: nearly enough', () => {
    const verdict = weighed(WORK, [64, 62], LENGTH, [AGREED]);
    expect(verdict.rows.expected).toBeCloseTo(63.63, 1);
    expect(verdict.odds).toBeGreaterThan(8);
    expect(verdict.odds).toBeLessThan(10);
    expect(verdict.trust).toBeUndefined();
  });

  test('trust the one that is ten times likelier', () => {
    expect(weighed(WORK, [64, 56], LENGTH, [AGREED])).toMatchObject({ trust: 'first', canTell: true });
    expect(weighed(WORK, [56, 64], LENGTH, [AGREED])).toMatchObject({ trust: 'second' });
  });
});

test('counts far from any length have odds that are still numbers', () => {
  const { odds } = weighed(WORK, [64, 5000], LENGTH, [AGREED]);
  expect(Number.isFinite(odds)).toBe(true);
  expect(odds).toBeGreaterThan(1e6);
});

describe('a length read as it hangs', () => {
  const HUNG = { lengthMm: 337.3, state: 'hanging' as const };

  test('against a hanging reading both agreed on needs no change of state', () => {
    const same = weighed(workOf(THREE_SWATCHES, TWO_PAIRS), [64, 62], HUNG, [hanging(40, 212.0)]);
    const other = weighed(workOf(THREE_SWATCHES, TWO_PAIRS), [64, 62], HUNG, [AGREED]);
    expect(same.rows.hi - same.rows.lo).toBeLessThan(other.rows.hi - other.rows.lo);
    expect(same.rows.expected).toBeCloseTo(63.6, 0);
  });

  test('against the profile alone is the less sure for it', () => {
    const hung = weighed(WORK, [64, 62], { ...HUNG, lengthMm: 323.85 });
    const atRest = weighed(WORK, [64, 62], LENGTH);
    expect(hung.rows.hi).toBeGreaterThan(atRest.rows.hi);
    expect(hung.rows.expected).toBeCloseTo(atRest.rows.expected, 9);
  });
});
