import { type BodyMeasure, bodySizeMm, type Person, type Piece } from '../../../core/index.js';
import type { Size, Value } from '../../request.js';
import { beginsClause, endsClause } from '../clauses.js';
import type { Context } from '../context.js';
import { ageWords, isGrown, isOther, joinedTold, personsAt, type Told } from '../persons.js';
import {
  claim,
  indexesBetween,
  isFree,
  LEFT_OUT,
  leftOutFor,
  markAt,
  type Sheet,
  saidBetween,
  wordAt,
} from '../sheet.js';
import { agesOf, grownOf, nameOf, personOf, spread } from '../spread.js';
import { COLOURS, FIBRES, isKnownWord, YARN_WEIGHTS } from '../vocabulary.js';
import { fieldOf } from './fields.js';
import { isPlural } from './pieces.js';

/** What the words for a person are used as. */
export const PERSON = 'person';

type Named = { told: Told; from: number; to: number };
/** Whom a piece is for; `told` is undefined for several people of whom the sizes differ. */
export type People = { told: Told | undefined; named: readonly Named[]; from: number; to: number; said: string };

const ARTICLES = 'a an the my our your his her their this that one average'.split(' ');
/** Said of a person, and of no published size. */
const BUILDS = 'small large big tall little tiny slim petite young'.split(' ');
/** Before those a piece is for. */
export const FOR = ['for', 'fit', 'fits', 'fitting', 'suit', 'suits', 'of', 'size', 'sized'];
/** Between two persons: `a woman and a man`, `baby to adult`. */
const JOINTS = ['and', 'or', 'to'];
const REFUSALS = ['not', 'no', 'never', 'without', 'except'];
/** `hat, toddler on the 48`: words that a person may stand before without any before it. */
const BEHIND = ['on', 'in', 'with', 'size', 'sized', 'head', 'please'];
/** Behind a person or an age they speak of a thing: `man made`, `2 year old yarn`. */
const THINGS = 'made yarn machine swatch gauge tension piece pieces fine knitted ago up'.split(' ');
/** With these, so many years are a time. */
const TIMES = 'made been ago last lasts lasted warranty guarantee guaranteed wait within since'.split(' ');
const MOST_BESIDE = 3;

/**
 * Whom a piece is for, where it may be made to a person's measure: `for a two-year-old`, `womens hat`. `Baby pink` and
 * `2 year old yarn` are nobody.
 */
export function readPeople(sheet: Sheet, piece: Piece, { pieces, holes }: Context): People | undefined {
  const asks = bodyAsks(piece);
  if (asks.length === 0) return undefined;
  const isAsked = asks.some(({ id }) => holes.includes(id));
  const words = new Set(pieces.flatMap((one) => one.words));
  const named: Named[] = [];
  for (let i = 0; i < sheet.tokens.length; i++) {
    const found = personsAt(sheet, i);
    const [one] = found?.persons ?? [];
    if (found === undefined || one === undefined) continue;
    const { persons, isSure } = found;
    const to = persons.at(-1)?.to ?? one.to;
    const { told } = one;
    const from = leadOf(sheet, i);
    const isNext = named.length > 0 && isJoined(sheet, named.at(-1)?.to ?? 0, from);
    const isFor = isNext || FOR.includes(wordAt(sheet, from - 1) ?? '');
    const isOfPiece = isBeforePiece(sheet, to + 1, told.isAged !== true);
    const isAlone = (isAsked && beginsClause(sheet, from)) || isApart(sheet, from);
    const isMeant =
      isOfPiece ||
      (isFor && mayFollow(sheet, piece, words, to + 1, isSure && told.isAged === true)) ||
      (isAlone && (endsClause(sheet, to + 1) || BEHIND.includes(wordAt(sheet, to + 1) ?? '')));
    const isTime = !isSure && sheet.tokens.some((_, k) => TIMES.includes(wordAt(sheet, k) ?? ''));
    if (isMeant && !isTime) {
      const isRefused = [from - 1, from - 2].some((k) => REFUSALS.includes(wordAt(sheet, k) ?? ''));
      claim(sheet, isRefused ? LEFT_OUT : PERSON, ...indexesBetween(i, to));
      const isNoMeasure = (k: number) => BUILDS.includes(wordAt(sheet, k) ?? '');
      claim(sheet, LEFT_OUT, ...indexesBetween(from, i - 1).filter(isNoMeasure));
      if (!isRefused) named.push(...persons);
    }
    i = to;
  }
  return together(sheet, named);
}

/** True where nothing but a joint stands between a person and the next: `a woman and a man`, `babies, toddlers`. */
const isJoined = (sheet: Sheet, to: number, from: number): boolean =>
  indexesBetween(to + 1, from - 1).length > 0 &&
  indexesBetween(to + 1, from - 1).every(
    (i) => JOINTS.includes(wordAt(sheet, i) ?? '') || ['comma', 'slash'].includes(markAt(sheet, i) ?? ''),
  );

/** Where what is said of a person begins: behind the `for` of `for three tall women`. */
function leadOf(sheet: Sheet, i: number): number {
  const isSaid = (k: number): boolean => {
    const word = wordAt(sheet, k);
    if (word === undefined) return isNumber(sheet, k);
    return ARTICLES.includes(word) || BUILDS.includes(word) || (isFree(sheet, k) && !isKnownWord(word));
  };
  let from = i;
  while (i - from < MOST_BESIDE && from > 0 && isSaid(from - 1)) from--;
  return from;
}

const isNumber = (sheet: Sheet, i: number): boolean => {
  const token = sheet.tokens[i];
  return token?.is === 'quantity' && token.quantity.unit === undefined;
};

