import { gPer } from '../../../core/index.js';
import type { GaugeAsk, Value } from '../../request.js';
import { bareAt } from '../clauses.js';
import { type BareUnit, typedValue } from '../lengths.js';
import {
  claim,
  freeQuantities,
  indexesBetween,
  LEFT_OUT,
  markAt,
  quantityAtIndex,
  type Sheet,
  said,
  wordAt,
} from '../sheet.js';
import { countsIn, WEIGHED } from './tension.js';

const WEIGHS = ['weighs', 'weighed', 'weigh', 'weighing'];

/**
 * A weight: `weighs 38 g`; also a mass alone where `isAny`. A number behind such a word without a unit is left out, so
 * that it passes for no length.
 * @param from the token from which it is looked for
 */
export function readMass(sheet: Sheet, from: number, isAny: boolean): Value | undefined {
  const found = freeQuantities(sheet).flatMap((i) => {
    if (i < from) return [];
    const at =
      ['is', 'at', 'it', 'was', 'about'].includes(wordAt(sheet, i - 1) ?? '') || markAt(sheet, i - 1) === 'equals'
        ? i - 2
        : i - 1;
    const word = wordAt(sheet, at) ?? '';
    const isWeighed = WEIGHS.includes(word) || (isAny && word === 'weight');
    const isMass = gPer(quantityAtIndex(sheet, i)?.unit) !== undefined;
    if (isWeighed && !isMass && bareAt(sheet, i) !== undefined) claim(sheet, LEFT_OUT, ...indexesBetween(at, i));
    return isMass && (isWeighed || isAny) ? [{ i, words: isWeighed ? indexesBetween(at, i) : [i] }] : [];
  });
  const [first] = found;
  const quantity = first && quantityAtIndex(sheet, first.i);
  if (first === undefined || quantity === undefined) return undefined;
  claim(sheet, WEIGHED, ...first.words);
  return typedValue(quantity, undefined, said(sheet, first.i));
}

const DRAWN = [
  'unravelled',
  'unraveled',
  'unravel',
  'took',
  'take',
  'takes',
  'used',
  'use',
  'pulled',
  'drawn',
  'frogged',
];

/** Yarn drawn out of stitches: `46 stitches unravelled to 1.24 m`, `20 stitches took 53 cm`. */
export function readUnravelled(sheet: Sheet, bare: BareUnit): GaugeAsk['unravelled'] {
  for (const { index, end, noun, count } of countsIn(sheet)) {
    const next = freeQuantities(sheet).find((i) => i > end && i <= end + 4);
    const quantity = next === undefined ? undefined : quantityAtIndex(sheet, next);
    if (noun !== 'stitches' || next === undefined || quantity === undefined) continue;
    const words = [wordAt(sheet, index - 1), ...indexesBetween(end + 1, next - 1).map((i) => wordAt(sheet, i))];
    if (!words.some((word) => DRAWN.includes(word ?? ''))) continue;
    claim(
      sheet,
      'unravelled',
      ...indexesBetween(DRAWN.includes(wordAt(sheet, index - 1) ?? '') ? index - 1 : index, next),
    );
    return { stitches: count, over: typedValue(quantity, bare, said(sheet, next)) };
  }
  return undefined;
}
