import { describe, expect, test } from 'vitest';
import { cases, plans } from './cases.js';
import { chiSquareOf, deciles, off, together, worst } from './deciles.js';
import { drawsFrom } from './draws.js';

const SEED = 1;
/** The share of 10,000 that lands strays by up to half a point in two of three seeds: a quarter of the tolerance. */
const MAKERS = 10_000;

describe('the chance stated of a plan is the share that lands', () => {
  const tenths = deciles(plans(drawsFrom(SEED), 40_000));

  // Right code is 2.1 points off at its worst in 99 of 100 seeds.
  test('within 3 points in each tenth of 40,000 simulated makers', () => {
    expect(tenths.map((t) => t.count)).toEqual(Array.from({ length: 10 }, () => 4000));
    expect(worst(tenths)).toBeLessThan(0.03);
  });

  test('with a chi-square that right code exceeds in one seed of a thousand', () => {
    expect(chiSquareOf(tenths)).toBeLessThan(29.6);
  });

  test('over plans from hopeless to nearly certain', () => {
    expect(tenths.at(0)?.stated).toBeLessThan(0.1);
    expect(tenths.at(-1)?.stated).toBeGreaterThan(0.9);
  });
});

describe('the chance stated of a piece is the share that lands, and as large as it should be', () => {
  test.each(cases.map((c) => [c.name, c] as const))('%s', (_, { land, within, share }) => {
    const draw = drawsFrom(SEED);
    const all = together(Array.from({ length: MAKERS }, () => land(draw)));
    expect(off(all)).toBeLessThan(within);
    const [from, to] = share ?? [0, 1];
    expect(all.observed).toBeGreaterThan(from);
    expect(all.observed).toBeLessThan(to);
  });
});
