import type { StateReading, Tension } from '../../request.js';
import { type BareUnit, typedValue } from '../lengths.js';
import {
  claim,
  freeQuantities,
  indexesBetween,
  quantityAtIndex,
  type Sheet,
  said,
  saidBetween,
  wordAt,
} from '../sheet.js';
import { STATE_WORDS } from '../vocabulary.js';
import { LENGTH_OF_ROWS, namesFlat } from './tension.js';

type StateAt = { from: number; to: number; state: StateReading['state'] };

/** States said in several words, longer ones first. */
const PHRASES: readonly [words: string, state: StateReading['state']][] = [
  ['off the machine and flat', 'rested'],
  ['off and lying flat', 'rested'],
  ['off and flat', 'rested'],
  ['lying flat', 'rested'],
  ['laid flat', 'rested'],
  ['at rest', 'rested'],
  ['straight off', 'hanging'],
];

/** The states named, in order, one named twice running counted once: `hanging`, `straight off`. */
const statesIn = (sheet: Sheet, from = 0, to = sheet.tokens.length): StateAt[] =>
  indexesBetween(Math.max(0, from), Math.min(to, sheet.tokens.length) - 1)
    .flatMap((i): StateAt[] => {
      const phrase = PHRASES.find(([words]) => words.split(' ').every((word, k) => wordAt(sheet, i + k) === word));
      if (phrase !== undefined) return [{ from: i, to: i + phrase[0].split(' ').length - 1, state: phrase[1] }];
      const state = STATE_WORDS[wordAt(sheet, i) ?? ''];
      const isBefore = wordAt(sheet, i - 1) === 'before';
      if (state !== undefined) return isBefore ? stateBefore(state, i) : [{ from: i, to: i, state }];
      const done = wordAt(sheet, i) === 'after' ? STATE_WORDS[wordBehindBefore(sheet) ?? ''] : undefined;
      return done === undefined ? [] : [{ from: i, to: i, state: done }];
    })
    .filter(({ state }, i, all) => all[i - 1]?.state !== state);

/** `before washing` is rested, `before resting` hanging. */
const stateBefore = (state: StateAt['state'], i: number): StateAt[] =>
  state === 'hanging' ? [] : [{ from: i - 1, to: i, state: state === 'washed' ? 'rested' : 'hanging' }];

/** What an `after` alone is after: `12 in before washing, 11.5 after`. */
const wordBehindBefore = (sheet: Sheet): string | undefined =>
  wordAt(sheet, sheet.tokens.findIndex((_, i) => wordAt(sheet, i) === 'before') + 1);

/** The first state named from one token up to and without another. */
export const stateWithin = (sheet: Sheet, from: number, to: number): StateReading['state'] | undefined =>
  statesIn(sheet, from, to).find((at) => at.from >= from && at.to < to)?.state;

/** The same, its words claimed. */
export function claimStates(sheet: Sheet, from: number, to: number): StateReading['state'] | undefined {
  const named = statesIn(sheet, from, to).filter((at) => at.from >= from && at.to < to);
  for (const at of named) claim(sheet, 'state', ...indexesBetween(at.from, at.to));
  return named[0]?.state;
}

/** The state of each of several pieces: one named for each, else the first one named for all. */
export function readEachState(sheet: Sheet, pieces: number): (StateReading['state'] | undefined)[] {
  const states = statesIn(sheet);
  for (const { from, to } of states) claim(sheet, 'state', ...indexesBetween(from, to));
  const named = states.map(({ state }) => state);
  return named.length === pieces ? named : Array.from({ length: Math.max(1, pieces) }, () => named[0]);
}

/**
 * One object in several states: `60 rows were 11 7/8 hanging and now 11 1/2 rested`, the rows said once or each time.
 * Each length goes with the state on the same side of it; empty when lengths and states do not come by turns.
 */
export function readStates(sheet: Sheet, rows: readonly Tension[], bare: BareUnit): StateReading[] {
  const [first] = rows;
  const states = statesIn(sheet);
  if (first === undefined || states.length < 2 || rows.some(({ count }) => count !== first.count)) return [];
  const free = freeQuantities(sheet).filter((i) => {
    const unit = quantityAtIndex(sheet, i)?.unit;
    return unit !== 'percent' && !namesFlat(sheet, i);
  });
  const claimed = sheet.tokens.flatMap(({ is }, i) =>
    is === 'quantity' && sheet.uses[i] === LENGTH_OF_ROWS ? [i] : [],
  );
  const lengths = [...claimed, ...free].sort((a, b) => a - b).slice(0, states.length);
  const isLengthFirst = (lengths[0] ?? 0) < (states[0]?.from ?? 0);
  const byTurns = states.map((state, i) => ({ ...state, at: lengths[i] ?? -1 }));
  const isByTurns = byTurns.every(({ from, at }, i) => {
    const next = byTurns[i + 1];
    return isLengthFirst
      ? at >= 0 && at < from && (next === undefined || from < next.at)
      : from < at && (next === undefined || at < next.from);
  });
  if (!isByTurns || claimed.some((at) => !lengths.includes(at))) return [];
  return byTurns.map(({ from, to, state, at }) => {
    const quantity = quantityAtIndex(sheet, at);
    claim(sheet, 'state', ...indexesBetween(from, to));
    claim(sheet, LENGTH_OF_ROWS, at);
    const own = rows[claimed.indexOf(at)];
    if (quantity === undefined) return { rows: own ?? first, state };
    const over = typedValue(quantity, bare, said(sheet, at), { minMm: first.count, maxMm: first.count * 20 });
    return { rows: { ...first, over, said: saidBetween(sheet, Math.min(at, from), Math.max(at, to)) }, state };
  });
}
