import { numberAt } from './number.js';
import { G_PER, type LengthUnit, type MassUnit, MM_PER } from './units.js';

/**
 * A quantity as typed. `lo` and `hi` are in `unit` and differ only for a range; `halfWidth` is what stood after ±,
 * in the same unit.
 */
export type Quantity = {
  start: number;
  end: number;
  lo: number;
  hi: number;
  unit: LengthUnit | MassUnit | 'percent' | undefined;
  halfWidth?: number | undefined;
};

const UNIT_WORDS: [Quantity['unit'], string][] = [
  ['mm', 'mms?|millimet(?:er|re)s?'],
  ['cm', 'cms?|centimet(?:er|re)s?'],
  ['m', 'm|met(?:er|re)s?'],
  ['in', 'inch(?:es)?|ins?\\.?'],
  ['ft', 'ft|foot|feet'],
  ['yd', 'yds?|yards?'],
  ['kg', 'kgs?|kilos?|kilograms?'],
  ['g', 'g|gr|gms?|grams?|grammes?'],
  ['oz', 'oz|ounces?'],
  ['lb', 'lbs?|pounds?'],
  ['percent', 'percent|per cent'],
];
const UNIT = new RegExp(
  `\\s*(?:(?<inch>["”″“]|'')|(?<percentSign>%)|[ -]?(?:of )?(?:an? )?(?:${UNIT_WORDS.map(([, words], i) => `(?<u${i}>${words})`).join('|')})(?![\\p{L}\\d]))`,
  'iuy',
);
// "20 in 4 in", "2 in 1", "11 in the medium yarn": an `in` with an object of its own is no inch, unless that object
// is a count or a size of its own, as in "22 in 46 needles", "22 in 6 3/4 flat".
const IN_WITH_OBJECT = /^\s+(?:(?:the|my|this|that|total|all|each|white|black)\b|[\d.½¼¾⅛⅜⅝⅞])/iu;
const COUNT_NEXT = /^\s+[\d.,/ ]+\s*-?\s*(?:needles?|ndls?|rows?|rnds?|rounds?|sts?|stitches)\b/iu;
const FRACTION_NEXT = /^\s+(?:\d+(?:\s+|-)\d+\s?[/⁄]\s?\d|\d*\s?[½¼¾⅓⅔⅛⅜⅝⅞])/u;
const SIZE_NEXT =
  /^\s+\d+(?:[.,]\d+)?\s*(?:["”″]|in\b|inch(?:es)?\b|[cm]m\b)?\s*(?:flat|folded|wide|across|broad|long|tall|high|deep|around|round)\b/iu;

const TO = /\s*(?:-|–|—|\bto\b|\bthrough\b)\s*/iuy;
const PLUS_MINUS = /\s*,?\s*(?:±|\+\s?\/?\s?-|plus or minus|give or take)\s*/iuy;

/**
 * The quantity that begins at `at`: `11 in`, `11"`, `27,5 cm`, `10.5-11 in`, `10½ to 11"`, `11 in ± 1/4`, `38 g`.
 * A range must grow; `to` between a larger and a smaller number joins nothing.
 */
export function quantityAt(text: string, at: number): Quantity | undefined {
  const first = single(text, at);
  if (first === undefined) return undefined;
  return withTolerance(text, ranged(text, first));
}

/** Every quantity in a text, left to right, none overlapping. */
export function quantities(text: string): Quantity[] {
  const found: Quantity[] = [];
  for (let at = 0; at < text.length; at++) {
    const quantity = quantityAt(text, at);
    if (quantity === undefined) continue;
    found.push(quantity);
    at = quantity.end - 1;
  }
  return found;
}

function single(text: string, at: number): Quantity | undefined {
  const number = numberAt(text, at);
  if (number === undefined) return undefined;
  const { value, start, end } = number;
  const unit = unitAt(text, end);
  if (unit === undefined && /^\p{L}/u.test(text.slice(end)) && !/^[x×*]/iu.test(text.slice(end))) {
    return /^(?:st|nd|rd|th)\b/i.test(text.slice(end))
      ? undefined
      : { start, end, lo: value, hi: value, unit: undefined };
  }
  return { start, end: unit?.end ?? end, lo: value, hi: value, unit: unit?.unit };
}

function unitAt(text: string, at: number): { unit: Quantity['unit']; end: number } | undefined {
  UNIT.lastIndex = at;
  const match = UNIT.exec(text);
  if (match?.groups === undefined) return undefined;
  const end = at + match[0].length;
  if (match.groups.inch) return { unit: 'in', end };
  if (match.groups.percentSign) return { unit: 'percent', end };
  const index = UNIT_WORDS.findIndex((_, i) => match.groups?.[`u${i}`] !== undefined);
  const unit = UNIT_WORDS[index]?.[0];
  const rest = text.slice(end);
  const stands = [COUNT_NEXT, FRACTION_NEXT, SIZE_NEXT].some((next) => next.test(rest));
  const preposition = /in$/i.test(match[0]) && IN_WITH_OBJECT.test(rest) && !stands;
  return preposition ? undefined : { unit, end };
}

function ranged(text: string, first: Quantity): Quantity {
  const second = after(text, first.end, TO);
  if (second === undefined || second.lo < 0) return first;
  const unit = second.unit ?? first.unit;
  const sameUnit = first.unit === undefined || second.unit === undefined || first.unit === second.unit;
  return sameUnit && first.lo < second.lo ? { ...first, hi: second.lo, unit, end: second.end } : first;
}

function withTolerance(text: string, quantity: Quantity): Quantity {
  const half = after(text, quantity.end, PLUS_MINUS);
  if (half === undefined || half.lo <= 0 || quantity.lo !== quantity.hi) return quantity;
  const unit = quantity.unit ?? half.unit;
  const scale = half.unit && unit && half.unit !== unit ? ratio(half.unit, unit) : 1;
  return scale === undefined ? quantity : { ...quantity, unit, halfWidth: half.lo * scale, end: half.end };
}

function after(text: string, at: number, joint: RegExp): Quantity | undefined {
  joint.lastIndex = at;
  const match = joint.exec(text);
  return match === null ? undefined : single(text, at + match[0].length);
}

const ratio = (from: string, to: string): number | undefined =>
  from in MM_PER && to in MM_PER ? MM_PER[from as LengthUnit] / MM_PER[to as LengthUnit] : undefined;

/** A typed length unit's size in mm, or undefined for what is not a length. */
export const mmPer = (unit: Quantity['unit']): number | undefined =>
  unit !== undefined && unit in MM_PER ? MM_PER[unit as LengthUnit] : undefined;

/** A typed mass unit's size in g, or undefined for what is not a mass. */
export const gPer = (unit: Quantity['unit']): number | undefined =>
  unit !== undefined && unit in G_PER ? G_PER[unit as MassUnit] : undefined;
