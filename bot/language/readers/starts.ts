import { beginsClause, endsClause } from '../clauses.js';
import type { Requested, RequestReader } from '../requested.js';
import { claim, indexesBetween, isFree, WORK_PIECE, wordAt } from '../sheet.js';

const STARTS = ['start', 'begin', 'starting', 'started'];
const BEHIND = ['knitting', 'it', 'this', 'that', 'now', 'again', 'please', 'today'];

/** `start`, `and start it now`, at the end of a clause: `start with waste yarn` begins no piece. */
export const readStarts: RequestReader = (sheet) =>
  sheet.tokens
    .flatMap((_, i): Requested[] => {
      if (!isFree(sheet, i) || !STARTS.includes(wordAt(sheet, i) ?? '') || !beginsClause(sheet, i)) return [];
      let end = i;
      while (BEHIND.includes(wordAt(sheet, end + 1) ?? '') || sheet.uses[end + 1] === WORK_PIECE) end++;
      const onMachine = wordAt(sheet, end + 1) === 'on' && sheet.tokens[end + 3]?.is === 'quantity';
      if (!endsClause(sheet, end + 1) && !onMachine) return [];
      claim(sheet, 'start', ...indexesBetween(i, end));
      return [{ at: i, meaning: { kind: 'start' } }];
    })
    .slice(0, 1);
