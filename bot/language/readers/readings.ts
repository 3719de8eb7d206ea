import type { Request } from '../../request.js';
import { bareAt, sentenceAt, wordsWithin } from '../clauses.js';
import type { Context } from '../context.js';
import { type BareUnit, typedValue } from '../lengths.js';
import type { Requested, RequestReader } from '../requested.js';
import {
  claim,
  freeQuantities,
  indexesBetween,
  isFree,
  labelBefore,
  quantityAtIndex,
  type Sheet,
  said,
  wordAt,
} from '../sheet.js';
import { COUNT_NOUNS, FLAT_WORDS, isKnownWord, MORE_WORDS, ROW_WORDS } from '../vocabulary.js';
import { claimStates, stateWithin } from './states.js';
import { countsIn } from './tension.js';

const MEASURING = ['measures', 'measured', 'measure', 'hangs', 'reads'];

/** True for a number right behind a word that measures: `it hangs 12`. */
export const measures = (sheet: Sheet, i: number): boolean => MEASURING.includes(wordAt(sheet, i - 1) ?? '');

/** Behind a number these make it no length: `row 60, 71 to go`. */
const NO_LENGTH = ['to', 'left', 'of', 'done', 'wide', ...FLAT_WORDS, ...MORE_WORDS, ...Object.keys(COUNT_NOUNS)];

type Reading = Request & { kind: 'reading' };

/** Words of the longest state but its last. */
const LONGEST_STATE = 4;

/** A row of the work and where its number stands. */
type RowAt = { label: number; index: number; row: number };

/** Lengths of the work: `row 60, 12 1/4 in hanging`, `12 1/4 at row 60`; with work in hand, `12 1/4 hanging` too. */
export const readReadings: RequestReader = (sheet, context, bare) => {
  const rows = rowsIn(sheet, context);
  const found = rows.flatMap((at, k) => readingAt(sheet, at, rows[k + 1]?.label, bare) ?? []);
  return found.length > 0 || rows.length > 0 ? found : rowless(sheet, context, bare);
};

/** `row 60`; with work in hand, `at 60 rows it hangs 12`. */
const rowsIn = (sheet: Sheet, { inHand }: Context): RowAt[] =>
  freeQuantities(sheet).flatMap((index) => {
    const row = bareAt(sheet, index);
    const label = labelBefore(sheet, index);
    if (row === undefined) return [];
    if (ROW_WORDS.includes(wordAt(sheet, label) ?? '')) return [{ label, index, row }];
    const isAt =
      inHand !== undefined &&
      wordAt(sheet, index - 1) === 'at' &&
      COUNT_NOUNS[wordAt(sheet, index + 1) ?? ''] === 'rows';
    const { to } = sentenceAt(sheet, index);
    return isAt && wordsWithin(sheet, MEASURING, index, to).length > 0 ? [{ label: index - 1, index, row }] : [];
  });

function readingAt(sheet: Sheet, at: RowAt, next: number | undefined, bare: BareUnit): Requested | undefined {
  const sentence = sentenceAt(sheet, at.index);
  const to = Math.min(sentence.to, next ?? sheet.tokens.length);
  const behind = indexesBetween(at.index + 1, to - 1).find((i) => isLength(sheet, i));
  const index = behind ?? indexesBetween(sentence.from, at.label - 1).findLast((i) => isLength(sheet, i));
  if (index === undefined) return undefined;
  const isRowsWord = COUNT_NOUNS[wordAt(sheet, at.index + 1) ?? ''] === 'rows';
  claim(sheet, 'row', at.label, at.index, ...(isRowsWord ? [at.index + 1] : []));
  const from = behind === undefined ? index : at.label;
  return { at: from, meaning: reading(sheet, index, bare, { from: Math.min(from, sentence.from), to }, at.row) };
}

/** A lone length of the work as it is, with its state or a word that measures. */
function rowless(sheet: Sheet, context: Context, bare: BareUnit): Requested[] {
  const { inHand, holes } = context;
  const [index, ...others] = freeQuantities(sheet);
  const isWeighed = holes[0] === 'length' && inHand?.counts !== undefined;
  if (inHand === undefined || (holes.length > 0 && !isWeighed) || index === undefined || others.length > 0) return [];
  if (countsIn(sheet).length > 0 || !isLength(sheet, index)) return [];
  const whole = { from: 0, to: sheet.tokens.length };
  const state = stateWithin(sheet, whole.from, whole.to);
  if (isWeighed)
    return state === undefined || state === 'hanging'
      ? []
      : [{ at: 0, meaning: weighing(reading(sheet, index, bare, whole), inHand) }];
  return state !== undefined || measures(sheet, index) ? [{ at: 0, meaning: reading(sheet, index, bare, whole) }] : [];
}

/** The length asked for to weigh two counts, with a state of its own. */
const weighing = ({ length, state }: Reading, { counts = [] }: NonNullable<Context['inHand']>): Request => ({
  kind: 'lost_count',
  counts: counts.map((rows) => ({ name: 'counter', rows })),
  length,
  state,
});

function reading(
  sheet: Sheet,
  index: number,
  bare: BareUnit,
  { from, to }: { from: number; to: number },
  row?: number,
): Reading {
  const quantity = quantityAtIndex(sheet, index);
  if (quantity === undefined) throw new Error('a length found is a quantity');
  claim(
    sheet,
    'length of the work',
    index,
    ...wordsWithin(sheet, MEASURING, from, to),
    ...wordsWithin(sheet, ['long'], index + 1, index + 2),
  );
  const state = claimStates(sheet, from, to);
  const length = typedValue(quantity, bare, said(sheet, index));
  return { kind: 'reading', ...(row !== undefined && { row }), length, ...(state && { state }) };
}

/** True for a number that may be the length of the work: no count, no width, nothing added. */
function isLength(sheet: Sheet, i: number): boolean {
  const quantity = quantityAtIndex(sheet, i);
  if (quantity === undefined || !isFree(sheet, i) || quantity.unit === 'percent' || quantity.lo <= 0) return false;
  const [before, next] = [wordAt(sheet, i - 1) ?? '', wordAt(sheet, i + 1) ?? ''];
  const isAdded = said(sheet, i - 1) === '+' || ['plus', 'minus', 'of', ...ROW_WORDS].includes(before);
  const isFlat =
    FLAT_WORDS.includes(wordAt(sheet, labelBefore(sheet, i)) ?? '') && !isOfState(sheet, labelBefore(sheet, i));
  const isStrange = quantity.unit === undefined && next !== '' && !isKnownWord(next);
  return !isAdded && !isFlat && !isStrange && !NO_LENGTH.includes(next);
}

/** True for the `flat` of `off and flat`. */
const isOfState = (sheet: Sheet, i: number): boolean => stateWithin(sheet, i - LONGEST_STATE, i + 1) !== undefined;
