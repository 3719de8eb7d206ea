import { bareAt, beginsClause, endsClause, wordsWithin } from '../clauses.js';
import type { Context } from '../context.js';
import type { Requested, RequestReader } from '../requested.js';
import { claim, indexesBetween, isFree, markAt, phrasePlaces, type Sheet, said, wordAt } from '../sheet.js';
import { COUNT_NOUNS, PLAN_WORDS, ROW_WORDS } from '../vocabulary.js';

const AT_ROW =
  `ok okay now so well and then also but yes no sorry oops i im ive am it its is was just at on to set up back got reached finished done
knitted tally counter says here stopped paused left off have has`.split(/\s+/);
const STANDS = ['at', 'on', 'to', 'is', 'says', 'shows', 'reads'];
const PULLED = ['pulled', 'ripped', 'frogged', 'unravelled', 'unraveled', 'undid', 'tinked', 'pull', 'rip', 'took'];
const ONE = ['next row', 'another row', 'one row', 'a row', 'row done', 'one row done', 'next row done'];

/** Questions about a length of the work, which the row it was read at answers. */
const ANSWERED = ['row', 'confirm'];

type Change = { by: number } | { to: number };
type Found = { from: number; to: number; change: Change };

/**
 * Rows counted: `+1`, `plus 5`, `10 more`, `next row`, `-2`; `row 40`, `I'm on 40`, `set 40`. What could mean something
 * else without work in hand is read only with it.
 */
export const readTallies: RequestReader = (sheet, context) => {
  const found = [...sheet.tokens.flatMap((_, i) => changeAt(sheet, i, context) ?? []), ...oneRow(sheet, context)];
  return found.flatMap(({ from, to, change }): Requested[] => {
    if (!indexesBetween(from, to).some((i) => isFree(sheet, i))) return [];
    claim(sheet, 'tally', ...indexesBetween(from, to));
    const number = indexesBetween(from, to).find((i) => sheet.tokens[i]?.is === 'quantity');
    const isAnswer = ANSWERED.includes(context.holes[0] ?? '') && 'to' in change && number !== undefined;
    if (!isAnswer) return [{ at: from, meaning: { kind: 'tally', ...change } }];
    return [
      { at: from, meaning: { kind: 'reply', value: { is: 'count', count: change.to, said: said(sheet, number) } } },
    ];
  });
};

function changeAt(sheet: Sheet, i: number, context: Context): Found | undefined {
  const count = bareAt(sheet, i);
  if (count === undefined) return undefined;
  return rowAt(sheet, i, count) ?? signed(sheet, i, count, context) ?? inWords(sheet, i, count, context);
}

/** `row 40`, `at row 40 of 131`, `back to row 38`. */
function rowAt(sheet: Sheet, i: number, count: number): Found | undefined {
  const at = markAt(sheet, i - 1) === 'equals' ? i - 2 : i - 1;
  if (!ROW_WORDS.includes(wordAt(sheet, at) ?? '') || !beginsClause(sheet, at, AT_ROW)) return undefined;
  const isOf = wordAt(sheet, i + 1) === 'of' && bareAt(sheet, i + 2) !== undefined;
  const end = isOf ? i + 2 : wordAt(sheet, i + 1) === 'done' ? i + 1 : i;
  return endsClause(sheet, end + 1) ? { from: at, to: end, change: { to: count } } : undefined;
}

/** `+1`, `plus 5`, `-2`, `minus 2 rows`. */
function signed(sheet: Sheet, i: number, count: number, context: Context): Found | undefined {
  const end = rowsBehind(sheet, i);
  if (!endsClause(sheet, end + 1)) return undefined;
  const word = wordAt(sheet, i - 1);
  if (said(sheet, i - 1) === '+' && beginsClause(sheet, i - 1)) return { from: i - 1, to: end, change: { by: count } };
  if (count < 0 && beginsClause(sheet, i)) return { from: i, to: end, change: { by: count } };
  const isClear = context.inHand !== undefined || end > i || sheet.tokens.length === 2;
  if (!isClear || !['plus', 'minus', 'add'].includes(word ?? '') || !beginsClause(sheet, i - 1)) return undefined;
  return { from: i - 1, to: end, change: { by: word === 'minus' ? -count : count } };
}

/** The index of a word for rows behind a number, or of the number. */
const rowsBehind = (sheet: Sheet, i: number): number =>
  COUNT_NOUNS[wordAt(sheet, i + 1) ?? ''] === 'rows' ? i + 1 : i;

/** `another 10 rows done`, `3 rows back`, `60 rows done`; only while there is work `10 more`, `I'm on 40`, `40`. */
function inWords(sheet: Sheet, i: number, count: number, context: Context): Found | undefined {
  const found = back(sheet, i, count) ?? done(sheet, i, count, context);
  const added = more(sheet, i, count);
  if (context.inHand === undefined) return found ?? (wordAt(sheet, i - 1) === 'another' ? added : undefined);
  return added ?? found ?? stands(sheet, i, count) ?? alone(sheet, i, count, context);
}

