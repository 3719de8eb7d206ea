import { type Quantity, quantityAt } from '../../core/index.js';

/** A piece of the text, where it stood. Words are lower-cased and bare of apostrophes. */
export type Token = { start: number; end: number } & (
  | { is: 'quantity'; quantity: Quantity }
  | { is: 'word'; word: string }
  | { is: 'mark'; mark: 'by' | 'slash' | 'stop' | 'comma' | 'equals' }
);

const WORD = /[\p{L}\p{M}][\p{L}\p{M}\d'’]*/uy;
const MARKS: [RegExp, (Token & { is: 'mark' })['mark']][] = [
  [/[x×*](?=\s*[\d.½¼¾⅓⅔⅛⅜⅝⅞])/iuy, 'by'],
  [/by(?=\s+[\d.½¼¾⅓⅔⅛⅜⅝⅞])/iuy, 'by'],
  [/\//uy, 'slash'],
  [/[.;!?\n]/uy, 'stop'],
  [/,/uy, 'comma'],
  [/[:=]/uy, 'equals'],
];

const SMALL = 'one|two|three|four|five|six|seven|eight|nine';
const TENS = 'twenty|thirty|forty|fourty|fifty|sixty|seventy|eighty|ninety';
const TEENS = 'ten|eleven|twelve|(?:thir|four|fif|six|seven|eigh|nine)teen';
/** Numbers that measure nothing, and numbers in words beyond twenty: read as one word each, so that none is a size. */
const NO_SIZE = new RegExp(
  [
    '[$€£¥#№]\\s?\\d+(?:[.,]\\d+)*',
    '\\d+(?:[.,]\\d+)*\\s?[$€£¥]',
    '\\d+(?:st|nd|rd|th)\\b',
    '\\d+:\\d\\d\\b',
    '\\d+\\s?/\\s?0+(?![\\d.])',
    '\\d+\\s?[ap]\\.?m\\b',
    '\\d+[ -]in[ -](?:1|one)\\b(?!\\s*/|[.,]\\d|\\s*(?:["”″]|in\\b|inch|[cm]m\\b))',
    `(?:${TENS})[ -](?:${SMALL})\\b`,
    `(?:(?:an?|\\d+|${SMALL}) )?(?:hundred|thousand|million)(?: (?:and )?(?:(?:${TENS})(?:[ -](?:${SMALL}))?|${TEENS}|${SMALL}))?\\b`,
  ].join('|'),
  'iuy',
);

/** Cuts a text into quantities, words and the marks that part them; anything else parts nothing. */
export function tokenized(text: string): Token[] {
  const tokens: Token[] = [];
  let at = 0;
  while (at < text.length) {
    const token =
      noSizeToken(text, at) ?? quantityToken(text, at, tokens.at(-1)) ?? markToken(text, at) ?? wordToken(text, at);
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

/** A number right behind a times sign begins anew there: `wide x3`. */
function quantityToken(text: string, at: number, before: Token | undefined): Token | undefined {
  const times = before?.is === 'mark' && before.mark === 'by' && before.end === at;
  const from = times ? at : 0;
  const quantity = quantityAt(text.slice(from), at - from);
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
  WORD.lastIndex = at;
  const match = WORD.exec(text);
  if (match === null) return undefined;
  return { is: 'word', word: match[0].toLowerCase().replace(/['’]/g, ''), start: at, end: at + match[0].length };
}
