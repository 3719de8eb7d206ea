import { MM_PER, plainNumber, type Quantity, quantityAt, type Units } from '../../../core/index.js';
import { bareUnit, type FieldRange, typedValue } from '../../language/lengths.js';
import { inFigures } from '../../language/number-words.js';
import type { FormValues, Value } from '../../request.js';
import { shortened } from '../limits.js';
import type { Fault } from './form.js';

const MOST_QUOTED = 40;
const COUNTED_NOUN = /^\s*(?:rows?|needles?|stitches|of them)?\s*$/i;

export const quoted = (text: string): string => `"${shortened(text, MOST_QUOTED)}"`;

/** The one quantity that a text is, with nothing behind it but the noun of a count. */
export function quantityOnly(text: string): Quantity | undefined {
  const figures = inFigures(text.trim()).text;
  const quantity = quantityAt(figures, 0);
  return quantity !== undefined && COUNTED_NOUN.test(figures.slice(quantity.end)) ? quantity : undefined;
}

/** A size in the units of its maker, as it would be typed. */
const example = (units: Units | undefined): string => (units === 'in' ? '10 1/2 in' : '27 cm');

/** What a number alone is read as, for the hint of a length. */
export const lengthHint = (units: Units | undefined): string =>
  units === undefined ? 'With its unit, such as 27 cm or 10 1/2 in.' : `A number alone is ${units}. Fractions work.`;

/** The fields of one form being read: each fault is noted beside its field, and reading goes on. */
export type FieldReader = {
  faults: Fault[];
  text(id: string): string;
  /** A count; undefined where nothing or no count stands. */
  count(id: string): number | undefined;
  length(id: string, range?: FieldRange): Value | undefined;
  mass(id: string): Value | undefined;
  /** Notes a fault beside a field. */
  refuse(id: string, says: string): undefined;
};

/** Reads what was typed in the fields of a form, bare lengths in `units` or else in the unit of the others; keeps every fault. */
export function fieldReader(values: FormValues, units: Units | undefined): FieldReader {
  const faults: Fault[] = [];
  const text = (id: string): string => (values[id] ?? '').trim();
  const refuse = (at: string, says: string): undefined => void faults.push({ at, says });
  const quantities = Object.values(values).flatMap((typed) => quantityOnly(typed) ?? []);
  const bare = units === undefined ? bareUnit(quantities, undefined) : bareUnit([], units);
  const read = (id: string, wanted: string): Quantity | undefined => {
    if (text(id) === '') return undefined;
    return quantityOnly(text(id)) ?? refuse(id, `I read ${quoted(text(id))}, and need ${wanted}.`);
  };
  return {
    faults,
    text,
    refuse,
    count(id) {
      const wanted = 'a number here, such as 110';
      const quantity = read(id, wanted);
      if (quantity === undefined || (quantity.unit === undefined && quantity.lo === quantity.hi)) return quantity?.lo;
      return refuse(id, `I read ${quoted(text(id))}, and need ${wanted}.`);
    },
    length(id, range) {
      const quantity = read(id, `a length here, such as ${example(units)}`);
      const value = quantity && typedValue(quantity, bare, text(id), range);
      return value?.is === 'bare' ? refuse(id, unitSaid(text(id))) : value;
    },
    mass(id) {
      const quantity = read(id, 'a weight here, such as 52 g');
      return quantity && typedValue(quantity, bare, text(id));
    },
  };
}

/** Nobody has said yet in which units bare numbers are. */
const unitSaid = (typed: string): string =>
  `Is ${quoted(typed)} in inches or in centimetres? Write it with its unit, such as ${typed.length > 10 ? '27' : typed} cm.`;

/** A value as it is typed again: as it was, where that says it all. */
export function typedAgain(value: Value | undefined, units: Units = 'cm'): string {
  if (value === undefined) return '';
  const { said = '' } = value;
  if (value.is === 'bare') return said;
  const saysAll = value.assumed === undefined && value.given === undefined && quantityOnly(said) !== undefined;
  if (saysAll) return said;
  const figure = (mm: number): string => plainNumber(mm / MM_PER[units], 3);
  switch (value.is) {
    case 'length':
      return `${figure(value.mm)} ${units}`;
    case 'window':
      return `${figure(value.loMm)} to ${figure(value.hiMm)} ${units}`;
    case 'contents':
      return `${value.sidesMm.map(figure).join(' x ')} ${units}`;
    case 'count':
      return plainNumber(value.count);
    case 'percent':
      return `${plainNumber(value.percent)}%`;
    case 'mass':
      return `${plainNumber(value.g)} g`;
    case 'choice':
      return value.id;
  }
}
