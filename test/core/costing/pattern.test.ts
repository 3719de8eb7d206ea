import { describe, expect, test } from 'vitest';
import { copiesToPay, type PatternWork, patternEarned, patternPrice } from '../../../core/costing/pattern.js';
import { eur, made, wrong } from './samples.js';

/** 22 hours at 18.00 and 40.00 for testing: 436.00. */
const WORK: PatternWork = { hours: 22, hourly: eur(1800), otherMinor: 4000 };
const FEES = { percent: 10, fixed: eur(20) };

// Worked by hand: a sale at 6.00 leaves 5.20; 436/5.20 = 83.8; (436/60 + 0.20)/0.9 = 8.296.
describe('a written pattern', () => {
  test('of 436.00 of work is paid by the 84th copy at 6.00', () => {
    expect(made(copiesToPay(WORK, eur(600), FEES))).toEqual({ pieces: 84, eachMinor: 520 });
  });

  test('is paid by 60 copies at 8.30', () => {
    expect(made(patternPrice(WORK, 60, FEES))).toEqual(eur(830));
  });

  test('has earned 21.82 an hour after 100 copies at 6.00, and lost before the first', () => {
    expect(made(patternEarned(WORK, { copies: 100, price: eur(600) }, FEES)).minor).toBe(2182);
    expect(made(patternEarned(WORK, { copies: 0, price: eur(600) }, FEES)).minor).toBe(-182);
  });

  test('takes hours, copies and one currency', () => {
    const idle = { ...WORK, hours: 0 };
    expect(wrong(copiesToPay(idle, eur(600)))).toEqual([{ code: 'no_hours', what: 'hours' }]);
    expect(wrong(patternPrice({ ...WORK, hours: -1 }, 0)).map((p) => p.code)).toEqual([
      'figure_out_of_range',
      'figure_out_of_range',
    ]);
    expect(wrong(patternPrice(WORK, 10, { percent: 0, fixed: { currency: 'USD', minor: 1 } }))).toEqual([
      { code: 'mixed_currencies', currencies: ['EUR', 'USD'] },
    ]);
    expect(wrong(patternEarned(WORK, { copies: 1.5, price: eur(600) })).map((p) => p.code)).toEqual([
      'figure_not_whole',
    ]);
  });
});
