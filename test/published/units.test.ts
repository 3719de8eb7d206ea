import { gPer, mmPer, quantityAt } from '../../core/units/quantity.js';
import { exactly, type PublishedRow, publishedRows } from './rows.js';

const NIST = 'NIST Special Publication 811 (2008), appendix B';
const DEFINED = 'defined, so exact';

/** What a typed quantity comes to in mm or g. */
const typed = (text: string) => (): number => {
  const quantity = quantityAt(text, 0);
  return (quantity?.lo ?? Number.NaN) * (mmPer(quantity?.unit) ?? gPer(quantity?.unit) ?? Number.NaN);
};

const rows: PublishedRow[] = [
  {
    claim: 'an inch is 25.4 mm',
    inputs: { typed: '1 in' },
    got: typed('1 in'),
    expected: 25.4,
    tolerance: exactly('mm', DEFINED),
    source: NIST,
  },
  {
    claim: 'a foot is 304.8 mm',
    inputs: { typed: '1 ft' },
    got: typed('1 ft'),
    expected: 304.8,
    tolerance: exactly('mm', DEFINED),
    source: NIST,
  },
  {
    claim: 'a yard is 0.9144 m',
    inputs: { typed: '1 yd' },
    got: typed('1 yd'),
    expected: 914.4,
    tolerance: exactly('mm', DEFINED),
    source: NIST,
  },
  {
    claim: 'an avoirdupois ounce is 28.349523125 g',
    inputs: { typed: '1 oz' },
    got: typed('1 oz'),
    expected: 28.349523125,
    tolerance: exactly('g', DEFINED),
    source: NIST,
  },
  {
    claim: 'an avoirdupois pound is 453.59237 g',
    inputs: { typed: '1 lb' },
    got: typed('1 lb'),
    expected: 453.59237,
    tolerance: exactly('g', DEFINED),
    source: NIST,
  },
  {
    claim: '4 in are 10.16 cm, not 10',
    inputs: { typed: '4 in' },
    got: typed('4 in'),
    expected: 101.6,
    tolerance: exactly('mm', 'four times the exact inch'),
    source: `${NIST}, by arithmetic`,
  },
];

publishedRows('exact units', 6, rows);
