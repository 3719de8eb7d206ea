import { endsClause } from './clauses.js';
import { listFrom } from './readers/lists.js';
import { indexesBetween, isFree, markAt, type Sheet, said, wordAt } from './sheet.js';
import { isLabelWord } from './vocabulary.js';

/** What words tell of a person. `isAged`: the age was said in numbers, not meant by a name such as `toddler`. */
export type Told = {
  adult?: 'woman' | 'man' | 'any';
  isTeen?: boolean;
  months?: number;
  isAged?: boolean;
  sex?: 'boy' | 'girl';
};
type Place = { told: Told; to: number };

const MONTHS_A_YEAR = 12;
/** 7 days in a month of 30.4375, that of the published tables. */
const MONTHS_A_WEEK = 7 / 30.4375;
/** Common practice: a toddler is two; a baby, where nothing else is said, half a year. */
const [BABY_MONTHS, TODDLER_MONTHS] = [6, 24];

const told = (words: string, of: Told): [string, Told][] => words.split(' ').map((word) => [word, of]);
const NOUNS: Record<string, Told> = Object.fromEntries([
  ...told('newborn', { months: 0 }),
  ...told('baby babies infant', { months: BABY_MONTHS }),
  ...told('toddler', { months: TODDLER_MONTHS }),
  ...told('girl daughter niece granddaughter sister', { sex: 'girl' }),
  ...told('boy son nephew grandson brother', { sex: 'boy' }),
  ...told('child children kid', {}),
  ...told('teen teenager', { isTeen: true }),
  ...told('woman women lady ladies wife wives girlfriend mother mum mom aunt auntie', { adult: 'woman' }),
  ...told('grandmother grandma granny', { adult: 'woman' }),
  ...told('man men husband boyfriend father dad daddy uncle grandfather grandad granddad grandpa', { adult: 'man' }),
  ...told('adult', { adult: 'any' }),
]);

/** What a word tells of a person, in the plural and as an owner too: `womens`, `toddlers`. */
const nounOf = (word = ''): Told | undefined => NOUNS[word] ?? NOUNS[word.replace(/s$/, '')];

const YEARS = 'year years yr yrs y yo'.split(' ');
const MONTHS = 'month months mth mths mo mos'.split(' ');
const WEEKS = 'week weeks wk wks'.split(' ');
const OLD = ['old', 'olds'];
const AGED = ['age', 'aged', 'ages'];
const JOINTS = [...AGED, 'of', 'who', 'whos', 'is', 'shes', 'hes', 'she', 'he', 'thats', 'turning', 'a'];
const MOST_JOINTS = 2;

/**
 * The person named from an index on, as far as the words go: `6 month old baby girl`, `boy of 4`, `aged 2`.
 * `isSure`: the words tell of an age or a person, and not only of so many years.
 */
function personAt(sheet: Sheet, from: number): (Place & { isSure: boolean }) | undefined {
  const first = AGED.includes(wordAt(sheet, from) ?? '') ? ageAt(sheet, from + 1, true) : elementAt(sheet, from, false);
  if (first === undefined) return undefined;
  let whole = first;
  for (;;) {
    const behind = whole.to + 1;
    // `my nephew, who is four`
    const isTold =
      markAt(sheet, behind) === 'comma' && ['who', 'whos', ...AGED].includes(wordAt(sheet, behind + 1) ?? '');
    let next = isTold ? behind + 1 : behind;
    while (next - behind <= MOST_JOINTS && isFree(sheet, next) && JOINTS.includes(wordAt(sheet, next) ?? '')) next++;
    const isChild = whole.told.months === undefined && isYoung(whole.told) && !whole.told.isTeen;
    const more = elementAt(sheet, next, next > whole.to + 1) ?? (isChild ? yearsBehind(sheet, next) : undefined);
    if (more === undefined || isOther(whole.told, more.told)) break;
    whole = { to: more.to, told: joinedTold(whole.told, more.told) };
  }
  const words = indexesBetween(from, whole.to).map((i) => wordAt(sheet, i) ?? '');
  const isSure = words.some((word) => nounOf(word) !== undefined || [...OLD, ...AGED, 'yo'].includes(word));
  return { ...whole, isSure };
}

type Person = { told: Told; from: number; to: number };

/**
 * The persons named from an index on: one, or one an age in a list of ages, `3, 6 and 12 months`, `boys of 2, 4 and 6`,
 * where the word for the unit stands behind the last.
 */
export function personsAt(sheet: Sheet, from: number): { persons: Person[]; isSure: boolean } | undefined {
  const found = personAt(sheet, from);
  const first = indexesBetween(from, found?.to ?? from).find((i) => sheet.tokens[i]?.is === 'quantity');
  const list = first === undefined ? undefined : listFrom(sheet, first);
  const last = list?.at(-1);
  const counts = list?.flatMap((i) => ageNumber(sheet, i) ?? []) ?? [];
  const end = last === undefined ? undefined : (personAt(sheet, last) ?? (found && ageAt(sheet, last, true)));
  const months = end?.told.months;
  if (list === undefined || last === undefined || months === undefined || counts.length < list.length)
    return found && { persons: [{ told: found.told, from, to: found.to }], isSure: found.isSure };
  const unit = months / (counts.at(-1) ?? 1);
  const whose = found === undefined ? (end?.told ?? {}) : joinedTold(found.told, end?.told ?? {});
  const persons = list.map((index, k) => ({
    told: { ...whose, months: (counts[k] ?? 0) * unit, isAged: true },
    from: k === 0 ? from : index,
    to: index === last ? (end?.to ?? index) : index,
  }));
  return { persons, isSure: found?.isSure === true || (end !== undefined && 'isSure' in end && end.isSure === true) };
}

