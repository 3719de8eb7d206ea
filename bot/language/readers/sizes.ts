import type { Ask, Piece } from '../../../core/index.js';
import type { Value } from '../../request.js';
import { type BareUnit, type FieldRange, typedValue } from '../lengths.js';
import {
  claim,
  freeQuantities,
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

export type SizesRead = { values: Record<string, Value>; tooMany?: string | undefined; strange?: string | undefined };

/** Sizes of a piece: each quantity by the word beside it, then what `11 by 6 3/4` or a lone number means. */
export function readSizes(sheet: Sheet, piece: Piece, bare: BareUnit): SizesRead {
  claimCounted(sheet, piece);
  const strange = strangeNoun(sheet, piece);
  const values: Record<string, Value> = {};
  const put = (id: string, index: number): void => {
    const quantity = quantityAtIndex(sheet, index);
    const ask = piece.asks[id];
    if (quantity === undefined || ask === undefined) return;
    claim(sheet, ask.label, index);
    values[id] =
      ask.is === 'count'
        ? { is: 'count', count: quantity.lo, said: said(sheet, index) }
        : typedValue(quantity, bare, said(sheet, index), rangeOf(ask));
  };
  const multiples = freeQuantities(sheet).filter(
    (i) => quantityAtIndex(sheet, i)?.unit === undefined && quantityAtIndex(sheet, i + 1) !== undefined,
  );
  claim(sheet, 'how many', ...multiples);
  for (const { index, label, id } of labelled(sheet, piece)) {
    if (id in values) continue;
    put(id, index);
    claim(sheet, piece.asks[id]?.label ?? id, label);
  }
  // Beside a number that counts something unknown, only a typed length is surely a size.
  const rest = freeQuantities(sheet).filter((i) => {
    const unit = quantityAtIndex(sheet, i)?.unit;
    return unit !== 'percent' && (strange === undefined || unit !== undefined);
  });
  const open = rest.length === 1 ? loneFields(piece, values) : piece.pair.filter((id) => !(id in values));
  if (rest.length > open.length && rest.length > 1 && rest.every((i, k) => k === 0 || markAt(sheet, i - 1) === 'by')) {
    return { values, tooMany: saidBetween(sheet, rest[0] ?? 0, rest.at(-1) ?? 0) };
  }
  rest.forEach((index, k) => {
    const id = open[k];
    if (id !== undefined) put(id, index);
  });
  return Object.keys(values).length === 0 ? { values, strange } : { values };
}

/** What a lone number is for: the first size still needed, then the rest of the pair. */
const loneFields = (piece: Piece, values: Record<string, Value>): string[] =>
  [
    ...piece.needs.filter((group) => !group.some((id) => id in values)).flatMap(([id]) => id ?? []),
    ...piece.pair,
  ].filter((id) => !(id in values));

const rangeOf = (ask: Ask): FieldRange => (ask.is === 'window' || ask.is === 'length' ? ask : undefined);

/** A number followed by a word that nobody knows counts that, and is no size: `11 bananas`. The first such, quoted. */
function strangeNoun(sheet: Sheet, piece: Piece): string | undefined {
  const strange = freeQuantities(sheet).filter((i) => {
    const word = wordAt(sheet, i + 1);
    const unknown = word !== undefined && !isKnownWord(word) && fieldOf(piece, word) === undefined;
    return unknown && isFree(sheet, i + 1) && quantityAtIndex(sheet, i)?.unit === undefined;
  });
  claim(sheet, LEFT_OUT, ...strange.flatMap((i) => [i, i + 1]));
  const [first] = strange;
  return first === undefined ? undefined : saidBetween(sheet, first, first + 1);
}

/** Rows and stitches, days, `2 rings` (but not what follows in `2 rings of 1 in`), `1 in wider`, `half as wide`, `was 8 in` and the number of a row are no sizes. */
function claimCounted(sheet: Sheet, piece: Piece): void {
  for (const i of freeQuantities(sheet)) {
    const next = wordAt(sheet, i + 1) ?? '';
    const before = wordAt(sheet, i - 1) ?? '';
    const bare = quantityAtIndex(sheet, i)?.unit === undefined;
    const field = fieldOf(piece, next);
    const counted = COUNT_NOUNS[next] !== undefined && field === undefined;
    const more = MORE_WORDS.includes(next) && wordAt(sheet, i + 2) !== 'or';
    const several = bare && (NO_SIZE_WORDS.includes(next) || (field !== undefined && isPluralOf(piece, field, next)));
    const numbered = bare && (COUNT_NOUNS[before] === 'rows' || before === 'why');
    const told = ['was', 'were'].includes(before) || (bare && /^(?:an? )?(?:half|quarter)/i.test(said(sheet, i)));
    const theirSize = several && wordAt(sheet, i + 2) === 'of' && quantityAtIndex(sheet, i + 3) !== undefined;
    if (theirSize) claim(sheet, 'how many', i);
    else if (counted || more || several) claim(sheet, LEFT_OUT, i, i + 1);
    else if (numbered || told) claim(sheet, LEFT_OUT, i);
    else if (bare && MONTHS.includes(before)) claim(sheet, LEFT_OUT, i - 1, i);
  }
}

const isPluralOf = (piece: Piece, id: string, word: string): boolean =>
  word.endsWith('s') && piece.asks[id]?.is !== 'count' && (piece.asks[id]?.words ?? []).includes(word.slice(0, -1));

type Label = { index: number; label: number; id: string };

/**
 * Pairs quantities with the field words beside them. A word may stand after its number (`11 in wide`) or before
 * (`width 11`); of all pairings the one that leaves fewest numbers without a word and jumps over least is taken.
 */
function labelled(sheet: Sheet, piece: Piece): Label[] {
  const quantities = freeQuantities(sheet);
  const best = (from: number, taken: number | undefined): { cost: number; labels: Label[] } => {
    const index = quantities[from];
    if (index === undefined) return { cost: 0, labels: [] };
    const options = [...candidates(sheet, piece, index).filter(({ label }) => label !== taken), undefined];
    return options
      .map((option) => {
        const rest = best(from + 1, option !== undefined && option.label > index ? option.label : undefined);
        const labels =
          option === undefined ? rest.labels : [{ index, label: option.label, id: option.id }, ...rest.labels];
        return { cost: rest.cost + (option?.cost ?? UNLABELLED), labels };
      })
      .reduce((a, b) => (b.cost < a.cost ? b : a));
  };
  // Each number has at most a word on either side, so the search is short; a text of many numbers is read in part.
  return best(Math.max(0, quantities.length - MOST_SIZES), undefined).labels;
}

const UNLABELLED = 5;
const MOST_SIZES = 8;
const REACH = 3;
/** Words that part a number from a field word further on. */
const PARTING = ['and', 'with', 'for', 'plus', 'on'];

function candidates(sheet: Sheet, piece: Piece, index: number): { label: number; id: string; cost: number }[] {
  return [1, -1].flatMap((way) => {
    for (let step = 1; step <= REACH; step++) {
      const at = index + way * step;
      const mark = markAt(sheet, at);
      if (
        sheet.tokens[at] === undefined ||
        sheet.tokens[at]?.is === 'quantity' ||
        mark === 'by' ||
        mark === 'stop' ||
        mark === 'comma'
      )
        return [];
      const word = wordAt(sheet, at);
      if (word !== undefined && PARTING.includes(word)) return [];
      const id = word === undefined || !isFree(sheet, at) ? undefined : fieldOf(piece, word);
      if (id !== undefined) return [{ label: at, id, cost: step - 1 + (way < 0 ? 0.4 : 0) }];
    }
    return [];
  });
}

const LETTERS: Record<string, string> = { w: 'wide', h: 'high', l: 'long' };

/** The ask that a word names, or its letter (`11w x 6h`), or undefined. */
export function fieldOf(piece: Piece, said: string): string | undefined {
  const word = LETTERS[said] ?? said;
  const named = ([id, ask]: [string, Ask]) => ask.is !== 'choice' && (ask.words.includes(word) || id === word);
  return Object.entries(piece.asks).find(named)?.[0];
}

/** Words of fields left over after every number has its own are no riddle: `how wide`. */
export function claimFieldWords(sheet: Sheet, piece: Piece): void {
  sheet.tokens.forEach((_, i) => {
    const word = wordAt(sheet, i);
    const isField = word !== undefined && Object.values(piece.asks).some(({ words }) => words.includes(word));
    if (isField) claim(sheet, 'field', i);
  });
}
