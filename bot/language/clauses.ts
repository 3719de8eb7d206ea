import { MACHINE } from './readers/machines.js';
import { indexesBetween, markAt, quantityAtIndex, type Sheet, said, wordAt } from './sheet.js';

const LEADING =
  `ok okay now so well but yes yeah no sorry oops i im ive id ill am it its is lets let me please just finally all hi hey
that thats we have has been got knitted reached`.split(/\s+/);
const JOINTS = ['and', 'then', 'also'];
const ENDING = 'now and then so please but already again thanks thx plus'.split(' ');

/** True where a clause begins: at the start, behind a mark or a joint, or behind words without a meaning of their own. */
export function beginsClause(sheet: Sheet, i: number, leading: readonly string[] = LEADING): boolean {
  if (i <= 0 || isBreak(sheet, i - 1) || JOINTS.includes(wordAt(sheet, i - 1) ?? '')) return true;
  return leading.includes(wordAt(sheet, i - 1) ?? '') && beginsClause(sheet, i - 1, leading);
}

/** True where a clause ends with the token before `i`. */
export const endsClause = (sheet: Sheet, i: number): boolean =>
  i >= sheet.tokens.length || isBreak(sheet, i) || sheet.uses[i] === MACHINE || ENDING.includes(wordAt(sheet, i) ?? '');

const isBreak = (sheet: Sheet, i: number): boolean => ['stop', 'comma', 'equals'].includes(markAt(sheet, i) ?? '');

/** The unclaimed number without a unit at an index, or undefined for a range. */
export function bareAt(sheet: Sheet, i: number): number | undefined {
  const quantity = quantityAtIndex(sheet, i);
  const isBare = quantity?.unit === undefined && quantity?.lo === quantity?.hi && quantity?.halfWidth === undefined;
  return isBare ? quantity?.lo : undefined;
}

/** The sentence that an index stands in, as the first index and the one behind the last. `12 in.` may end one. */
export function sentenceAt(sheet: Sheet, i: number): { from: number; to: number } {
  const ends = (k: number): boolean =>
    markAt(sheet, k) === 'stop' || (sheet.tokens[k]?.is === 'quantity' && said(sheet, k).endsWith('.'));
  let [from, to] = [i, i];
  while (from > 0 && !ends(from - 1)) from--;
  while (to < sheet.tokens.length - 1 && !ends(to)) to++;
  return { from, to: to + 1 };
}

/** Indexes from one token up to and without another at which a word of a list stands. */
export const wordsWithin = (sheet: Sheet, words: readonly string[], from = 0, to = sheet.tokens.length): number[] =>
  indexesBetween(from, to - 1).filter((i) => words.includes(wordAt(sheet, i) ?? ''));
