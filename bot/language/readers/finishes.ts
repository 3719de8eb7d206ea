import { type Piece, pieceById } from '../../../core/index.js';
import type { Request, Value } from '../../request.js';
import { bareAt, beginsClause, endsClause, sentenceAt, wordsWithin } from '../clauses.js';
import type { Context } from '../context.js';
import { type BareUnit, madeOf, typedValue } from '../lengths.js';
import type { RequestReader } from '../requested.js';
import {
  claim,
  freeQuantities,
  indexesBetween,
  isFree,
  LEFT_OUT,
  labelBefore,
  markAt,
  phraseAt,
  quantityAtIndex,
  type Sheet,
  said,
  WORK_PIECE,
  wordAt,
} from '../sheet.js';
import { COUNT_NOUNS, ROW_WORDS } from '../vocabulary.js';
import { NO_FIELD, sideOf } from './fields.js';
import { readMass } from './masses.js';
import { claimStates, stateWithin } from './states.js';
import { readWeighings } from './weighings.js';

type Finish = Request & { kind: 'finish' };

const DONE = ['done', 'finished', 'came out', 'it is off', 'its off', 'off the machine and', 'grafted', 'closed'];
const LATER = ['later', 'unmeasured', 'measure later', 'not measured', 'not measured yet'];
/** Behind `finished` these make it a word for the size wanted: `finished width 11`. */
const WANTED = [
  'size',
  'sizes',
  'width',
  'height',
  'length',
  'measurements',
  'should',
  'in',
  'with',
  'by',
  'before',
  'until',
  'for',
  'when',
  'piece',
  'row',
];
const JOINS = [
  'and',
  'with',
  'it',
  'is',
  'its',
  'at',
  'after',
  'grafted',
  'closed',
  'sewn',
  'up',
  'off',
  'finished',
  'done',
  'came',
  'comes',
  'out',
  'the',
  'machine',
  'measures',
  'measured',
  'now',
  'row',
  'rows',
  'about',
];

/** A sentence that begins so asks. */
const ASKING = ['is', 'are', 'am', 'how', 'when', 'what', 'will', 'can', 'should', 'do', 'did', 'if', 'was', 'not'];

/**
 * The work is off the machine: `done`, `128 done and grafted`, `came out 10 7/8 by 6 3/4`, `done, 61.5, weighs 86 g`; and
 * what its cone weighed before and after.
 */
export const readFinishes: RequestReader = (sheet, context, bare) => {
  const answer = sizeAnswer(sheet, context, bare);
  if (answer !== undefined) return [{ at: 0, meaning: answer }];
  const place = sheet.tokens.flatMap((_, i) => placeAt(sheet, i) ?? [])[0];
  if (place === undefined) {
    const mass = readWeighings(sheet, 0);
    return mass === undefined ? [] : [{ at: 0, meaning: { kind: 'finish', sizes: [], mass } }];
  }
  const { from, to } = place;
  const before = countBefore(sheet, from);
  claim(sheet, 'finished', ...indexesBetween(from, to));
  if (before !== undefined) claim(sheet, 'rows', ...indexesBetween(before.at, from - 1));
  const request = withRest(sheet, to + 1, context, bare);
  return [{ at: before?.at ?? from, meaning: before === undefined ? request : { ...request, rows: before.rows } }];
};

/** Where words say so at the start of a clause: the negative, the near and the future say something before them. */
function placeAt(sheet: Sheet, i: number): { from: number; to: number } | undefined {
  const phrase = DONE.find((words) => phraseAt(sheet, i, words.split(' ')));
  if (phrase === undefined) return undefined;
  const to = i + phrase.split(' ').length - 1;
  const next = /^\s*(\p{L}+)/u.exec(sheet.text.slice(sheet.tokens[to]?.end))?.[1]?.toLowerCase() ?? '';
  if (WANTED.includes(next) && phrase !== 'off the machine and') return undefined;
  if (ASKING.includes(wordAt(sheet, sentenceAt(sheet, i).from) ?? '') || wordAt(sheet, i - 1) === 'well')
    return undefined;
  if (phrase === 'came out' && (freeQuantities(sheet).every((at) => at < to) || isOfSwatch(sheet))) return undefined;
  const counted = countBefore(sheet, i);
  const isCounted =
    counted !== undefined &&
    (['grafted', 'closed'].includes(phrase) ||
      wordsWithin(sheet, ['grafted', 'closed', 'off', 'finished', 'sewn'], to + 1).length > 0 ||
      phrase === 'finished' ||
      markAt(sheet, i - 1) === 'comma');
  const begins = beginsClause(sheet, i) || beginsOwn(sheet, i);
  return isCounted || (counted === undefined && begins) ? { from: i, to } : undefined;
}

/** `110 rows on 46 needles, it came out 22 in long`: needles are counted of what was knitted for its gauge. */
const isOfSwatch = (sheet: Sheet): boolean =>
  sheet.tokens.some((token, i) => {
    if (wordAt(sheet, i) === 'swatch') return true;
    return token.is === 'quantity' && COUNT_NOUNS[wordAt(sheet, i + 1) ?? ''] === 'needles';
  });

