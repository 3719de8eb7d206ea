import { describe, expect, test } from 'vitest';
import { numberAt } from '../../../core/units/number.js';

const value = (text: string, at = 0) => numberAt(text, at)?.value;

describe('a typed number', () => {
  test.each([
    ['11', 11],
    ['27.5', 27.5],
    ['27,5', 27.5],
    ['.5', 0.5],
    ['1,200', 1200],
    ['1,200.50', 1200.5],
    ['1.200,50', 1200.5],
    ['12.345.678,90', 12345678.9],
    ['1.200', 1.2],
    ['27,5', 27.5],
    ['1,234,567', 1_234_567],
    ['3/4', 0.75],
    ['6 3/4', 6.75],
    ['6-3/4', 6.75],
    ['6 3⁄4', 6.75],
    ['6¾', 6.75],
    ['6 ¾', 6.75],
    ['½', 0.5],
    ['⅓', 1 / 3],
    ['10⅞', 10.875],
    ['half', 0.5],
    ['a half', 0.5],
    ['one half', 0.5],
    ['a quarter', 0.25],
    ['one quarter', 0.25],
    ['three quarters', 0.75],
    ['three quarter', 0.75],
    ['three-quarters', 0.75],
    ['an eighth', 0.125],
    ['three eighths', 0.375],
    ['five eighths', 0.625],
    ['seven eighths', 0.875],
    ['six and three quarters', 6.75],
    ['six and three quarter', 6.75],
    ['six and seven eighths', 6.875],
    ['Eleven and a Half', 11.5],
    ['two-and-a-half', 2.5],
  ])('"%s" is %d, read to its end', (text, expected) => {
    expect(numberAt(text, 0)).toEqual({ value: expected, start: 0, end: text.length });
  });

  test('in words goes from zero to twenty', () => {
    const words =
      'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty';
    expect(words.split(' ').map((word) => value(word))).toEqual(Array.from({ length: 21 }, (_, n) => n));
  });

  test('is negative after a minus that stands free, and not after a hyphen', () => {
    expect(numberAt('-3 cm', 1)).toEqual({ value: -3, start: 0, end: 2 });
    expect(value('by −3', 4)).toBe(-3);
    expect(value('10-3', 3)).toBe(3);
  });

  test('after the x of two sizes begins a new number', () => {
    expect(value('11x6', 3)).toBe(6);
    expect(value('11" x6', 5)).toBe(6);
  });

  test.each([
    ['b12', 1],
    ['112', 1],
    ['tenth', 0],
    ['someone', 4],
    ['ones', 0],
    ['sixty', 0],
    ['eighth row', 0],
    ['third row', 0],
    ['1/0', 0],
    ['x', 0],
    ['', 0],
  ])('does not begin in "%s" at %d', (text, at) => {
    expect(numberAt(text, at)).toBeUndefined();
  });

  test('in words does not swallow a fraction that is another number', () => {
    expect(value('two half inch seams')).toBe(2);
    expect(value('two half inch seams', 4)).toBe(0.5);
  });
});
