import { gPer, MM_PER, mmPer, type Quantity, type Units } from '../../core/index.js';
import type { Value } from '../request.js';

/** The system a bare number takes: typed in the same message, else the maker's. */
export type BareUnit = { mm: number; assumed: 'same_unit' | 'unit' } | undefined;

/** Finds the unit for bare numbers: the first length unit typed in the message, else the maker's own. */
export function bareUnit(quantities: readonly Quantity[], units: Units | undefined): BareUnit {
  const typed = quantities.map((q) => mmPer(q.unit)).find((mm) => mm !== undefined && mm <= MM_PER.in);
  if (typed !== undefined) return { mm: typed, assumed: 'same_unit' };
  return units && { mm: MM_PER[units], assumed: 'unit' };
}

/** The range a field takes, in mm, for telling which unit a bare number can have. */
type Ranged = { minMm: number; maxMm: number };
export type FieldRange = Ranged | undefined;

/**
 * A typed quantity as a value: a length or window in mm, a mass, a share in per cent, or a bare number when no unit can be told.
 * When only one of inches and centimetres lies in the field's range, that unit is assumed and said.
 */
export function typedValue(quantity: Quantity, bare: BareUnit, said: string, range?: FieldRange): Value {
  const grams = gPer(quantity.unit);
  if (grams !== undefined) return { is: 'mass', g: quantity.lo * grams, said };
  if (quantity.unit === 'percent') return { is: 'percent', percent: quantity.lo, said };
  const typed = mmPer(quantity.unit);
  if (typed !== undefined) return spanned(quantity, typed, { said });
  if (bare !== undefined) return spanned(quantity, bare.mm, { said, assumed: bare.assumed });
  const fitting = (['cm', 'in'] as const).filter((unit) => range && inRange(quantity, MM_PER[unit], range));
  const only = fitting.length === 1 ? fitting[0] : undefined;
  if (only !== undefined) return spanned(quantity, MM_PER[only], { said, assumed: 'field' });
  const { lo, hi } = edges(quantity);
  return { is: 'bare', lo, hi, said };
}

/** A length that is made of the one typed: of a length once round `around` half and `girth` the diameter; `across`, once round a diameter. */
export type Made = 'around' | 'across' | 'girth';
export const MADE: Record<Made, number> = { around: 1 / 2, across: Math.PI, girth: 1 / Math.PI };
export const isMade = (how: string): how is Made => how in MADE;

/** A typed size as the length that is made of it. */
export function madeOf(value: Value, made: Made): Value {
  const [times, given] = [MADE[made], [made]];
  if (value.is === 'length') return { ...value, mm: value.mm * times, given };
  if (value.is === 'window') return { ...value, loMm: value.loMm * times, hiMm: value.hiMm * times, given };
  return value.is === 'bare' ? { ...value, lo: value.lo * times, hi: value.hi * times, given } : value;
}

/** How a length was made of the one typed, where it was. */
export const madeBy = ({ given }: Value): Made | undefined => given?.find(isMade);

/** A bare value once the maker's unit is known; any other value as it is. */
export function inUnits(value: Value, units: Units | undefined): Value {
  if (value.is !== 'bare' || units === undefined) return value;
  const { lo, hi, sides, said, given } = value;
  if (sides !== undefined) return { is: 'contents', sidesMm: inMm(sides, MM_PER[units]), said, assumed: 'unit' };
  return { ...spanned({ lo, hi }, MM_PER[units], { said, assumed: 'unit' }), ...(given && { given }) };
}

export type Sides = readonly [number, number, number];

const inMm = ([a, b, c]: Sides, mm: number): [number, number, number] => [a * mm, b * mm, c * mm];

/**
 * Three sides of a thing: each in the unit typed for it, else in the next one typed behind it or the last before it. Of
 * three without any the unit is the one given for bare numbers, else the one of centimetres and inches that the range
 * allows, else millimetres where that alone does.
 */
export function sidesValue(
  sides: readonly [Quantity, Quantity, Quantity],
  bare: BareUnit,
  said: string,
  range: Ranged,
): Value {
  const typed = sides.map(({ unit }) => mmPer(unit));
  const numbers: Sides = [sides[0].lo, sides[1].lo, sides[2].lo];
  if (typed.some((mm) => mm !== undefined)) {
    const own = (i: number): number =>
      typed.slice(i).find((mm) => mm !== undefined) ?? typed.findLast((mm) => mm !== undefined) ?? 1;
    return { is: 'contents', sidesMm: [numbers[0] * own(0), numbers[1] * own(1), numbers[2] * own(2)], said };
  }
  const fits = (mm: number): boolean => numbers.every((side) => side * mm >= range.minMm && side * mm <= range.maxMm);
  if (bare !== undefined && (fits(bare.mm) || !fits(MM_PER.mm)))
    return { is: 'contents', sidesMm: inMm(numbers, bare.mm), said, assumed: bare.assumed };
  const fitting = [MM_PER.cm, MM_PER.in].filter(fits);
  const [only] = fitting.length === 0 && fits(MM_PER.mm) ? [MM_PER.mm] : fitting.length === 1 ? fitting : [];
  if (only !== undefined) return { is: 'contents', sidesMm: inMm(numbers, only), said, assumed: 'field' };
  return { is: 'bare', lo: Math.min(...numbers), hi: Math.max(...numbers), sides: [...numbers], said };
}

type Span = Pick<Quantity, 'lo' | 'hi'> & { halfWidth?: number | undefined };

const edges = ({ lo, hi, halfWidth = 0 }: Span) => ({ lo: lo - halfWidth, hi: hi + halfWidth });

function spanned(
  quantity: Span,
  mm: number,
  from: { said?: string | undefined; assumed?: 'same_unit' | 'unit' | 'field' },
): Value {
  const { lo, hi } = edges(quantity);
  return lo === hi ? { is: 'length', mm: lo * mm, ...from } : { is: 'window', loMm: lo * mm, hiMm: hi * mm, ...from };
}

const inRange = (quantity: Quantity, mm: number, range: { minMm: number; maxMm: number }): boolean =>
  quantity.lo * mm >= range.minMm && quantity.hi * mm <= range.maxMm;
