import { backwards } from '../../core/batch/backwards.js';
import { DAY_S, type WallS } from '../../core/batch/calendar.js';
import { byDueDate } from '../../core/batch/due-order.js';
import { finishedAt, type Pair } from '../../core/batch/flow.js';
import { type Job, johnsonOrder } from '../../core/batch/johnson.js';
import { ALWAYS, dayOfDate, hours, orders, week } from '../core/batch/samples.js';
import { exactly, type PublishedRow, publishedRows } from './rows.js';

const BOTH: Pair = { knitter: ALWAYS, finisher: ALWAYS, from: 0 };
const exact = exactly('hours', 'whole numbers');

type Case = { source: string; jobs: Record<string, readonly [number, number]>; order: string; makespan: number };

const STUDY_HELP = 'data and order as published on a study-help page; its printed total is wrong, brute force here';

const JOHNSON: readonly Case[] = [
  {
    source: STUDY_HELP,
    jobs: { L: [10, 2], M: [5, 4], N: [7, 5], O: [3, 6], P: [1, 7] },
    order: 'PONML',
    makespan: 28,
  },
  {
    source: STUDY_HELP,
    jobs: { A: [3, 8], B: [12, 10], C: [5, 9], D: [2, 6], E: [9, 3], F: [11, 1] },
    order: 'DACBEF',
    makespan: 43,
  },
  {
    source: STUDY_HELP,
    jobs: { A: [10, 5], B: [7, 4], C: [5, 7], D: [3, 8], E: [2, 6], F: [4, 3] },
    order: 'EDCABF',
    makespan: 35,
  },
  {
    source: 'a textbook of operations management, from memory; brute force here',
    jobs: { A: [5, 2], B: [3, 6], C: [8, 4], D: [10, 7], E: [7, 12] },
    order: 'BEDCA',
    makespan: 35,
  },
  {
    source: 'data as published on a study-help page; order and total by brute force here',
    jobs: { A: [10, 11], B: [8, 17], C: [14, 10], D: [13, 7], E: [10, 8], F: [25, 9], G: [6, 15] },
    order: 'GBACFED',
    makespan: 93,
  },
];

const jobsOf = ({ jobs }: Case): Job[] =>
  Object.entries(jobs).map(([id, [knit, finish]]) => ({ id, knitS: hours(knit), finishS: hours(finish) }));

publishedRows(
  'Johnson’s rule',
  15,
  JOHNSON.flatMap((one): PublishedRow[] => {
    const row = (claim: string, got: () => number, expected: number): PublishedRow => ({
      claim,
      inputs: Object.fromEntries(Object.entries(one.jobs).map(([id, [a, b]]) => [id, `${a}/${b}`])),
      got,
      expected,
      tolerance: exact,
      source: one.source,
    });
    const order = johnsonOrder(jobsOf(one));
    const isOrder = (): number => (order.map(({ id }) => id).join('') === one.order ? 1 : 0);
    return [
      row(`the order is ${one.order}`, isOrder, 1),
      row(`it is through after ${one.makespan}`, () => finishedAt(order, BOTH) / hours(1), one.makespan),
      row(
        'no order is through sooner',
        () => Math.min(...orders(jobsOf(one)).map((other) => finishedAt(other, BOTH))) / hours(1),
        one.makespan,
      ),
    ];
  }),
);

const NPTEL = 'Deshmukh and Kanda, NPTEL course on project and production management, module 9, example 9.1';
const DUE = { A: [4, 15], B: [7, 16], C: [2, 8], D: [6, 21], E: [3, 9] } as const;
const inOrder = byDueDate(
  Object.entries(DUE).map(([id, [days, due]]) => ({ id, workS: days * DAY_S, due: due * DAY_S })),
  ALWAYS,
  0,
);
const mean = (of: (one: { done: WallS; lateS: number }) => number): number =>
  inOrder.reduce((sum, one) => sum + of(one), 0) / inOrder.length / DAY_S;

const dueRow = (claim: string, got: () => number, expected: number): PublishedRow => ({
  claim,
  inputs: Object.fromEntries(Object.entries(DUE).map(([id, [days, due]]) => [id, `${days} due ${due}`])),
  got,
  expected,
  tolerance: { within: 1e-9, unit: 'days', because: 'one decimal is printed, and it is exact' },
  source: NPTEL,
});

publishedRows('orders by their dates', 5, [
  dueRow('the order is C E A B D', () => (inOrder.map(({ id }) => id).join('') === 'CEABD' ? 1 : 0), 1),
  dueRow('the mean flow is 10.8', () => mean(({ done }) => done), 10.8),
  dueRow('the mean tardiness is 0.2', () => mean(({ lateS }) => Math.max(0, lateS)), 0.2),
  dueRow('the mean lateness is −3', () => mean(({ lateS }) => lateS), -3),
  dueRow('the latest is 1 late', () => Math.max(...inOrder.map(({ lateS }) => lateS)) / DAY_S, 1),
]);

const STARTS = { knit: '2026-03-12', relax: '2026-03-17', seam: '2026-03-18', label: '2026-03-20' } as const;
const DAYS = { knit: 3, relax: 1, seam: 2, label: 1 } as const;
const workday: [number, number][] = [[0, 24]];
const placed = backwards(
  Object.entries(DAYS).map(([id, days]) => ({ id, workS: days * DAY_S })),
  week({ 0: workday, 1: workday, 2: workday, 3: workday, 4: workday }),
  (dayOfDate('2026-03-20') + 1) * DAY_S,
);

publishedRows(
  'a schedule backwards from Friday 20 March 2026',
  4,
  Object.entries(STARTS).map(
    ([id, date]): PublishedRow => ({
      claim: `${id} begins on ${date}`,
      inputs: DAYS,
      got: () => (placed.find((one) => one.id === id)?.begin ?? Number.NaN) / DAY_S,
      expected: dayOfDate(date),
      tolerance: exactly('days', 'whole days'),
      source: 'worked by hand, Monday to Friday; no published example with dates was found',
    }),
  ),
);
