import { tQuantile } from '../../core/stats/student-t.js';
import { type PublishedRow, publishedRows } from './rows.js';
import { meanDeviation, textbook } from './textbook.js';

const meanBound = (sample: readonly number[], side: -1 | 1) => (): number => {
  const found = textbook(sample);
  return found.mu + side * tQuantile(0.975, found.nu) * meanDeviation(found);
};
const nextBound = (pitchesMm: readonly number[], side: -1 | 1) => (): number => {
  const { mu, sd, nu } = textbook(pitchesMm.map(Math.log));
  return Math.exp(mu + side * tQuantile(0.975, nu) * sd);
};

// The fifteen readings of the example; the first two rows show that they have its printed mean and s.
const RATES = [8.6, 9.4, 7.9, 6.8, 8.3, 7.3, 9.2, 9.6, 8.7, 11.4, 10.3, 5.4, 8.1, 5.5, 6.9];
const OPENSTAX = 'OpenStax, Introductory Statistics 2e, chapter 8, a mean with Student’s t (n 15)';
const printed = {
  within: 0.00005,
  unit: 'units of the reading',
  because: 'four decimals are printed',
};

const PITCHES_MM = [5.01, 5.08, 5.12, 5.05, 5.1];
const WORKED = 'worked by hand, not published: of logs, mean 1.623706, s .00853931, t 2.776445, √(1 + 1/5)';
const worked = { within: 0.000005, unit: 'mm', because: 'five decimals were worked' };

const intervals: PublishedRow[] = [
  {
    claim: 'the mean is 8.2267',
    inputs: { readings: RATES },
    got: () => textbook(RATES).mu,
    expected: 8.2267,
    tolerance: printed,
    source: OPENSTAX,
  },
  {
    claim: 's is 1.6722',
    inputs: { readings: RATES },
    got: () => Math.sqrt(textbook(RATES).s2),
    expected: 1.6722,
    tolerance: printed,
    source: OPENSTAX,
  },
  {
    claim: 'the mean interval begins at 7.3006',
    inputs: { readings: RATES, confidence: 0.95 },
    got: meanBound(RATES, -1),
    expected: 7.3006,
    tolerance: printed,
    source: OPENSTAX,
  },
  {
    claim: 'the mean interval ends at 9.1527',
    inputs: { readings: RATES, confidence: 0.95 },
    got: meanBound(RATES, 1),
    expected: 9.1527,
    tolerance: printed,
    source: OPENSTAX,
  },
  {
    claim: 'the next piece is not under 4.94182 mm',
    inputs: { pitchesMm: PITCHES_MM, confidence: 0.95 },
    got: nextBound(PITCHES_MM, -1),
    expected: 4.94182,
    tolerance: worked,
    source: WORKED,
  },
  {
    claim: 'the next piece is not over 5.2053 mm',
    inputs: { pitchesMm: PITCHES_MM, confidence: 0.95 },
    got: nextBound(PITCHES_MM, 1),
    expected: 5.2053,
    tolerance: worked,
    source: WORKED,
  },
];

publishedRows('intervals', 6, intervals);