/** What two words tell of one person; an age in numbers stands before that of a name. */
export const joinedTold = (a: Told, b: Told): Told => ({
  ...a,
  ...b,
  ...(a.isAged && { months: a.months }),
  ...(a.adult !== undefined && a.adult !== 'any' && { adult: a.adult }),
});

/** True for words that cannot be of one person. */
export const isOther = (a: Told, b: Told): boolean =>
  differ(a.sex, b.sex) ||
  (a.isAged === b.isAged && differ(a.months, b.months)) ||
  (a.adult !== 'any' && b.adult !== 'any' && differ(a.adult, b.adult)) ||
  isYoung(a) !== isYoung(b);

const isYoung = ({ adult, months, isAged }: Told): boolean => adult === undefined && !(isAged && isGrown(months));
const differ = (a: unknown, b: unknown): boolean => a !== undefined && b !== undefined && a !== b;

const ADULT_YEARS = 18;
/** True for an age of eighteen years or more. */
export const isGrown = (months = 0): boolean => months >= ADULT_YEARS * MONTHS_A_YEAR;

/** Years that stand right behind a child and end the clause: `a girl 4`, `my son, 4`. */
const MOST_YEARS_BEHIND = 12;

function yearsBehind(sheet: Sheet, i: number): Place | undefined {
  const at = markAt(sheet, i) === 'comma' ? i + 1 : i;
  const years = ageNumber(sheet, at);
  const isAge = years !== undefined && Number.isInteger(years) && years >= 1 && years <= MOST_YEARS_BEHIND;
  return isAge && endsClause(sheet, at + 1) ? ageAt(sheet, at, true) : undefined;
}

function elementAt(sheet: Sheet, i: number, mayBeBare: boolean): Place | undefined {
  const noun = isFree(sheet, i) ? nounOf(wordAt(sheet, i)) : undefined;
  return noun === undefined ? ageAt(sheet, i, mayBeBare) : { told: noun, to: i };
}

/** `2 years old`, `18 months`, `2 to 3 year old`, and a bare number of years where one can be meant. */
function ageAt(sheet: Sheet, i: number, mayBeBare: boolean): Place | undefined {
  const count = ageNumber(sheet, i);
  if (count === undefined) return undefined;
  const word = isFree(sheet, i + 1) ? (wordAt(sheet, i + 1) ?? '') : '';
  const isOld = OLD.includes(wordAt(sheet, i + 2) ?? '');
  const aged = (months: number, to: number): Place => ({ told: { months, isAged: true }, to });
  if (MONTHS.includes(word)) return aged(count, isOld ? i + 2 : i + 1);
  if (WEEKS.includes(word)) return isOld ? aged(count * MONTHS_A_WEEK, i + 2) : undefined;
  if (!YEARS.includes(word)) {
    const isSize = isLabelWord(word) || sheet.tokens[i + 1]?.is === 'quantity' || markAt(sheet, i + 1) === 'by';
    return mayBeBare && !isSize ? aged(count * MONTHS_A_YEAR, i) : undefined;
  }
  const at = wordAt(sheet, i + 2) === 'and' ? i + 3 : i + 2;
  const over = MONTHS.includes(wordAt(sheet, at + 1) ?? '') ? ageNumber(sheet, at) : undefined;
  if (over === undefined) return aged(count * MONTHS_A_YEAR, isOld ? i + 2 : i + 1);
  return aged(count * MONTHS_A_YEAR + over, OLD.includes(wordAt(sheet, at + 2) ?? '') ? at + 2 : at + 1);
}

/** A number without a unit, of a range its middle. `3/4` is no part of a year but one year or another. */
function ageNumber(sheet: Sheet, i: number): number | undefined {
  const token = sheet.tokens[i];
  if (token?.is !== 'quantity' || !(isFree(sheet, i) || sheet.uses[i] === 'pronoun')) return undefined;
  const { lo, hi, unit, halfWidth } = token.quantity;
  if (unit !== undefined || halfWidth !== undefined || lo < 0) return undefined;
  return /^\d+\s?\/\s?\d+$/.test(said(sheet, i)) && lo !== 1 / 2 ? undefined : (lo + hi) / 2;
}

/** An age in words: `2 years`, `18 months`. */
export function ageWords(months: number): string {
  const isYears = months >= MONTHS_A_YEAR && Number.isInteger(months / MONTHS_A_YEAR);
  const [count, unit] = isYears ? [months / MONTHS_A_YEAR, 'year'] : [Number(months.toFixed(1)), 'month'];
  return `${count} ${unit}${count === 1 ? '' : 's'}`;
}
