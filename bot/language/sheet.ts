import type { Quantity } from '../../core/index.js';
import type { Token } from './token.js';
import { isKnownWord, isLabelWord } from './vocabulary.js';

/**
 * A text being read: its tokens and what each was used as. Readers claim tokens in turn; what one has claimed no
 * other sees. It lives inside one call of `read`.
 */
export type Sheet = { readonly text: string; readonly tokens: readonly Token[]; readonly uses: (string | undefined)[] };

export const sheetOf = (text: string, tokens: readonly Token[]): Sheet => ({
  text,
  tokens,
  uses: tokens.map(() => undefined),
});

/** The use of a token that was understood and could not be used, or how such a use begins. */
export const LEFT_OUT = 'left out';

/** The same for a name that several have; these follow. */
export const WHICH = `${LEFT_OUT}, which of `;

const WHY = `${LEFT_OUT}, since `;

/** The use of words that were understood and left out for a reason that is said. */
export const leftOutFor = (why: string): string => WHY + why;

/** The reason for which a word was left out, where it is said. */
export const whyOf = (sheet: Sheet, index: number): string | undefined =>
  sheet.uses[index]?.startsWith(WHY) ? sheet.uses[index].slice(WHY.length) : undefined;

/** What the name of the piece in hand is used as. */
export const WORK_PIECE = 'the piece in hand';

export const isLeftOut = (use: string | undefined): boolean => use?.startsWith(LEFT_OUT) === true;

/** The names that a word left out may stand for, in words: `grey medium or oat medium`. */
export const whichOf = (sheet: Sheet, index: number): string | undefined =>
  sheet.uses[index]?.startsWith(WHICH) ? sheet.uses[index].slice(WHICH.length) : undefined;

/** Marks tokens as used, each once. */
export function claim(sheet: Sheet, as: string, ...indexes: number[]): void {
  for (const index of indexes) sheet.uses[index] ??= as;
}

export const isFree = (sheet: Sheet, index: number): boolean =>
  index >= 0 && index < sheet.tokens.length && sheet.uses[index] === undefined;

/** The word at an index, whoever has claimed it, or undefined when no word stands there. */
export function wordAt(sheet: Sheet, index: number): string | undefined {
  const token = sheet.tokens[index];
  return token?.is === 'word' ? token.word : undefined;
}

/** The mark at an index, by its name. */
export function markAt(sheet: Sheet, index: number): string | undefined {
  const token = sheet.tokens[index];
  return token?.is === 'mark' ? token.mark : undefined;
}

/** Index of the word before an index, over a colon: `flat 6 3/4`, `flat: 6 3/4`. */
export const labelBefore = (sheet: Sheet, index: number): number =>
  markAt(sheet, index - 1) === 'equals' ? index - 2 : index - 1;

/**
 * True for a word that belongs to the number behind it: by a colon, `flat = 6 3/4`, or in a message where all do,
 * `needles 46 rows 110 length 22`.
 */
export const isLabelOfNext = (sheet: Sheet, index: number): boolean =>
  markAt(sheet, index + 1) === 'equals' || (sheet.tokens[index + 1]?.is === 'quantity' && isLabelFirst(sheet));

/** True where every number stands right behind the word for what it counts or measures. */
export const isLabelFirst = (sheet: Sheet): boolean =>
  sheet.tokens.at(-1)?.is === 'quantity' &&
  sheet.tokens.every(({ is }, i) => is !== 'quantity' || isLabelWord(wordAt(sheet, labelBefore(sheet, i)) ?? ''));

/** The unclaimed quantity at an index. */
export function quantityAtIndex(sheet: Sheet, index: number): Quantity | undefined {
  const token = sheet.tokens[index];
  return token?.is === 'quantity' && isFree(sheet, index) ? token.quantity : undefined;
}

/** Indexes of unclaimed quantities, left to right. */
export const freeQuantities = (sheet: Sheet): number[] =>
  contentsOf(sheet).quantities.filter((i) => sheet.uses[i] === undefined);

/** Where numbers stand in a text, and its words, numbers as they were typed among them: dozens of readers ask for either. */
type Contents = {
  quantities: readonly number[];
  spoken: readonly (string | undefined)[];
  words: ReadonlySet<string | undefined>;
};

const contents = new WeakMap<Sheet['tokens'], Contents>();

function contentsOf(sheet: Sheet): Contents {
  const known = contents.get(sheet.tokens);
  if (known !== undefined) return known;
  const quantities = sheet.tokens.flatMap(({ is }, i) => (is === 'quantity' ? [i] : []));
  const spoken = sheet.tokens.map((_, i) => spokenAt(sheet, i));
  const made = { quantities, spoken, words: new Set(spoken) };
  contents.set(sheet.tokens, made);
  return made;
}

/** The maker's own words from one token to another. */
export const saidBetween = (sheet: Sheet, from: number, to: number): string =>
  sheet.text.slice(sheet.tokens[from]?.start ?? 0, sheet.tokens[to]?.end ?? 0).trim();

export const said = (sheet: Sheet, index: number): string => saidBetween(sheet, index, index);

/** A word, or what was typed for a number: a `half` seam, the red `one`. */
function spokenAt(sheet: Sheet, index: number): string | undefined {
  const token = sheet.tokens[index];
  if (token?.is === 'word') return token.word;
  return token?.is === 'quantity' ? said(sheet, index).replace(/^an? /i, '').toLowerCase() : undefined;
}

/** True when free words stand one after another from `index`. */
export function phraseAt(sheet: Sheet, index: number, words: readonly string[]): boolean {
  const { spoken } = contentsOf(sheet);
  return words.every((word, k) => spoken[index + k] === word && isFree(sheet, index + k));
}

/** True where one of these words stands anywhere, whoever has claimed it. */
export const holdsAny = (sheet: Sheet, words: ReadonlySet<string | undefined>): boolean =>
  contentsOf(sheet).spoken.some((word) => word !== undefined && words.has(word));

/** Every place where a free phrase stands, given as words apart by spaces. */
export function phrasePlaces(sheet: Sheet, phrase: string): { from: number; to: number }[] {
  const { words: all } = contentsOf(sheet);
  const words = phrase.split(/[\s-]+/);
  if (!words.every((word) => all.has(word))) return [];
  const places: { from: number; to: number }[] = [];
  for (let i = 0; i < sheet.tokens.length; i++)
    if (phraseAt(sheet, i, words)) places.push({ from: i, to: i + words.length - 1 });
  return places;
}

export const indexesBetween = (from: number, to: number): number[] =>
  Array.from({ length: Math.max(0, to - from + 1) }, (_, k) => from + k);

/** True for a number that nobody used, for a word that nobody knows, and for a mark left out with them. */
export function isLeftOver(sheet: Sheet, index: number): boolean {
  const token = sheet.tokens[index];
  if (token === undefined) return false;
  const use = sheet.uses[index];
  if (token.is === 'mark') return isLeftOut(use);
  return isLeftOut(use) || (use === undefined && !(token.is === 'word' && isKnownWord(token.word)));
}