/** `the pouch came out`: its name was claimed as that of the work. */
const beginsOwn = (sheet: Sheet, i: number): boolean => {
  let at = i - 1;
  while (sheet.uses[at] === WORK_PIECE || ['is', 'has'].includes(wordAt(sheet, at) ?? '')) at--;
  return at < i - 1 && beginsClause(sheet, at + 1);
};

function countBefore(sheet: Sheet, i: number): { at: number; rows: number } | undefined {
  const end = markAt(sheet, i - 1) === 'comma' ? i - 2 : i - 1;
  const isNoun = COUNT_NOUNS[wordAt(sheet, end) ?? ''] === 'rows';
  if (end < i - 1 && (!isNoun || end !== 1)) return undefined;
  const at = isNoun ? end - 1 : end;
  const rows = bareAt(sheet, at);
  return rows === undefined || ROW_WORDS.includes(wordAt(sheet, at - 1) ?? '') ? undefined : { at, rows };
}

/** Sizes, rows, weight and state that stand behind the words. */
function withRest(sheet: Sheet, from: number, context: Context, bare: BareUnit): Finish {
  const piece = pieceById(context.inHand?.piece ?? '');
  const state = claimStates(sheet, from, sheet.tokens.length);
  const mass = readWeighings(sheet, from) ?? readMass(sheet, from, true);
  let rows: number | undefined;
  const sizes: Finish['sizes'] = [];
  for (const i of freeQuantities(sheet).filter((at) => at >= from)) {
    const count = rowsAt(sheet, i, context);
    if (count !== undefined) rows ??= count;
    else sizes.push(...sizeAt(sheet, i, piece, bare));
  }
  const later = LATER.flatMap((words) =>
    sheet.tokens.flatMap((_, i) =>
      i >= from && phraseAt(sheet, i, words.split(' ')) ? indexesBetween(i, i + words.split(' ').length - 1) : [],
    ),
  );
  claim(sheet, 'measured later', ...later);
  claim(sheet, 'finished', ...wordsWithin(sheet, JOINS, from).filter((i) => isFree(sheet, i)));
  return {
    kind: 'finish',
    sizes,
    ...(rows !== undefined && { rows }),
    ...(mass && { mass }),
    ...(state && { state }),
    ...(later.length > 0 && { unmeasured: true }),
  };
}

/** `128 rows`, `at row 128`, and the number of the last row alone: `done 128`. */
function rowsAt(sheet: Sheet, i: number, { inHand }: Context): number | undefined {
  const count = bareAt(sheet, i);
  if (count === undefined) return undefined;
  const isNoun = COUNT_NOUNS[wordAt(sheet, i + 1) ?? ''] === 'rows';
  const isRow = isNoun || ROW_WORDS.includes(wordAt(sheet, i - 1) ?? '');
  if (!isRow && count !== inHand?.stopAt && count !== inHand?.rows) return undefined;
  claim(sheet, 'rows', i, ...(isNoun ? [i + 1] : isRow ? [i - 1] : []));
  return count;
}

function sizeAt(sheet: Sheet, i: number, piece: Piece | undefined, bare: BareUnit): Finish['sizes'] {
  const quantity = quantityAtIndex(sheet, i);
  const isPronoun = said(sheet, i).toLowerCase() === 'one';
  if (quantity === undefined || quantity.unit === 'percent' || isPronoun) return [];
  if (COUNT_NOUNS[wordAt(sheet, i + 1) ?? ''] !== undefined) {
    claim(sheet, LEFT_OUT, i, i + 1);
    return [];
  }
  const label = [i + 1, labelBefore(sheet, i)].find(
    (at) => isFree(sheet, at) && piece !== undefined && sideOf(piece, wordAt(sheet, at) ?? '') !== undefined,
  );
  const side = piece && label !== undefined ? sideOf(piece, wordAt(sheet, label) ?? '') : undefined;
  if (side?.id === NO_FIELD && side.made === undefined) return [];
  claim(sheet, 'size', i, ...(label === undefined ? [] : [label]));
  const typed = typedValue(quantity, bare, said(sheet, i));
  const value: Value = side?.made === undefined ? typed : madeOf(typed, side.made);
  return [{ ...(side?.id && { id: side.id }), value }];
}

/** The answer to how it came out, when more than its size is in it: `61.5, weighs 86 g`; and `later`. */
function sizeAnswer(sheet: Sheet, context: Context, bare: BareUnit): Finish | undefined {
  if (context.holes[0] !== 'size') return undefined;
  const isLater = LATER.some(
    (words) => phraseAt(sheet, 0, words.split(' ')) && endsClause(sheet, words.split(' ').length),
  );
  const free = freeQuantities(sheet);
  const more = free.length > 1 || (free.length === 1 && stateWithin(sheet, 0, sheet.tokens.length) !== undefined);
  return isLater || more ? withRest(sheet, 0, context, bare) : undefined;
}
