import { beginsClause, endsClause } from '../clauses.js';
import type { Requested, RequestReader } from '../requested.js';
import { claim, indexesBetween, isFree, type Sheet, said, WORK_PIECE, wordAt } from '../sheet.js';

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
      const onMachine = wordAt(sheet, end + 1) === 'on' && sheet.tokens[end + 3]?.is === 'quantity';
      if (!endsClause(sheet, end + 1) && !onMachine) return [];
      claim(sheet, 'start', ...indexesBetween(i, end));
      return [{ at: i, meaning: { kind: 'start' } }];
    })
    .slice(0, 1);
