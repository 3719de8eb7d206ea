import type { Piece } from '../../core/index.js';
import type { Bench, Meaning, PlanAsk, Request } from '../request.js';
import type { Context, DueDate, Trace } from './context.js';
import { joinedTokens } from './joined.js';
import { type BareUnit, bareUnit, typedValue } from './lengths.js';
import { nearWord } from './near.js';
import { readBench } from './readers/bench.js';
import { readChoices } from './readers/choices.js';
import { readCopies } from './readers/copies.js';
import { readGauge } from './readers/gauge.js';
import { pickOf } from './readers/picks.js';
import { readPiece } from './readers/pieces.js';
import { shortRequest } from './readers/short.js';
import { claimFieldWords, readSizes } from './readers/sizes.js';
import {
  claim,
  freeQuantities,
  isFree,
  LEFT_OUT,
  quantityAtIndex,
  type Sheet,
  said,
  saidBetween,
  sheetOf,
  wordAt,
} from './sheet.js';
import { type Token, tokenized } from './token.js';
import { COUNT_NOUNS, isKnownWord, mayBeTypo, PLAN_WORDS, TRADE_WORDS } from './vocabulary.js';

export type Reading = { meanings: Meaning[]; trace: Trace };

/** Longer texts than this are not requests. */
const MOST_CHARACTERS = 4000;
const MOST_TOKENS = 400;
/** Words quoted back in a lead line. */
const MOST_QUOTED = 50;

/**
 * What a text means to this maker now, with a trace of how each part of it was used.
 * Pure: the same text in the same context means the same. Never throws; what cannot be read is said so.
 */
export function read(text: string, context: Context): Reading {
  const trimmed = text.trim();
  const unread = (why: (Request & { kind: 'unread' })['why'], words = ''): Reading => ({
    meanings: [{ kind: 'unread', why, words }],
    trace: { tokens: [], mended: [], leftover: [] },
  });
  if (trimmed === '')
    return context.command === '/gauge'
      ? whole({ kind: 'show_gauge', on: {} })
      : context.command
        ? whole({ kind: 'help' })
        : unread('empty');
  if (trimmed.length > MOST_CHARACTERS) return unread('too_long', trimmed.slice(0, 40));
  const short = shortRequest(trimmed) ?? pickOf(trimmed, context);
  if (short !== undefined) return whole(short);

  const day = context.due?.(trimmed);
  const due = day?.past ? undefined : day;
  const dateless = blanked(trimmed, day);
  const { tokens, mended } = mendedTokens(joinedTokens(dateless, tokenized(dateless)).slice(0, MOST_TOKENS), context);
  const mendedShort = mended.length > 0 ? shortRequest(wordsOf(tokens)) : undefined;
  if (mendedShort !== undefined) return { meanings: [mendedShort], trace: { tokens: [], mended, leftover: [] } };
  const sheet = sheetOf(trimmed, tokens);
  claimPronouns(sheet);
  // A piece named with a size of its own is a new request.
  const isPieceAlone = tokens.every(({ is }) => is !== 'quantity');
  if (context.held !== undefined && isPieceAlone && readPiece(sheetOf(trimmed, tokens), context.pieces) !== undefined) {
    return read(`${context.held}, ${trimmed}`, { ...context, held: undefined, holes: [] });
  }
  const meanings = meaningsOf(sheet, context, due);
  const leftover = [...leftoverOf(sheet), ...(day?.past ? [day.said] : [])];
  return { meanings, trace: { tokens: usesOf(sheet), mended, leftover } };
}

/** `another one`, `the blue one`: no number, unless it counts rows or `one of them`. */
function claimPronouns(sheet: Sheet): void {
  sheet.tokens.forEach((token, i) => {
    const one = token.is === 'quantity' && said(sheet, i).toLowerCase() === 'one';
    const next = wordAt(sheet, i + 1) ?? '';
    if (one && next !== 'of' && COUNT_NOUNS[next] === undefined) claim(sheet, 'pronoun', i);
  });
}

