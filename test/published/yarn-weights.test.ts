import { yarnWeightNamed, yarnWeightsFor } from '../../core/tables/yarn-weights.js';
import { exactly, type PublishedRow, publishedRows } from './rows.js';

const CYC = 'Craft Yarn Council’s YarnStandards.com, standard yarn weight system';
const SECOND_HAND = `${CYC}, from second-hand copies`;

const CHART: readonly (readonly [number: number, name: string, from: number, to: number, source: string])[] = [
  [0, 'Lace', 33, 40, CYC],
  [1, 'Super Fine', 27, 32, CYC],
  [2, 'Fine', 23, 26, CYC],
  [3, 'Light', 21, 24, CYC],
  [4, 'Medium', 16, 20, CYC],
  [5, 'Bulky', 12, 15, CYC],
  [6, 'Super Bulky', 7, 11, SECOND_HAND],
  [7, 'Jumbo', 1, 6, `${SECOND_HAND}: 6 or fewer, which is 1 to 6 of whole ones`],
];

/** The least or greatest whole number of stitches that fits a category, found from the stitches. */
const fitting = (number: number, end: 'least' | 'greatest'): number => {
  const stitches = Array.from({ length: 60 }, (_, i) => i + 1);
  const all = stitches.filter((count) => yarnWeightsFor(count).some((w) => w.number === number));
  return (end === 'least' ? all.at(0) : all.at(-1)) ?? Number.NaN;
};

const rows = CHART.flatMap(([number, name, from, to, source]): PublishedRow[] => {
  const inputs = { number, name };
  const whole = exactly('stitches over 4 in', 'a count');
  const found = yarnWeightNamed(name)?.number ?? Number.NaN;
  return [
    {
      claim: `${name} is number ${number}`,
      inputs,
      got: () => found,
      expected: number,
      tolerance: exactly('categories', 'a number'),
      source,
    },
    {
      claim: `it begins at ${from}`,
      inputs,
      got: () => fitting(number, 'least'),
      expected: from,
      tolerance: whole,
      source,
    },
    {
      claim: `it ends at ${to}`,
      inputs,
      got: () => fitting(number, 'greatest'),
      expected: to,
      tolerance: whole,
      source,
    },
  ];
});

publishedRows('yarn weights', 24, rows);
