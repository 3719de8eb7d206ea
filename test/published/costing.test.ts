import { type Bill, bill } from '../../core/costing/bill.js';
import { breakEven } from '../../core/costing/break-even.js';
import type { Item } from '../../core/costing/item.js';
import { marginOfMarkup, markupOfMargin, priceForMarkup, saleAt } from '../../core/costing/price.js';
import { retailFrom } from '../../core/costing/wholesale.js';
import type { Money } from '../../core/money/currency.js';
import { minorDigits } from '../../core/money/currency.js';
import { made } from '../core/costing/samples.js';
import { exactly, type PublishedRow, publishedRows } from './rows.js';

const openStax = (section: string) => `OpenStax, Principles of Accounting 2 (2019), section ${section}`;
const usd = (dollars: number): Money => ({ currency: 'USD', minor: 100 * dollars });
const dollars = (minor: number | undefined): number => (minor ?? Number.NaN) / 100;
const exact = exactly('dollars', 'printed in whole cents');
const units = exactly('units', 'a count');

const pays = (fixed: number, cost: number, price: number) => made(breakEven(usd(fixed), usd(cost), usd(price)));

const material = (price: number): Item => ({
  id: 'material',
  is: 'material',
  quantity: 1,
  price: { is: 'rate', ...usd(price), per: 1 },
});
const labour = (hours: number, hourly: number): Item => ({
  id: 'labour',
  is: 'time',
  quantity: hours,
  price: { is: 'rate', ...usd(hourly), per: 1 },
});

/** A job whose overhead goes by the dollar of labour: an hour at one dollar for each. */
const job = (price: number, labourDollars: number, overheadRate: number): Bill =>
  made(bill([material(price), labour(labourDollars, 1)], { is: 'per_hour', ...usd(overheadRate) }));

/** A service: a part, three hours, and overhead as large as the wages. */
const service = made(bill([material(42), labour(3, 25)], { is: 'per_hour', ...usd(25) }));

