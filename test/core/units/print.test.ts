import { describe, expect, test } from 'vitest';
import * as print from '../../../core/units/print.js';
import { count, length, mass, range, say, tail } from '../../../core/words.js';

describe('inches', () => {
  test.each([
    [0, '0'],
    [0.125, '1/8'],
    [0.25, '1/4'],
    [0.5, '1/2'],
    [0.06, '0'],
    [0.07, '1/8'],
    [6.75, '6 3/4'],
    [6.603, '6 5/8'],
    [6.95, '7'],
    [10.7, '10 3/4'],
    [-0.01, '0'],
    [-1.5, '-1 1/2'],
  ])('of %d print as %s, to the nearest eighth', (inches, text) => {
    expect(print.inchFraction(inches)).toBe(text);
  });
});

describe('centimetres', () => {
  test.each([
    [271.78, '27 cm'],
    [273.1, '27.5 cm'],
    [167.7, '17 cm'],
    [102, '10 cm'],
    [103, '10.5 cm'],
    [100, '10 cm'],
    [99.4, '9.9 cm'],
    [34.3, '3.4 cm'],
    [11.2, '1.1 cm'],
    [-0.3, '0 cm'],
    [-34.3, '-3.4 cm'],
  ])('of %d mm print as %s: to a half over 10, to a tenth below', (mm, text) => {
    expect(print.printedLength(mm, 'cm')).toBe(text);
  });
});

describe('a length to leave or cut', () => {
  test.each([
    [914, '36 in', '95 cm'],
    [1445.6, '57 in', '1.45 m'],
    [979, '39 in', '1 m'],
    [150, '6 in', '15 cm'],
    [155, '7 in', '20 cm'],
    [1850, '2.1 yd', '1.85 m'],
    [3000, '3.3 yd', '3 m'],
    [10_000, '11 yd', '10 m'],
  ])('of %d mm prints as %s and %s', (mm, inches, metric) => {
    expect([print.printedTail(mm, 'in'), print.printedTail(mm, 'cm')]).toEqual([inches, metric]);
  });

  test('is never printed shorter than it is by more than 2 mm, at any length', () => {
    const mmOf = { in: 25.4, yd: 914.4, cm: 10, m: 1000 };
    const printedMm = (text: string) => {
      const [figure = '', unit = ''] = text.split(' ');
      return Number(figure) * mmOf[unit as keyof typeof mmOf];
    };
    const short = Array.from({ length: 5000 }, (_, mm) => mm + 1).filter(
      (mm) => Math.min(printedMm(print.printedTail(mm, 'in')), printedMm(print.printedTail(mm, 'cm'))) < mm - 2,
    );
    expect(short).toEqual([]);
  });

  // 11 strands of 40 cm are 4.4 m; of 16 in they are 176 in, 4.89 yd; of 91 in, printed 2.6 yd, they are 28.6 yd.
  test('cut several times is the sum of what is cut', () => {
    expect([print.printedTail(386, 'cm', 11), print.printedTail(386, 'in', 11)]).toEqual(['4.4 m', '4.9 yd']);
    expect([print.printedTail(386, 'in', 4), print.printedTail(91 * 25.4, 'in', 11)]).toEqual(['64 in', '28.6 yd']);
  });
});

describe('other figures', () => {
  test('print plainly, without trailing zeros or a minus zero', () => {
    expect([10, 2.5, 2.25, 1 / 3, -0, -0.001, 1200].map((n) => print.plainNumber(n))).toEqual([
      '10',
      '2.5',
      '2.25',
      '0.33',
      '0',
      '0',
      '1200',
    ]);
    expect(print.plainNumber(100, 0)).toBe('100');
  });

  test('of yarn are metres or yards, to a tenth under ten', () => {
    expect([print.printedYarn(133.216, 'cm'), print.printedYarn(133.216, 'in')]).toEqual(['133 m', '146 yd']);
    expect([print.printedYarn(1.446, 'cm'), print.printedYarn(9.144, 'in')]).toEqual(['1.4 m', '10 yd']);
  });

  test('of mass are grams, to a tenth under ten', () => {
    expect([print.printedMass(66.61), print.printedMass(1.212)]).toEqual(['67 g', '1.2 g']);
  });

  test('of gauge are rows in 4 in or 10 cm, to a half until three pieces are known', () => {
    expect(print.printedRate(5.08, 1, 'in')).toBe('20');
    expect(print.printedRate(5, 1, 'in')).toBe('20.5');
    expect(print.printedRate(5, 3, 'in')).toBe('20.3');
    expect(print.printedRate(5.08, 3, 'cm')).toBe('19.7');
  });

  test('in two systems put the other in brackets', () => {
    expect(print.printedBoth(271.78, 'cm')).toBe('27 cm (10 3/4 in)');
    expect(print.printedBoth(271.78, 'in')).toBe('10 3/4 in (27 cm)');
    expect(print.printedOthers([271.78, 167.7], 'in')).toBe('27 by 17 cm');
  });

  test('in a range say the unit once, and one figure where both print alike', () => {
    expect(print.printedRange(266.7, 279.4, 'in')).toBe('10 1/2 to 11 in');
    expect(print.printedRange(266.7, 279.4, 'cm')).toBe('26.5 to 28 cm');
    expect(print.printedRange(266.7, 267, 'in')).toBe('10 1/2 in');
  });
});

describe('a sentence', () => {
  test('prints each of its figures in the units of its reader', () => {
    const words = say`${count(1, 'ring')}, ${count(46, 'stitch', 'stitches')}, ${length(203.2)}, ${mass(5)}, ${3} ${'ends'}`;
    expect(print.printed(words, { units: 'in' })).toBe('1 ring, 46 stitches, 8 in, 5 g, 3 ends');
    expect(print.printed(words, { units: 'cm' })).toBe('1 ring, 46 stitches, 20.5 cm, 5 g, 3 ends');
  });

  test('says the unit of a range once', () => {
    expect(print.printed(say`${range(12.7, 25.4)} of ease`, { units: 'in' })).toBe('1/2 to 1 in of ease');
  });

  test('may hold another sentence', () => {
    const inner = say`a tail of ${tail(914)}`;
    expect(print.printed(say`Leave ${inner}.`, { units: 'in' })).toBe('Leave a tail of 36 in.');
  });
});
