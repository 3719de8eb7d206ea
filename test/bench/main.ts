import { mkdtempSync, rmSync } from 'node:fs';
import { cpus, tmpdir } from 'node:os';
import { join } from 'node:path';
import { newId } from '../../bot/ids.js';
import { openSqlite } from '../../bot/store/sqlite.js';
import { silentLog } from '../../bot/surroundings.js';
import { taken } from '../../bot/turn.js';
import {
  type Measurement,
  notionsFor,
  type Plan,
  type PutUp,
  pieceById,
  plan,
  printed,
  purchases,
  type Words,
} from '../../core/index.js';
import { landingChance } from '../../core/sizing/rows.js';
import { corrected } from '../../core/work/correction.js';
import { hanging, workOf } from '../core/work/samples.js';

const swatch = (i: number): Measurement => ({
  swatch: `${i}`,
  state: 'rested',
  form: 'tube',
  rows: { count: 110, overMm: 555 + (i % 9), how: 'read' },
  stitches: { count: 23, overMm: 170 + (i % 4), how: 'read' },
});
const swatches = (howMany: number): Measurement[] => Array.from({ length: howMany }, (_, i) => swatch(i));

const pouch = pieceById('pouch');
if (pouch === undefined) throw new Error('there is no pouch');
const planned = (measurements: readonly Measurement[]): Plan => {
  const values = { closure: { is: 'length', mm: 203.2 } } as const;
  const outcome = plan({ piece: pouch, values, needles: 46, measurements, pieces: 1 });
  if (!outcome.ok) throw new Error('the plan was refused');
  return outcome.value;
};

const wordsOf = (made: Plan): readonly Words[] => [
  ...[...made.steps, ...notionsFor(made.notions, made.pieces)].map(({ say }) => say),
  ...made.cautions,
  ...made.shortfalls,
  ...made.assumed,
];
const printedPlan = (made: Plan): number => wordsOf(made).reduce((n, w) => n + printed(w, { units: 'in' }).length, 0);

/** The median over rounds of the microseconds that one call takes; what is returned is summed, so that it is made. */
function microseconds(calls: number, one: (i: number) => number): number {
  const ROUNDS = 9;
  let sink = 0;
  const rounds = Array.from({ length: ROUNDS }, () => {
    const start = performance.now();
    for (let i = 0; i < calls; i++) sink += one(i);
    return ((performance.now() - start) * 1000) / calls;
  });
  if (!Number.isFinite(sink)) throw new Error('something measured came to no number');
  return rounds.sort((a, b) => a - b)[Math.floor(ROUNDS / 2)] ?? Number.NaN;
}

const [single, many] = [swatches(1), swatches(1000)];
const made = planned(single);
const row = { mu: Math.log(5.08), s2: 0.0009, nu: 4, weight: 0.99, sd: 0.0425, pieces: 1 };
const window = { loMm: 266.7, hiMm: 279.4 };
const ring = { share: 1 / 2, extra: 1, fixedMm: 0 };

const onMachine = workOf(row);
const inWork = { readings: [hanging(50, 262), hanging(80, 418)], stopAt: 106, knitted: 80 };

/** Twenty put-ups in five lots, four ball sizes each, half of them in packs of ten too. */
const putUps = Array.from({ length: 20 }, (_, i): PutUp => {
  const lengthM = [97, 105, 125, 210][i % 4] ?? 100;
  const minor = Math.round(lengthM * (5.5 + ((i * 7) % 20) / 10));
  const ten = { count: 10, minor: Math.round(9.2 * minor) };
  return {
    ball: { massG: lengthM / 2.1, lengthM },
    lot: `${i % 5}`,
    stock: 20 + (i % 7),
    currency: 'EUR',
    packs: [{ count: 1, minor }, ...(i % 2 === 0 ? [ten] : [])],
  };
});
const buying = microseconds(5, (i) => {
  const outcome = purchases({ need: { lengthM: 10_000 + i, cv: 0.03 }, putUps });
  return outcome.ok ? outcome.value.cheapest.minor : Number.NaN;
});

const chance = microseconds(20_000, (i) => landingChance(window, ring, 100 + (i % 15), row));
const one = microseconds(2_000, () => planned(single).rows);
const correction = microseconds(2_000, () => corrected(window, ring, onMachine, inWork).stop.rows);
const thousand = microseconds(50, () => planned(many).rows);
const printing = microseconds(2_000, () => printedPlan(made));

type Spread = { p50: number; p99: number };

/**
 * Milliseconds of whole turns on a file as the bot keeps it, a plan asked for again and again; and of our own part of
 * them, without the wait for the disk at each commit. Five times as many turns come before those that count, as in a
 * bot that has been talked to for a while.
 */
async function turns(howMany: number): Promise<{ whole: Spread; own: Spread }> {
  const folder = mkdtempSync(join(tmpdir(), 'bench-'));
  let disk = 0;
  const store = await openSqlite(join(folder, 'store.sqlite'), ({ query, queryDurationMillis }) => {
    if (query.sql === 'commit') disk = queryDurationMillis;
  });
  const surroundings = { store, newId, log: silentLog, now: Date.now };
  let said = 0;
  const turn = (text: string) =>
    taken(
      {
        key: `event ${++said}`,
        slackTeamId: 'T1',
        place: 'dm:D1',
        user: { slackUserId: 'U1', name: '' },
        at: Date.now(),
        input: { text },
        address: { to: 'post', channel: 'D1' },
        message: { ts: `${Date.now() / 1000}`, became: 'sent' },
      },
      surroundings,
    );
  await turn('110 rows in 22 in, 46 needles, 6 3/4 flat');
  for (let i = 0; i < 5 * howMany; i++) await turn(`pouch ${8 + (i % 5)} in wide`);
  const times: number[] = [];
  const own: number[] = [];
  for (let i = 0; i < howMany; i++) {
    const start = performance.now();
    await turn(`pouch ${8 + (i % 5)} in wide`);
    times.push(performance.now() - start);
    own.push((times.at(-1) ?? Number.NaN) - disk);
  }
  await store.close();
  rmSync(folder, { recursive: true });
  return { whole: spread(times), own: spread(own) };
}

function spread(times: readonly number[]): Spread {
  const sorted = [...times].sort((a, b) => a - b);
  const at = (share: number): number => sorted[Math.floor(share * sorted.length)] ?? Number.NaN;
  return { p50: at(0.5), p99: at(0.99) };
}

const { whole, own } = await turns(1000);
const with99 = ({ p50, p99 }: Spread): [number, string] => [p50 * 1000, `99th percentile ${p99.toFixed(1)} ms`];

const lines: [string, number, string][] = [
  ['one landing chance', chance, ''],
  ['a plan from 1 measurement', one, `${(one / chance).toFixed(0)} landing chances`],
  ['fit of 1,000 measurements and a plan', thousand, `${((thousand - one) / 999).toFixed(2)} µs a measurement`],
  ['a correction by two readings', correction, ''],
  ['a turn, its plan stored durably', ...with99(whole)],
  ['the same without the wait for the disk', ...with99(own)],
  ['the cheapest of 20 put-ups, 5 lots and 100 balls', buying, ''],
  ['printing of a plan', printing, `${(printing / one).toFixed(2)} of making it`],
];

console.log(`node ${process.version}, ${cpus()[0]?.model ?? 'unknown processor'}; medians`);
for (const [what, time, ratio] of lines) {
  console.log(`${time.toFixed(1).padStart(9)} µs  ${what}${ratio === '' ? '' : ` (${ratio})`}`);
}