const whole = (meaning: Meaning): Reading => ({ meanings: [meaning], trace: { tokens: [], mended: [], leftover: [] } });

/** The date taken out, so that its numbers pass for no size; places stay as they were. */
const blanked = (text: string, due: DueDate | undefined): string =>
  due === undefined ? text : text.slice(0, due.start) + ' '.repeat(due.end - due.start) + text.slice(due.end);

const wordsOf = (tokens: readonly Token[]): string =>
  tokens.map((token) => (token.is === 'word' ? token.word : '')).join(' ');

const trades = new WeakMap<readonly Piece[], { own: Set<string>; trade: readonly string[] }>();

/** Words of the pieces, and all that a typo may stand for; gathered once for a registry. */
function tradeOf(pieces: readonly Piece[]): { own: Set<string>; trade: readonly string[] } {
  const known = trades.get(pieces);
  if (known !== undefined) return known;
  const own = new Set(pieces.flatMap((p) => [...p.words, ...Object.values(p.asks).flatMap((ask) => ask.words)]));
  const words = [...own].filter((word) => !word.includes(' '));
  const gathered = { own, trade: [...new Set([...TRADE_WORDS, ...words])] };
  trades.set(pieces, gathered);
  return gathered;
}

/** Typos in trade words mended where one word alone can be meant. */
function mendedTokens(tokens: readonly Token[], context: Context): { tokens: Token[]; mended: Trace['mended'] } {
  const names = [...context.machines, ...context.yarns].flatMap((name) => name.split(' '));
  const { own, trade } = tradeOf(context.pieces);
  const mended: Trace['mended'] = [];
  const result = tokens.map((token) => {
    if (token.is !== 'word' || own.has(token.word) || names.includes(token.word) || !mayBeTypo(token.word))
      return token;
    const near = nearWord(token.word, trade);
    if (near === undefined) return token;
    mended.push({ from: token.word, to: near });
    return { ...token, word: near };
  });
  return { tokens: result, mended };
}

function meaningsOf(sheet: Sheet, context: Context, due: DueDate | undefined): Meaning[] {
  const quantities = sheet.tokens.flatMap((t) => (t.is === 'quantity' ? [t.quantity] : []));
  const bare = bareUnit(quantities, context.units);
  const intent =
    sheet.tokens.some((_, i) => PLAN_WORDS.includes(wordAt(sheet, i) ?? '')) || context.command === '/rows';
  const named = readPiece(sheet, context.pieces);
  const subject = context.pieces.find((p) => p.id === context.subjectPiece);
  const piece = named?.piece ?? subject;
  const choices = piece === undefined ? {} : readChoices(sheet, piece);
  const gauge = readGauge(sheet, bare, named?.piece);
  if (gauge !== undefined && 'conflict' in gauge)
    return [{ kind: 'unread', why: 'contradiction', words: gauge.conflict }];

  const counted = piece !== undefined && gauge === undefined && named !== undefined && takesNeedles(piece);
  const panel = counted ? readSizes(sheet, piece, bare) : undefined;
  const on = readBench(sheet, context);
  const records = gauge?.records ?? onlyNeedles(on, context, intent || named !== undefined);
  const copies = readCopies(sheet, named?.piece);
  const record: Meaning[] = records.map((recorded) => ({ kind: 'record_gauge', gauge: { ...recorded, on } }));

  if (piece === undefined) return [...record, ...withoutPiece(sheet, context, bare, intent, record.length > 0)];
  if (named === undefined && record.length > 0 && !intent) return record;
  const sizes = panel ?? readSizes(sheet, piece, bare);
  if (sizes.tooMany) return [{ kind: 'unread', why: 'too_many_sizes', words: sizes.tooMany }];
  if (sizes.strange) return [{ kind: 'unread', why: 'words', words: sizes.strange }];
  const values = { ...choices, ...sizes.values };
  const sized = Object.keys(values).length > 0;
  if (intent || named) claimFieldWords(sheet, piece);
  if (named !== undefined && !intent) {
    const measures = record.length > 0 || on.needles !== undefined || context.holes[0] === 'gauge';
    const measured = measures && !isComplete(piece, values) ? measuredPiece(sheet, context, bare) : undefined;
    if (measured !== undefined) return measured;
  }
  if (named === undefined) {
    const answers = !sized && record.length > 0;
    const changes =
      sized || copies !== undefined || due !== undefined || (record.length === 0 && Object.keys(on).length > 0);
    if (answers || !changes || (sized && isElsewhere(sheet)))
      return record.length > 0 ? record : withoutPiece(sheet, context, bare, intent, false);
    if (copies === undefined && isAnswer(sheet, context, intent, values))
      return [...record, loneReply(sheet, bare, context)];
    return [
      ...record,
      { kind: 'change', edit: { values, on: record.length > 0 ? {} : on, copies, focus: [], due: dueOf(due) } },
    ];
  }
  const ask: PlanAsk = {
    piece: piece.id,
    copies: copies ?? 1,
    values: Object.fromEntries(Object.entries(values).flatMap(([id, value]) => (value === null ? [] : [[id, value]]))),
    on: record.length > 0 ? {} : on,
    focus: focusOf(sheet),
    due: dueOf(due),
  };
  return [...record, { kind: 'plan', ask }];
}

