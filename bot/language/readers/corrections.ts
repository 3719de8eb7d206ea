import { pieceById } from '../../../core/index.js';
import type { Value } from '../../request.js';
import { endsClause, wordsWithin } from '../clauses.js';
import type { Context } from '../context.js';
import { typedValue } from '../lengths.js';
import type { RequestReader } from '../requested.js';
import {
  claim,
  freeQuantities,
  indexesBetween,
  markAt,
  phraseAt,
  quantityAtIndex,
  type Sheet,
  said,
  wordAt,
} from '../sheet.js';
import { COUNT_NOUNS, PLAN_WORDS } from '../vocabulary.js';
import { fieldOf } from './fields.js';

const SLIP =
  'that was no should be have been sorry i meant mean it is its oops typo correction actually wait rather to read say said of course'.split(
    ' ',
  );
/** Of these one must stand before the figure. */
const TELLING = ['that was', 'should be', 'should have been', 'meant', 'sorry', 'oops', 'typo', 'correction', 'no'];
const LABELS = [
  'long',
  'flat',
  'wide',
  'hanging',
  'rested',
  'washed',
  'length',
  'round',
  'around',
  'tall',
  'balls',
  'ball',
];
const NOT = ['not', 'instead of', 'rather than'];

/** A slip put right: `that was 21.5, not 22`, `no, 21.5`, `should be 108 rows`, `10 1/4 sorry`, `the 22 should be 21.5`. */
export const readCorrections: RequestReader = (sheet, context, bare) => {
  if (context.holes.length > 0 || wordsWithin(sheet, PLAN_WORDS).length > 0) return [];
  const [first, second] = freeQuantities(sheet);
  if (first === undefined) return [];
  const isOld = second !== undefined && phraseAt(sheet, first + 1, ['should', 'be']) && second === first + 3;
  const index = isOld ? second : first;
  const lead = indexesBetween(0, first - 1);
  const isLed = isOld
    ? lead.every((i) => wordAt(sheet, i) === 'the')
    : lead.every((i) => isSlip(sheet, i)) && tells(sheet, first);
  const end = nounEnd(sheet, index);
  const isTrailed = lead.length === 0 && ['sorry', 'oops'].includes(wordAt(sheet, commaOver(sheet, end + 1)) ?? '');
  if (!isLed && !isTrailed) return [];
  if (!isTrailed && !isOld && isFollowUp(sheet, index, end, context)) return [];

  const former = isOld ? { index: first, from: first } : formerBehind(sheet, end + 1);
  const to = Math.max(end, former?.index ?? 0);
  if (!endsClause(sheet, to + 1) && !isTrailed) return [];
  const quantity = quantityAtIndex(sheet, index);
  const was = former && quantityAtIndex(sheet, former.index)?.lo;
  if (quantity === undefined || quantity.unit === 'percent' || quantity.lo !== quantity.hi) return [];
  const isCount =
    quantity.unit === undefined && ['rows', 'stitches'].includes(COUNT_NOUNS[wordAt(sheet, index + 1) ?? ''] ?? '');
  const value: Value = isCount
    ? { is: 'count', count: quantity.lo, said: said(sheet, index) }
    : typedValue(quantity, bare, said(sheet, index));
  claim(sheet, 'correction', ...indexesBetween(0, isTrailed ? commaOver(sheet, end + 1) : to));
  return [{ at: 0, meaning: { kind: 'correct', value, ...(was !== undefined && { was }) } }];
};

const isSlip = (sheet: Sheet, i: number): boolean =>
  ['comma', 'equals', 'stop'].includes(markAt(sheet, i) ?? '') || SLIP.includes(wordAt(sheet, i) ?? '');

const tells = (sheet: Sheet, before: number): boolean =>
  TELLING.some((phrase) => indexesBetween(0, before - 1).some((i) => phraseAt(sheet, i, phrase.split(' '))));

/** The last word that belongs to a figure: its noun, its side. */
function nounEnd(sheet: Sheet, index: number): number {
  let end = index;
  while ([...LABELS, ...Object.keys(COUNT_NOUNS)].includes(wordAt(sheet, end + 1) ?? '')) end++;
  return end;
}

const commaOver = (sheet: Sheet, i: number): number => (markAt(sheet, i) === 'comma' ? i + 1 : i);

/** The figure that was wrong: `, not 22`. */
function formerBehind(sheet: Sheet, i: number): { index: number } | undefined {
  const at = commaOver(sheet, i);
  const phrase = NOT.find((words) => phraseAt(sheet, at, words.split(' ')));
  const index = phrase === undefined ? -1 : at + phrase.split(' ').length;
  return quantityAtIndex(sheet, index) === undefined ? undefined : { index };
}

/** `no, 12 wide` changes the plan in hand, unless the words are of what was. */
function isFollowUp(sheet: Sheet, index: number, end: number, { subjectPiece }: Context): boolean {
  const piece = pieceById(subjectPiece ?? '');
  const isPast = ['was', 'meant', 'been'].includes(wordAt(sheet, index - 1) ?? '');
  return (
    !isPast &&
    piece !== undefined &&
    indexesBetween(index + 1, end).some((i) => fieldOf(piece, wordAt(sheet, i) ?? '') !== undefined)
  );
}
