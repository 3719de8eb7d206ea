import { expect, test } from 'vitest';
import { edgeClosureProblems, longestInEdgeMm } from '../../../core/finishing/edge-closure.js';

const ASK = { label: 'Closure', minMm: 50 };

test('an edge takes the longest stock closure that leaves 20 mm of it', () => {
  expect(longestInEdgeMm(274)).toBeCloseTo(254, 9);
  expect(longestInEdgeMm(273)).toBeCloseTo(228.6, 9);
  expect(longestInEdgeMm(100)).toBeUndefined();
});

test('a closure too long for its edge is named with the longest that fits, and with none', () => {
  expect(edgeClosureProblems(280, 292.5, ASK)).toMatchObject([
    {
      code: 'length_out_of_range',
      maxMm: 272.5,
      offers: [{ edit: { closure: { mm: 254 } } }, { edit: { closure: null } }],
    },
  ]);
  expect(edgeClosureProblems(270, 292.5, ASK)).toEqual([]);
  expect(edgeClosureProblems(280, undefined, ASK)).toEqual([]);
});

test('an edge too short for any closure has none to offer', () => {
  expect(edgeClosureProblems(50, 15, ASK)).toMatchObject([
    { minMm: 0, maxMm: 0, offers: [{ edit: { closure: null } }] },
  ]);
});
