import { type Quantity, quantityAt } from '../../core/index.js';
import { NUMBER_WORD, ORDINAL, type Place } from './number-words.js';

/** A piece of the text, where it stood. Words are lower-cased and bare of apostrophes. */
export type Token = { start: number; end: number } & (
  | { is: 'quantity'; quantity: Quantity }
  | { is: 'word'; word: string }
  | { is: 'mark'; mark: 'by' | 'slash' | 'stop' | 'comma' | 'equals' }
);

/** `&` and `+` for `and`; not the plus of `+/-`. */
const AND = /&|\+(?!\s?\/?\s?-)/y;
const WORD = /[\p{L}\p{M}][\p{L}\p{M}\d'’]*/uy;
const MARKS: [RegExp, (Token & { is: 'mark' })['mark']][] = [
  [/[x×*](?=\s*[\d.½¼¾⅓⅔⅛⅜⅝⅞])/iuy, 'by'],
  [/by(?=\s+[\d.½¼¾⅓⅔⅛⅜⅝⅞])/iuy, 'by'],
  [/\//uy, 'slash'],
  [/[.;!?\n]/uy, 'stop'],
  [/,/uy, 'comma'],
  [/[:=]/uy, 'equals'],
];

const POWER = /\d+(?:\.\d+)?e\+?\d{1,2}\b/iuy;

/** Numbers that measure nothing, read as one word each, so that none is a size. */
const NO_SIZE = new RegExp(
  [
    '(?:(?:us|ca|au|nz|hk|[acrs])?[$€£¥₹]|[#№])\\s?\\d+(?:[.,]\\d+)*',
    '\\d+(?:[.,]\\d+)*\\s?[$€£¥₹]',
    '\\d+(?:st|nd|rd|th)\\b',
    '\\d+:\\d\\d\\b',
    '\\d+\\s?/\\s?0+(?![\\d.])',
    '\\d+\\s?[ap]\\.?m\\b',
    '\\d+[ -]in[ -](?:1|one)\\b(?!\\s*/|\\s+\\d+\\s?/|[.,]\\d|\\s*(?:["”″]|in\\b|inch|[cm]m\\b))',
    `(?:(?:\\d+|${NUMBER_WORD})[ -]){0,5}(?:thousand|million)\\b`,
    `${ORDINAL}\\b`,
  ].join('|'),
  'iuy',
);

/** Cuts a text into quantities, words and the marks that part them; anything else parts nothing. */
export function tokenized(text: string): Token[] {
  const tokens: Token[] = [];
  let at = 0;
  while (at < text.length) {
    const token =
      noSizeToken(text, at) ??
      powerToken(text, at) ??
      quantityToken(text, at, tokens) ??
      markToken(text, at) ??
      wordToken(text, at);
    if (token !== undefined) tokens.push(token);
    at = token?.end ?? at + 1;
  }
  return tokens;
}

function noSizeToken(text: string, at: number): Token | undefined {
  if (/[\p{L}\d.,]/u.test(text[at - 1] ?? '')) return undefined;
  NO_SIZE.lastIndex = at;
  const match = NO_SIZE.exec(text);
  return match === null
    ? undefined
    : { is: 'word', word: match[0].toLowerCase(), start: at, end: at + match[0].length };
}

/** `1e9`: a number that no count and no size of a piece comes to. */
function powerToken(text: string, at: number): Token | undefined {
  if (/[\p{L}\d.,]/u.test(text[at - 1] ?? '')) return undefined;
  POWER.lastIndex = at;
  const match = POWER.exec(text);
  if (match === null) return undefined;
  const [start, end, value] = [at, at + match[0].length, Number(match[0])];
  return { is: 'quantity', quantity: { start, end, lo: value, hi: value, unit: undefined }, start, end };
}

/** Numbers apart by slashes that are no fraction: three or more, `48/52/56`, or two that no ruler has, `55/60`. */
const SLASHED = /(?<!\d\s?)\d+(?:[.,]\d+)?\s?\/\s?(?:\d+(?:[.,]\d+)?\s?\/|(?!1[26]\b|32\b|64\b)\d{2,})/y;

/** A number right behind a times sign begins anew there, `wide x3`, and so does one of a list apart by slashes. */
function quantityToken(text: string, at: number, before: readonly Token[]): Token | undefined {
  const [list, joint] = [before.at(-2), before.at(-1)];
  const isAfter = (mark: 'by' | 'slash'): boolean => joint?.is === 'mark' && joint.mark === mark;
  const isListed = list?.is === 'quantity' && isAfter('slash');
  const from = (isAfter('by') && joint?.end === at) || isListed ? at : 0;
  SLASHED.lastIndex = at;
  const slash = isListed || SLASHED.test(text) ? text.indexOf('/', at) : -1;
  const quantity = quantityAt(text.slice(from, slash < 0 ? undefined : slash), at - from);
  return quantity && { is: 'quantity', quantity, start: quantity.start + from, end: quantity.end + from };
}

function markToken(text: string, at: number): Token | undefined {
  if (/\p{L}/u.test(text[at - 1] ?? '') && /\p{L}/u.test(text[at] ?? '')) return undefined;
  for (const [pattern, mark] of MARKS) {
    pattern.lastIndex = at;
    const match = pattern.exec(text);
    if (match !== null) return { is: 'mark', mark, start: at, end: at + match[0].length };
  }
  return undefined;
}

function wordToken(text: string, at: number): Token | undefined {
  AND.lastIndex = at;
  if (AND.test(text)) return { is: 'word', word: 'and', start: at, end: at + 1 };
  WORD.lastIndex = at;
  const match = WORD.exec(text);
  if (match === null) return undefined;
  return { is: 'word', word: match[0].toLowerCase().replace(/['’]/g, ''), start: at, end: at + match[0].length };
}

/** Tokens of a text in figures, each reaching to the end of the words it stands for. */
export const overWords = (tokens: readonly Token[], places: readonly Place[]): Token[] =>
  tokens.map((token) => {
    const place = places.find(({ start, end }) => token.end > start && token.end < end);
    return place === undefined ? token : { ...token, end: place.end };
  });
