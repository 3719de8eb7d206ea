import type { Team } from '../../request.js';
import type { Context } from '../context.js';
import {
  claim,
  indexesBetween,
  isFree,
  markAt,
  phraseAt,
  quantityAtIndex,
  type Sheet,
  said,
  wordAt,
} from '../sheet.js';
import { COPIES } from './copies.js';

const TEAM = 'who makes them';
const ME = ['me', 'myself', 'i'];
/** Before the names. */
const CUES = ['with', 'between', 'among', 'amongst'];
/** Before a cue, words that say no more than it. */
const SPLITS = 'split splitting divide divided dealt it them these those together all up work'.split(' ');
const KNITS = ['knit', 'knits', 'cranks', 'crank'];
const FINISHES = ['finish', 'finishes', 'seam', 'seams', 'sew', 'sews'];

/** Those named, and how many pieces were named right before them: `12 with Owen`. */
export type TeamFound = { team: Team; copies: number | undefined };

type Named = { name: string; to: number };

/** Who makes the pieces: `with Owen`, `between Nadia and Owen`, `@Owen and me`, `Nadia knits, Owen finishes`. */
export function readTeam(sheet: Sheet, context: Context): TeamFound | undefined {
  if (context.team === undefined) return undefined;
  return stagesIn(sheet, context) ?? listIn(sheet, context);
}

function listIn(sheet: Sheet, context: Context): TeamFound | undefined {
  for (let i = 0; i < sheet.tokens.length; i++) {
    const cue = CUES.includes(wordAt(sheet, i) ?? '') && isFree(sheet, i);
    const isCalled = !cue && isMention(sheet, i) && isFree(sheet, i);
    if (!cue && !isCalled) continue;
    const first = nameAt(sheet, cue ? i + 1 : i, context);
    if (first === undefined) continue;
    const names = [first];
    for (let last = first; ; ) {
      const next = nextName(sheet, last.to + 1, context);
      if (next === undefined) break;
      names.push(next);
      last = next;
    }
    let from = i;
    while (from > 0 && SPLITS.includes(wordAt(sheet, from - 1) ?? '') && isFree(sheet, from - 1)) from--;
    const copies = copiesBefore(sheet, from);
    claim(sheet, TEAM, ...indexesBetween(from, names.at(-1)?.to ?? from));
    const others = names.map(({ name }) => name);
    const isWith = wordAt(sheet, i) === 'with' && !others.some((name) => ME.includes(name));
    return { team: { names: [...(isWith ? ['me'] : []), ...others].map(meant) }, copies };
  }
  return undefined;
}

/** `Nadia knits and Owen finishes`, both said. */
function stagesIn(sheet: Sheet, context: Context): TeamFound | undefined {
  const found = (verbs: readonly string[]): { from: number; named: Named } | undefined => {
    for (let i = 0; i < sheet.tokens.length; i++) {
      const named = nameAt(sheet, i, context);
      if (named !== undefined && verbs.includes(wordAt(sheet, named.to + 1) ?? '')) return { from: i, named };
    }
    return undefined;
  };
  const [knit, finish] = [found(KNITS), found(FINISHES)];
  if (knit === undefined || finish === undefined) return undefined;
  for (const { from, named } of [knit, finish]) claim(sheet, TEAM, ...indexesBetween(from, named.to + 1));
  const [a, b] = [meant(knit.named.name), meant(finish.named.name)];
  // One who does both is one at work, not two side by side.
  const team = a === b ? { names: [a] } : { names: [a, b], knit: a, finish: b };
  return { team, copies: undefined };
}

const meant = (name: string): string => (ME.includes(name) ? 'me' : name);

/** A maker known by name, whoever is meant by `me`, or anybody called with an `@`. */
function nameAt(sheet: Sheet, i: number, { team = [] }: Context): Named | undefined {
  const word = wordAt(sheet, i);
  if (word === undefined || !isFree(sheet, i)) return undefined;
  if (ME.includes(word)) return { name: word, to: i };
  const known = team.find((name) => phraseAt(sheet, i, name.split(' ')));
  if (known !== undefined) return { name: known, to: i + known.split(' ').length - 1 };
  return isMention(sheet, i) ? { name: word, to: i } : undefined;
}

function nextName(sheet: Sheet, i: number, context: Context): Named | undefined {
  const isJoint = (k: number): boolean => markAt(sheet, k) === 'comma' || wordAt(sheet, k) === 'and';
  if (!isJoint(i)) return undefined;
  return nameAt(sheet, isJoint(i + 1) ? i + 2 : i + 1, context);
}

const isMention = (sheet: Sheet, i: number): boolean =>
  wordAt(sheet, i) !== undefined && sheet.text[(sheet.tokens[i]?.start ?? 0) - 1] === '@';

/** `12 with Owen`, `24 between us`: a bare number right before. */
function copiesBefore(sheet: Sheet, from: number): number | undefined {
  const isOfThem = phraseAt(sheet, from - 2, ['of', 'them']);
  const at = isOfThem ? from - 3 : from - 1;
  const quantity = quantityAtIndex(sheet, at);
  const isCount =
    quantity !== undefined &&
    quantity.unit === undefined &&
    quantity.lo === quantity.hi &&
    Number.isInteger(quantity.lo) &&
    quantity.lo > 0 &&
    quantity.lo <= MOST_COPIES &&
    /^\d+$|^\p{L}/u.test(said(sheet, at)) &&
    markAt(sheet, at - 1) !== 'by';
  if (!isCount) return undefined;
  claim(sheet, COPIES, ...indexesBetween(at, from - 1));
  return quantity.lo;
}

const MOST_COPIES = 500;
