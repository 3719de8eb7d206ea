import { describe, expect, test } from 'vitest';
import {
  dimensionalChange,
  factorBetween,
  factorsFrom,
  type Pair,
  pairsIn,
  pairTaught,
  pieceFactor,
  UNPAIRED,
} from '../../../core/gauge/factors.js';
import type { Setting } from '../../../core/gauge/measurement.js';
import { rowsIn, tube } from '../samples.js';

const RESTED: Setting = { state: 'rested', form: 'tube' };
const HANGING: Setting = { state: 'hanging', form: 'tube' };
const WASHED: Setting = { state: 'washed', form: 'tube' };

/** Swatches of 60 rows read hanging, then rested, in mm. */
const pairs = (...lengths: [hanging: number, rested: number][]): Pair[] =>
  pairsIn(
    rowsIn(
      lengths.flatMap(([hanging, rested], i) => [
        tube(`${i}`, 60, hanging, { state: 'hanging' }),
        tube(`${i}`, 60, rested),
      ]),
    ),
  );
const spread = (from: Setting, to: Setting) => Math.sqrt(factorBetween(UNPAIRED, from, to).variance);

describe('the change between two settings, before any pair is known', () => {
  test('is 3 % for weights off, 5 % for washing, both for both, and 3 % from tube to panel', () => {
    expect(spread(HANGING, RESTED)).toBeCloseTo(0.03, 12);
    expect(spread(RESTED, WASHED)).toBeCloseTo(0.05, 12);
    expect(spread(HANGING, WASHED)).toBeCloseTo(0.0583, 4);
    expect(spread(RESTED, { state: 'rested', form: 'panel' })).toBeCloseTo(0.03, 12);
    expect(spread(RESTED, RESTED)).toBe(0);
  });

  test('is the same change back, with its sign turned', () => {
    const known = factorsFrom(pairs([320, 306]));
    expect(factorBetween(known, RESTED, HANGING).delta).toBeCloseTo(-factorBetween(known, HANGING, RESTED).delta, 14);
  });

  test('of one new piece is wider by how far pieces stray, and nothing where nothing changes', () => {
    expect(Math.sqrt(pieceFactor(UNPAIRED, HANGING, RESTED).variance)).toBeCloseTo(0.0316, 4);
    expect(pieceFactor(UNPAIRED, RESTED, RESTED)).toEqual({ delta: 0, variance: 0 });
  });
});

// Worked independently, by the update one pair at a time: delta, change in per cent, spread of the mean and of a piece.
describe('pairs of readings teach the change off the machine', () => {
  test.each([
    [[[320, 306]], -0.03826, -3.754, 0.011414, 0.015175],
    [
      [
        [320, 306],
        [302, 291],
      ],
      -0.037738,
      -3.703,
      0.008454,
      0.013095,
    ],
    [
      [
        [320, 306],
        [302, 291],
        [430, 410],
      ],
      -0.041262,
      -4.042,
      0.006782,
      0.012083,
    ],
  ] as const)('%j', (lengths, delta, change, meanSpread, pieceSpread) => {
    const known = factorsFrom(pairs(...lengths.map(([a, b]): [number, number] => [a, b])));
    const mean = factorBetween(known, HANGING, RESTED);
    expect(mean.delta).toBeCloseTo(delta, 6);
    expect(dimensionalChange(mean.delta)).toBeCloseTo(change, 3);
    expect(Math.sqrt(mean.variance)).toBeCloseTo(meanSpread, 6);
    expect(Math.sqrt(pieceFactor(known, HANGING, RESTED).variance)).toBeCloseTo(pieceSpread, 6);
    expect(known.pairs).toBe(lengths.length);
  });

  test('in any order alike', () => {
    const [a, b] = [factorsFrom(pairs([320, 306], [302, 291])), factorsFrom(pairs([302, 291], [320, 306]))];
    expect(a.mean[0]).toBeCloseTo(b.mean[0], 14);
    expect(a.covariance[0][0]).toBeCloseTo(b.covariance[0][0], 14);
  });

  test('a swatch read hanging and washed teaches both changes, and ties them together', () => {
    const known = factorsFrom(
      pairsIn(rowsIn([tube('a', 60, 320, { state: 'hanging' }), tube('a', 60, 300, { state: 'washed' })])),
    );
    expect(factorBetween(known, HANGING, RESTED).delta).toBeLessThan(0);
    expect(factorBetween(known, RESTED, WASHED).delta).toBeLessThan(factorBetween(known, HANGING, RESTED).delta);
    expect(known.covariance[0][1]).toBeLessThan(0);
  });

  test('from six on also teach how far pieces stray, and never less than half a per cent', () => {
    const alike = factorsFrom(pairs(...Array.from({ length: 6 }, (): [number, number] => [320, 306])));
    // (4·.01² + 0)/(4 + 6 − 1).
    expect(alike.pieceVariance).toBeCloseTo((4 * 0.01 ** 2) / 9, 12);
    const hundred = factorsFrom(pairs(...Array.from({ length: 100 }, (): [number, number] => [320, 306])));
    expect(hundred.pieceVariance).toBe(0.005 ** 2);
    const apart = factorsFrom(
      pairs(...Array.from({ length: 6 }, (_, i): [number, number] => [320, i % 2 ? 290 : 314])),
    );
    expect(apart.pieceVariance).toBeGreaterThan(0.02 ** 2);
  });

  test('one more pair showing the usual change leaves the change and narrows its spread', () => {
    const known = factorsFrom(pairs([320, 306]));
    const more = pairTaught(known, { from: HANGING, to: RESTED, rulerVariance: 2 * (1.6 / 310) ** 2 });
    expect(factorBetween(more, HANGING, RESTED).delta).toBeCloseTo(factorBetween(known, HANGING, RESTED).delta, 14);
    expect(factorBetween(more, HANGING, RESTED).variance).toBeLessThan(factorBetween(known, HANGING, RESTED).variance);
  });
});