/** Words that point to the plan in hand. */
const POINTING = ['it', 'them', 'these', 'those', 'this', 'that', 'same', 'instead'];

/** True when a size stands among words that nobody knows and nothing points to the plan in hand: `scarf 60 in`. */
const isElsewhere = (sheet: Sheet): boolean =>
  sheet.tokens.some((token, i) => token.is === 'word' && isLeftOver(sheet, i) && !/\d/.test(token.word)) &&
  !sheet.tokens.some((_, i) => POINTING.includes(wordAt(sheet, i) ?? ''));

/** True for a lone number where one was asked for. "Make it 12" is none for a gauge, "a 9 in zip" none for a width. */
function isAnswer(sheet: Sheet, context: Context, intent: boolean, values: object): boolean {
  const [hole, ...instead] = context.holes;
  if (hole === undefined || !isLoneQuantity(sheet) || instead.some((id) => id in values)) return false;
  return (
    !(intent && (hole === 'gauge' || saysRows(sheet))) && !(hole === 'units' && context.subjectPiece !== undefined)
  );
}

/** True when a piece has every size it needs. */
const isComplete = (piece: Piece, values: Record<string, unknown>): boolean =>
  piece.needs.every((group) => group.some((id) => id in values));

/** "46-needle tube, 110 rows, 22 in long, 6 3/4 wide": the piece named is the one measured, its width that of the tube. */
function measuredPiece(sheet: Sheet, context: Context, bare: BareUnit): Meaning[] | undefined {
  const again = sheetOf(sheet.text, sheet.tokens);
  claimPronouns(again);
  const piece = readPiece(again, context.pieces)?.piece;
  const gauge = readGauge(again, bare, undefined);
  if (gauge === undefined || 'conflict' in gauge) return undefined;
  const on = readBench(again, context);
  if (piece !== undefined) claimFieldWords(again, piece);
  sheet.uses.splice(0, sheet.uses.length, ...again.uses);
  return gauge.records.map((recorded) => ({ kind: 'record_gauge', gauge: { ...recorded, on } }));
}

const takesNeedles = (piece: Piece): boolean => Object.values(piece.asks).some((ask) => ask.is === 'count');

const dueOf = (due: DueDate | undefined) => due && { day: due.day, said: due.said };

/** Needles alone are part of the gauge that is asked for, or tell of a machine; else they change the plan in hand. */
function onlyNeedles(on: Bench, context: Context, planning: boolean): object[] {
  if (on.needles === undefined || planning) return [];
  const [hole] = context.holes;
  const alone = hole === undefined && context.subjectPiece === undefined;
  return context.command === '/gauge' || hole === 'gauge' || alone ? [{}] : [];
}

