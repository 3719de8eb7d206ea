import type { PriceAsk, Request } from '../../request.js';
import { wordsWithin } from '../clauses.js';
import type { Context } from '../context.js';
import { priceAt } from '../money.js';
import { claim, indexesBetween, type Sheet, saidBetween, wordAt } from '../sheet.js';
import { isAllUsed } from './stock.js';
import { claimBall, type Span } from './stock-amounts.js';
import { claimName, tellsYarn } from './stock-words.js';
import { isBall, isNotion, isThing } from './things.js';

/** `per ounce`, `a gram` are rates, and of no ball; `half a ball left` has no price. */
const UNSOLD = ['ounce', 'gram', 'gramme', 'kilo', 'left', 'remaining'];

/**
 * The ways a yarn is sold, where a span says nothing else: `50 g / 100 m`, `grey is 6.20 a ball, ten for 56`. Claims its
 * words.
 */
export function readSoldAs(
  sheet: Sheet,
  span: Span,
  context: Context,
): Extract<Request, { kind: 'sold_as' }> | undefined {
  const draft: Sheet = { ...sheet, uses: [...sheet.uses] };
  const all = indexesBetween(span.from, span.to - 1);
  if (all.some((i) => isNotion(wordAt(sheet, i))) || wordsWithin(sheet, UNSOLD, span.from, span.to).length > 0)
    return undefined;
  const prices = all.flatMap((i) => {
    const found = priceAt(draft, i, isThing);
    if (found === undefined) return [];
    claim(draft, 'price', ...indexesBetween(found.from, found.to));
    return [found];
  });
  const isOfBall = all.some((i) => isBall(wordAt(sheet, i)));
  const ball = claimBall(draft, span, prices.length > 0);
  const isPriced = prices.some(({ cue }) => cue === 'words') || (prices.length > 0 && (isOfBall || ball !== undefined));
  if (ball === undefined && !isPriced) return undefined;
  const yarn = claimName(draft, span, context);
  const isNamed = yarn === undefined || isOfBall || tellsYarn(yarn, context);
  if (!isNamed || !isAllUsed(draft, span)) return undefined;
  claim(draft, 'how it is sold', ...all.filter((i) => wordAt(draft, i) !== undefined));
  sheet.uses.splice(0, sheet.uses.length, ...draft.uses);
  return {
    kind: 'sold_as',
    ...(yarn !== undefined && { yarn }),
    ...(ball && { ball }),
    prices: prices.map(({ price }): PriceAsk => price),
    said: saidBetween(sheet, span.from, span.to - 1).replace(/[\s,.;!]+$/, ''),
  };
}
