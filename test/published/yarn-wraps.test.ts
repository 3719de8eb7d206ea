import { yarnWeightsWrapped } from '../../core/tables/yarn-wraps.js';
import { exactly, type PublishedRow, publishedRows } from './rows.js';

const CYC = 'Craft Yarn Council’s YarnStandards.com, wraps to the inch, from second-hand copies';

const CHART: readonly (readonly [number: number, from: number, to: number])[] = [
  [0, 30, 40],
  [1, 14, 30],
  [2, 12, 18],
  [3, 11, 15],
  [4, 9, 12],
  [5, 6, 9],
  [6, 5, 6],
  [7, 1, 4],
];

const fits = (number: number, wraps: number): boolean => yarnWeightsWrapped(wraps).some((w) => w.number === number);

const rows = CHART.map(([number, from, to]): PublishedRow => {
  const inside = Array.from({ length: to - from + 1 }, (_, i) => from + i);
  const outside = [from - 1, ...(number === 0 ? [] : [to + 1])];
  return {
    claim: `number ${number} is wrapped ${from} to ${to} times`,
    inputs: { number },
    got: () => inside.filter((w) => !fits(number, w)).length + outside.filter((w) => fits(number, w)).length,
    expected: 0,
    tolerance: exactly('wraps told wrongly', 'whole wraps'),
    source: CYC,
  };
});

publishedRows('yarn wraps', 8, rows);
