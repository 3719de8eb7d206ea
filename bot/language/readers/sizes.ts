import type { Ask, Piece } from '../../../core/index.js';
import type { Value } from '../../request.js';
import { type BareUnit, type FieldRange, MADE, madeOf, typedValue } from '../lengths.js';
import {
  claim,
  freeQuantities,
  indexesBetween,
  LEFT_OUT,
  leftOutFor,
  markAt,
  quantityAtIndex,
  type Sheet,
  said,
  saidBetween,
  wordAt,
} from '../sheet.js';
import { between, boundAt, bounded } from './bounds.js';
import { claimCounted, strangeNoun } from './counted.js';
import { isRuledOut, preferring, type Side } from './fields.js';
import { type Label, labelled } from './labels.js';
import { areListed, claimSlips, listsIn } from './lists.js';
import { isOfField, isWithin, type Lone, loneFields, neededFields, rangeOf } from './lone.js';
import { isPlural } from './pieces.js';

export type SizesRead = {
  values: Record<string, Value>;
  tooMany?: string | undefined;
  strange?: string | undefined;
  /** Several sizes of one field, in order; `areListed` tells that they were told as several, not one in place of another. */
  rivals?: { id: string; values: Value[]; words: string; areListed: boolean } | undefined;
};

/** A size of a field, with where it and its word stand. */
type Sized = { value: Value; index: number; words: readonly number[]; from: number; to: number };

/**
 * Sizes of a piece: each quantity by the word beside it, then what `11 by 6 3/4` or a lone number means.
 * @param choices what else was asked of the piece
 */
export function readSizes(
  sheet: Sheet,
  asked: Piece,
  bare: BareUnit,
  choices: Readonly<Record<string, Value | null>>,
  lone: Lone,
): SizesRead {
  const piece = preferring(asked, choices);
  claimSlips(sheet, piece);
  claimCounted(sheet, piece);
  const strange = strangeNoun(sheet, piece);
  const sized: Record<string, Sized[]> = {};
  const put = (id: string, index: number, label?: Label): void => {
    const quantity = quantityAtIndex(sheet, index);
    const ask = piece.asks[id];
    const [at = index, ...others] = label?.words ?? [];
    const isNoCount = ask?.is === 'count' && quantity?.unit !== undefined;
    const isLeftOut = ask === undefined || isNoCount || isRuledOut(piece, id, choices);
    const whyNot = isNoCount ? leftOutFor(`say how many, such as "6 ${ask.words[0]}"`) : LEFT_OUT;
    const between = isNoCount ? indexesBetween(Math.min(index, at), Math.max(index, at)) : [];
    claim(sheet, isLeftOut ? whyNot : ask.label, index, at, ...others, ...between);
    if (quantity === undefined || isLeftOut) return;
    const places = [index, at, ...others, ...(boundAt(sheet, index, at)?.words ?? [])];
    const typed = typedValue(quantity, bare, said(sheet, index), rangeAs(ask, label?.made));
    const made = label === undefined ? acrossUnsaid(ask, typed) : label.made;
    const value: Value =
      ask.is === 'count'
        ? { is: 'count', count: quantity.lo, said: said(sheet, index) }
        : bounded(sheet, made === undefined ? typed : madeOf(typed, made), ask, index, at);
    const words = label?.words ?? [index];
    sized[id] = [...(sized[id] ?? []), { value, index, words, from: Math.min(...places), to: Math.max(...places) }];
  };
  const isOff = (index: number, { id, made }: Side): boolean => {
    const [quantity, ask] = [quantityAtIndex(sheet, index), piece.asks[id]];
    if (quantity === undefined || ask === undefined) return false;
    if (ask.is === 'count') return quantity.unit !== undefined;
    const range = rangeAs(ask, made);
    return !isWithin(range, typedValue(quantity, bare, '', range));
  };
  const labels = labelled(sheet, piece, isOff);
  for (const label of [...labels, ...sharing(sheet, piece, labels, lone.isForPerson)].sort((a, b) => a.index - b.index))
    put(label.id, label.index, label);

  // Beside a number that counts something unknown, only a typed length is surely a size.
  const rest = freeQuantities(sheet).filter(
    (i) => strange === undefined || quantityAtIndex(sheet, i)?.unit !== undefined,
  );
  const open =
    rest.length === 1
      ? loneFields(sheet, rest[0] ?? 0, piece, bare, sized, lone)
      : inFittingOrder(
          sheet,
          rest,
          piece,
          bare,
          piece.pair.filter((id) => !(id in sized)),
        );
  if (rest.length > open.length && rest.length > 1 && rest.every((i, k) => k === 0 || markAt(sheet, i - 1) === 'by')) {
    return { values: {}, tooMany: saidBetween(sheet, rest[0] ?? 0, rest.at(-1) ?? 0) };
  }
  const several = plainList(sheet, piece, bare, rest, [...lone.varied, ...neededFields(piece, sized)], lone.varied);
  if (several !== undefined) for (const index of rest) put(several, index);
  for (const index of several === undefined ? rest : []) {
    const id = opposed(sheet, index, sized) ?? open.shift();
    if (id !== undefined) put(id, index);
  }
  return settled(sheet, sized, strange);
}