/** No piece is named and none is in hand: an answer to what was asked, a plan without its piece, or nothing. */
function withoutPiece(sheet: Sheet, context: Context, bare: BareUnit, intent: boolean, recorded: boolean): Meaning[] {
  if (isAnswer(sheet, context, intent, {})) return [loneReply(sheet, bare, context)];
  const free = freeQuantities(sheet);
  const asksSize = free.some((i) => quantityAtIndex(sheet, i)?.unit !== 'percent');
  if (recorded) return [];
  const left = sheet.tokens.flatMap((_, i) => (isLeftOver(sheet, i) ? [i] : []));
  if (context.subjectPiece !== undefined) {
    const again = intent && saysRows(sheet) && left.length === 0;
    if (again) return [{ kind: 'change', edit: { values: {}, on: {}, focus: [] } }];
  } else if (intent && (asksSize || context.command === '/rows' || saysRows(sheet))) {
    const words = freeText(sheet);
    claim(sheet, 'held until the piece is named', ...sheet.tokens.keys());
    return [{ kind: 'plan', ask: { copies: 1, values: {}, on: {}, focus: [], words } }];
  }
  const words = left.length === 0 ? sheet.text : saidBetween(sheet, left[0] ?? 0, left.at(-1) ?? 0);
  return [{ kind: 'unread', why: 'nothing', words: words.slice(0, MOST_QUOTED) }];
}

const saysRows = (sheet: Sheet): boolean => sheet.tokens.some((_, i) => wordAt(sheet, i) === 'rows');

const freeText = (sheet: Sheet): string =>
  sheet.tokens
    .flatMap((token, i) => (sheet.uses[i] === undefined ? [sheet.text.slice(token.start, token.end)] : []))
    .join(' ');

/** True when a message is one quantity and words that carry no meaning of their own. */
const isLoneQuantity = (sheet: Sheet): boolean => sheet.tokens.filter((token) => token.is === 'quantity').length === 1;

function loneReply(sheet: Sheet, bare: BareUnit, context: Context): Meaning {
  const index = sheet.tokens.findIndex((token) => token.is === 'quantity');
  const token = sheet.tokens[index];
  if (token?.is !== 'quantity') throw new Error('a lone quantity is a quantity');
  claim(sheet, 'answer', index);
  const { unit } = token.quantity;
  if (context.holes[0] === 'units' && unit !== undefined)
    return { kind: 'set_units', units: unit === 'in' ? 'in' : 'cm' };
  return { kind: 'reply', value: typedValue(token.quantity, bare, said(sheet, index)) };
}

const FOCUS: Record<string, PlanAsk['focus'][number]> = {
  rows: 'rows',
  needles: 'needles',
  yarn: 'yarn',
  steps: 'steps',
  instructions: 'steps',
};

function focusOf(sheet: Sheet): PlanAsk['focus'] {
  const words = sheet.tokens.flatMap((_, i) => (isFree(sheet, i) && FOCUS[wordAt(sheet, i) ?? '']) || []);
  return [...new Set(words)];
}

const usesOf = (sheet: Sheet): Trace['tokens'] =>
  sheet.tokens.map((token, i) => ({ text: sheet.text.slice(token.start, token.end), usedAs: sheet.uses[i] }));

/** Numbers that nobody used, and words that nobody knows. */
const leftoverOf = (sheet: Sheet): string[] =>
  sheet.tokens.flatMap((_, i) => (isLeftOver(sheet, i) ? [said(sheet, i)] : []));

function isLeftOver(sheet: Sheet, index: number): boolean {
  const token = sheet.tokens[index];
  if (token === undefined || token.is === 'mark') return false;
  const use = sheet.uses[index];
  return use === LEFT_OUT || (use === undefined && !(token.is === 'word' && isKnownWord(token.word)));
}
