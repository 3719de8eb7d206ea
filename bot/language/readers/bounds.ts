import type { Ask } from '../../../core/index.js';
import type { Value } from '../../request.js';
import { isMade } from '../lengths.js';
import { claim, holdsAny, indexesBetween, LEFT_OUT, phraseAt, type Sheet } from '../sheet.js';

type Bound = 'at_least' | 'at_most';
const SMALLER = ['less', 'smaller', 'narrower', 'shorter', 'lower'];
const LARGER = ['more', 'bigger', 'larger', 'wider', 'longer', 'taller', 'higher', 'deeper'];

const BEFORE: Record<Bound, readonly string[]> = {
  at_least: [
    ...['at least', 'min', 'minimum', 'minimum of', 'over', 'above', 'not under', 'not below'],
    ...than(LARGER),
    ...noThan(SMALLER),
  ],
  at_most: [
    ...['at most', 'max', 'maximum', 'maximum of', 'under', 'below', 'up to', 'not over', 'not above'],
    ...than(SMALLER),
    ...noThan(LARGER),
  ],
};
const AFTER: Record<Bound, readonly string[]> = {
  at_least: ['at least', 'min', 'minimum', 'or over', 'and up', 'or above', ...LARGER.map((word) => `or ${word}`)],
  at_most: ['at most', 'max', 'maximum', 'or under', 'or below', ...SMALLER.map((word) => `or ${word}`)],
};

function than(words: readonly string[]): string[] {
  return words.map((word) => `${word} than`);
}
function noThan(words: readonly string[]): string[] {
  return words.flatMap((word) => [`no ${word} than`, `not ${word} than`]);
}

type Phrase = { bound: Bound; words: readonly string[] };

/** Longer phrases before shorter. */
const inOrder = (phrases: Record<Bound, readonly string[]>): Phrase[] =>
  (['at_least', 'at_most'] as const)
    .flatMap((bound) => phrases[bound].map((phrase) => ({ bound, words: phrase.split(' ') })))
    .sort((a, b) => b.words.length - a.words.length);
const [BEFORE_NUMBER, BEHIND_NUMBER] = [inOrder(BEFORE), inOrder(AFTER)];
const FIRST_WORDS = new Set([...BEFORE_NUMBER, ...BEHIND_NUMBER].map(({ words }) => words[0]));

/** The side a number bounds and the words that say so, longer phrases before shorter: `at least 11 in wide`, `11 in max`. */
export function boundAt(sheet: Sheet, index: number, label: number): { bound: Bound; words: number[] } | undefined {
  if (!holdsAny(sheet, FIRST_WORDS)) return undefined;
  const [first, last] = [Math.min(label, index), Math.max(label, index)];
  const found = [
    ...[first, index].map((end) => phraseFrom(sheet, BEFORE_NUMBER, ({ length }) => end - length)),
    ...[last + 1, index + 1].map((from) => phraseFrom(sheet, BEHIND_NUMBER, () => from)),
  ].flatMap((one) => one ?? []);
  const [one] = found.sort((a, b) => b.words.length - a.words.length);
  return one;
}

/** The first of the phrases that stands where it would have to. */
function phraseFrom(sheet: Sheet, phrases: readonly Phrase[], fromOf: (words: readonly string[]) => number) {
  const one = phrases.find(({ words }) => phraseAt(sheet, fromOf(words), words));
  if (one === undefined) return undefined;
  const from = fromOf(one.words);
  return { bound: one.bound, words: indexesBetween(from, from + one.words.length - 1) };
}

/** `min 10, max 12`: two bounds of one field are a window; undefined for any other two values. */
export function between(one: Value | undefined, other: Value): Value | undefined {
  if (one?.is !== 'window' || other.is !== 'window') return undefined;
  const [low, high] = one.given?.includes('at_least') ? [one, other] : [other, one];
  if (!low.given?.includes('at_least') || !high.given?.includes('at_most')) return undefined;
  return { ...low, hiMm: high.hiMm, given: low.given.filter(isMade) };
}

/**
 * A size that is bounded on one side: a window from it to the usual tolerance on the side allowed. Where no window
 * can be made of it the words are left out, and the size stays what it was.
 */
export function bounded(sheet: Sheet, value: Value, ask: Ask, index: number, label = index): Value {
  const found = boundAt(sheet, index, label);
  if (found === undefined) return value;
  const { bound, words } = found;
  if (value.is !== 'length' || ask.is !== 'window') {
    claim(sheet, LEFT_OUT, ...words);
    return value;
  }
  claim(sheet, bound.replace('_', ' '), ...words);
  const { mm, given = [], ...rest } = value;
  const room = 'mm' in ask.tolerance ? ask.tolerance.mm : ask.tolerance.share * mm;
  const [loMm, hiMm] = bound === 'at_least' ? [mm, mm + room] : [mm - room, mm];
  return { ...rest, is: 'window', loMm, hiMm, given: [...given, bound] };
}