/** The pair turned round where two numbers can be of it that way alone: a `scarf 18 by 150`. */
function inFittingOrder(sheet: Sheet, rest: readonly number[], piece: Piece, bare: BareUnit, pair: string[]): string[] {
  const canBe = (ids: readonly string[]): boolean =>
    ids.every((id, k) => isOfField(sheet, rest[k] ?? -1, piece.asks[id], bare));
  const turned = pair.toReversed();
  return rest.length === 2 && pair.length === 2 && !canBe(pair) && canBe(turned) ? turned : pair;
}

/** A number without a word that is small for a girth is how far it is across: a `9 cm mug`. */
const acrossUnsaid = (ask: Ask, typed: Value): Side['made'] =>
  ask.is === 'length' && ask.acrossUnderMm && typed.is === 'length' && typed.mm < ask.acrossUnderMm
    ? 'across'
    : undefined;

/** The range in which a field has its number typed: of what it is made of. */
function rangeAs(ask: Ask, made: Side['made']): FieldRange {
  const range = rangeOf(ask);
  if (range === undefined || made === undefined || made === 'around') return range;
  return { minMm: range.minMm / MADE[made], maxMm: range.maxMm / MADE[made] };
}

/** The field that a number bounds on its other side: `min 10, max 12`. */
function opposed(sheet: Sheet, index: number, sized: Record<string, Sized[]>): string | undefined {
  const bound = boundAt(sheet, index, index)?.bound;
  const opposite = bound === 'at_least' ? 'at_most' : 'at_least';
  const found = ([, [one, ...others]]: [string, Sized[]]) =>
    others.length === 0 && one?.value.given?.includes(opposite);
  return bound && Object.entries(sized).find(found)?.[0];
}

/** One value a field, a window of two bounds, or rivals for it. */
function settled(sheet: Sheet, sized: Record<string, Sized[]>, strange: string | undefined): SizesRead {
  const values: Record<string, Value> = {};
  let rivals: SizesRead['rivals'];
  for (const [id, all] of Object.entries(sized)) {
    const inOrder = all.sort((a, b) => a.index - b.index);
    const [first, second] = inOrder;
    if (first === undefined) continue;
    const words = saidBetween(sheet, first.from, Math.max(...inOrder.map(({ to }) => to)));
    const window = inOrder.length === 2 && second ? between(first.value, second.value) : undefined;
    values[id] = window === undefined ? first.value : { ...window, said: words };
    if (inOrder.length === 1 || window !== undefined) continue;
    const isOnly = rivals === undefined;
    const numbers = inOrder.map(({ index }) => index);
    const beside = inOrder.flatMap(({ words: own }) => own);
    rivals ??= { id, values: inOrder.map(({ value }) => value), words, areListed: areListed(sheet, numbers, beside) };
    if (!isOnly) rivals = { ...rivals, areListed: false };
  }
  return Object.keys(values).length === 0 ? { values, strange } : { values, rivals };
}

/**
 * Numbers that share the word of one in their list: `7, 9 and 11 in wide`, `heads of 48, 52 and 56 cm`. Two share it
 * only where the piece needs no other size, or where the word stands before them as that of several.
 */
function sharing(sheet: Sheet, piece: Piece, labels: readonly Label[], isForPerson: boolean): Label[] {
  const isMet =
    isForPerson || piece.needs.every((group) => group.some((id) => labels.some((label) => label.id === id)));
  return listsIn(sheet).flatMap((list) => {
    const [label, ...others] = labels.filter(({ index }) => list.includes(index));
    if (label === undefined || others.length > 0) return [];
    const [word = label.index] = label.words;
    const isBehind = label.index === list.at(-1) && word > label.index;
    const isBefore = label.index === list[0] && word < label.index;
    const isShared = list.length > 2 || (isBehind ? isMet : (wordAt(sheet, word) ?? '').endsWith('s'));
    if (!(isBehind || isBefore) || !isShared) return [];
    return list.filter((index) => index !== label.index).map((index) => ({ ...label, index }));
  });
}

/** Two sizes of one thing are seldom further apart than this; its width and its height are. From memory. */
const MOST_APART = 1.5;

/**
 * The field of a list without a word, `hats in 48, 52 and 56`: the one still needed, where all numbers can be of it and
 * they are more than the piece has sizes, or two that are hardly its width and its height.
 */
function plainList(
  sheet: Sheet,
  piece: Piece,
  bare: BareUnit,
  rest: readonly number[],
  [first = '', second = '']: readonly string[],
  varied: readonly string[],
): string | undefined {
  const [list, ...others] = listsIn(sheet);
  if (
    list === undefined ||
    others.length > 0 ||
    list.length !== rest.length ||
    boundAt(sheet, list[0] ?? 0, list[0] ?? 0)
  )
    return undefined;
  const [one, other] = list.map((i) => Math.log(quantityAtIndex(sheet, i)?.lo ?? 1));
  const isOther =
    isOfField(sheet, list[1] ?? 0, piece.asks[second], bare) &&
    Math.abs((one ?? 0) - (other ?? 0)) > Math.log(MOST_APART);
  const areMany = isPlural(sheet) || varied.length > 0;
  const isSeveral = list.length > 2 ? areMany || wordAt(sheet, (list.at(-1) ?? 0) - 1) === 'and' : areMany && !isOther;
  return isSeveral && list.every((i) => isOfField(sheet, i, piece.asks[first], bare)) ? first : undefined;
}
