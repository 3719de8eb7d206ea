import { length, MM_PER, mmPer, quantities, quantityAt, range, say, type Units, type Words } from '../../core/index.js';
import { MADE, type Made, madeBy } from '../language/lengths.js';
import { inFigures } from '../language/number-words.js';
import { ageWords } from '../language/persons.js';
import type { Size, Value } from '../request.js';

/** The quantity that a maker's words begin with. */
const quantityIn = (said: string) => quantityAt(inFigures(said).text, 0);

/** The quantity that a value was typed as; of three sides the first, in the unit they share. */
function quantityOf({ is, said = '' }: Value) {
  if (is !== 'contents') return quantityIn(said);
  const sides = quantities(inFigures(said).text).slice(-3);
  const unit = sides.find((side) => mmPer(side.unit) !== undefined)?.unit;
  return sides[0] && { ...sides[0], unit: sides[0].unit ?? unit };
}

/** The size that was typed, in mm: that of which the value was made, the middle of a window. */
function typedMm(value: Value): number | undefined {
  const made = madeBy(value);
  const times = made === undefined ? 1 : MADE[made];
  if (value.is === 'length') return value.mm / times;
  if (value.is === 'contents') return value.sidesMm[0];
  return value.is === 'window' ? (value.loMm + value.hiMm) / 2 / times : undefined;
}

const READ_IN = ['mm', 'cm', 'in'] as const;

/** The unit a size was typed in, or read in when it was typed without; undefined for what has none. */
function typedUnit(value: Value): keyof typeof MM_PER | undefined {
  if (value.assumed === 'body' || value.assumed === 'named') return undefined;
  const quantity = quantityOf(value);
  if (quantity === undefined) return undefined;
  const { unit, lo, hi } = quantity;
  if (mmPer(unit) !== undefined) return unit as keyof typeof MM_PER;
  const mm = typedMm(value);
  if (unit !== undefined || mm === undefined || mm <= 0) return undefined;
  const off = (per: number): number => Math.abs(Math.log((mm * 2) / (lo + hi) / per));
  return [...READ_IN].sort((a, b) => off(MM_PER[a]) - off(MM_PER[b]))[0];
}

/** The system in which sizes were typed, that of the field named before that of any other. */
export function unitsTyped(values: Readonly<Record<string, Value>>, first: string): Units | undefined {
  const { [first]: wanted, ...others } = values;
  const [unit] = [wanted, ...Object.values(others)].flatMap((value) => (value && typedUnit(value)) ?? []);
  return unit && (['mm', 'cm', 'm'].includes(unit) ? 'cm' : 'in');
}

/** A size as it was typed, a bare number with the unit it was read in: `at least 11 in`. */
export function typedSize(value: Value): string {
  const { said = '', given = [] } = value;
  const unit = quantityOf(value)?.unit === undefined ? typedUnit(value) : undefined;
  const bound = given.includes('at_least') ? 'at least ' : given.includes('at_most') ? 'at most ' : '';
  const made = madeBy(value);
  return `${bound}${said}${unit === undefined ? '' : ` ${unit}`}${made === undefined ? '' : ` ${made}`}`;
}

/** What a maker calls one of several sizes: a person by its words, else the size as it was typed. */
export function sizeName({ label, values }: Size): string {
  const all = Object.values(values);
  if (all.some(({ assumed }) => assumed === 'body')) return label;
  return all.map((value) => typedSize(value).replace(/\s*(?:inch(?:es)?|ins?\.?|["”″]|'')$/i, ' in')).join(' by ');
}

/** True when the words themselves say how far a size may be off: a range, a bound, `11 in ± 1/4`. */
export function statesWidth({ said = '', given }: Value): boolean {
  const quantity = quantityIn(said);
  return given !== undefined || quantity?.lo !== quantity?.hi || quantity?.halfWidth !== undefined;
}

const LIES: Record<Made, Words> = { around: say` flat`, across: say` round`, girth: say` across` };

/** What was made of sizes that were not just what was typed: `22 in around read as 11 in flat`, `11 and 7 read in inches`. */
export function readAs(values: readonly Value[]): Words[] {
  const made = values.flatMap((value) => {
    const made = madeBy(value);
    const lies = made === undefined ? say`` : LIES[made];
    if (value.is === 'length' && value.assumed === 'named' && value.mm > 0)
      return [say`${value.said ?? ''} read as ${length(value.mm)}`];
    if (value.given === undefined) return [];
    if (value.is === 'length') return [say`${typedSize(value)} read as ${length(value.mm)}${lies}`];
    return value.is === 'window' ? [say`${typedSize(value)} read as ${range(value.loMm, value.hiMm)}${lies}`] : [];
  });
  const bare = READ_IN.flatMap((unit) => {
    const read = values.filter(
      (value) => value.given === undefined && isUnitAssumed(value) && typedUnit(value) === unit,
    );
    const said = [...new Set(read.map((value) => value.said))].join(', ').replace(/, ([^,]+)$/, ' and $1');
    return said === '' ? [] : [say`${said} read in ${unit === 'in' ? 'inches' : unit}`];
  });
  const usual = values.flatMap((value) =>
    value.is === 'length' && value.assumed === 'usual'
      ? [say`${value.said ?? ''} of ${length(value.mm)}, as is usual`]
      : [],
  );
  return [...made, ...bare, ...usual, ...bodiesAs(values)];
}

const AGES = ['birth', 'one year', 'two years', 'three years', 'four years', 'five years'];

/** The sizes of a person that stand for sizes not given, with their source. */
function bodiesAs(values: readonly Value[]): Words[] {
  const bodies = values.flatMap((value) =>
    value.is === 'length' && value.body ? [{ ...value.body, mm: value.mm }] : [],
  );
  const [first, ...others] = bodies;
  if (first === undefined) return [];
  const sizes = others.reduce(
    (all, { label, mm }) => say`${all}, ${withArticle(label)} of ${length(mm)}`,
    say`${withArticle(first.label)} of ${length(first.mm)}`,
  );
  return [say`${sizes}, ${others.length === 0 ? '' : 'each '}${sourceOf(first.person)}`];
}

const withArticle = (label: string): string => `${/^[aeiou]/.test(label) ? 'an' : 'a'} ${label}`;

function sourceOf(person: NonNullable<Value['body']>['person']): string {
  if (person.is !== 'child') return `the mean of ${person.is === 'woman' ? 'women' : 'men'} in a published survey`;
  const { months, sex } = person;
  const age = AGES[months / 12] ?? ageWords(months);
  return `the published median${sex === undefined ? '' : ` of ${sex}s`} at ${age}`;
}

const isUnitAssumed = ({ assumed }: Value): boolean => assumed === 'unit' || assumed === 'field';

const NUMBER = /\d+(?:[ -]\d+\/\d+|\/\d+|[.,]\d+)?\s?[½¼¾⅛⅜⅝⅞]?|[½¼¾⅛⅜⅝⅞]/g;

/** Both ends of a range as they were typed, `10.5 and 11 in`; undefined for any other size. */
export function typedLimits(value: Value): string | undefined {
  const { said = '', given } = value;
  const quantity = quantityIn(said);
  const unit = typedUnit(value);
  const [lo, hi, ...more] = said.match(NUMBER) ?? [];
  if (value.is !== 'window' || given !== undefined || unit === undefined || hi === undefined) return undefined;
  if (quantity === undefined || quantity.lo === quantity.hi || more.length > 0) return undefined;
  return `${lo?.trim()} and ${hi.trim()} ${unit}`;
}
