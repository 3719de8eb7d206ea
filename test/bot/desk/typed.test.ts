import { describe, expect, test } from 'vitest';
import { readAs, statesWidth, typedLimits, typedSize, unitsTyped } from '../../../bot/desk/typed.js';
import type { Value } from '../../../bot/request.js';
import { type Person, printed } from '../../../core/index.js';

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

describe('a size that stands for a person', () => {
  const ofPerson = (label: string, mm: number, person: Person): Value => ({
    is: 'length',
    mm,
    said: '2 year old',
    assumed: 'body',
    body: { label, person },
  });
  const told = (...values: Value[]): string[] => readAs(values).map((words) => printed(words, { units: 'cm' }));

  test.each<[string, Person]>([
    ['the published median at two years', { is: 'child', months: 24 }],
    ['the published median of girls at 18 months', { is: 'child', months: 18, sex: 'girl' }],
    ['the published median of boys at birth', { is: 'child', months: 0, sex: 'boy' }],
    ['the mean of women in a published survey', { is: 'woman' }],
    ['the mean of men in a published survey', { is: 'man' }],
  ])('is told with its source: %s', (source, person) => {
    expect(told(ofPerson('head', 477.15, person))).toEqual([`a head of 47.5 cm, ${source}`]);
  });

  test('is told with the others of that person', () => {
    const man: Person = { is: 'man' };
    expect(told(ofPerson('hand girth', 212.3, man), ofPerson('ankle girth', 229.3, man))).toEqual([
      'a hand girth of 21 cm, an ankle girth of 23 cm, each the mean of men in a published survey',
    ]);
  });

  test('was typed in no unit', () => {
    expect(unitsTyped({ head: ofPerson('head', 477.15, { is: 'child', months: 24 }) }, 'girth')).toBeUndefined();
  });
});
