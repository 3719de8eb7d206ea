import { gPer } from '../../core/index.js';
import type { Meaning, StockAsk } from '../request.js';
import { bareAt, endsClause, sentenceAt, wordsWithin } from './clauses.js';
import type { Context } from './context.js';
import { nameAt } from './money.js';
import { readBuying } from './readers/buying.js';
import { readCurrency } from './readers/currency-settings.js';
import { type Place, piecePlaces } from './readers/pieces.js';
import { readSoldAs } from './readers/sold-as.js';
import { isAllUsed, readStock } from './readers/stock.js';
import { claimBall, countAt, type Span } from './readers/stock-amounts.js';
import { claimDyeLot, isStockVerb } from './readers/stock-words.js';
import { isBall, isThing } from './readers/things.js';
import { claim, indexesBetween, isFree, markAt, quantityAtIndex, type Sheet, said, wordAt } from './sheet.js';

/** A sentence with one of these asks or plans. */
const ASKING =
  'how what whats which enough will can could should would if when why many much want need needs make making knit'.split(
    ' ',
  );

/** What a message says of yarn and notions on hand, of how yarn is sold and of the currency; the words are claimed. */
export function shelfMeanings(sheet: Sheet, context: Context): Meaning[] {
  const answer = answerOfLot(sheet, context);
  if (answer !== undefined) {
    claim(sheet, 'answer', ...sheet.tokens.keys());
    return [answer];
  }
  if (!sheet.tokens.some((_, i) => mayTell(sheet, i))) return [];
  return sentences(sheet).flatMap(({ from, to }) => {
    const sentence: Sheet = { ...sheet, tokens: sheet.tokens.slice(from, to), uses: sheet.uses.slice(from, to) };
    const found = told(sentence, context);
    if (found.length > 0) sheet.uses.splice(from, to - from, ...sentence.uses);
    return found;
  });
}

/** True for a token without which nothing of the shelf is told: a verb, a ball, a notion, a lot, a mass, a price. */
function mayTell(sheet: Sheet, i: number): boolean {
  const word = wordAt(sheet, i);
  if (word === undefined) return gPer(quantityAtIndex(sheet, i)?.unit) !== undefined || packAt(sheet, i);
  return isStockVerb(word) || isThing(word) || TELLING.has(word) || nameAt(sheet, i) !== undefined;
}

const TELLING = new Set('lot left out each apiece ea at price prices currency money'.split(' '));

/** `ten for 56`. */
const packAt = (sheet: Sheet, i: number): boolean =>
  wordAt(sheet, i + 1) === 'for' && bareAt(sheet, i) !== undefined && sheet.tokens[i + 2]?.is === 'quantity';

function told(sheet: Sheet, context: Context): Meaning[] {
  const span = { from: 0, to: sheet.tokens.length - (markAt(sheet, sheet.tokens.length - 1) === 'stop' ? 1 : 0) };
  const isStock = isTold(sheet, span);
  if (isStock) claimPurpose(sheet, span, context);
  if (isOther(sheet, span, context)) return [];
  const currency = readCurrency(sheet, span, context);
  const sold = currency ?? (isStock || context.command === '/gauge' ? undefined : readSoldAs(sheet, span, context));
  return sold === undefined ? stockTold(sheet, span, context) : [sold];
}

/** True where a verb says that something is on hand, came or went. */
const isTold = (sheet: Sheet, { from, to }: Span): boolean =>
  indexesBetween(from, to - 1).some((i) => isStockVerb(wordAt(sheet, i) ?? ''));

function stockTold(sheet: Sheet, span: Span, context: Context): Meaning[] {
  let joined: StockAsk['way'] | undefined;
  return statements(sheet, span).flatMap((statement): Meaning[] => {
    const stock = readStock(sheet, statement, context, joined);
    joined = stock?.way;
    return stock === undefined ? [] : [{ kind: 'stock', stock }];
  });
}

