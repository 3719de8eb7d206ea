import { bodySizeMm, type Person } from '../../core/tables/bodies.js';
import { HEAD_GIRTH } from '../../core/tables/head-girth.js';
import { type PublishedRow, publishedRows } from './rows.js';

const WHO = 'WHO Child Growth Standards (2007), head circumference-for-age';
const SURVEY = '2012 US Army anthropometric survey, NATICK/TR-15/007, computed from its records';
const printed = { within: 0.0005, unit: 'mm', because: 'the tables print so many decimals' };

const head = (person: Person, cm: number, source: string): PublishedRow => ({
  claim: `the head of a ${person.is === 'child' ? `${person.sex} of ${person.months} months` : person.is} is ${cm} cm round`,
  inputs: {},
  got: () => bodySizeMm('head', person) ?? Number.NaN,
  expected: 10 * cm,
  tolerance: printed,
  source,
});
const child = (sex: 'boy' | 'girl', months: number): Person => ({ is: 'child', sex, months });

/** A head z deviations from the median: M·(1 + S·z). */
const centile = (sex: 'boys' | 'girls', months: number, z: number): number => {
  const row = HEAD_GIRTH.find((one) => one.months === months);
  return row === undefined ? Number.NaN : row[sex].medianCm * (1 + row[sex].spread * z);
};

publishedRows('head girth', 13, [
  ...(
    [
      ['boy', 0, 34.4618],
      ['girl', 0, 33.8787],
      ['boy', 3, 40.5008],
      ['girl', 6, 42.2079],
      ['boy', 12, 46.0637],
      ['girl', 24, 47.1799],
      ['boy', 36, 49.4619],
      ['boy', 60, 50.7372],
      ['girl', 60, 49.9225],
    ] as const
  ).map(([sex, months, cm]) => head(child(sex, months), cm, WHO)),
  head({ is: 'woman' }, 56.11, SURVEY),
  head({ is: 'man' }, 57.44, SURVEY),
  {
    claim: 'a boy of 12 months two deviations up is 48.633 cm',
    inputs: { z: 2 },
    got: () => centile('boys', 12, 2),
    expected: 48.633,
    tolerance: { within: 0.0005, unit: 'cm', because: 'three decimals are printed' },
    source: WHO,
  },
  {
    claim: 'a girl of 24 months two deviations down is 44.389 cm',
    inputs: { z: -2 },
    got: () => centile('girls', 24, -2),
    expected: 44.389,
    tolerance: { within: 0.0005, unit: 'cm', because: 'three decimals are printed' },
    source: WHO,
  },
]);
