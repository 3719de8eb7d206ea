import { gPer } from '../../../core/index.js';
import type { Value } from '../../request.js';
import { bareAt, sentenceAt, wordsWithin } from '../clauses.js';
import {
  claim,
  freeQuantities,
  holdsAny,
  indexesBetween,
  quantityAtIndex,
  type Sheet,
  saidBetween,
  wordAt,
} from '../sheet.js';
import { WEIGHED } from './tension.js';
import { isBall } from './things.js';

const BEFORE = ['before', 'beforehand'];
const AFTER = ['after', 'afterwards', 'now'];
/** So far from its word a mass may stand. */
const NEAR = 3;

/**
 * What a cone lost, told by its mass before and after: `the cone was 212 g before and 168 after`. One of them may lack
 * its unit. What weighs no less than before comes out as nothing or less.
 * @param from the token from which it is looked for
 */
export function readWeighings(sheet: Sheet, from: number): Value | undefined {
  const [before] = wordsWithin(sheet, BEFORE, from);
  if (before === undefined) return undefined;
  const { to } = sentenceAt(sheet, before);
  const after = wordsWithin(sheet, AFTER, from, to).at(-1);
  const masses = freeQuantities(sheet).filter((i) => i >= from && i < to && isMassOrBare(sheet, i));
  const first = nearest(masses, before);
  const last =
    after === undefined
      ? undefined
      : nearest(
          masses.filter((i) => i !== first),
          after,
        );
  if (first === undefined || last === undefined || after === undefined) return undefined;
  const per = [first, last].flatMap((i) => gPer(quantityAtIndex(sheet, i)?.unit) ?? [])[0];
  if (per === undefined) return undefined;
  const gramsAt = (i: number): number => {
    const quantity = quantityAtIndex(sheet, i);
    return (quantity?.lo ?? 0) * (gPer(quantity?.unit) ?? per);
  };
  const ends = [first, last, before, after].sort((a, b) => a - b);
  const said = saidBetween(sheet, ends[0] ?? first, ends.at(-1) ?? last);
  const lost = gramsAt(first) - gramsAt(last);
  const cones = indexesBetween(from, to - 1).filter((i) => isBall(wordAt(sheet, i)));
  claim(sheet, WEIGHED, first, last, before, after, ...cones);
  return { is: 'mass', g: lost, said };
}

const WEIGHS = new Set(['weighs', 'weigh', 'weighed']);

/** What a cone weighs now, told alone: `the cone weighs 412 g now`. */
export function oneWeighing(sheet: Sheet): string | undefined {
  if (!holdsAny(sheet, WEIGHS)) return undefined;
  const all = sheet.tokens.length;
  const words = (...list: string[]): boolean => wordsWithin(sheet, list, 0, all).length > 0;
  const masses = freeQuantities(sheet).filter((i) => gPer(quantityAtIndex(sheet, i)?.unit) !== undefined);
  const isOfCone = indexesBetween(0, all - 1).some((i) => isBall(wordAt(sheet, i)));
  const isOne = masses.length === 1 && isOfCone && words('now', 'still');
  return isOne && !words(...BEFORE) ? sheet.text.trim() : undefined;
}

const isMassOrBare = (sheet: Sheet, i: number): boolean =>
  gPer(quantityAtIndex(sheet, i)?.unit) !== undefined || bareAt(sheet, i) !== undefined;

/** The place nearest to a word, one before it rather than one as far behind. */
const nearest = (places: readonly number[], word: number): number | undefined =>
  places.filter((i) => Math.abs(i - word) <= NEAR).sort((a, b) => Math.abs(a - word) - Math.abs(b - word) || a - b)[0];
