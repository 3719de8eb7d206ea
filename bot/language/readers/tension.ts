import { MM_PER, mmPer } from '../../../core/index.js';
import type { Tension } from '../../request.js';
import { type BareUnit, typedValue } from '../lengths.js';
import {
  claim,
  freeQuantities,
  indexesBetween,
  isLabelFirst,
  isLabelOfNext,
  labelBefore,
  markAt,
  quantityAtIndex,
  type Sheet,
  said,
  saidBetween,
  wordAt,
} from '../sheet.js';
import { COUNT_NOUNS, FLAT_WORDS, STATE_WORDS } from '../vocabulary.js';

/** A count and its noun: `5 rows`, `46 needles`. */
export type CountAt = { index: number; end: number; count: number; noun: 'rows' | 'stitches' | 'needles' };

/** What a weight and its word are used as. */
export const WEIGHED = 'weight';

export const LENGTH_OF_ROWS = 'length of rows';

const RATE_WORDS = ['to', 'per', 'an', 'a', 'each', 'every'];
const OVER_WORDS = [
  'in',
  'over',
  'on',
  'is',
  'are',
  'measures',
  'measured',
  'measure',
  'came',
  'comes',
  'to',
  'gives',
  'gave',
  'makes',
  'made',
  'for',
  'long',
  'length',
  'which',
  'that',
  'it',
  'at',
  'about',
  'and',
  'got',
  'get',
  'was',
  'were',
  'out',
  'up',
  'off',
  'straight',
  'machine',
  'exactly',
  'just',
  'roughly',
  'around',
  'approximately',
  'tube',
  'they',
  ...Object.keys(STATE_WORDS),
];
/** Rows and stitches per inch. */
const PER_INCH = ['rpi', 'spi'];
const ARTICLES = ['the', 'an', 'a', 'every'];
/** A rate without a length is worth one measurement over 4 in, or 10 cm. Common practice. */
const RATE_UNITS: Record<string, { perMm: number; overMm: number }> = {
  inch: { perMm: MM_PER.in, overMm: 4 * MM_PER.in },
  inches: { perMm: MM_PER.in, overMm: 4 * MM_PER.in },
  in: { perMm: MM_PER.in, overMm: 4 * MM_PER.in },
  cm: { perMm: MM_PER.cm, overMm: 10 * MM_PER.cm },
  centimetre: { perMm: MM_PER.cm, overMm: 10 * MM_PER.cm },
  centimeter: { perMm: MM_PER.cm, overMm: 10 * MM_PER.cm },
};
/** Lengths of a ruler or gauge window: rows are counted inside them, not laid out and read. */
const RULER_LENGTHS_MM = [25.4, 50.8, 101.6, 10, 50, 100];

/** Stitches once round a tube are its needles: `46 sts round`. */
export const ROUND_WORDS = ['round', 'around'];

/** Free counts with their nouns, left to right: `46-needle`, `46 needles` and `needles: 46` alike. */
export function countsIn(sheet: Sheet): CountAt[] {
  return freeQuantities(sheet).flatMap((index) => {
    const quantity = quantityAtIndex(sheet, index);
    if (quantity === undefined || quantity.unit !== undefined || quantity.lo !== quantity.hi) return [];
    const after = nounAfter(sheet, index);
    const isRound = ROUND_WORDS.includes(wordAt(sheet, index + 2) ?? '') && sheet.tokens[index + 3]?.is !== 'quantity';
    if (after === 'stitches' && isRound) return [{ index, end: index + 2, count: quantity.lo, noun: 'needles' }];
    if (after !== undefined) return [{ index, end: index + 1, count: quantity.lo, noun: after }];
    const at = labelBefore(sheet, index);
    const isLabel = isLabelOfNext(sheet, at) && sheet.tokens[at - 1]?.is !== 'quantity';
    const label = isLabel || isLabelFirst(sheet) ? COUNT_NOUNS[wordAt(sheet, at) ?? ''] : needlesBefore(sheet, index);
    return label === undefined ? [] : [{ index, end: index, count: quantity.lo, noun: label }];
  });
}

const nounAfter = (sheet: Sheet, index: number): CountAt['noun'] | undefined =>
  isLabelFirst(sheet) ? undefined : COUNT_NOUNS[wordAt(sheet, index + 1) ?? ''];

/** `needles 46`: the word belongs to the number after it when none stands before it. */
const needlesBefore = (sheet: Sheet, index: number): 'needles' | undefined =>
  COUNT_NOUNS[wordAt(sheet, index - 1) ?? ''] === 'needles' && sheet.tokens[index - 2]?.is !== 'quantity'
    ? 'needles'
    : undefined;

