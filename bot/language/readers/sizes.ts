import type { Ask, Piece } from '../../../core/index.js';
import type { Value } from '../../request.js';
import { type BareUnit, type FieldRange, halved, typedValue } from '../lengths.js';
import {
  claim,
  freeQuantities,
  LEFT_OUT,
  markAt,
  quantityAtIndex,
  type Sheet,
  said,
  saidBetween,
  wordAt,
} from '../sheet.js';
import { between, boundAt, bounded } from './bounds.js';
import { claimCounted, strangeNoun } from './counted.js';
import { type Label, labelled } from './labels.js';

export type SizesRead = {
  values: Record<string, Value>;
  tooMany?: string | undefined;
  strange?: string | undefined;
  /** Several sizes of one field, in order. */
  rivals?: { id: string; values: Value[]; words: string } | undefined;
};

/** A size of a field, with where it and its word stand. */
type Sized = { value: Value; from: number; to: number };

/**
 * Sizes of a piece: each quantity by the word beside it, then what `11 by 6 3/4` or a lone number means.
 * @param isForPerson true where a person's sizes stand for what is not typed: a lone number is then for the first field
 * that can have it
 */
export function readSizes(sheet: Sheet, piece: Piece, bare: BareUnit, isForPerson: boolean): SizesRead {
  claimCounted(sheet, piece);
  const strange = strangeNoun(sheet, piece);
  const sized: Record<string, Sized[]> = {};
  const put = (id: string, index: number, label?: Label): void => {
    const quantity = quantityAtIndex(sheet, index);
    const ask = piece.asks[id];
    const at = label?.label ?? index;
    claim(sheet, ask?.label ?? LEFT_OUT, index, at);
    if (quantity === undefined || ask === undefined) return;
    const places = [index, at, ...(boundAt(sheet, index, at)?.words ?? [])];
    const typed = typedValue(quantity, bare, said(sheet, index), rangeOf(ask));
    const value: Value =
      ask.is === 'count'
        ? { is: 'count', count: quantity.lo, said: said(sheet, index) }
        : bounded(sheet, label?.isRound ? halved(typed) : typed, ask, index, at);
    sized[id] = [...(sized[id] ?? []), { value, from: Math.min(...places), to: Math.max(...places) }];
  };
  const labels = labelled(sheet, piece);
  for (const label of [...labels, ...sharing(sheet, piece, labels)].sort((a, b) => a.index - b.index))
    put(label.id, label.index, label);

  // Beside a number that counts something unknown, only a typed length is surely a size.
  const rest = freeQuantities(sheet).filter(
    (i) => strange === undefined || quantityAtIndex(sheet, i)?.unit !== undefined,
  );
  const fits = (id: string): boolean => isOfField(sheet, rest[0] ?? 0, piece.asks[id], bare);
  const lone = rest.length === 1 ? loneFields(piece, sized) : piece.pair.filter((id) => !(id in sized));
  const open = rest.length === 1 && isForPerson ? [...lone.filter(fits), ...lone] : lone;
  if (rest.length > open.length && rest.length > 1 && rest.every((i, k) => k === 0 || markAt(sheet, i - 1) === 'by')) {
    return { values: {}, tooMany: saidBetween(sheet, rest[0] ?? 0, rest.at(-1) ?? 0) };
  }
  for (const index of rest) {
    const id = opposed(sheet, index, sized) ?? open.shift();
    if (id !== undefined) put(id, index);
  }
  return settled(sheet, sized, strange);
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
    const inOrder = all.sort((a, b) => a.from - b.from);
    const [first, second] = inOrder;
    if (first === undefined) continue;
    const words = saidBetween(sheet, first.from, Math.max(...inOrder.map(({ to }) => to)));
    const window = inOrder.length === 2 && second ? between(first.value, second.value) : undefined;
    values[id] = window === undefined ? first.value : { ...window, said: words };
    if (inOrder.length === 1 || window !== undefined) continue;
    rivals ??= { id, values: inOrder.map(({ value }) => value), words };
  }
  return Object.keys(values).length === 0 ? { values, strange } : { values, rivals };
}

/** What a lone number is for: the first size still needed, then the rest of the pair. */
const loneFields = (piece: Piece, values: Record<string, unknown>): string[] =>
  [
    ...piece.needs.filter((group) => !group.some((id) => id in values)).flatMap(([id]) => id ?? []),
    ...piece.pair,
  ].filter((id) => !(id in values));

function isOfField(sheet: Sheet, index: number, ask: Ask | undefined, bare: BareUnit): boolean {
  const quantity = quantityAtIndex(sheet, index);
  const range = ask && rangeOf(ask);
  if (quantity === undefined || range === undefined) return false;
  const value = typedValue(quantity, bare, '', range);
  if (value.is === 'window') return value.loMm >= range.minMm && value.hiMm <= range.maxMm;
  return value.is === 'length' && value.mm >= range.minMm && value.mm <= range.maxMm;
}

const rangeOf = (ask: Ask): FieldRange => (ask.is === 'window' || ask.is === 'length' ? ask : undefined);

const JOINS = ['and', 'or'];

/**
 * Numbers that share the word of the one behind them, once the piece needs no other size: `11 in and 12 in wide`,
 * `7, 9 and 11 in wide`.
 */
function sharing(sheet: Sheet, piece: Piece, labels: readonly Label[]): Label[] {
  const isMet = piece.needs.every((group) => group.some((id) => labels.some((label) => label.id === id)));
  if (!isMet) return [];
  return labels.flatMap((label) => {
    const shared: Label[] = [];
    for (let i = label.index; isJoinedBefore(sheet, i, shared.length > 0); i -= 2)
      shared.push({ ...label, index: i - 2 });
    return shared.filter(({ index }) => labels.every((other) => other.index !== index));
  });
}

const isJoinedBefore = (sheet: Sheet, i: number, isList: boolean): boolean =>
  quantityAtIndex(sheet, i - 2) !== undefined &&
  (JOINS.includes(wordAt(sheet, i - 1) ?? '') || (isList && markAt(sheet, i - 1) === 'comma'));
