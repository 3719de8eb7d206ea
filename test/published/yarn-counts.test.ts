import { countOf, texOf, type YarnCountSystem } from '../../core/yarn/count.js';
import { type PublishedRow, publishedRows } from './rows.js';

const ASTM = 'ASTM D2260-03, table 1 and its worked uses';
const GATE = 'GATE (TF) 1992, question 2';

/** What a count in one system is in another. */
const converted = (count: number, from: YarnCountSystem, to: YarnCountSystem): number => {
  const tex = texOf(count, from);
  return tex.ok ? countOf(tex.value, to) : Number.NaN;
};

const printed = (digits: number) => ({
  within: 0.5 * 10 ** -digits * 1.000001,
  unit: 'the count',
  because: `printed to ${digits} decimals`,
});

type Conversion = readonly [
  count: number,
  from: YarnCountSystem,
  to: YarnCountSystem,
  expected: number,
  digits: number,
  source: string,
];

const CONVERSIONS: readonly Conversion[] = [
  [1, 'cotton', 'tex', 590.541, 3, ASTM],
  [1, 'worsted', 'tex', 885.812, 3, ASTM],
  [1, 'woollen_run', 'tex', 310.034, 3, ASTM],
  [1, 'linen', 'tex', 1653.52, 2, ASTM],
  [1, 'woollen_skein', 'tex', 1937.713, 3, `${ASTM}, for its exact pound and yard; the hank of 256 yd second-hand`],
  [1000, 'yd_per_lb', 'tex', 496.055, 3, ASTM],
  [10, 'cotton', 'worsted', 15, 9, `${ASTM}, use 1`],
  [30, 'tex', 'cotton', 19.7, 1, `${ASTM}, use 2`],
  [20, 'tex', 'denier', 180, 9, GATE],
  [20, 'tex', 'metric', 50, 9, GATE],
  [10, 'cotton', 'woollen_run', 5.25, 9, `${ASTM}: cotton is .525 of the run`],
  [20, 'worsted', 'woollen_run', 7, 9, `${ASTM}: worsted is .35 of the run`],
  [10, 'cotton', 'linen', 28, 9, `${ASTM}: lea is 2.8 of cotton`],
  [200, 'm_per_100_g', 'tex', 500, 9, 'by arithmetic from grams to the 1000 m'],
  [400, 'yd_per_lb', 'tex', 1240.137, 3, 'by arithmetic from the exact pound and yard'],
  [25, 'yd_per_oz', 'tex', 1240.137, 3, 'by arithmetic: 400 yd to the pound of 16 oz'],
];

const rows = CONVERSIONS.map(
  ([count, from, to, expected, digits, source]): PublishedRow => ({
    claim: `${count} ${from} is ${expected} ${to}`,
    inputs: { count, from, to },
    got: () => converted(count, from, to),
    expected,
    tolerance: printed(digits),
    source,
  }),
);

// Its key prints 29.525 for 29.527, having taken 590.5 for the constant.
rows.push({
  claim: '20 tex is 29.525 cotton',
  inputs: { tex: 20 },
  got: () => converted(20, 'tex', 'cotton'),
  expected: 29.525,
  tolerance: { within: 0.0025, unit: 'the count', because: 'worked with 590.5 in place of 590.541' },
  source: GATE,
});

publishedRows('yarn counts', 17, rows);
