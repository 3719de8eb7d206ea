import type { Piece } from '../../../core/index.js';
import { beginsClause, endsClause } from '../clauses.js';
import type { Context } from '../context.js';
import { claim, indexesBetween, isFree, LEFT_OUT, markAt, quantityAtIndex, type Sheet, wordAt } from '../sheet.js';
import { COLOURS, COUNT_NOUNS, FIBRES, isKnownWord } from '../vocabulary.js';

const ARTICLES = ['a', 'an', 'another'];
/** May stand between a piece and its size. */
const BEFORE_SIZE = ['for', 'a', 'an', 'is', 'thats', 'that', 'about', 'size', 'of', 'my', 'the'];
const MOST_BEFORE_SIZE = 3;
const AND = ['and', 'plus', 'then', 'also'];
const BEHIND = ['for', 'and', 'on', 'in', 'at'];

/**
 * Leaves out what nobody knows and yet stands like a piece, with its sizes: `and poncho for a 22 in head`, `and a 2 in
 * flange`. None of them is a size of the piece that is known.
 */
export function claimStrangers(sheet: Sheet, { pieces, yarns, machines }: Context): void {
  const names = new Set([...yarns, ...machines].flatMap((name) => name.split(/[\s-]+/)));
  const isStranger = (i: number): boolean => {
    const word = wordAt(sheet, i);
    if (word === undefined || !isFree(sheet, i) || /\d/.test(word) || names.has(word) || isKnownWord(word))
      return false;
    return !COLOURS.has(word) && !FIBRES.has(word) && !isWordOf(pieces, word);
  };
  for (const i of sheet.tokens.keys()) {
    if (!isStranger(i)) continue;
    if (isSizedBefore(sheet, i)) claim(sheet, LEFT_OUT, i - 1, i);
    else if (isNamedFirst(sheet, i)) claim(sheet, LEFT_OUT, ...indexesBetween(i, endOf(sheet, i)));
  }
}

const isWordOf = (pieces: readonly Piece[], word: string): boolean =>
  pieces.some(
    ({ asks, goesOn }) => goesOn?.includes(word) || Object.values(asks).some(({ words }) => words.includes(word)),
  );

/** `and a 60 in poncho`. */
const isSizedBefore = (sheet: Sheet, i: number): boolean =>
  quantityAtIndex(sheet, i - 1)?.unit !== undefined &&
  ARTICLES.includes(wordAt(sheet, i - 2) ?? '') &&
  begins(sheet, i - 2, [...AND, 'with']) &&
  (endsClause(sheet, i + 1) || BEHIND.includes(wordAt(sheet, i + 1) ?? ''));

/** `and poncho 60 in long`, `a poncho for a 22 in head`; not `Susan's 11 in pouch`. */
function isNamedFirst(sheet: Sheet, i: number): boolean {
  if (!begins(sheet, ARTICLES.includes(wordAt(sheet, i - 1) ?? '') ? i - 1 : i, AND)) return false;
  let at = i + 1;
  while (at <= i + MOST_BEFORE_SIZE && BEFORE_SIZE.includes(wordAt(sheet, at) ?? '')) at++;
  const isSize = quantityAtIndex(sheet, at) !== undefined && COUNT_NOUNS[wordAt(sheet, at + 1) ?? ''] === undefined;
  return isSize && at <= endOf(sheet, i);
}

const begins = (sheet: Sheet, i: number, joints: readonly string[]): boolean =>
  joints.includes(wordAt(sheet, i - 1) ?? '') || markAt(sheet, i - 1) === 'slash' || beginsClause(sheet, i, []);

/** Its sentence is its own, up to the machine and to the piece that is known: `and a pouch`. */
function endOf(sheet: Sheet, i: number): number {
  const behind = indexesBetween(i, sheet.tokens.length - 1);
  const end = behind.find((k) => markAt(sheet, k) === 'stop' || wordAt(sheet, k) === 'on') ?? sheet.tokens.length;
  const piece = behind.find((k) => k < end && !isFree(sheet, k));
  if (piece === undefined) return end - 1;
  const joint = ARTICLES.includes(wordAt(sheet, piece - 1) ?? '') ? piece - 2 : piece - 1;
  const isJoint = markAt(sheet, joint) === 'comma' || AND.includes(wordAt(sheet, joint) ?? '');
  return isJoint ? joint - 1 : i;
}
