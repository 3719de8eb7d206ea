import type { Piece } from '../../../core/index.js';
import {
  claim,
  freeQuantities,
  indexesBetween,
  isFree,
  LEFT_OUT,
  markAt,
  quantityAtIndex,
  type Sheet,
  said,
  saidBetween,
  wordAt,
} from '../sheet.js';
import { COUNT_NOUNS, isKnownWord, MONTHS, MORE_WORDS, NO_SIZE_WORDS } from '../vocabulary.js';
import { fieldOf } from './fields.js';
import { listsIn } from './lists.js';

/** Rows and stitches, days, `2 rings` (but not what follows in `2 rings of 1 in`), `1 in wider`, `half as wide`, `was 8 in` and the number of a row are no sizes. */
export function claimCounted(sheet: Sheet, piece: Piece): void {
  claimMultiples(sheet);
  const listed = new Set(listsIn(sheet).flatMap((list) => (list.length > 2 ? list : [])));
  for (const i of freeQuantities(sheet)) {
    const next = wordAt(sheet, i + 1) ?? '';
    const before = wordAt(sheet, i - 1) ?? '';
    const quantity = quantityAtIndex(sheet, i);
    const bare = quantity?.unit === undefined;
    const field = fieldOf(piece, next);
    const counted = COUNT_NOUNS[next] !== undefined && field === undefined;
    const more = MORE_WORDS.includes(next) && wordAt(sheet, i + 2) !== 'or';
    const isOne = said(sheet, i).toLowerCase() === 'one' && piece.asks[field ?? '']?.is === 'length';
    const several =
      bare &&
      piece.asks[field ?? '']?.is !== 'count' &&
      (NO_SIZE_WORDS.includes(next) ||
        isOne ||
        (field !== undefined && !listed.has(i) && isPluralOf(piece, field, next)));
    const numbered = bare && (COUNT_NOUNS[before] === 'rows' || before === 'why');
    const told = isPast(sheet, i) || (bare && /^(?:an? )?(?:half|quarter)/i.test(said(sheet, i)));
    const theirSize = several && wordAt(sheet, i + 2) === 'of' && quantityAtIndex(sheet, i + 3) !== undefined;
    const isDifference = markAt(sheet, i - 1) === 'by' && MORE_WORDS.includes(wordAt(sheet, i - 2) ?? '');
    if (!counted && field === undefined && isOnNoMachine(sheet, i))
      claim(sheet, LEFT_OUT, ...indexesBetween(wordAt(sheet, i - 1) === 'on' ? i - 1 : i - 2, i));
    else if (isAdded(sheet, i)) claim(sheet, LEFT_OUT, i - 1, i);
    else if (isFormer(sheet, i)) claim(sheet, 'what it was', i);
    else if (theirSize) claim(sheet, countedAs(quantity?.lo), i);
    else if (counted || more || several) claim(sheet, LEFT_OUT, i, i + 1);
    else if (numbered || told || isDifference) claim(sheet, LEFT_OUT, i);
    else if (bare && MONTHS.includes(before)) claim(sheet, LEFT_OUT, i - 1, i);
  }
}

/** `on the 46.5`, `on the 0`: what cannot be a machine is no size either. */
function isOnNoMachine(sheet: Sheet, i: number): boolean {
  const quantity = quantityAtIndex(sheet, i);
  const isOn = wordAt(sheet, ['the', 'my'].includes(wordAt(sheet, i - 1) ?? '') ? i - 2 : i - 1) === 'on';
  const isMachine = Number.isInteger(quantity?.lo) && (quantity?.lo ?? 0) > 0;
  return isOn && quantity?.unit === undefined && !isMachine;
}

/** `+2`: the sign right before its number is no `and`. */
const isAdded = (sheet: Sheet, i: number): boolean =>
  said(sheet, i - 1) === '+' && sheet.tokens[i - 1]?.end === sheet.tokens[i]?.start;

/** `was 8 in`, but not `if it was 12`. */
const isPast = (sheet: Sheet, i: number): boolean =>
  ['was', 'were'].includes(wordAt(sheet, i - 1) ?? '') && ![i - 2, i - 3].some((k) => wordAt(sheet, k) === 'if');

/** `12 not 11`, `12 instead of 11`, `12 rather than 11`. */
function isFormer(sheet: Sheet, i: number): boolean {
  const [earlier, before] = [wordAt(sheet, i - 2), wordAt(sheet, i - 1)];
  return before === 'not' || (before === 'of' && earlier === 'instead') || (before === 'than' && earlier === 'rather');
}

/** Two of a thing with a size of its own is what a piece takes, one at each side; no other count can be asked for. */
const countedAs = (count: number | undefined): string => (count === 2 ? 'how many' : LEFT_OUT);

/** `two 1/2 in rings`, `one 1 in ring`. */
function claimMultiples(sheet: Sheet): void {
  for (const i of freeQuantities(sheet)) {
    const quantity = quantityAtIndex(sheet, i);
    const isSide = markAt(sheet, i - 1) === 'by';
    if (!isSide && quantity?.unit === undefined && quantityAtIndex(sheet, i + 1) !== undefined)
      claim(sheet, countedAs(quantity?.lo), i);
  }
}

const isPluralOf = (piece: Piece, id: string, word: string): boolean =>
  word.endsWith('s') && piece.asks[id]?.is !== 'count' && (piece.asks[id]?.words ?? []).includes(word.slice(0, -1));

/** A number followed by a word that nobody knows counts that, and is no size: `11 bananas`. The first such, quoted. */
export function strangeNoun(sheet: Sheet, piece: Piece): string | undefined {
  const strange = freeQuantities(sheet).filter((i) => {
    const word = wordAt(sheet, i + 1);
    const unknown = word !== undefined && !isKnownWord(word) && fieldOf(piece, word) === undefined;
    return unknown && isFree(sheet, i + 1) && quantityAtIndex(sheet, i)?.unit === undefined;
  });
  claim(sheet, LEFT_OUT, ...strange.flatMap((i) => [i, i + 1]));
  const [first] = strange;
  return first === undefined ? undefined : saidBetween(sheet, first, first + 1);
}
