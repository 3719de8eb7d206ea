import type { Piece } from '../../core/index.js';
import type { Meaning, Value } from '../request.js';
import type { Context } from './context.js';
import { type BareUnit, typedValue } from './lengths.js';
import { thingIn } from './readers/contents.js';
import { fieldOf, isSideOfAny } from './readers/fields.js';
import { focusAt, focusOf, readFocus } from './readers/focus.js';
import { lacking } from './readers/lacking.js';
import { MACHINE_USES } from './readers/machines.js';
import {
  claim,
  freeQuantities,
  indexesBetween,
  isFree,
  isLeftOut,
  isLeftOver,
  quantityAtIndex,
  type Sheet,
  said,
  saidBetween,
  whichOf,
  wordAt,
} from './sheet.js';
import { isEveryday, isKnownWord, isLabelWord } from './vocabulary.js';

/** Words quoted back in a lead line. */
const MOST_QUOTED = 50;

/** True for a lone number where one was asked for. "Make it 12" is none for a gauge, "a 9 in zip" and "6 strips" none for a width. */
export function isAnswer(
  sheet: Sheet,
  context: Context,
  intent: boolean,
  values: Readonly<Record<string, Value | null>>,
): boolean {
  const [hole, ...instead] = context.holes;
  if (
    hole === undefined ||
    !isLoneQuantity(sheet) ||
    isOfAnotherPiece(sheet, context) ||
    instead.some((id) => id in values) ||
    Object.entries(values).some(([id, value]) => id !== hole && value?.is === 'count') ||
    isOfAnotherThing(sheet) ||
    (hole === 'gauge' && isOfPart(sheet, context, values))
  )
    return false;
  return (
    !(intent && (hole === 'gauge' || saysRows(sheet))) && !(hole === 'units' && context.subjectPiece !== undefined)
  );
}

/** True where words that nobody knows say what the number is of: `a 9 cm mug`, `the next stall asks 36`. */
function isOfAnotherThing(sheet: Sheet): boolean {
  const strange = sheet.tokens.flatMap(({ is }, i) => (is === 'word' && isLeftOver(sheet, i) ? [i] : []));
  return strange.length > 1 || strange.some((i) => sheet.tokens[i - 1]?.is === 'quantity');
}

/** True for the size of a part, which no gauge has: a `10 in zip`. */
const isOfPart = (sheet: Sheet, { pieces, subjectPiece }: Context, values: object): boolean => {
  const asks = pieces.find(({ id }) => id === subjectPiece)?.asks ?? {};
  const labels = Object.keys(values).flatMap((id) => asks[id]?.label ?? []);
  return sheet.tokens.some(({ is }, i) => {
    const isNamed = is === 'word' && labels.includes(sheet.uses[i] ?? '');
    return isNamed && !isSideOfAny(wordAt(sheet, i) ?? '');
  });
};

/** No piece is named and none is in hand: an answer to what was asked, a plan without its piece, or nothing. */
export function withoutPiece(
  sheet: Sheet,
  context: Context,
  bare: BareUnit,
  intent: boolean,
  recorded: boolean,
): Meaning[] {
  if (isAnswer(sheet, context, intent, {})) return [loneReply(sheet, bare, context)];
  const free = freeQuantities(sheet);
  const asksSize = free.some((i) => quantityAtIndex(sheet, i)?.unit !== 'percent');
  if (recorded) return [];
  const left = sheet.tokens.flatMap((_, i) => (isLeftOver(sheet, i) ? [i] : []));
  if (context.subjectPiece !== undefined) {
    const focus = focusOf(sheet);
    const isNeeded = focus.some((what) => what === 'notions' || what === 'yarn') || focusAt(sheet, 0) !== undefined;
    if ((intent || isNeeded) && focus.length > 0 && left.length === 0)
      return [{ kind: 'change', edit: { values: {}, on: {}, focus: readFocus(sheet) } }];
  }
  const thing = thingIn(sheet, context) === undefined ? thingNamed(sheet) : undefined;
  const isOpen = context.subjectPiece === undefined || isOfAnotherPiece(sheet, context) || (thing && saysRows(sheet));
  if (isOpen && intent && (asksSize || context.command === '/rows' || saysRows(sheet))) {
    if (thing !== undefined) claim(sheet, 'a piece of no kind', ...indexesBetween(thing.from, thing.to));
    const words = thing === undefined ? freeText(sheet) : textBeside(sheet, thing);
    claim(sheet, 'held until the piece is named', ...sheet.tokens.keys());
    const name = thing && { thing: saidBetween(sheet, thing.from, thing.to) };
    return [{ kind: 'plan', ask: { copies: 1, values: {}, on: {}, focus: [], words, ...name } }];
  }
  const [doubtful] = left.filter((i) => whichOf(sheet, i) !== undefined);
  if (doubtful !== undefined)
    return [{ kind: 'unread', why: 'which_yarn', words: `${said(sheet, doubtful)}: ${whichOf(sheet, doubtful)}` }];
  const lacks = lacking(sheet, context);
  if (lacks !== undefined) return [{ kind: 'unread', why: lacks, words: sheet.text.trim().slice(0, MOST_QUOTED) }];
  const words = left.length === 0 ? sheet.text : saidBetween(sheet, left[0] ?? 0, left.at(-1) ?? 0);
  return [{ kind: 'unread', why: 'nothing', words: words.slice(0, MOST_QUOTED) }];
}

