import { expect, test } from 'vitest';
import { liningAssumed, liningMm, liningNotions, liningSteps } from '../../../core/finishing/lining.js';
import { notionsFor } from '../../../core/notions.js';
import { printed } from '../../../core/units/print.js';

const LINED = { lining: 'lined' };
const NONE = { lining: 'none' };
const cut = (...piece: [number | undefined, number | undefined]) =>
  notionsFor(liningNotions(LINED, ...piece, 5), 1).map(({ say }) => printed(say, { units: 'cm' }));

// Worked by hand: 271.78 − 5 − 3 + 24 = 287.78; 2·(167.7 − 10) + 30 = 345.4.
test('a piece 271.78 mm wide and 167.7 mm tall with walls of 5 mm is lined with 287.8 by 345.4 mm', () => {
  const { wideMm, longMm } = liningMm(271.78, 167.7, 5);
  expect(wideMm).toBeCloseTo(287.8, 1);
  expect(longMm).toBeCloseTo(345.4, 9);
  expect(cut(271.78, 167.7)).toEqual(['a lining of cloth 29 cm by 34.5 cm']);
});

test('a side not known yet is told by the piece', () => {
  expect(cut(271.78, undefined)).toEqual(['a lining of cloth 29 cm by twice its height and 1 cm']);
  expect(cut(undefined, 167.7)).toEqual(['a lining of cloth its width and 1.6 cm by 34.5 cm']);
});

test('it is sewn in with its allowance and turn named', () => {
  const steps = liningSteps(LINED);
  expect(steps.filter(({ driver }) => driver === 'lining').reduce((sum, { count }) => sum + count, 0)).toBe(1);
  expect(steps.map(({ say }) => printed(say, { units: 'cm' })).join(' ')).toMatch(/1.2 cm from the edge.*Turn 1.5 cm/);
  expect(liningAssumed(LINED).map((w) => printed(w, { units: 'cm' }))[0]).toContain('1.2 cm of seam at each side');
});

test('a piece that is not lined has none of it', () => {
  expect([liningNotions(NONE, 200, 100, 5), liningAssumed(NONE), liningSteps(NONE)]).toEqual([[], [], []]);
});
