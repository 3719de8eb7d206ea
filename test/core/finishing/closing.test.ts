import { describe, expect, test } from 'vitest';
import {
  closureLength,
  closureNotions,
  closureSteps,
  closureWindow,
  longestStockClosureMm,
  unclosed,
} from '../../../core/finishing/closing.js';
import { notionsFor } from '../../../core/notions.js';
import { STOCK_CLOSURES } from '../../../core/tables/closures.js';
import { printed } from '../../../core/units/print.js';

const inches = (n: number) => n * 25.4;

describe('a closure', () => {
  test('of 8 in with two 1 in rings wants an opening of 10 1/2 to 11 in', () => {
    const { loMm, hiMm } = closureWindow(inches(8), inches(1));
    expect(loMm).toBeCloseTo(inches(10.5), 9);
    expect(hiMm).toBeCloseTo(inches(11), 9);
  });

  test('is the longest stock length that leaves the rings and the least ease', () => {
    expect(longestStockClosureMm(inches(10.5), inches(1))).toBe(inches(8));
    expect(longestStockClosureMm(inches(10.49), inches(1))).toBe(inches(7));
    expect(longestStockClosureMm(inches(10.5), 0)).toBe(inches(10));
    expect(longestStockClosureMm(inches(6.4), inches(1))).toBeUndefined();
    expect(longestStockClosureMm(inches(100), 0)).toBe(inches(24));
  });

  test('of any stock length fits the narrowest opening of its own window', () => {
    for (const ring of [0, 0.5, 0.75, 1, 1.3]) {
      const found = STOCK_CLOSURES.map((c) => closureWindow(inches(c.inches), inches(ring)).loMm).map((loMm) =>
        longestStockClosureMm(loMm, inches(ring)),
      );
      expect(found).toEqual(STOCK_CLOSURES.map((c) => inches(c.inches)));
    }
  });

  test('of a stock length goes by both its labels, any other by its length', () => {
    expect(printed(closureLength(inches(9)), { units: 'cm' })).toBe('9 in (23 cm)');
    expect(printed(closureLength(200), { units: 'in' })).toBe('8 in (20 cm)');
    expect(printed(closureLength(210), { units: 'cm' })).toBe('21 cm');
  });

  // (271.78 − 203.2)/2 = 34.3; 2·203.2 = 406.4.
  test('is pinned evenly between the side folds and sewn along both tapes', () => {
    const steps = closureSteps({ stitchMm: 7.4543 }, 271.78, inches(8), inches(1));
    expect(steps.map((s) => [s.driver, s.count])).toEqual([
      ['ring', 2],
      ['pin_closure', 1],
      ['sew_closure', inches(16)],
    ]);
    const [ring, pin] = steps.map((s) => printed(s.say, { units: 'cm' }));
    expect(ring).toContain('1.1 cm below the edge');
    expect(pin).toContain('it starts 3.4 cm inside one side fold');
  });

  // 210 mm: the next longer is 9 in.
  test('that is no stock length is cut from the next longer one, with a stop sewn over its chain', () => {
    const steps = closureSteps({ stitchMm: undefined }, 260, 210, 0);
    expect(steps.map(({ id }) => id)).toEqual(['shorten_closure', 'cut_closure', 'pin_closure', 'sew_closure']);
    expect(steps.map(({ say }) => printed(say, { units: 'cm' })).slice(0, 2)).toEqual([
      'Sew a stop over the chain of the 9 in (23 cm) closure, 21 cm from its slider end.',
      'Cut the closure 2 cm past its stop.',
    ]);
    expect(notionsFor(closureNotions(210, 0), 1).map(({ say }) => printed(say, { units: 'cm' }))).toEqual([
      'a closure of 9 in (23 cm), to be shortened to 21 cm',
    ]);
  });

  test('longer than any stock length is bought by the metre, and nothing is cut', () => {
    expect(closureSteps({ stitchMm: undefined }, 800, 700, 0)[0]?.id).toBe('pin_closure');
    expect(notionsFor(closureNotions(700, 0), 1).map(({ say }) => printed(say, { units: 'cm' }))[0]).toContain(
      'chain by the metre',
    );
  });

  test('left out is told why', () => {
    expect(printed(unclosed(undefined), { units: 'cm' })).toContain('no stock length is short enough');
    expect(printed(unclosed(87), { units: 'cm' })).toContain('4 in (10 cm) or longer');
    expect(printed(unclosed(700), { units: 'cm' })).toContain('no stock length lets it in');
  });

  test('without rings has neither the step nor the notion of them', () => {
    expect(closureSteps({ stitchMm: undefined }, 260, inches(8), 0).map((s) => s.id)).toEqual([
      'pin_closure',
      'sew_closure',
    ]);
    expect(closureNotions(inches(8), 0).map((n) => n.id)).toEqual(['closure']);
    expect(closureNotions(inches(8), inches(1)).map((n) => [n.id, n.count])).toEqual([
      ['closure', 1],
      ['rings', 2],
    ]);
  });
});
