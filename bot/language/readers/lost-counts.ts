import type { Counter } from '../../request.js';
import { bareAt } from '../clauses.js';
import { typedValue } from '../lengths.js';
import type { RequestReader } from '../requested.js';
import {
  claim,
  freeQuantities,
  phrasePlaces,
  quantityAtIndex,
  type Sheet,
  said,
  saidBetween,
  wordAt,
} from '../sheet.js';
import { measures } from './readings.js';
import { stateWithin } from './states.js';

const LOST = [
  'lost count',
  'lost my count',
  'lost the count',
  'lose count',
  'lost track',
  'miscounted',
  'counters disagree',
  'counts disagree',
  'counters differ',
  'counts differ',
];
const COUNTERS = ['machine', 'hand', 'counter', 'clicker', 'pegs', 'paper', 'tally'];
/** Between the name of a counter and what it shows. */
const SHOWING = ['says', 'said', 'shows', 'showed', 'show', 'is', 'was', 'at', 'has', 'reads', 'counted', 'got'];
const ASIDE = [
  'the',
  'my',
  'and',
  'but',
  'on',
  'by',
  'or',
  'either',
  'i',
  'a',
  'it',
  'about',
  'around',
  'with',
  ...SHOWING,
];
const MOST_COUNTERS = 2;

/** `lost count: the machine says 64, my hand counter 62`, with a length where one is given; or two counters named. */
export const readLostCounts: RequestReader = (sheet, { inHand }, bare) => {
  const lost = LOST.flatMap((phrase) => phrasePlaces(sheet, phrase))[0];
  const counted = freeQuantities(sheet).flatMap((i) => {
    const count = bareAt(sheet, i);
    const isWhole = count !== undefined && Number.isInteger(count) && !/[½¼¾\s/]/.test(said(sheet, i));
    const isLength = stateWithin(sheet, i + 1, i + 2) !== undefined || measures(sheet, i);
    return isWhole && !isLength ? [{ index: i, count }] : [];
  });
  const first = counted.slice(0, MOST_COUNTERS);
  const named = first.map(({ index }) => nameOf(sheet, index));
  const isDisagreement = inHand !== undefined && first.length === 2 && named.every((name) => name !== undefined);
  if (lost === undefined && !isDisagreement) return [];

  const counts: Counter[] = first.map(({ count }, k) => ({ name: named[k] ?? 'counter', rows: count }));
  const length = freeQuantities(sheet).find((i) => counted.every(({ index }) => index !== i));
  const quantity = length === undefined ? undefined : quantityAtIndex(sheet, length);
  const value = quantity && length !== undefined ? typedValue(quantity, bare, said(sheet, length)) : undefined;
  const state = stateWithin(sheet, 0, sheet.tokens.length);
  claim(
    sheet,
    'lost count',
    ...[...sheet.tokens.keys()].filter((i) => isClaimed(sheet, i, [...first.map((one) => one.index), length])),
  );
  return [
    {
      at: lost?.from ?? 0,
      meaning: { kind: 'lost_count', counts, ...(value && { length: value }), ...(value && state && { state }) },
    },
  ];
};

const isClaimed = (sheet: Sheet, i: number, numbers: readonly (number | undefined)[]): boolean =>
  sheet.tokens[i]?.is !== 'quantity' || numbers.includes(i);

/** The counter that a number stands on: the words before it, back to a mark or a number, else the words behind it. */
function nameOf(sheet: Sheet, index: number): string | undefined {
  return run(sheet, index - 1, -1) ?? run(sheet, index + 1, 1);
}

function run(sheet: Sheet, from: number, way: 1 | -1): string | undefined {
  const words: number[] = [];
  for (let i = from; ; i += way) {
    const word = wordAt(sheet, i);
    if (word === undefined || (words.length > 0 && ASIDE.includes(word))) break;
    if (!ASIDE.includes(word)) words.push(i);
  }
  const [first, last] = [Math.min(...words), Math.max(...words)];
  if (words.length === 0 || words.length > 3) return undefined;
  const isCounter = words.some((i) => COUNTERS.includes(wordAt(sheet, i) ?? ''));
  return isCounter ? saidBetween(sheet, first, last).toLowerCase() : undefined;
}