function more(sheet: Sheet, i: number, count: number): Found | undefined {
  const [first, second] = [wordAt(sheet, i + 1), wordAt(sheet, i + 2)];
  const rows = COUNT_NOUNS[first ?? ''] === 'rows';
  const isMore = first === 'more' || (rows && second === 'more');
  const another = wordAt(sheet, i - 1) === 'another' && (rows || said(sheet, i).toLowerCase() !== 'one');
  if (!isMore && !(another && (rows || endsClause(sheet, i + 1)))) return undefined;
  let end = i + (first === 'more' ? 1 : 0);
  end = rowsBehind(sheet, end);
  if (wordAt(sheet, end + 1) === 'more') end++;
  if (['done', 'knitted'].includes(wordAt(sheet, end + 1) ?? '')) end++;
  const from = another ? i - 1 : i;
  const leads = ['done', 'knit', 'did', 'did', 'and', 'i', 'ive', 'knitted', 'ok', 'now', 'then', 'cranked'];
  return endsClause(sheet, end + 1) && beginsClause(sheet, from, leads)
    ? { from, to: end, change: { by: count } }
    : undefined;
}

function back(sheet: Sheet, i: number, count: number): Found | undefined {
  const end = rowsBehind(sheet, i);
  const isBack = wordAt(sheet, end + 1) === 'back' && endsClause(sheet, end + 2);
  const verb = wordsWithin(sheet, PULLED, Math.max(0, i - 3), i)[0];
  const isPulled =
    verb !== undefined && end > i && (endsClause(sheet, end + 1) || isBack || wordAt(sheet, end + 1) === 'off');
  if (!isBack && !isPulled) return undefined;
  return { from: verb ?? i, to: endsClause(sheet, end + 1) ? end : end + 1, change: { by: -count } };
}

/** `I'm on 40`, `set it to 40`, `counter says 40`, `back to 38`. */
function stands(sheet: Sheet, i: number, count: number): Found | undefined {
  if (!endsClause(sheet, i + 1)) return undefined;
  const [first, second, third] = [1, 2, 3].map((k) => wordAt(sheet, i - k) ?? '');
  const isSet = first === 'set' || ['tally', 'counter'].includes(first ?? '');
  const isAt =
    STANDS.includes(first ?? '') && ['im', 'am', 'set', 'back', 'now', 'tally', 'counter'].includes(second ?? '');
  const isItTo = first === 'to' && second === 'it' && third === 'set';
  const from = isSet ? i - 1 : isItTo ? i - 3 : isAt ? i - 2 : undefined;
  return from === undefined ? undefined : { from, to: i, change: { to: count } };
}

/** `60 rows done`: the row it is at, when that is further than the tally. */
function done(sheet: Sheet, i: number, count: number, { inHand }: Context): Found | undefined {
  const end = rowsBehind(sheet, i);
  const isBefore = wordAt(sheet, i - 1) === 'done' && beginsClause(sheet, i - 1) && endsClause(sheet, end + 1);
  const isBehind = wordAt(sheet, end + 1) === 'done' && beginsClause(sheet, i) && endsClause(sheet, end + 2);
  if (end === i || (!isBefore && !isBehind)) return undefined;
  const change = count > (inHand?.rows ?? 0) ? { to: count } : { by: count };
  return isBefore ? { from: i - 1, to: end, change } : { from: i, to: end + 1, change };
}

/** A lone number that the work may well have come to. */
function alone(sheet: Sheet, i: number, count: number, { inHand, holes, subjectPiece }: Context): Found | undefined {
  const isNext = inHand !== undefined && count > inHand.rows && count <= inHand.stopAt && Number.isInteger(count);
  const isOfWork = subjectPiece === undefined || subjectPiece === inHand?.piece;
  return isNext && isOfWork && holes.length === 0 && sheet.tokens.length === 1
    ? { from: i, to: i, change: { to: count } }
    : undefined;
}

function oneRow(sheet: Sheet, { inHand }: Context): Found[] {
  const places = ONE.flatMap((phrase) => phrasePlaces(sheet, phrase))
    .filter(({ from, to }) => beginsClause(sheet, from) && endsClause(sheet, to + 1))
    .filter(({ from, to }) => inHand !== undefined || to - from === sheet.tokens.length - 1)
    .sort((a, b) => b.to - b.from - (a.to - a.from));
  const isAsked = wordsWithin(sheet, PLAN_WORDS).length > 0;
  return isAsked ? [] : places.slice(0, 1).map(({ from, to }) => ({ from, to, change: { by: 1 } }));
}
