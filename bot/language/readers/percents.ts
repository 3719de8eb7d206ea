import { aspects, type Piece } from '../../../core/index.js';
import type { Value } from '../../request.js';
import { claim, indexesBetween, isFree, LEFT_OUT, markAt, type Sheet, said, saidBetween, wordAt } from '../sheet.js';
import { COUNT_NOUNS, FIBRES } from '../vocabulary.js';
import { fieldOf } from './fields.js';

/** What a share of a size is called that is knitted smaller than what it goes on. */
const EASE = 'ease';
const LESS = 'smaller less negative under tighter narrower below reduction reduced reduce'.split(' ');
const MORE = 'larger bigger more positive looser wider over above extra longer taller'.split(' ');
/** May stand between a share and the word for it. */
const BETWEEN = ['of', 'by', 'is', 'about', 'at'];
/** A share alone is the one the piece takes between these. */
const BEFORE = 'with at by and it a about make head use'.split(' ');
const BEHIND = 'on in for and please with using at'.split(' ');
/** Behind `10% less` they say less of what. */
const NOT_SIZE = new Set([
  'yarn',
  'wool',
  'waste',
  'tension',
  'time',
  'chance',
  ...Object.keys(COUNT_NOUNS),
  ...FIBRES,
]);

const ROUND = new Set<string>([...aspects.round, ...aspects.head]);

type Words = { from: number; to: number };

/**
 * Shares in per cent: the value of the one ask that takes one, `5% negative ease`, `10% smaller`. Every other share is
 * left out, `80% wool`, `10% larger`, so that none passes for a size.
 */
export function readPercents(sheet: Sheet, piece: Piece): Record<string, Value> {
  const [[id, ask] = [], ...others] = Object.entries(piece.asks).filter((entry) => entry[1].is === 'percent');
  const words = id === undefined || others.length > 0 ? [] : (ask?.words ?? []);
  const values: Record<string, Value> = {};
  for (const i of percentsIn(sheet)) {
    const around = wordsAround(sheet, i, words);
    const percent = id === undefined || id in values ? undefined : percentAt(sheet, piece, i, around, words);
    const all = indexesBetween(around.from, around.to);
    claim(sheet, percent === undefined ? LEFT_OUT : (ask?.label ?? LEFT_OUT), ...all);
    if (id !== undefined && percent !== undefined)
      values[id] = { is: 'percent', percent, said: saidBetween(sheet, around.from, around.to) };
  }
  const none = id === undefined || id in values ? undefined : refusal(sheet, words);
  if (id === undefined || none === undefined) return values;
  claim(sheet, `no ${words[0]}`, ...indexesBetween(none.from, none.to));
  return { ...values, [id]: { is: 'percent', percent: 0, said: saidBetween(sheet, none.from, none.to) } };
}

const percentsIn = (sheet: Sheet): number[] =>
  sheet.tokens.flatMap((token, i) =>
    token.is === 'quantity' && token.quantity.unit === 'percent' && isFree(sheet, i) ? [i] : [],
  );

/** The share with the words that say of what it is: `negative ease of 8%`, `10% smaller`. */
function wordsAround(sheet: Sheet, i: number, words: readonly string[]): Words {
  const tells = (k: number): boolean => {
    const word = wordAt(sheet, k) ?? '';
    return isFree(sheet, k) && [...LESS, ...MORE, EASE, ...words].includes(word);
  };
  let to = i;
  while (tells(to + 1)) to++;
  const isSigned = said(sheet, i - 1) === '+' && sheet.tokens[i - 1]?.end === sheet.tokens[i]?.start;
  if (isSigned) return { from: i - 1, to };
  let from = i;
  while (BETWEEN.includes(wordAt(sheet, from - 1) ?? '') || markAt(sheet, from - 1) === 'equals') from--;
  const isLed = tells(from - 1);
  while (tells(from - 1)) from--;
  return { from: isLed ? from : i, to };
}

/** The share meant, or undefined where it is of something else, or on the other side. */
function percentAt(sheet: Sheet, piece: Piece, i: number, { from, to }: Words, words: readonly string[]) {
  const token = sheet.tokens[i];
  if (token?.is !== 'quantity') return undefined;
  const { lo, hi, halfWidth } = token.quantity;
  if (lo !== hi || halfWidth !== undefined || said(sheet, from) === '+') return undefined;
  const around = indexesBetween(from, to).flatMap((k) => wordAt(sheet, k) ?? []);
  const isEase = words.includes(EASE);
  // `10% less ease` is less than before, `10% negative ease` less than what it goes on.
  const isRelative =
    around.some((word) => /^(?:less|reduced?)$/.test(word)) && around.some((word) => words.includes(word));
  if (around.some((word) => MORE.includes(word)) || isRelative) return undefined;
  const isNamed = around.some((word) => words.includes(word) || (isEase && LESS.includes(word)));
  if (isNamed ? isOfAnother(sheet, piece, to + 1, words) : !isAlone(sheet, i)) return undefined;
  return isEase ? Math.abs(lo) : lo;
}

/** `10% less yarn`, `5% narrower height`. */
function isOfAnother(sheet: Sheet, piece: Piece, at: number, words: readonly string[]): boolean {
  const word = wordAt(sheet, at) ?? '';
  const isField = fieldOf(piece, word) !== undefined && !words.includes(word) && !ROUND.has(word);
  return NOT_SIZE.has(word) || isField;
}

/** True for a share that no other word says anything of. */
function isAlone(sheet: Sheet, i: number): boolean {
  const [before, behind] = [wordAt(sheet, i - 1), wordAt(sheet, i + 1)];
  const isLed = before === undefined || sheet.uses[i - 1] !== undefined || BEFORE.includes(before);
  return isLed && (behind === undefined || sheet.uses[i + 1] === 'piece' || BEHIND.includes(behind));
}

/** `no ease`, `without negative ease`. */
function refusal(sheet: Sheet, words: readonly string[]): Words | undefined {
  for (const from of sheet.tokens.keys()) {
    const to = wordAt(sheet, from + 1) === 'negative' ? from + 2 : from + 1;
    const isRefused = ['no', 'without', 'zero'].includes(said(sheet, from).toLowerCase());
    if (isRefused && isFree(sheet, from) && isFree(sheet, to) && words.includes(wordAt(sheet, to) ?? ''))
      return { from, to };
  }
  return undefined;
}
