import type { StateReading, Tension } from '../../request.js';
import { type BareUnit, typedValue } from '../lengths.js';
import { claim, freeQuantities, quantityAtIndex, type Sheet, said, saidBetween, wordAt } from '../sheet.js';
import { STATE_WORDS } from '../vocabulary.js';
import { LENGTH_OF_ROWS, namesFlat } from './tension.js';

type StateAt = { from: number; to: number; state: StateReading['state'] };

/** The states named, in order, one named twice running counted once: `hanging`, `straight off`. */
const statesIn = (sheet: Sheet): StateAt[] =>
  sheet.tokens
    .flatMap((_, i): StateAt[] => {
      const state = STATE_WORDS[wordAt(sheet, i) ?? ''];
      const isBefore = wordAt(sheet, i - 1) === 'before';
      if (state !== undefined) return isBefore ? stateBefore(state, i) : [{ from: i, to: i, state }];
      const done = wordAt(sheet, i) === 'after' ? STATE_WORDS[wordBehindBefore(sheet) ?? ''] : undefined;
      if (done !== undefined) return [{ from: i, to: i, state: done }];
      const isStraightOff = wordAt(sheet, i) === 'straight' && wordAt(sheet, i + 1) === 'off';
      return isStraightOff ? [{ from: i, to: i + 1, state: 'hanging' }] : [];
    })
    .filter(({ state }, i, all) => all[i - 1]?.state !== state);

/** `before washing` is rested, `before resting` hanging. */
const stateBefore = (state: StateAt['state'], i: number): StateAt[] =>
  state === 'hanging' ? [] : [{ from: i - 1, to: i, state: state === 'washed' ? 'rested' : 'hanging' }];

/** What an `after` alone is after: `12 in before washing, 11.5 after`. */
const wordBehindBefore = (sheet: Sheet): string | undefined =>
  wordAt(sheet, sheet.tokens.findIndex((_, i) => wordAt(sheet, i) === 'before') + 1);

/** The state of each of several pieces: one named for each, else the first one named for all. */
export function readEachState(sheet: Sheet, pieces: number): (StateReading['state'] | undefined)[] {
  const states = statesIn(sheet);
  for (const { from, to } of states) claim(sheet, 'state', from, to);
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
    claim(sheet, 'state', from, to);
    claim(sheet, LENGTH_OF_ROWS, at);
    const own = rows[claimed.indexOf(at)];
    if (quantity === undefined) return { rows: own ?? first, state };
    const over = typedValue(quantity, bare, said(sheet, at), { minMm: first.count, maxMm: first.count * 20 });
    return { rows: { ...first, over, said: saidBetween(sheet, Math.min(at, from), Math.max(at, to)) }, state };
  });
}
