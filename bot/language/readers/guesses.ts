import { sentenceAt } from '../clauses.js';
import { indexesBetween, type Sheet, saidBetween, wordAt } from '../sheet.js';
import { COUNT_NOUNS } from '../vocabulary.js';

const GUESSES = [
  'i think',
  'i guess',
  'i reckon',
  'i suppose',
  'guessing',
  'a guess',
  'probably',
  'perhaps',
  'maybe',
  'from memory',
].map((phrase) => phrase.split(' '));
/** Behind a guess these begin a wish: `I think I want`. */
const WISHING = ['i', 'id', 'ill', 'we', 'a', 'an', 'make'];
const ABOUT = ['about', 'around', 'roughly', 'approx', 'approximately', 'nearly', 'almost'];

/**
 * Words that call what was measured a guess: `60 rows in 12 in I think`, `about 60 rows in 12 in`, since rows are
 * counted; a length may be about so much. Only numbers claimed so far are measured ones.
 */
export function guessIn(sheet: Sheet): string | undefined {
  const at = sheet.tokens.findIndex((_, i) => isAboutRows(sheet, i) || isGuess(sheet, i));
  if (at < 0) return undefined;
  const { from, to } = sentenceAt(sheet, at);
  return saidBetween(sheet, from, to - 1).replace(/[\s.;!?]+$/, '');
}

const isAboutRows = (sheet: Sheet, i: number): boolean =>
  ABOUT.includes(wordAt(sheet, i) ?? '') && ['rows', 'stitches'].includes(sheet.uses[i + 1] ?? '');

/** True where such words stand behind a number that was claimed or counts or, where none is behind, before one. */
function isGuess(sheet: Sheet, i: number): boolean {
  const phrase = GUESSES.find((words) => words.every((word, k) => wordAt(sheet, i + k) === word));
  if (phrase === undefined || WISHING.includes(wordAt(sheet, i + phrase.length) ?? '')) return false;
  const { from, to } = sentenceAt(sheet, i);
  const isNumber = (k: number): boolean => sheet.tokens[k]?.is === 'quantity';
  const beside = indexesBetween(from, i - 1).findLast(isNumber) ?? indexesBetween(i, to - 1).find(isNumber);
  const isCount = COUNT_NOUNS[wordAt(sheet, (beside ?? -1) + 1) ?? ''] !== undefined;
  return beside !== undefined && (isCount || sheet.uses[beside] !== undefined);
}