/** The rate a count names: `to the inch`, `per cm`, `/in`, `an inch`; where its words end. */
function rateAfter(sheet: Sheet, from: number): { overMm: number; perMm: number; end: number } | undefined {
  let i = from;
  if (markAt(sheet, i) === 'slash' || RATE_WORDS.includes(wordAt(sheet, i) ?? '')) i++;
  else return undefined;
  if (ARTICLES.includes(wordAt(sheet, i) ?? '')) i++;
  const unit = RATE_UNITS[wordAt(sheet, i) ?? ''];
  return unit && { ...unit, end: i };
}

/** The length that follows a count within a few joining words: `in 22 in`, `measures 22`, `, 22 in`. */
function lengthAfter(sheet: Sheet, from: number): { index: number; joint: string | undefined } | undefined {
  let joint: string | undefined;
  for (let i = from; i < Math.min(from + 7, sheet.tokens.length); i++) {
    if (sheet.uses[i] === WEIGHED) continue;
    const quantity = quantityAtIndex(sheet, i);
    if (quantity !== undefined) {
      const counted = quantity.unit === undefined && nounAfter(sheet, i) !== undefined;
      return counted || quantity.unit === 'percent' || namesFlat(sheet, i) ? undefined : { index: i, joint };
    }
    const word = wordAt(sheet, i);
    const mark = markAt(sheet, i);
    if (word !== undefined && ![...OVER_WORDS, ...RATE_WORDS, ...ARTICLES].includes(word)) return undefined;
    if (mark === 'stop') return undefined;
    joint = joint ?? word ?? (mark === 'slash' ? 'per' : undefined);
  }
  return undefined;
}

export const namesFlat = (sheet: Sheet, index: number): boolean =>
  ([...FLAT_WORDS, 'wide'].includes(wordAt(sheet, index + 1) ?? '') && !isLabelOfNext(sheet, index + 1)) ||
  FLAT_WORDS.includes(wordAt(sheet, labelBefore(sheet, index)) ?? '');

/**
 * Rows or stitches with what they were counted over: a rate, or a length that follows or, failing that, one that
 * stands labelled `long` or just before (`22 in for 110 rows`).
 */
export function readTension(sheet: Sheet, at: CountAt, bare: BareUnit): Tension | undefined {
  const perInch = PER_INCH.includes(wordAt(sheet, at.end) ?? '') ? RATE_UNITS.in : undefined;
  const rate = (perInch && { ...perInch, end: at.end }) ?? rateAfter(sheet, at.end + 1);
  if (rate !== undefined) {
    claim(sheet, `${at.noun} rate`, ...indexesBetween(at.index, rate.end));
    const words = saidBetween(sheet, at.index, rate.end);
    return {
      count: (at.count * rate.overMm) / rate.perMm,
      over: { is: 'length', mm: rate.overMm, assumed: 'rate' },
      how: 'counted',
      said: words,
    };
  }
  const next = lengthAfter(sheet, at.end + 1) ?? lengthBefore(sheet, at.index) ?? longLength(sheet, at);
  if (next === undefined) return undefined;
  const quantity = quantityAtIndex(sheet, next.index);
  if (quantity === undefined) return undefined;
  claim(sheet, `${at.noun}`, at.index, at.end);
  claim(sheet, at.noun === 'rows' ? LENGTH_OF_ROWS : 'length of stitches', next.index);
  if (['long', 'length'].includes(wordAt(sheet, next.index + 1) ?? '')) claim(sheet, 'length', next.index + 1);
  const over = typedValue(quantity, bare, said(sheet, next.index), { minMm: at.count, maxMm: at.count * 20 });
  const ruler = RULER_LENGTHS_MM.some((mm) => mm === quantity.lo * (mmPer(quantity.unit) ?? bare?.mm ?? 0));
  const how = RATE_WORDS.includes(next.joint ?? '') || ruler ? 'counted' : 'read';
  const [from, to] = next.index > at.index ? [at.index, next.index] : [next.index, at.end];
  return { count: at.count, over, how, said: saidBetween(sheet, from, to) };
}

function lengthBefore(sheet: Sheet, index: number): { index: number; joint: string | undefined } | undefined {
  const joined = ['for', 'is', 'from', 'after', 'with', 'in'].includes(wordAt(sheet, index - 1) ?? '');
  const i = joined ? index - 2 : index - 1;
  const quantity = quantityAtIndex(sheet, i);
  const isFirst = i === 0;
  return quantity !== undefined && mmPer(quantity.unit) !== undefined && (joined || isFirst)
    ? { index: i, joint: undefined }
    : undefined;
}

/** A piece is as long as its rows; its stitches lie across. */
function longLength(sheet: Sheet, { noun }: CountAt): { index: number; joint: string | undefined } | undefined {
  if (noun !== 'rows') return undefined;
  const index = freeQuantities(sheet).find((i) =>
    [wordAt(sheet, i + 1), wordAt(sheet, labelBefore(sheet, i))].some((word) => word === 'long' || word === 'length'),
  );
  return index === undefined ? undefined : { index, joint: undefined };
}
