import { cheapest, type Ware } from '../../core/yarn/cheapest.js';
import { exactly, type PublishedRow, publishedRows } from './rows.js';

type Case = {
  needG: number;
  balls: readonly (readonly [massG: number, minor: number])[];
  buy: number[];
  minor: number;
};

const THREE = [
  [50, 450],
  [100, 820],
  [200, 1500],
] as const;

/** Made up; solved by brute force and by two general integer-programming libraries, which agree. */
const CASES: readonly Case[] = [
  { needG: 437, balls: THREE, buy: [1, 0, 2], minor: 3450 },
  { needG: 610, balls: THREE, buy: [1, 0, 3], minor: 4950 },
  {
    needG: 305,
    balls: [
      [25, 290],
      [50, 490],
      [100, 900],
      [150, 1420],
    ],
    buy: [1, 0, 3, 0],
    minor: 2990,
  },
  {
    needG: 430,
    balls: [
      [50, 450],
      [100, 820],
      [220, 1640],
    ],
    buy: [0, 0, 2],
    minor: 3280,
  },
  {
    needG: 90,
    balls: [
      [40, 700],
      [55, 900],
    ],
    buy: [1, 1],
    minor: 1600,
  },
];

const rows = CASES.flatMap(({ needG, balls, buy, minor }): PublishedRow[] => {
  const wares = balls.map(([size, price]): Ware => ({ size, packs: [{ count: 1, minor: price }] }));
  const bought = cheapest(wares, needG) ?? [];
  const inputs = { needG, ballsG: balls.map(([massG]) => massG), pricesMinor: balls.map(([, price]) => price) };
  const source = 'own construction, by brute force, HiGHS and javascript-lp-solver';
  return [
    {
      claim: `${needG} g cost ${minor} at least`,
      inputs,
      got: () => balls.reduce((paid, [, price], i) => paid + price * (bought[i] ?? Number.NaN), 0),
      expected: minor,
      tolerance: exactly('minor units', 'money is exact'),
      source,
    },
    {
      claim: `as ${buy.join(', ')} balls`,
      inputs,
      got: () => buy.filter((count, i) => bought[i] !== count).length,
      expected: 0,
      tolerance: exactly('put-ups bought otherwise', 'there is no other purchase as cheap'),
      source,
    },
  ];
});

publishedRows('ball buying', 10, rows);