const costing: PublishedRow[] = [
  {
    claim: 'break-even is 225 units',
    inputs: { fixed: 18_000, price: 100, variable: 20 },
    got: () => pays(18_000, 20, 100).pieces ?? Number.NaN,
    expected: 225,
    tolerance: units,
    source: openStax('3.2'),
  },
  {
    claim: 'a profit of 16,000 takes 425 units',
    inputs: { fixed: 18_000, profit: 16_000, unitMargin: 80 },
    got: () => pays(34_000, 20, 100).pieces ?? Number.NaN,
    expected: 425,
    tolerance: units,
    source: openStax('3.2'),
  },
  {
    claim: 'break-even is 1,700 units',
    inputs: { fixed: 85_000, price: 90, unitMargin: 50 },
    got: () => pays(85_000, 40, 90).pieces ?? Number.NaN,
    expected: 1700,
    tolerance: units,
    source: openStax('3.5'),
  },
  {
    claim: 'a unit leaves 80',
    inputs: { price: 100, variable: 20 },
    got: () => dollars(pays(0, 20, 100).eachMinor),
    expected: 80,
    tolerance: exact,
    source: openStax('3.1'),
  },
  {
    claim: 'which is 80 % of its price',
    inputs: { price: 100, variable: 20 },
    got: () => made(saleAt(usd(20), usd(100))).marginPercent,
    expected: 80,
    tolerance: exactly('per cent', 'a ratio of whole numbers'),
    source: openStax('3.1'),
  },
  {
    claim: 'a unit leaves 9.50',
    inputs: { price: 25, variable: 15.5 },
    got: () => dollars(pays(700, 15.5, 25).eachMinor),
    expected: 9.5,
    tolerance: exact,
    source: openStax('3.1'),
  },
  {
    claim: 'overhead applied to a job is 165',
    inputs: { material: 700, labour: 66, ratePerLabourDollar: 2.5 },
    got: () => dollars(job(700, 66, 2.5).overheadMinor),
    expected: 165,
    tolerance: exact,
    source: openStax('4.4'),
  },
  {
    claim: 'the job costs 931',
    inputs: { material: 700, labour: 66, ratePerLabourDollar: 2.5 },
    got: () => dollars(job(700, 66, 2.5).costMinor),
    expected: 931,
    tolerance: exact,
    source: openStax('4.4'),
  },
  {
    claim: 'its prime cost is 766',
    inputs: { material: 700, labour: 66 },
    got: () => dollars(job(700, 66, 2.5).primeMinor),
    expected: 766,
    tolerance: exact,
    source: `${openStax('4.4')}, added up here`,
  },
  {
    claim: 'a service costs 192',
    inputs: { part: 42, hours: 3, wage: 25, overheadShareOfWages: 1 },
    got: () => dollars(service.costMinor),
    expected: 192,
    tolerance: exact,
    source: `${openStax('4.8')}, added up here`,
  },
  {
    claim: 'overhead by the hour comes to 5.00 a unit',
    inputs: { ratePerHour: 2, hours: 350_000, units: 140_000 },
    got: () => dollars(made(bill([labour(350_000 / 140_000, 0)], { is: 'per_hour', ...usd(2) })).overheadMinor),
    expected: 5,
    tolerance: exact,
    source: openStax('6.1'),
  },
  {
    claim: 'a product at 20 leaves 1.50',
    inputs: { price: 20, material: 3.5, labour: 10, overhead: 5 },
    got: () => dollars(made(saleAt(usd(18.5), usd(20))).leftMinor),
    expected: 1.5,
    tolerance: exact,
    source: openStax('6.1'),
  },
  {
    claim: 'a markup of 30 % on the variable cost makes 13.00',
    inputs: { variable: 10, markupPercent: 30 },
    got: () => dollars(made(priceForMarkup(usd(10), 30)).minor),
    expected: 13,
    tolerance: exact,
    source: openStax('9.4'),
  },
  {
    claim: 'a markup of 30 % on the full cost makes 15.60',
    inputs: { full: 12, markupPercent: 30 },
    got: () => dollars(made(priceForMarkup(usd(12), 30)).minor),
    expected: 15.6,
    tolerance: exact,
    source: openStax('9.4'),
  },
  {
    claim: 'keystone doubles a cost of 10',
    inputs: { cost: 10, marginPercent: 50 },
    got: () => dollars(made(retailFrom(usd(10), 50)).minor),
    expected: 20,
    tolerance: exact,
    source: 'marketing dictionary of a university',
  },
];

publishedRows('costing', 15, costing);

const PAIRS = [
  [25, 20],
  [50, 100 / 3],
  [100, 50],
  [150, 60],
  [200, 200 / 3],
  [300, 75],
] as const;

publishedRows(
  'markup and margin',
  12,
  PAIRS.flatMap(([markupPercent, marginPercent]): PublishedRow[] => {
    const row = (claim: string, got: () => number, expected: number): PublishedRow => ({
      claim,
      inputs: { markupPercent, marginPercent },
      got,
      expected,
      tolerance: { within: 1e-11, unit: 'per cent', because: 'thirds do not print whole' },
      source: 'm/(1 + m) and g/(1 − g), exact',
    });
    return [
      row('markup as margin', () => marginOfMarkup(markupPercent), marginPercent),
      row('margin as markup', () => markupOfMargin(marginPercent), markupPercent),
    ];
  }),
);

const DIGITS = [
  ['JPY', 0],
  ['ISK', 0],
  ['EUR', 2],
  ['USD', 2],
  ['KWD', 3],
  ['TND', 3],
  ['CLF', 4],
] as const;

publishedRows(
  'minor units',
  7,
  DIGITS.map(([currency, digits]) => ({
    claim: `${currency} has ${digits} decimals`,
    inputs: { currency },
    got: () => minorDigits(currency),
    expected: digits,
    tolerance: exactly('digits', 'a count'),
    source: 'ISO 4217, list one of 2024-06-25',
  })),
);