/** True where the one number stands beside a thing that only other pieces take: a `9 in zipper` while a panel is asked about. */
export const isOfAnotherPiece = (sheet: Sheet, { pieces, subjectPiece }: Context): boolean =>
  isLoneQuantity(sheet) &&
  sheet.tokens.some(({ is }, i) => {
    const word = is === 'quantity' ? (wordAt(sheet, i + 1) ?? '') : '';
    const takers = isSideOfAny(word) || isEveryday(word) ? [] : pieces.filter((piece) => isLength(piece, word));
    return takers.length > 0 && takers.every(({ id }) => id !== subjectPiece);
  });

const isLength = (piece: Piece, word: string): boolean =>
  ['length', 'window'].includes(piece.asks[fieldOf(piece, word) ?? '']?.is ?? '');

/** All that was typed but the name: what a plan in hand claimed of it is of the new piece. */
const textBeside = (sheet: Sheet, { from, to }: { from: number; to: number }): string =>
  sheet.tokens.flatMap((_, i) => (i >= from && i <= to ? [] : [said(sheet, i)])).join(' ');

/** Words that nobody knows, standing like the name of a piece: the `tea towel` of `for a tea towel 30 cm`. */
function thingNamed(sheet: Sheet): { from: number; to: number } | undefined {
  const isName = (i: number): boolean => {
    const word = wordAt(sheet, i);
    return word !== undefined && isFree(sheet, i) && !isKnownWord(word) && !isLabelWord(word);
  };
  const from = sheet.tokens.findIndex((_, i) => isName(i) && BEFORE_NAME.includes(wordAt(sheet, i - 1) ?? ''));
  if (from < 0) return undefined;
  let to = from;
  while (isName(to + 1)) to++;
  return { from, to };
}

const BEFORE_NAME = ['a', 'an', 'the', 'my', 'for', 'of', 'some', 'this'];

const saysRows = (sheet: Sheet): boolean => sheet.tokens.some((_, i) => wordAt(sheet, i) === 'rows');

const freeText = (sheet: Sheet): string =>
  sheet.tokens
    .flatMap((token, i) => (sheet.uses[i] === undefined ? [sheet.text.slice(token.start, token.end)] : []))
    .join(' ');

/**
 * True when a message is one quantity, neither the number of a machine nor a share, and words that carry no meaning of
 * their own.
 */
const isLoneQuantity = (sheet: Sheet): boolean => {
  const [one, ...others] = sheet.tokens.flatMap((token, i) =>
    token.is === 'quantity' ? [{ unit: token.quantity.unit, use: sheet.uses[i] ?? '' }] : [],
  );
  return (
    one !== undefined &&
    others.length === 0 &&
    one.unit !== 'percent' &&
    !MACHINE_USES.includes(one.use) &&
    !OF_MONEY.includes(one.use) &&
    !isLeftOut(one.use)
  );
};

/** Uses of a number in a question of money: `what does one cost`. */
const OF_MONEY = ['cost', 'price'];

/** The one number of a message as the answer to the open question; its unit alone where that was asked for. */
export function loneReply(sheet: Sheet, bare: BareUnit, context: Context): Meaning {
  const index = sheet.tokens.findIndex((token) => token.is === 'quantity');
  const token = sheet.tokens[index];
  if (token?.is !== 'quantity') throw new Error('a lone quantity is a quantity');
  sheet.uses[index] = 'answer';
  const { unit } = token.quantity;
  if (context.holes[0] === 'units' && unit !== undefined)
    return { kind: 'set_units', units: unit === 'in' ? 'in' : 'cm' };
  return { kind: 'reply', value: typedValue(token.quantity, bare, said(sheet, index)) };
}
