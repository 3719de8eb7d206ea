import { bareAt, beginsClause, endsClause } from '../clauses.js';
import type { Requested, RequestReader } from '../requested.js';
import { claim, indexesBetween, isFree, leftOutFor, type Sheet, said, WORK_PIECE, wordAt } from '../sheet.js';
import { COUNT_NOUNS } from '../vocabulary.js';

const STARTS = ['start', 'begin', 'starting', 'started'];
const BEHIND = ['knitting', 'it', 'this', 'that', 'now', 'again', 'please', 'today', 'another', 'next', 'one', 'the'];

const isBehind = (sheet: Sheet, i: number): boolean =>
  isFree(sheet, i) && BEHIND.includes(wordAt(sheet, i) ?? said(sheet, i).toLowerCase());

/** `start`, `and start it now`, `start another`, at the end of a clause: `start with waste yarn` begins no piece. */
export const readStarts: RequestReader = (sheet) =>
  sheet.tokens
    .flatMap((_, i): Requested[] => {
      if (!isFree(sheet, i) || !STARTS.includes(wordAt(sheet, i) ?? '') || !beginsClause(sheet, i)) return [];
      let end = i;
      while (isBehind(sheet, end + 1) || sheet.uses[end + 1] === WORK_PIECE) end++;
      const rows = wordAt(sheet, end + 1) === 'with' ? bareAt(sheet, end + 2) : undefined;
      const isCounted = Number.isInteger(rows) && COUNT_NOUNS[wordAt(sheet, end + 3) ?? ''] === 'rows';
      if (isCounted) end += 3;
      if (bareAt(sheet, end + 1) !== undefined && endsClause(sheet, end + 2))
        claim(sheet, leftOutFor('how many, or a row? Say "two of them" or "row 2"'), ...indexesBetween(i, end + 1));
      const goesOn = wordAt(sheet, end + 1) === 'on' && sheet.tokens[end + 3]?.is === 'quantity';
      const ofThem = bareAt(sheet, end + 1) !== undefined && wordAt(sheet, end + 2) === 'of';
      if (!isFree(sheet, i) || !(endsClause(sheet, end + 1) || goesOn || ofThem)) return [];
      claim(sheet, 'start', ...indexesBetween(i, end));
      return [{ at: i, meaning: { kind: 'start', ...(isCounted && { rows }) } }];
    })
    .slice(0, 1);
