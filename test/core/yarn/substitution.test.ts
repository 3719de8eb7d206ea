import { describe, expect, test } from 'vitest';
import { yarnWeightNamed } from '../../../core/tables/yarn-weights.js';
import { printed } from '../../../core/units/print.js';
import { type Substituting, substitution } from '../../../core/yarn/substitution.js';
import { LOOP_MM, valueIn, yarnProblems } from './samples.js';

/** A pouch in medium yarn of 500 tex, 13.6 stitches over 4 in. */
const own = { tex: 500, loopMm: LOOP_MM, stitchMm: 342.9 / 46 };
const need = { lengthM: 133.215, cv: 0.03 };
const other = (massG: number, lengthM: number, more: Partial<Substituting> = {}) =>
  valueIn(substitution({ need, own, ball: { massG, lengthM }, ...more }));
const notes = (...asked: Parameters<typeof other>): string[] =>
  other(...asked).notes.map((words) => printed(words, { units: 'in' }));

describe('another yarn for the same plan', () => {
  // 133.215 m of 1000 tex weigh 133.2 g, of 500 tex 66.6 g.
  test('is taken by length: one twice as heavy takes twice the mass', () => {
    const heavy = other(100, 100);
    expect(heavy.need.lengthM).toBe(133.215);
    expect(heavy.massG).toBeCloseTo(133.215, 9);
    expect(other(50, 100).massG).toBeCloseTo(66.6075, 9);
  });

  test('is as unsure as a first guess, whatever was weighed of the old one', () => {
    expect(other(50, 100).need.cv).toBe(0.2);
    expect(other(50, 100)).toMatchObject({ balls: 2 });
    expect(other(100, 100).need.cv).toBe(0.15);
  });

  test('is told by its tightness beside the old one, not by a textbook', () => {
    // √500/2.68234 and √1000/2.68234.
    expect(other(100, 100).tightness).toEqual({ own: expect.closeTo(8.336, 3), other: expect.closeTo(11.789, 3) });
    expect(other(50, 105).feel).toBe('usual');
    expect(other(50, 140).feel).toBe('looser');
    expect(other(50, 75).feel).toBe('stiffer');
  });

  test('says what to mind and what to swatch', () => {
    expect(notes(50, 105)).toEqual([
      'about as close as your usual fabric',
      'swatch 60 rows first, and weigh them: gauge should stay, but only a swatch shows it',
    ]);
    expect(notes(50, 140)).toEqual([
      'looser than your usual fabric: consider a lining, or tighten the stitch',
      'swatch 60 rows first, at the tension of the plan and one to either side: your gauge will change with this yarn',
    ]);
  });

  // .0444·√(2000/1.31) = 1.735 mm; 26.82/1.735 = 15.5 diameters.
  test('that is too thick for the stitch would jam', () => {
    expect(other(100, 50)).toMatchObject({ jams: true });
    expect(notes(100, 50)[0]).toBe('too thick for stitches of this size: it would jam');
  });

  test('of a category far from the gauge of the plan is named', () => {
    const weight = yarnWeightNamed('fine');
    expect(other(50, 150, { weight }).unusual?.beyond).toBeCloseTo(1 - 13.63 / 23, 3);
    expect(notes(50, 150, { weight })[1]).toBe(
      'Fine yarn is mostly knitted at 23 to 26 stitches over 4 in, and this plan at 14',
    );
    expect(other(50, 100, { weight: yarnWeightNamed('medium') }).unusual).toBeUndefined();
  });

  test('has yarn in its balls', () => {
    expect(yarnProblems(substitution({ need, own, ball: { massG: 0, lengthM: 100 } }))).toMatchObject([
      { code: 'empty_ball' },
    ]);
  });
});
