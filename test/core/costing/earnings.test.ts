import { expect, test } from 'vitest';
import { bill } from '../../../core/costing/bill.js';
import { earnedAnHour } from '../../../core/costing/earnings.js';
import type { Item } from '../../../core/costing/item.js';
import { COWL, eur, made, wrong } from './samples.js';

const material = (id: string, minor: number): Item => ({
  id,
  is: 'material',
  quantity: 1,
  price: { is: 'rate', ...eur(minor), per: 1 },
});
const OVERHEAD_OF_150 = { is: 'percent_of_prime', percent: (100 * 150) / 890 } as const;
const FEES = { percent: 6.5, fixed: eur(30) };
const time = (price?: Item['price']): Item => ({ id: 'time', is: 'time', quantity: 1.43, price });

// Worked by hand: (32·0.935 − 0.30 − 6.20 − 2.70 − 1.50)/1.43 = 19.22/1.43 = 13.4406.
test('32.00 for yarn of 6.20, notions of 2.70, overhead of 1.50 and 1.43 hours earns 13.44 an hour', () => {
  const unpaid = made(bill([material('yarn', 620), material('notions', 270), time()], OVERHEAD_OF_150));
  expect(unpaid).toMatchObject({ overheadMinor: 150, costMinor: 1040, hours: 1.43 });
  expect(made(earnedAnHour(unpaid, eur(3200), FEES))).toEqual({ currency: 'EUR', anHourMinor: 1344, leftOut: [] });
});

test('an hour earns the same whatever it is billed at', () => {
  const paid = made(bill([material('yarn', 890), time({ is: 'rate', ...eur(1600), per: 1 })], { is: 'none' }));
  const unpaid = made(bill([material('yarn', 890), time()], { is: 'none' }));
  expect(made(earnedAnHour(paid, eur(3200)))).toEqual(made(earnedAnHour(unpaid, eur(3200))));
});

test('a batch earns for all its pieces: ten cowls at 48 leave 480 less yarn and packing over 13.2 hours', () => {
  const ten = made(bill(COWL, { is: 'none' }, 10));
  // 182·10/105·6.20 = 107.467; (480 − 107.47 − 8.50)/13.2 = 27.578.
  expect(made(earnedAnHour(ten, eur(4800))).anHourMinor).toBe(2758);
});

test('what the bill lacks is said, except the price of the hour', () => {
  const lacking = made(bill([material('yarn', 620), { ...material('ring', 1), price: undefined }, time()], undefined));
  expect(made(earnedAnHour(lacking, eur(3200))).leftOut.map(({ id }) => id)).toEqual(['ring', 'overhead']);
});

test('nothing is earned an hour of no hours, nor at another currency’s price', () => {
  const timeless = made(bill([material('yarn', 620)], { is: 'none' }));
  expect(wrong(earnedAnHour(timeless, eur(3200)))).toEqual([{ code: 'no_hours', what: 'earned' }]);
  expect(wrong(earnedAnHour(timeless, { currency: 'USD', minor: 3200 })).map((p) => p.code)).toEqual([
    'mixed_currencies',
  ]);
});