/** What a message asks to be bought, sentence by sentence; the words are claimed. */
export function buyingMeanings(sheet: Sheet, context: Context): Meaning[] {
  if (context.holes[0] === 'ball') return [];
  return sentences(sheet).flatMap((span): Meaning[] => {
    const end = markAt(sheet, span.to - 1) === 'stop' ? span.to - 1 : span.to;
    const buy = readBuying(sheet, { from: span.from, to: end }, context);
    return buy === undefined ? [] : [{ kind: 'buy', buy }];
  });
}

/** The answer to what a ball holds, or to which lot is meant. */
function answerOfLot(sheet: Sheet, { holes }: Context): Meaning | undefined {
  const span = { from: 0, to: sheet.tokens.length };
  const draft: Sheet = { ...sheet, uses: [...sheet.uses] };
  if (holes[0] === 'ball') {
    const ball = claimBall(draft, span, true);
    return ball === undefined || !isAllUsed(draft, span) ? undefined : { kind: 'of_lot', ball };
  }
  if (holes[0] !== 'lot') return undefined;
  const dyeLot = claimDyeLot(draft, span) ?? (span.to === 1 ? said(sheet, 0) : undefined);
  const isAnswer = dyeLot !== undefined && (span.to === 1 || isAllUsed(draft, span)) && !isTold(sheet, span);
  return isAnswer ? { kind: 'of_lot', dyeLot } : undefined;
}

function sentences(sheet: Sheet): Span[] {
  const spans: Span[] = [];
  for (let at = 0; at < sheet.tokens.length; at = spans.at(-1)?.to ?? at + 1) spans.push(sentenceAt(sheet, at));
  return spans;
}

/** True for a sentence that asks something or names a piece. */
function isOther(sheet: Sheet, { from, to }: Span, context: Context): boolean {
  const text = sheet.text.slice(sheet.tokens[from]?.start ?? 0, sheet.tokens.at(-1)?.end);
  const isAsking = text.includes('?') || wordsWithin(sheet, ASKING, from, to).length > 0;
  return isAsking || piecesIn(sheet, { from, to }, context).length > 0;
}

/** Pieces named in a span; balls are of yarn here. */
const piecesIn = (sheet: Sheet, { to }: Span, { pieces }: Context): Place[] =>
  piecePlaces(sheet, pieces).filter((place) => place.to < to && !isBall(wordAt(sheet, place.from)));

/** What yarn came or went for: `used 2 balls of grey for the cowl`. */
function claimPurpose(sheet: Sheet, span: Span, context: Context): void {
  for (const { from, to } of piecesIn(sheet, span, context)) {
    const start = ARTICLES.includes(wordAt(sheet, from - 1) ?? '') ? from - 2 : from - 1;
    if (wordAt(sheet, start) === 'for' && endsClause(sheet, to + 1))
      claim(sheet, 'what for', ...indexesBetween(start, to));
  }
}

const ARTICLES = ['the', 'a', 'my', 'this', 'that', 'our'];
const JOINTS = ['and', 'plus', 'then', 'also'];

/** A sentence cut where another amount or verb follows a comma or an `and`: `3 of lot 12 and 2 of lot 7`. */
function statements(sheet: Sheet, { from, to }: Span): Span[] {
  const cuts = indexesBetween(from + 2, to - 1).filter((i) => {
    const isJoint = markAt(sheet, i - 1) === 'comma' || JOINTS.includes(wordAt(sheet, i - 1) ?? '');
    const isVerb =
      isStockVerb(wordAt(sheet, i) ?? '') || (wordAt(sheet, i) === 'i' && isStockVerb(wordAt(sheet, i + 1) ?? ''));
    return isJoint && isFree(sheet, i) && (isVerb || countsAnew(sheet, from, i, to));
  });
  return [from, ...cuts].map((start, k) => ({ from: start, to: cuts[k] ?? to }));
}

/** True for a count behind another. */
const countsAnew = (sheet: Sheet, from: number, i: number, to: number): boolean =>
  countAt(sheet, i, to) !== undefined && indexesBetween(from, i - 1).some((k) => countAt(sheet, k, to) !== undefined);