/** Behind the piece or a comma. */
const isApart = (sheet: Sheet, from: number): boolean =>
  sheet.uses[from - 1] === 'piece' || markAt(sheet, from - 1) === 'comma';

/** `womens grey hat`, `toddler size`; but `baby alpaca hat` is of a fibre. */
function isBeforePiece(sheet: Sheet, at: number, isNoun: boolean): boolean {
  for (let k = at; k < at + MOST_BESIDE; k++) {
    const word = wordAt(sheet, k) ?? '';
    if (sheet.uses[k] === 'piece' || word === 'size' || word === 'sized') return true;
    const isYarn = COLOURS.has(word) || FIBRES.has(word) || YARN_WEIGHTS.has(word);
    if (!(isYarn || BUILDS.includes(word)) || (isNoun && /^bab/.test(wordAt(sheet, at - 1) ?? ''))) return false;
  }
  return false;
}

/** True where the words behind `for a baby` do not make it a thing: `for a baby shower`. */
function mayFollow(sheet: Sheet, piece: Piece, pieces: Set<string>, at: number, isAge: boolean): boolean {
  const word = wordAt(sheet, at);
  if (word === undefined || fieldOf(piece, word) !== undefined) return true;
  if (THINGS.includes(word) || COLOURS.has(word) || FIBRES.has(word) || YARN_WEIGHTS.has(word)) return false;
  return isKnownWord(word) || (isAge && !pieces.has(word));
}

function together(sheet: Sheet, named: readonly Named[]): People | undefined {
  const [first, last] = [named[0], named.at(-1)];
  if (first === undefined || last === undefined) return undefined;
  const areMany = isPlural(sheet) && named.some((one) => agesOf(sheet, one) !== undefined);
  const areSeveral =
    areMany ||
    named.some((b, k) => isNextOther(sheet, named[k - 1], b)) ||
    named.some((a) => named.some((b) => isOther(a.told, b.told)));
  const told = areSeveral ? undefined : named.map((one) => one.told).reduce(joinedTold);
  return { told, named, from: first.from, to: last.to, said: saidBetween(sheet, first.from, last.to) };
}

/** True for two ages, one of them a name's, that a word joins: `newborn to 12 months`, a `baby and a 2 year old`. */
const isNextOther = (sheet: Sheet, a: Named | undefined, b: Named): boolean =>
  a !== undefined &&
  a.told.months !== undefined &&
  b.told.months !== undefined &&
  a.told.months !== b.told.months &&
  indexesBetween(a.to + 1, b.from - 1).some((i) => JOINTS.includes(wordAt(sheet, i) ?? ''));

type BodyAsk = { id: string; label: string; measure: BodyMeasure };

const bodyAsks = (piece: Piece): BodyAsk[] =>
  Object.entries(piece.asks).flatMap(([id, ask]) =>
    ask.is === 'length' && ask.body ? [{ id, label: ask.label.toLowerCase(), measure: ask.body }] : [],
  );

/** The published sizes of a person, one an ask; none where no table has one. */
function sizesOf(piece: Piece, person: Person | undefined, words?: string): Record<string, Value> {
  if (person === undefined) return {};
  return Object.fromEntries(
    bodyAsks(piece).flatMap(({ id, label, measure }) => {
      const mm = bodySizeMm(measure, person);
      if (mm === undefined) return [];
      return [[id, { is: 'length', mm, ...(words && { said: words }), assumed: 'body', body: { label, person } }]];
    }),
  );
}

/** The published sizes of the one person that a piece is for. */
export const bodySizes = (piece: Piece, people: People | undefined): Record<string, Value> =>
  people?.told === undefined ? {} : sizesOf(piece, personOf(people.told), people.said);

/** The published sizes of each of several persons, with those between the ends of a range: `baby to adult`. */
export function sizesOfSeveral(sheet: Sheet, piece: Piece, people: People | undefined): Size[] {
  const persons =
    people === undefined || people.told ? [] : spread(sheet, people.named).flatMap((told) => personOf(told) ?? []);
  const sizes = new Map(persons.map((person) => [nameOf(person), sizesOf(piece, person)]));
  return [...sizes].flatMap(([label, values]) => (Object.keys(values).length === 0 ? [] : [{ label, values }]));
}

/**
 * Leaves the words for a person out, and says why, where they gave no size and none was typed.
 * @param sizes those that several persons gave
 * @returns true where they were left out
 */
export function claimUnsized(
  sheet: Sheet,
  piece: Piece,
  people: People | undefined,
  sizes: readonly Size[],
  values: object,
): boolean {
  if (people === undefined) return false;
  const { told, named, from, to } = people;
  const isSized = (one: Told): boolean =>
    grownOf(one).some((grown) => Object.keys(sizesOf(piece, personOf(grown))).length > 0);
  if (told === undefined && sizes.length > 0) {
    for (const one of named.filter((person) => !isSized(person.told))) leaveOut(sheet, one, whyUnsized(one.told));
    return false;
  }
  if (bodyAsks(piece).some(({ id }) => id in values)) return false;
  if (told === undefined) for (const i of indexesBetween(from, to)) sheet.uses[i] = leftOutFor('say one of them');
  else leaveOut(sheet, { from, to }, whyUnsized(told));
  return true;
}

function leaveOut(sheet: Sheet, { from, to }: Pick<Named, 'from' | 'to'>, why: string): void {
  for (const i of indexesBetween(from, to)) if (sheet.uses[i] === PERSON) sheet.uses[i] = leftOutFor(why);
}

function whyUnsized({ adult, isTeen, months }: Told): string {
  if (adult === 'any' || isGrown(months)) return 'say woman or man';
  if (isTeen) return 'no published size for teenagers';
  return months === undefined ? 'say the age' : `no published size for ${ageWords(months)}`;
}
