import { gPer, mmPer } from '../../../core/index.js';
import type { BallAsk, PriceAsk } from '../../request.js';
import { bareAt } from '../clauses.js';
import { priceAt, totalAt } from '../money.js';
import { claim, indexesBetween, markAt, quantityAtIndex, type Sheet, said, wordAt } from '../sheet.js';
import { ballIn, massIn } from './put-ups.js';
import { isBall, isThing } from './things.js';

/** Tokens from one up to and without another. */
export type Span = { from: number; to: number };
/** A number of things, and where the word for them stands. */
export type Count = { value: number; at: number; thing: number | undefined };

/** Behind a number these make it a price or a rate of one: `6.50 a ball`. */
const OF_ONE = ['a', 'an', 'per', 'each', 'the', 'for'];
/** How far behind its count a thing may stand: `6 big 8 in zips`. */
const MOST_BETWEEN = 4;

/** How many balls or notions, claimed: `3 balls`, `6 8 in zips`, `10 x 50 g`, `3 of lot 12`; after a verb `a ball`. */
export function claimCount(sheet: Sheet, { from, to }: Span, isTold: boolean): Count | undefined {
  for (const i of indexesBetween(from, to - 1)) {
    const count = countAt(sheet, i, to) ?? (isTold ? oneAt(sheet, i) : undefined);
    if (count === undefined) continue;
    claim(sheet, 'how many', i, ...(isBall(wordAt(sheet, count.thing ?? -1)) ? [count.thing ?? -1] : []));
    return count;
  }
  return undefined;
}

/** A number that counts what stands behind it. */
export function countAt(sheet: Sheet, i: number, to: number): Count | undefined {
  const value = bareAt(sheet, i);
  if (value === undefined || wordAt(sheet, i - 1) === 'at' || isSide(sheet, i, value)) return undefined;
  if (isMassOfEach(sheet, i)) return { value, at: i, thing: undefined };
  const isPart = /half|quarter/i.test(said(sheet, i));
  for (const thing of indexesBetween(i + 1, Math.min(to - 1, i + 1 + MOST_BETWEEN))) {
    const word = wordAt(sheet, thing);
    if (isThing(word ?? '') || word === 'lot') return { value, at: i, thing };
    const isBetween = word !== undefined && !(OF_ONE.includes(word) && !isPart);
    const unit = quantityAtIndex(sheet, thing)?.unit;
    const isSize = gPer(unit) !== undefined || mmPer(unit) !== undefined || markAt(sheet, thing) === 'by';
    if (!isBetween && !isSize) return undefined;
  }
  return undefined;
}

/** `16 x 16 in forms`: two sides, where `10 x 8 in zips` are ten. */
function isSide(sheet: Sheet, i: number, value: number): boolean {
  const other = markAt(sheet, i + 1) === 'by' ? quantityAtIndex(sheet, i + 2) : undefined;
  return other?.lo === value && mmPer(other.unit) !== undefined;
}

/** `10 x 50 g`, `10 50 g`. */
const isMassOfEach = (sheet: Sheet, i: number): boolean =>
  gPer(quantityAtIndex(sheet, markAt(sheet, i + 1) === 'by' ? i + 2 : i + 1)?.unit) !== undefined;

/** `a ball`, `a 9 in zip`. */
function oneAt(sheet: Sheet, i: number): Count | undefined {
  const thing = quantityAtIndex(sheet, i + 1)?.unit === undefined ? i + 1 : i + 2;
  const isOne = ['a', 'an'].includes(wordAt(sheet, i) ?? '') && isThing(wordAt(sheet, thing) ?? '');
  return isOne ? { value: 1, at: i, thing } : undefined;
}

/** What one or several cost, claimed; what all of `count` cost together too. */
export function claimPrice(sheet: Sheet, { from, to }: Span, count: number | undefined): PriceAsk | undefined {
  for (const i of indexesBetween(from, to - 1)) {
    const total = count === undefined ? undefined : totalAt(sheet, i, isThing);
    const one = total === undefined ? priceAt(sheet, i, isThing) : undefined;
    const found = total ?? one;
    if (found === undefined) continue;
    claim(sheet, 'price', ...indexesBetween(found.from, found.to));
    return total === undefined ? one?.price : { ...total.money, count: count ?? 1 };
  }
  return undefined;
}

/** The mass of loose yarn, in g, claimed. */
export function claimMass(sheet: Sheet, { from, to }: Span): number | undefined {
  const mass = massIn(sheet, from, to);
  if (mass !== undefined) claim(sheet, 'mass', mass.at);
  return mass?.value;
}

/** What a ball weighs and holds, claimed. */
export function claimBall(sheet: Sheet, span: Span, isCounted: boolean): BallAsk | undefined {
  const found = ballIn(sheet, span.from, span.to, isCounted);
  if (found !== undefined) claim(sheet, 'ball', ...found.at);
  return found?.ball;
}
