import { describe, expect, test } from 'vitest';
import { gPer, mmPer, type Quantity, quantities, quantityAt } from '../../../core/units/quantity.js';

type Read = Pick<Quantity, 'lo' | 'hi' | 'unit' | 'halfWidth'>;
const bare = ({ lo, hi, unit, halfWidth }: Quantity): Read => ({ lo, hi, unit, halfWidth });
const one = (lo: number, unit: Quantity['unit'], more: Partial<Read> = {}): Read => ({
  lo,
  hi: lo,
  unit,
  halfWidth: undefined,
  ...more,
});

describe('a typed quantity', () => {
  test.each<[string, Read]>([
    ['11 in', one(11, 'in')],
    ['11in', one(11, 'in')],
    ['11"', one(11, 'in')],
    ['11”', one(11, 'in')],
    ["11''", one(11, 'in')],
    ['11 inches', one(11, 'in')],
    ['11-inch', one(11, 'in')],
    ['6 3/4 in', one(6.75, 'in')],
    ['6¾"', one(6.75, 'in')],
    ['6-3/4', one(6.75, undefined)],
    ['27.5cm', one(27.5, 'cm')],
    ['27,5 cm', one(27.5, 'cm')],
    ['280 mm', one(280, 'mm')],
    ['1,200 mm', one(1200, 'mm')],
    ['2 m', one(2, 'm')],
    ['5 feet', one(5, 'ft')],
    ['4 yd', one(4, 'yd')],
    ['38 g', one(38, 'g')],
    ['1.5 oz', one(1.5, 'oz')],
    ['2 lbs', one(2, 'lb')],
    ['1 kg', one(1, 'kg')],
    ['3%', one(3, 'percent')],
    ['3 per cent', one(3, 'percent')],
    ['half an inch', one(0.5, 'in')],
    ['a quarter of an inch', one(0.25, 'in')],
    ['three quarters of an inch', one(0.75, 'in')],
    ['seven eighths of an inch', one(0.875, 'in')],
    ['six and three quarters', one(6.75, undefined)],
    ['six and three quarter inches', one(6.75, 'in')],
    ['one half inch', one(0.5, 'in')],
    ['twenty centimetres', one(20, 'cm')],
    ['10.5-11 in', one(10.5, 'in', { hi: 11 })],
    ['10½ to 11"', one(10.5, 'in', { hi: 11 })],
    ['10 1/2 in – 11 in', one(10.5, 'in', { hi: 11 })],
    ['ten to twelve inches', one(10, 'in', { hi: 12 })],
    ['11 in ± 1/4', one(11, 'in', { halfWidth: 0.25 })],
    ['11 in +/- 1/4 in', one(11, 'in', { halfWidth: 0.25 })],
    ['11 in, give or take a quarter inch', one(11, 'in', { halfWidth: 0.25 })],
    ['11 ± 1/4 in', one(11, 'in', { halfWidth: 0.25 })],
    ['28 cm ± 5 mm', one(28, 'cm', { halfWidth: 0.5 })],
    ['-3 cm', one(-3, 'cm')],
  ])('"%s" is read whole', (text, expected) => {
    expect(quantities(text).map(bare)).toEqual([expected]);
    expect(quantities(text)[0]?.end).toBe(text.length);
  });
});

describe('two quantities side by side', () => {
  test.each<[string, Read[]]>([
    ['11 by 6 3/4', [one(11, undefined), one(6.75, undefined)]],
    ['11x6¾ in', [one(11, undefined), one(6.75, 'in')]],
    ['27cm x 17cm', [one(27, 'cm'), one(17, 'cm')]],
    ['110 rows in 22 in, 46 needles', [one(110, undefined), one(22, 'in'), one(46, undefined)]],
    ['22 in 46 needles', [one(22, 'in'), one(46, undefined)]],
    ['20 in 4 in', [one(20, undefined), one(4, 'in')]],
    ['22 in 6 3/4 flat', [one(22, 'in'), one(6.75, undefined)]],
    ['22 in 6¾ flat', [one(22, 'in'), one(6.75, undefined)]],
    ['22 in ¾', [one(22, 'in'), one(0.75, undefined)]],
    ['22 in 17 cm flat', [one(22, 'in'), one(17, 'cm')]],
    ['11 in 6.75 tall', [one(11, 'in'), one(6.75, undefined)]],
    ['11 to 10 in', [one(11, undefined), one(10, 'in')]],
    ['10 cm to 11 in', [one(10, 'cm'), one(11, 'in')]],
    ['two half inch seams', [one(2, undefined), one(0.5, 'in')]],
  ])('"%s" stay two', (text, expected) => {
    expect(quantities(text).map(bare)).toEqual(expected);
  });
});

describe('what is not a quantity', () => {
  test.each(['2nd row', 'the 3rd and 4th', 'the eighth row', 'A4 paper', 'someone', 'tense', 'in the round', ''])(
    '"%s" holds none',
    (text) => {
      expect(quantities(text)).toEqual([]);
    },
  );

  test.each(['2 in 1', '2 in 1 rib', '11 in the medium yarn', '6 in each', '12 in all', '3 in total', '4 needles'])(
    '"%s" holds no inches',
    (text) => {
      expect(quantities(text)[0]?.unit).toBeUndefined();
    },
  );

  test('a letter right behind a number is no unit', () => {
    expect(quantityAt('12b', 0)).toMatchObject({ lo: 12, unit: undefined, end: 2 });
    expect(quantityAt('4 metals', 0)).toMatchObject({ lo: 4, unit: undefined, end: 1 });
  });
});

test('a unit is worth millimetres or grams, never both', () => {
  expect([mmPer('in'), mmPer('g'), mmPer('percent'), mmPer(undefined)]).toEqual([
    25.4,
    undefined,
    undefined,
    undefined,
  ]);
  expect([gPer('oz'), gPer('in'), gPer('percent'), gPer(undefined)]).toEqual([
    28.349523125,
    undefined,
    undefined,
    undefined,
  ]);
});
