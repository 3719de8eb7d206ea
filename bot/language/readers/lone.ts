import type { Ask, Piece } from '../../../core/index.js';
import type { Value } from '../../request.js';
import { type BareUnit, type FieldRange, typedValue } from '../lengths.js';
import { quantityAtIndex, type Sheet } from '../sheet.js';

export const rangeOf = (ask: Ask | undefined): FieldRange =>
  ask?.is === 'window' || ask?.is === 'length' ? ask : undefined;

/** What a lone number may be for beside the sizes already read. */
export type Lone = {
  /** True where a person's sizes stand for what is not typed: the number is then for the first field that can have it. */
  isForPerson: boolean;
  /** The size that the rows of the plan in hand make, which `make it 20 cm` changes. */
  rowsMake: string | undefined;
  /** What the sizes in hand differ in: a list without a word is of that. */
  varied: readonly string[];
};

/**
 * The fields that a lone number is for, likeliest first: of a plan in hand the size that its rows make, where the number
 * is in its range, else the one field it can be; of a new one the first size still needed, then the rest of the pair.
 */
export function loneFields(sheet: Sheet, index: number, piece: Piece, bare: BareUnit, sized: object, lone: Lone) {
  const fits = (id: string): boolean => isOfField(sheet, index, piece.asks[id], bare);
  const fields = neededFields(piece, sized);
  const { isForPerson, rowsMake } = lone;
  const meant =
    rowsMake &&
    oneOf(
      Object.keys(piece.asks).filter((id) => !(id in sized) && fits(id)),
      rowsMake,
    );
  if (meant !== undefined) return [meant];
  return isForPerson ? [...fields.filter(fits), ...fields] : fields;
}

/** The sizes still needed, then the rest of the pair. */
export function neededFields({ needs, pair }: Piece, sized: object): string[] {
  const needed = needs.filter((group) => !group.some((id) => id in sized)).flatMap(([id]) => id ?? []);
  return [...new Set([...needed, ...pair])].filter((id) => !(id in sized));
}

/** True where the number at an index can be of an ask. */
export function isOfField(sheet: Sheet, index: number, ask: Ask | undefined, bare: BareUnit): boolean {
  const [quantity, range] = [quantityAtIndex(sheet, index), rangeOf(ask)];
  return quantity !== undefined && isWithin(range, typedValue(quantity, bare, '', range));
}

/** The size of a plan in hand that a value without a name changes, where one alone can be meant. */
export const sizeMeant = (piece: Piece, value: Value, rowsMake: string): string | undefined =>
  oneOf(
    Object.keys(piece.asks).filter((id) => isWithin(rangeOf(piece.asks[id]), value)),
    rowsMake,
  );

const oneOf = (fitting: readonly string[], rowsMake: string): string | undefined =>
  fitting.includes(rowsMake) || fitting.length !== 1 ? fitting.find((id) => id === rowsMake) : fitting[0];

/** True for a length or a window inside a range, and for a number that may be one. */
export function isWithin(range: FieldRange, value: Value): boolean {
  if (range === undefined) return false;
  if (value.is === 'bare') return true;
  if (value.is === 'window') return value.loMm >= range.minMm && value.hiMm <= range.maxMm;
  return value.is === 'length' && value.mm >= range.minMm && value.mm <= range.maxMm;
}
