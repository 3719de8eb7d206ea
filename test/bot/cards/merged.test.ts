import { describe, expect, test } from 'vitest';
import { merged } from '../../../bot/cards/merged.js';
import { length, range, say, type Words } from '../../../core/index.js';

const CM = { units: 'cm' } as const;
const told = (...words: Words[][]) => words.map((some, i) => ({ name: `size ${i + 1}`, words: some }));
const head = (mm: number): Words => say`for a head of ${length(mm)}`;

describe('what several sizes say', () => {
  test('is said once where it is the same', () => {
    expect(merged(told([say`at rest`], [say`at rest`]), CM)).toEqual(['at rest']);
  });

  test('is one sentence where only figures differ, those of a sentence inside it too', () => {
    const inside = (mm: number): Words => say`5% less, ${head(mm)}`;
    expect(merged(told([inside(480)], [inside(520)], [inside(560)]), CM)).toEqual([
      '5% less, for a head of 48 cm, 52 cm and 56 cm',
    ]);
  });

  test('that not all say comes last, with the names of those that do', () => {
    expect(merged(told([say`snug`, say`at rest`], [say`at rest`], [say`snug`, say`at rest`]), CM)).toEqual([
      'at rest',
      'size 1 and size 3: snug',
    ]);
  });

  test('in words that differ is no one sentence', () => {
    expect(merged(told([say`a ${'red'} one`], [say`a ${'blue'} one`]), CM)).toEqual([
      'size 1: a red one',
      'size 2: a blue one',
    ]);
  });

  test('of many is a span only where that was asked for, and of figures that have one', () => {
    const many = told(...[400, 450, 500, 550].map((mm) => [head(mm)]));
    expect(merged(many, CM)).toEqual(['for a head of 40 cm, 45 cm, 50 cm and 55 cm']);
    expect(merged(many, CM, true)).toEqual(['for a head of 40 to 55 cm']);
    const ranges = told(...[400, 450, 500, 550].map((mm) => [say`${range(mm, mm + 20)} is usual`]));
    expect(merged(ranges, CM, true)[0]).toMatch(/^40 to 42 cm, 45 to 47 cm, /);
  });
});
