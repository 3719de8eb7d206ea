import type { Step } from '../../core/piece.js';
import { rates } from '../../core/timing/rates.js';
import { type TimeRange, timing } from '../../core/timing/timing.js';
import { AT_MACHINE, AT_TABLE, POUCH } from '../core/timing/samples.js';
import { type PublishedRow, publishedRows } from './rows.js';

type Stage = 'knit' | 'finish';
const usual = rates([]);
const minutesOf = (steps: readonly Pick<Step, 'driver' | 'count' | 'times'>[], stage: Stage) => ({
  median: (timing(steps, usual)[stage] satisfies TimeRange).medianS / 60,
  added: timing(steps, usual).lines.reduce((sum, line) => (line.stage === stage ? sum + line.medianS / 60 : sum), 0),
});

const PRACTICE = [
  { claim: 'cranking takes about 30 minutes', stage: 'knit', worked: AT_MACHINE, expected: 30 },
  { claim: 'seaming, rings and closure take about an hour', stage: 'finish', worked: AT_TABLE, expected: 60 },
] as const;

publishedRows(
  'the usual pace',
  6,
  PRACTICE.flatMap(({ claim, stage, worked, expected }): PublishedRow[] => {
    const row = (how: string, got: () => number): PublishedRow => ({
      claim: `${claim}, ${how}`,
      inputs: { needles: 46, rows: 110, rings: 2, closureIn: 8 },
      got,
      expected,
      tolerance: { within: 0.15 * expected, unit: 'min', because: 'the trade says "about"' },
      source: 'common practice, no source',
    });
    return [
      row('the usual rates added', () => minutesOf(worked, stage).added),
      row('as a median', () => minutesOf(worked, stage).median),
      row('by the steps of a plan', () => minutesOf(POUCH.steps, stage).median),
    ];
  }),
);
