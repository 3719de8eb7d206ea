import type { Piece } from '../../../core/index.js';
import { claim, freeQuantities, isFree, markAt, quantityAtIndex, type Sheet, wordAt } from '../sheet.js';
import { fieldOf } from './fields.js';

const JOINTS = ['and', 'or'];
const ARTICLES = ['a', 'an', 'the'];

type Joint = 'and' | 'comma' | 'slash';

/** Indexes of numbers told in a row, and what joins each to the one before it. */
type Run = { indexes: number[]; joints: Joint[] };

/** Every list of numbers, left to right; see {@link listFrom}. */
export function listsIn(sheet: Sheet): number[][] {
  const lists: number[][] = [];
  let behind = -1;
  for (const i of freeQuantities(sheet)) {
    if (i <= behind) continue;
    const run = runFrom(sheet, i);
    behind = run.indexes.at(-1) ?? i;
    if (isList(run)) lists.push(run.indexes);
  }
  return lists;
}

/**
 * The list that begins with the number at an index: `48, 52 and 56`, `10 in and 12 in`, `an 8 and a 10 in zip`,
 * `55/60/65`. Indexes of the numbers, two or more. Two that a comma alone parts are none: `pouch 11, 6 3/4`.
 */
export function listFrom(sheet: Sheet, i: number): number[] | undefined {
  const run = quantityAtIndex(sheet, i) === undefined ? undefined : runFrom(sheet, i);
  return run !== undefined && isList(run) ? run.indexes : undefined;
}

const isList = ({ indexes, joints }: Run): boolean =>
  indexes.length > 2 || (indexes.length === 2 && joints[0] !== 'comma');

/** The most that stands between two numbers of a list: `, and a`. */
const MOST_BETWEEN = 3;

function runFrom(sheet: Sheet, first: number): Run {
  const run: Run = { indexes: [first], joints: [] };
  for (let last = first, i = first + 2; i <= last + 1 + MOST_BETWEEN; i++) {
    const before = quantityAtIndex(sheet, i) === undefined ? undefined : jointBefore(sheet, i);
    if (before?.index !== last || !goesOn(sheet, run, before.joint)) continue;
    run.indexes.push(i);
    run.joints.push(before.joint);
    last = i;
  }
  return run;
}

/** What joins a number to the one right before it, and where that stands: `, and a`. */
function jointBefore(sheet: Sheet, i: number): { joint: Joint; index: number } | undefined {
  let at = i - 1;
  if (ARTICLES.includes(wordAt(sheet, at) ?? '')) at--;
  let joint: Joint | undefined;
  if (isFree(sheet, at) && JOINTS.includes(wordAt(sheet, at) ?? '')) {
    joint = 'and';
    at--;
  }
  const mark = markAt(sheet, at);
  if (mark === 'comma' || (mark === 'slash' && joint === undefined)) {
    joint ??= mark;
    at--;
  }
  return joint !== undefined && quantityAtIndex(sheet, at) !== undefined ? { joint, index: at } : undefined;
}

/** A list ends behind its `and`, and behind the unit that numbers before it share: `48, 52 and 56 cm, 10 cm tall`. */
function goesOn(sheet: Sheet, { indexes, joints }: Run, joint: Joint): boolean {
  const unitOf = (i: number | undefined) => quantityAtIndex(sheet, i ?? -1)?.unit;
  const hasEnded = joints.at(-1) === 'and' && joint !== 'and';
  const hasUnit = unitOf(indexes.at(-1)) !== undefined && unitOf(indexes[0]) === undefined;
  return !hasEnded && !hasUnit && (joint === 'slash') === ((joints[0] ?? joint) === 'slash');
}

const LISTING = [...JOINTS, ...ARTICLES];

/**
 * True where nothing but joints stands between numbers of one thing, beside the word for each: `10 in wide, 12 in wide`.
 * @param words indexes of the words that say what the numbers measure
 */
export function areListed(sheet: Sheet, numbers: readonly number[], words: readonly number[]): boolean {
  return numbers.slice(1).every((to, k) => {
    const between = Array.from({ length: to - (numbers[k] ?? to) - 1 }, (_, n) => to - 1 - n);
    const joints = between.filter((i) => !words.includes(i));
    const isJoint = (i: number): boolean =>
      LISTING.includes(wordAt(sheet, i) ?? '') || ['comma', 'slash'].includes(markAt(sheet, i) ?? '');
    return joints.length > 0 && joints.every(isJoint);
  });
}

const SLIPS = 'no sorry oops actually wait rather'.split(' ');

/** `10, no 11 in`, `10 in wide, sorry, 11`: the number before such a word is the one that was not meant. */
export function claimSlips(sheet: Sheet, piece: Piece): void {
  const isMark = (i: number): boolean => ['comma', 'stop'].includes(markAt(sheet, i) ?? '');
  const fieldAt = (i: number): string | undefined => fieldOf(piece, wordAt(sheet, i) ?? '');
  for (const i of freeQuantities(sheet)) {
    let at = isMark(i - 1) ? i - 2 : i - 1;
    const slips = at;
    while (SLIPS.includes(wordAt(sheet, at) ?? '')) at--;
    if (at === slips) continue;
    while (isMark(at)) at--;
    const field = fieldAt(at);
    if (field !== undefined) at--;
    const isOfOther = fieldAt(i + 1) !== undefined && field !== undefined && fieldAt(i + 1) !== field;
    if (quantityAtIndex(sheet, at) !== undefined && !isOfOther) claim(sheet, 'what it was', at);
  }
}
