import { mmPer, type Quantity } from '../../core/index.js';
import type { Token } from './token.js';

type QuantityToken = Token & { is: 'quantity' };

const AND = /^\s*(?:and|&)\s*$/i;
const TO = /^\s*to\s*$/i;
const HALF_WIDTH = /(?:±|\+\s?\/?\s?-|\b(?:plus or minus|give or take))\s*$/i;

/** As much as stands between a size and its tolerance. */
const MOST_BETWEEN = 40;

/**
 * Joins quantities that words make one: `11 and a half`, `between 10 and 11 in`, a range typed the wrong way round
 * (`11 to 10 in`, for core to refuse), and a tolerance that follows its label, `11 in wide ± 1/4`. A tolerance of
 * nothing is a word, so that it passes for no size.
 */
export function joinedTokens(text: string, tokens: readonly Token[]): Token[] {
  const joined: Token[] = [];
  for (const token of tokens) {
    const at = joined.findLastIndex(({ is }) => is === 'quantity');
    const before = joined[at];
    if (token.is !== 'quantity') joined.push(token);
    else if (before?.is === 'quantity' && isBracketed(text, before, token)) {
      if (!isSame(before.quantity, token.quantity)) joined.push(asWord(text, token));
    } else if (HALF_WIDTH.test(text.slice(Math.max(0, token.start - MOST_BETWEEN), token.start))) {
      const widened = before?.is === 'quantity' ? withHalfWidth(before, token.quantity) : undefined;
      if (widened === undefined) joined.push(asWord(text, token));
      else joined[at] = widened;
    } else {
      const isBetween = wordOf(joined[at - 1]) === 'between';
      const both = before?.is === 'quantity' ? summed(text, before, token, isBetween) : undefined;
      if (both === undefined) joined.push(token);
      else joined.splice(at, joined.length, both);
    }
  }
  return joined;
}

/** `11 in (28 cm)`, `11 in wide (28 cm)`: one length in both units. */
const isBracketed = (text: string, a: QuantityToken, b: QuantityToken): boolean =>
  /^\s*(?:\p{L}+\s*){0,2}\(\s*$/u.test(text.slice(a.end, b.start)) &&
  text[b.end] === ')' &&
  [a, b].every(({ quantity }) => mmPer(quantity.unit) !== undefined) &&
  a.quantity.unit !== b.quantity.unit;

/** Makers round the second to a half or a quarter. */
const ROUNDED = 0.04;

const isSame = (a: Quantity, b: Quantity): boolean =>
  Math.abs(Math.log((a.lo * (mmPer(a.unit) ?? 1)) / (b.lo * (mmPer(b.unit) ?? 1)))) < ROUNDED;

const wordOf = (token: Token | undefined): string | undefined => (token?.is === 'word' ? token.word : undefined);

const asWord = (text: string, { start, end }: Token): Token => {
  return { is: 'word', word: text.slice(start, end).toLowerCase(), start, end };
};

function withHalfWidth(token: QuantityToken, half: Quantity): QuantityToken | undefined {
  const { quantity } = token;
  const unit = quantity.unit ?? half.unit;
  const [own, other] = [mmPer(unit), mmPer(half.unit ?? unit)];
  if (quantity.lo !== quantity.hi || quantity.halfWidth !== undefined || half.lo <= 0) return undefined;
  const halfWidth = own === undefined || other === undefined ? half.lo : (half.lo * other) / own;
  return { ...token, quantity: { ...quantity, unit, halfWidth } };
}

function summed(text: string, a: QuantityToken, b: QuantityToken, isBetween: boolean): QuantityToken | undefined {
  const [first, second] = [a.quantity, b.quantity];
  const oneUnit = first.unit === undefined || second.unit === undefined || first.unit === second.unit;
  if (!oneUnit || first.lo !== first.hi || second.lo !== second.hi) return;
  const whole = { start: a.start, end: b.end };
  const unit = first.unit ?? second.unit;
  const joint = text.slice(a.end, b.start);
  if ((isBetween && AND.test(joint)) || TO.test(joint))
    return { is: 'quantity', ...whole, quantity: { ...whole, lo: first.lo, hi: second.lo, unit } };
  if (!AND.test(joint) || !Number.isInteger(first.lo) || second.lo <= 0 || second.lo >= 1) return;
  const sum = first.lo + second.lo;
  return { is: 'quantity', ...whole, quantity: { ...whole, lo: sum, hi: sum, unit } };
}
