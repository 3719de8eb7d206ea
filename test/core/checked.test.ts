import { describe, expect, test } from 'vitest';
import { checked, fields, toleratedWindow } from '../../core/checked.js';
import type { Given } from '../../core/given.js';
import { flatPanel } from '../../core/pieces/flat-panel.js';
import { plainTube } from '../../core/pieces/plain-tube.js';
import { pouch } from '../../core/pieces/pouch.js';
import { uprightPouch } from '../../core/pieces/upright-pouch.js';
import { between, mm, problemsOf } from './samples.js';

const WIDTH = { id: 'width', label: 'Width' };
const needles = (count: number): Given => ({ is: 'count', count });

describe('what was asked', () => {
  test('comes with defaults, and a size becomes a window by the tolerance of the piece', () => {
    expect(checked(pouch, { width: mm(279.4) })).toEqual({
      ok: true,
      value: {
        asked: {
          width: { loMm: 273.4, hiMm: 285.4 },
          height: undefined,
          closure: undefined,
          ring: 25.4,
          strap: undefined,
          contents: undefined,
          turned: 'either',
          lining: 'none',
        },
        toleranced: ['width'],
      },
    });
  });

  test('keeps a window as it was given', () => {
    const outcome = checked(plainTube, { length: between(545, 575), ends: { is: 'choice', id: 'cast_off' } });
    expect(outcome).toMatchObject({
      value: { asked: { length: { loMm: 545, hiMm: 575 }, ends: 'cast_off' }, toleranced: [] },
    });
  });

  test('takes the middle of a range for what is one length', () => {
    expect(checked(pouch, { closure: between(200, 206) })).toMatchObject({ value: { asked: { closure: 203 } } });
  });

  test('may lie on either end of its range', () => {
    const { asks } = pouch;
    if (asks.width?.is !== 'window') throw new Error('the width of a pouch is a window');
    expect(checked(pouch, { width: mm(asks.width.minMm), ring: mm(0) }).ok).toBe(true);
    expect(checked(pouch, { width: mm(asks.width.maxMm) }).ok).toBe(true);
  });

  test('has a window of a share of it, where the tolerance is one', () => {
    expect(toleratedWindow(200, { share: 0.03 })).toEqual({ loMm: 194, hiMm: 206 });
    expect(toleratedWindow(200, { mm: 6 })).toEqual({ loMm: 194, hiMm: 206 });
  });
});

describe('the problems with what was asked', () => {
  const problems = (...asked: Parameters<typeof checked>) => problemsOf(checked(...asked));
  const codes = (...asked: Parameters<typeof checked>) => problems(...asked).map((p) => p.code);

  test('are all told at once', () => {
    const values = {
      width: mm(5),
      height: between(90, 80),
      closure: { is: 'mass', g: 4 },
      ring: mm(400),
      colour: { is: 'choice', id: 'red' },
    } as const;
    expect(codes(pouch, values)).toEqual([
      'unknown_field',
      'length_out_of_range',
      'empty_window',
      'wrong_kind',
      'length_out_of_range',
    ]);
  });

  test('name the field, what was read and what is allowed', () => {
    expect(problems(pouch, { width: mm(20) })).toEqual([
      { code: 'length_out_of_range', field: WIDTH, givenMm: 20, minMm: 40, maxMm: 1250 },
    ]);
  });

  test.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, -279.4, 0, -0])(
    'refuse a length of %d as out of range',
    (bad) => {
      expect(codes(pouch, { width: mm(bad) })).toEqual(['length_out_of_range']);
      expect(codes(uprightPouch, { height: mm(200), closure: mm(bad) })).toEqual(['length_out_of_range']);
    },
  );

  test.each([
    [285.4, 273.4],
    [279.4, 279.4],
    [Number.NaN, 279.4],
    [279.4, Number.NaN],
    [Number.NaN, Number.NaN],
  ])('refuse a window from %d to %d, which does not run upward', (loMm, hiMm) => {
    expect(problems(pouch, { width: between(loMm, hiMm) })).toEqual([
      { code: 'empty_window', field: WIDTH, window: { loMm, hiMm } },
    ]);
    expect(codes(pouch, { closure: between(loMm, hiMm) })).toEqual(['empty_window']);
  });

  test('name the end of a window that is out of range', () => {
    expect(problems(pouch, { width: between(10, 200) })).toMatchObject([{ givenMm: 10 }]);
    expect(problems(pouch, { width: between(200, Number.POSITIVE_INFINITY) })).toMatchObject([
      { givenMm: Number.POSITIVE_INFINITY },
    ]);
  });

  test('say which fields would do when none of them was given', () => {
    expect(problems(pouch, {})).toEqual([
      { code: 'missing', anyOf: [WIDTH, { id: 'closure', label: 'Closure' }, { id: 'contents', label: 'Contents' }] },
    ]);
    expect(codes(flatPanel, {})).toEqual(['missing', 'missing']);
  });

  test('tell a count that is broken, too small, too large or no count at all', () => {
    const count = (given: Given) => codes(flatPanel, { length: mm(300), needles: given });
    expect(count(needles(40.5))).toEqual(['not_whole']);
    expect(count(needles(Number.NaN))).toEqual(['not_whole']);
    expect(count(needles(Number.POSITIVE_INFINITY))).toEqual(['not_whole']);
    expect(count(needles(0))).toEqual(['count_out_of_range']);
    expect(count(needles(-40))).toEqual(['count_out_of_range']);
    expect(count(needles(401))).toEqual(['count_out_of_range']);
    expect(count(mm(40))).toEqual(['wrong_kind']);
  });

  test('tell a choice that is not offered, or is none', () => {
    expect(problems(plainTube, { length: mm(300), ends: { is: 'choice', id: 'knotted' } })).toMatchObject([
      { code: 'unknown_choice', given: 'knotted', options: ['one_shut', 'live', 'shut', 'cast_off'] },
    ]);
    expect(codes(plainTube, { length: mm(300), ends: mm(3) })).toEqual(['wrong_kind']);
  });

  test('tell a field the piece does not have, whatever its name', () => {
    expect(codes(plainTube, { length: mm(300), closure: mm(200) })).toEqual(['unknown_field']);
    expect(codes(plainTube, { length: mm(300), toString: mm(200) })).toEqual(['unknown_field']);
  });
});

test('the fields of a piece are its asks by name', () => {
  expect(fields(plainTube)).toEqual([
    { id: 'length', label: 'Length' },
    { id: 'width', label: 'Flat width' },
    { id: 'ends', label: 'Ends' },
  ]);
});
