import { bareAt, beginsClause, endsClause } from '../clauses.js';
import type { Requested, RequestReader } from '../requested.js';
import { claim, freeQuantities, indexesBetween, type Sheet, wordAt } from '../sheet.js';
import { COUNT_NOUNS, ROW_WORDS } from '../vocabulary.js';

const NAMED = ['keep', 'use', 'ok', 'okay'];
const CHOOSES = [...NAMED, 'take', 'trust', 'with', 'its', 'the', 'machines', 'counters'];
const STOPS: readonly (readonly string[])[] = [
  ['stay', 'with'],
  ['stay', 'at'],
  ['stick', 'with'],
  ['stop', 'at'],
  ['stop', 'on'],
  ['stop', 'after'],
];

/** Counters that disagree do so by a few rows. */
const MOST_APART = 10;

/**
 * One of two counts that disagreed, `keep 64`, `ok 64`, `64`: the only number of a message, and no length. Once the
 * counts are no longer open, one close to the tally may still be chosen in words.
 */
export const readSettled: RequestReader = (sheet, { inHand, machines }) => {
  const [i, ...others] = freeQuantities(sheet);
  if (inHand === undefined || i === undefined || others.length > 0) return [];
  const count = bareAt(sheet, i);
  const end = nounBehind(sheet, i);
  const isChosen = CHOOSES.includes(wordAt(sheet, i - 1) ?? '') && beginsClause(sheet, i - 1);
  const isOne = count !== undefined && inHand.counts?.includes(count) === true;
  const isNear =
    count !== undefined &&
    !machines.includes(String(count)) &&
    NAMED.includes(wordAt(sheet, i - 1) ?? '') &&
    Math.abs(count - inHand.rows) <= MOST_APART &&
    inHand.stopAt - count > MOST_APART;
  const isSettled = isOne || (isChosen && (inHand.counts !== undefined || isNear));
  if (count === undefined || !isSettled || ROW_WORDS.includes(wordAt(sheet, i - 1) ?? '')) return [];
  if (!endsClause(sheet, end + 1) && !['it', 'is'].includes(wordAt(sheet, end + 1) ?? '')) return [];
  claim(sheet, 'tally', ...sheet.tokens.keys());
  return [{ at: 0, meaning: { kind: 'tally', to: count, settles: true } }];
};

/** The maker's own stop row: `stay with 131`, `stop at row 128`; with work in hand, `use 128` and `keep 131`. */
export const readStops: RequestReader = (sheet, { inHand, machines }) =>
  freeQuantities(sheet).flatMap((i): Requested[] => {
    const count = bareAt(sheet, i);
    const end = nounBehind(sheet, i);
    if (count === undefined || !endsClause(sheet, end + 1)) return [];
    const before = ROW_WORDS.includes(wordAt(sheet, i - 1) ?? '') ? i - 1 : i;
    const isStop = STOPS.some(
      ([verb, joint]) => wordAt(sheet, before - 2) === verb && wordAt(sheet, before - 1) === joint,
    );
    const isKept = ['keep', 'use'].includes(wordAt(sheet, before - 1) ?? '');
    const isMeant = end > i || before < i || (inHand !== undefined && !machines.includes(String(count)));
    const from = isStop ? before - 2 : isKept && isMeant ? before - 1 : undefined;
    if (from === undefined || !beginsClause(sheet, from)) return [];
    claim(sheet, 'stop row', ...indexesBetween(from, end));
    return [{ at: from, meaning: { kind: 'set_stop', rows: count } }];
  });

const nounBehind = (sheet: Sheet, i: number): number =>
  COUNT_NOUNS[wordAt(sheet, i + 1) ?? ''] === 'rows' ? i + 1 : i;
