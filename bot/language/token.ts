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

/** Cuts a text into quantities, words and the marks that part them; anything else parts nothing. */
export function tokenized(text: string): Token[] {
  const tokens: Token[] = [];
  let at = 0;
  while (at < text.length) {
    const token = quantityToken(text, at) ?? markToken(text, at) ?? wordToken(text, at);
    if (token !== undefined) tokens.push(token);
    at = token?.end ?? at + 1;
  }
  return tokens;
}

function quantityToken(text: string, at: number): Token | undefined {
  const quantity = quantityAt(text, at);
  return quantity && { is: 'quantity', quantity, start: quantity.start, end: quantity.end };
}

function markToken(text: string, at: number): Token | undefined {
  if (/\p{L}$/u.test(text.slice(0, at)) && text[at] !== '/') {
    if (/[\p{L}]/u.test(text[at] ?? '')) return undefined;
  }
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
