import { type PublishedRow, publishedRows } from './rows.js';
import { meanDeviation, textbookOf } from './textbook.js';

/** A line through the origin is the mean of y/x, each weighing x². */
const through = (x: readonly number[], y: readonly number[]) =>
  textbookOf(x.map((xi, i) => ({ y: (y[i] ?? Number.NaN) / xi, weight: xi ** 2 })));

const SETS = [
  {
    name: 'NoInt1',
    x: [60, 61, 62, 63, 64, 65, 66, 67, 68, 69, 70],
    y: [130, 131, 132, 133, 134, 135, 136, 137, 138, 139, 140],
    slope: 2.07438016528926,
    slopeDeviation: 0.0165289256198347,
    residualDeviation: 3.56753034006338,
  },
  {
    name: 'NoInt2',
    x: [4, 5, 6],
    y: [3, 4, 4],
    slope: 0.727272727272727,
    slopeDeviation: 0.0420827318078432,
    residualDeviation: 0.369274472937998,
  },
];

const rows = SETS.flatMap(({ name, x, y, slope, slopeDeviation, residualDeviation }): PublishedRow[] => {
  const found = through(x, y);
  const row = (claim: string, got: number, expected: number): PublishedRow => ({
    claim: `${claim} is ${expected}`,
    inputs: { x, y },
    got: () => got,
    expected,
    tolerance: { within: 1e-13 * expected, unit: 'of y or y/x', because: 'fifteen digits are certified' },
    source: `NIST Statistical Reference Datasets, linear regression, ${name}`,
  });
  return [
    row('the slope through the origin', found.mu, slope),
    row('its standard deviation', meanDeviation(found), slopeDeviation),
    row('the residual standard deviation', Math.sqrt(found.s2), residualDeviation),
  ];
});

publishedRows('regression through the origin', 6, rows);
