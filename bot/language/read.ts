import type { Bench, Meaning, Request } from '../request.js';
import type { Context, DueDate, Trace } from './context.js';
import { joinedTokens } from './joined.js';
import { meaningsOf } from './meanings.js';
import { mendedTokens } from './mended.js';
import { noteIn } from './notes.js';
import { inFigures } from './number-words.js';
import { batchRequest } from './readers/batch-requests.js';
import { readBench } from './readers/bench.js';
import { doubtfulNumber } from './readers/doubtful.js';
import { hinted } from './readers/hints.js';
import { ownCount } from './readers/own-counts.js';
import { machinesOwned } from './readers/owned.js';
import { picksOf, yesOrNo } from './readers/picks.js';
import { piecePlaces } from './readers/pieces.js';
import { shortRequest } from './readers/short.js';
import { sizeChosen } from './readers/size-choices.js';
import { dueOf, withRemarks } from './remarks.js';
import { sharingBehind, sharingIn, sharingNoted } from './sharing.js';
import { isLeftOut, isLeftOver, type Sheet, saidBetween, sheetOf, whichOf, whyOf } from './sheet.js';
import { together } from './together.js';
import { overWords, type Token, tokenized } from './token.js';
import { unanswered } from './unanswered.js';
import { ofHours } from './working-hours.js';

export type Reading = { meanings: Meaning[]; trace: Trace };

/** Longer texts than this are not requests. */
const MOST_CHARACTERS = 4000;
const MOST_TOKENS = 400;

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
  const whole = (meaning: Meaning): Reading => ({ meanings: [meaning], trace: wholeTrace(trimmed, meaning) });
  if (trimmed === '')
    return context.command === '/gauge'
      ? whole({ kind: 'show_gauge', on: {} })
      : context.command
        ? whole({ kind: 'help' })
        : unread('empty');
  if (trimmed.length > MOST_CHARACTERS) return unread('too_long', trimmed.slice(0, 40));
  const behind = sharingBehind(trimmed, context.pieces);
  const before = behind && read(behind.plan, context);
  if (behind && before?.meanings.some(({ kind }) => kind === 'plan' || kind === 'change'))
    return {
      meanings: [...before.meanings, behind.share],
      trace: {
        ...before.trace,
        tokens: [...before.trace.tokens, usedWhole(trimmed.replace(behind.plan, ''), behind.share)],
      },
    };
  const noted = sharingNoted(trimmed, context.pieces);
  if (noted !== undefined) return whole(noted);
  const joined = together(trimmed, context, (part) => read(part, context));
  if (joined !== undefined) return joined;
  const first =
    yesOrNo(trimmed, context) ?? shortRequest(trimmed) ?? ofHours(trimmed) ?? batchRequest(trimmed, context);
  const [pick, ...then] = first === undefined ? picksOf(trimmed, context) : [];
  if (pick !== undefined) return { ...whole(pick), meanings: [pick, ...then] };
  const short = first ?? ownCount(trimmed, context) ?? sharingIn(trimmed, context.pieces) ?? hinted(trimmed, context);
  if (short !== undefined && 'on' in short) return whole({ ...short, on: benchIn(trimmed, context) });
  if (short !== undefined) return whole(short);

  const owned = machinesOwned(trimmed);
  if (owned !== undefined) return { meanings: owned, trace: { tokens: [], mended: [], leftover: [] } };
  const remark = noteIn(trimmed);
  const unnoted = trimmed.slice(0, remark?.start);
  const days = daysIn(unnoted, context);
  const figures = inFigures(days.reduce(blanked, unnoted));
  const typed = overWords(joinedTokens(figures.text, tokenized(figures.text)), figures.places);
  const { tokens, mended } = mendedTokens(typed.slice(0, MOST_TOKENS), context);
  const mendedShort = mended.length > 0 ? shortRequest(wordsOf(tokens)) : undefined;
  if (mendedShort !== undefined)
    return { meanings: [mendedShort], trace: { ...wholeTrace(trimmed, mendedShort), mended } };
  const sheet = sheetOf(trimmed, tokens);
  const chosen = sizeChosen(sheet, context);
  if (chosen !== undefined) return { meanings: chosen, trace: { tokens: usesOf(sheet), mended, leftover: [] } };
  const doubtful = doubtfulNumber(trimmed, context);
  if (doubtful !== undefined) return whole(doubtful);
  // A piece named with a size of its own is a new request.
  const isPieceAlone = tokens.every(({ is }) => is !== 'quantity');
  if (context.held !== undefined && isPieceAlone && piecePlaces(sheet, context.pieces).length > 0) {
    return read(`${context.held}, ${trimmed}`, { ...context, held: undefined, holes: [] });
  }
  const found = meaningsOf(sheet, context, dueOf(days));
  const { meanings, unused } = withRemarks(found, days, remark?.note);
  const leftover = [...leftoverOf(sheet), ...unanswered(sheet, meanings), ...unused];
  return { meanings, trace: { tokens: usesOf(sheet), mended, leftover } };
}

/** The machine and yarn that a look-up names. */
function benchIn(text: string, context: Context): Bench {
  const named = text.replace(/\bbehind\b/i, 'on');
  const { tokens } = mendedTokens(joinedTokens(named, tokenized(named)), context);
  return readBench(sheetOf(named, tokens), context);
}

/** Words that are one request as a whole, used as that. */
const usedWhole = (text: string, { kind }: Meaning): Trace['tokens'][number] => ({
  text: text.trim(),
  usedAs: `${kind}, as a whole`,
});

const wholeTrace = (text: string, meaning: Meaning): Trace => ({
  tokens: text === '' ? [] : [usedWhole(text, meaning)],
  mended: [],
  leftover: [],
});

/** The date taken out, so that its numbers pass for no size; places stay as they were. */
const blanked = (text: string, { start, end }: DueDate): string =>
  text.slice(0, start) + ' '.repeat(end - start) + text.slice(end);

/** The day something is due, and the day something was measured: two at most. */
function daysIn(text: string, { due }: Context): DueDate[] {
  const first = due?.(text);
  const second = first && due?.(blanked(text, first));
  return [first, second].filter((day) => day !== undefined);
}

const wordsOf = (tokens: readonly Token[]): string =>
  tokens.map((token) => (token.is === 'word' ? token.word : '')).join(' ');

const usesOf = (sheet: Sheet): Trace['tokens'] =>
  sheet.tokens.map((token, i) => ({ text: sheet.text.slice(token.start, token.end), usedAs: sheet.uses[i] }));

/** Numbers that nobody used, and words that nobody knows; those left out side by side as they were typed. */
function leftoverOf(sheet: Sheet): string[] {
  const runs: [from: number, to: number][] = [];
  sheet.tokens.forEach((_, i) => {
    if (!isLeftOver(sheet, i)) return;
    const run = runs.at(-1);
    const isRun =
      run?.[1] === i - 1 && [i - 1, i].every((k) => isLeftOut(sheet.uses[k]) && whyOf(sheet, k) === whyOf(sheet, i));
    if (run !== undefined && isRun) run[1] = i;
    else runs.push([i, i]);
  });
  return runs.map(([from, to]) =>
    [saidBetween(sheet, from, to), whichOf(sheet, from) ?? whyOf(sheet, from) ?? []].flat().join(': '),
  );
}
