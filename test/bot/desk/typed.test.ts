import { describe, expect, test } from 'vitest';
import { statesWidth, typedLimits, typedSize, unitsTyped } from '../../../bot/desk/typed.js';
import type { Value } from '../../../bot/request.js';

const bare = (said: string, mm: number): Value => ({ is: 'length', mm, said, assumed: 'unit' });
const range = (said: string, loMm: number, hiMm: number): Value => ({ is: 'window', loMm, hiMm, said });

describe('a size as it was typed', () => {
  test.each<[string, Value]>([
    ['6 3/4 in', bare('6 3/4', 171.45)],
    ['3/4 in', bare('3/4', 19.05)],
    ['¾ in', bare('¾', 19.05)],
    ['14,5 cm', bare('14,5', 145)],
    ['145 mm', bare('145', 145)],
    ['twenty-two in', bare('twenty-two', 558.8)],
    ['22 in around', { ...bare('22', 279.4), given: ['around'] }],
    ['at least 11 in', { ...range('11', 279.4, 285.4), given: ['at_least'] }],
    ['at most 22 in around', { ...range('22 in', 276.4, 279.4), given: ['around', 'at_most'] }],
    ['no rings', { is: 'length', mm: 0, said: 'no rings' }],
    ['11"', { is: 'length', mm: 279.4, said: '11"' }],
  ])('is "%s"', (text, value) => {
    expect(typedSize(value)).toBe(text);
  });

  test('has its limits in words only when both were typed', () => {
    expect(typedLimits(range('6-3/4 to 7 in', 171.45, 177.8))).toBe('6-3/4 and 7 in');
    expect(typedLimits(range('10-11', 254, 279.4))).toBe('10 and 11 in');
    expect(typedLimits(range('11 in ± 1/4', 273.05, 285.75))).toBeUndefined();
    expect(typedLimits(range('12', 298.45, 311.15))).toBeUndefined();
    expect(typedLimits(range('ten to eleven inches', 254, 279.4))).toBeUndefined();
  });

  test.each<[boolean, Value]>([
    [true, range('10 to 11 in', 254, 279.4)],
    [true, range('11 in ± 1/4', 273.05, 285.75)],
    [true, { ...range('11 in', 279.4, 285.4), given: ['at_least'] }],
    [false, range('12', 298.45, 311.15)],
  ])('states its own width: %s for %o', (states, value) => {
    expect(statesWidth(value)).toBe(states);
  });
});

test('the system typed is that of the field asked about, else of the first that has one', () => {
  const values: Record<string, Value> = { closure: bare('20 cm', 200), width: bare('11 in', 279.4) };
  expect(unitsTyped(values, 'width')).toBe('in');
  expect(unitsTyped(values, 'height')).toBe('cm');
  expect(unitsTyped({ seam: { is: 'choice', id: 'full', said: 'full' } }, 'width')).toBeUndefined();
});
