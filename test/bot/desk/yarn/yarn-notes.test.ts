import { describe, expect, test } from 'vitest';
import { yarnNotes } from '../../../../bot/desk/yarn/yarn-notes.js';
import { evidence, gauge, printed } from '../../../../core/index.js';
import { EVEN } from '../../../core/samples.js';

/** 101.6/7.5 = 13.5 stitches to 4 in. */
const made = gauge(evidence(EVEN));
const notes = (category: number | undefined) => yarnNotes({ category }, made).map((w) => printed(w, { units: 'in' }));

describe('13.5 stitches to 4 in', () => {
  test('are usual for bulky yarn, 12 to 15, and within a quarter of medium, 16 to 20', () => {
    expect(notes(5)).toEqual([]);
    expect(notes(4)).toEqual([]);
  });

  test('are unusual for fine yarn: 41 % looser than its 23 to 26', () => {
    expect(notes(2).join()).toMatch(/Unusual for fine yarn \(2\): 13\.5 stitches to 4 in, 41% looser than .* 23 to 26/);
  });

  test('say nothing of yarn whose category is not known', () => {
    expect(notes(undefined)).toEqual([]);
  });
});
