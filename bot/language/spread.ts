import type { Person } from '../../core/index.js';
import { ageWords, isGrown, type Told } from './persons.js';
import { indexesBetween, type Sheet, wordAt } from './sheet.js';

/** Ages in months that sizes of the young come in, where a range of persons is named. Common practice. */
const LADDER = [3, 6, 12, 24, 36, 60];
/** A range of ages that spans fewer of them is one size: `2 to 3 year old`. */
const LEAST_SPAN = 3;

type Named = { told: Told; from: number; to: number };

/** Each of several persons, with those between the ends of a range: `baby to adult`, `toddlers and adults`. */
export function spread(sheet: Sheet, named: readonly Named[]): Told[] {
  return named.flatMap((one, k) => {
    const [before, next] = [named[k - 1], named[k + 1]];
    if (before !== undefined && isRange(sheet, before, one)) return between(before.told, one.told);
    if (next !== undefined && isRange(sheet, one, next)) return [];
    return agesOf(sheet, one) ?? grownOf(one.told);
  });
}

const isRange = (sheet: Sheet, a: Named, b: Named): boolean =>
  indexesBetween(a.to + 1, b.from - 1).some((i) => wordAt(sheet, i) === 'to');

/** An adult without a sex named is a woman and a man where sizes are listed. */
export const grownOf = (told: Told): Told[] => (told.adult === 'any' ? [{ adult: 'woman' }, { adult: 'man' }] : [told]);

/** A baby, where a range begins with one, is as young as sizes begin. */
const beginning = ({ months, isAged }: Told): number | undefined =>
  isAged || months === undefined || months > 12 ? months : Math.min(months, LADDER[0] ?? months);

/** Nothing where an end of the range has no age. */
function between(a: Told, b: Told): Told[] {
  if (a.adult !== undefined) return [...grownOf(a), ...grownOf(b)];
  const from = beginning(a);
  const to = b.adult === undefined ? b.months : Number.POSITIVE_INFINITY;
  if (from === undefined || to === undefined || from >= to) return [];
  const ends = Number.isFinite(to) ? [from, to] : [from];
  const sex = a.sex === undefined ? {} : { sex: a.sex };
  const ages = [...new Set([...ends, ...LADDER.filter((months) => months > from && months < to)])];
  const young = ages.sort((x, y) => x - y).map((months): Told => ({ months, isAged: true, ...sex }));
  return b.adult === undefined ? young : [...young, ...grownOf(b)];
}

/** The ages in a range of numbers, `3 to 12 months`, where it spans several sizes. */
export function agesOf(sheet: Sheet, { told, from, to }: Named): Told[] | undefined {
  const token = indexesBetween(from, to)
    .map((i) => sheet.tokens[i])
    .find((one) => one?.is === 'quantity');
  if (token?.is !== 'quantity' || told.months === undefined) return undefined;
  const { lo, hi } = token.quantity;
  const unit = (2 * told.months) / (lo + hi);
  const ages = LADDER.filter((months) => months >= lo * unit && months <= hi * unit);
  return ages.length < LEAST_SPAN ? undefined : ages.map((months) => ({ ...told, months }));
}

/** The person that words tell of, where they tell enough to have a size. */
export function personOf({ adult, isTeen, months, isAged, sex }: Told): Person | undefined {
  if (adult === 'woman' || adult === 'man') return { is: adult };
  if (adult === 'any' || isTeen || months === undefined || (isAged && isGrown(months))) return undefined;
  return { is: 'child', months, ...(sex && { sex }) };
}

/** What those of a size are called: `women`, `3 months`, `boys of 4 years`. */
export function nameOf(person: Person): string {
  if (person.is !== 'child') return person.is === 'woman' ? 'women' : 'men';
  const { months, sex } = person;
  if (months === 0) return sex === undefined ? 'newborns' : `newborn ${sex}s`;
  return sex === undefined ? ageWords(months) : `${sex}s of ${ageWords(months)}`;
}
