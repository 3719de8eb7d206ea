import type { Piece } from '../../core/index.js';
import type { Context, Trace } from './context.js';
import { nearWord } from './near.js';
import type { Token } from './token.js';
import { mayBeTypo, TRADE_WORDS } from './vocabulary.js';

const trades = new WeakMap<readonly Piece[], { own: Set<string>; trade: readonly string[] }>();

/** Shorter parts of names are near too many everyday words: `lined`, `linen`. */
const LONG = 6;

/** Words of the pieces, and all that a typo may stand for; gathered once for a registry. */
function tradeOf(pieces: readonly Piece[]): { own: Set<string>; trade: readonly string[] } {
  const known = trades.get(pieces);
  if (known !== undefined) return known;
  const names = pieces.flatMap(({ words }) => words.flatMap((name) => name.split(' ')));
  const fields = pieces.flatMap((p) => Object.values(p.asks).flatMap(({ words }) => words));
  const own = new Set([...names, ...fields]);
  const whole = [...pieces.flatMap(({ words }) => words), ...fields].filter((word) => !word.includes(' '));
  const trade = [...new Set([...TRADE_WORDS, ...whole, ...names.filter(({ length }) => length >= LONG)])];
  const gathered = { own, trade };
  trades.set(pieces, gathered);
  return gathered;
}

/** Typos in trade words mended where one word alone can be meant. */
export function mendedTokens(tokens: readonly Token[], context: Context): { tokens: Token[]; mended: Trace['mended'] } {
  const names = [...context.machines, ...context.yarns].flatMap((name) => name.split(' '));
  const { own, trade } = tradeOf(context.pieces);
  const mended: Trace['mended'] = [];
  const result = tokens.map((token) => {
    if (token.is !== 'word' || own.has(token.word) || names.includes(token.word) || !mayBeTypo(token.word))
      return token;
    const near = nearWord(token.word, trade);
    if (near === undefined) return token;
    mended.push({ from: token.word, to: near });
    return { ...token, word: near };
  });
  return { tokens: result, mended };
}
