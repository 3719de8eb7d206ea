import { expect, test } from 'vitest';
import { breakEven } from '../../../core/costing/break-even.js';
import { eur, made, wrong } from './samples.js';

const COST = eur(1840);
const FEES = { percent: 6.5, fixed: eur(30) };

// Worked by hand: 34.95·0.935 − 0.30 − 18.40 = 13.978; 60/13.978 = 4.29.
test('a stall of 60 is paid by the fifth piece at 34.95, each leaving 13.98', () => {
  expect(made(breakEven(eur(6000), COST, eur(3495), FEES))).toEqual({ pieces: 5, eachMinor: 1398 });
});

test('a stall that costs nothing is paid before the first', () => {
  expect(made(breakEven(eur(0), COST, eur(1500), FEES)).pieces).toBe(0);
});

test('no number of sales pays where a sale leaves nothing', () => {
  expect(made(breakEven(eur(6000), COST, eur(1840)))).toEqual({ pieces: undefined, eachMinor: 0 });
});

test('a stall in another currency is refused', () => {
  expect(wrong(breakEven({ currency: 'USD', minor: 1 }, COST, eur(3495), FEES))).toEqual([
    { code: 'mixed_currencies', currencies: ['USD', 'EUR'] },
  ]);
});
