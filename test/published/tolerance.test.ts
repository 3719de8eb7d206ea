import { normalQuantile } from '../../core/stats/normal.js';
import { type PublishedRow, publishedRows } from './rows.js';
import { textbook } from './textbook.js';

const HANDBOOK = 'NIST/SEMATECH e-Handbook of Statistical Methods, section 7.2.6.3, by Howe’s approximation';
const inputs = { n: 43, mean: 97.07, s: 0.0268, coverage: 0.9, confidence: 0.99, chiSquare: 23.65 };

/**
 * k = z·√(1 + 1/n)·√(ν/χ²): √(1 + 1/n) is the spread of the next piece over that of the sample, as `estimate` has it
 * for any sample of n; the point of χ² for ν = n − 1 is the handbook's.
 */
function factor(): number {
  const { sd, s2, nu } = textbook(Array.from({ length: inputs.n }, (_, i) => i));
  return normalQuantile((1 + inputs.coverage) / 2) * (sd / Math.sqrt(s2)) * Math.sqrt(nu / inputs.chiSquare);
}
const limit = (side: -1 | 1) => (): number => inputs.mean + side * factor() * inputs.s;
const printed = { within: 0.00005, unit: 'units of the reading', because: 'four decimals are printed' };

const rows: PublishedRow[] = [
  {
    claim: 'the two-sided factor is 2.2173',
    inputs,
    got: factor,
    expected: 2.2173,
    tolerance: { within: 0.00005, unit: 'standard deviations', because: 'four decimals are printed' },
    source: HANDBOOK,
  },
  {
    claim: 'the interval begins at 97.0106',
    inputs,
    got: limit(-1),
    expected: 97.0106,
    tolerance: printed,
    source: HANDBOOK,
  },
  {
    claim: 'the interval ends at 97.1294',
    inputs,
    got: limit(1),
    expected: 97.1294,
    tolerance: printed,
    source: HANDBOOK,
  },
];

publishedRows('tolerance intervals', 3, rows);
