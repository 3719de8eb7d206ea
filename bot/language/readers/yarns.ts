import { endsClause } from '../clauses.js';
import {
  claim,
  indexesBetween,
  isFree,
  LEFT_OUT,
  markAt,
  phrasePlaces,
  type Sheet,
  saidBetween,
  WHICH,
  wordAt,
} from '../sheet.js';
import { COLOURS, FIBRES, isKnownWord, YARN_WEIGHTS } from '../vocabulary.js';

type Run = { from: number; to: number };

/** What words for a yarn are used as that name none. */
export const NO_YARN = `${LEFT_OUT}: no yarn`;

/**
 * The yarn: by a name the maker has given, whole or so much of it as only one name has; else a new name of up to three
 * words before `yarn`, or of a weight or fibre behind `in`, `with` or a comma. A name typed longer than a known one is
 * another. What could be several, or tells too little, is left out.
 */
export function readYarn(sheet: Sheet, names: readonly string[]): string | undefined {
  const longestFirst = [...names].sort((a, b) => b.length - a.length);
  const whole = longestFirst.flatMap((name) => phrasePlaces(sheet, name).slice(0, 1))[0];
  const own = new Set(names.flatMap((name) => name.split(/[\s-]+/)).filter((word) => !isKnownWord(word)));
  const runs = whole === undefined ? runsOf(sheet, own) : [widened(sheet, whole, own)];
  for (const run of runs) {
    const name = nameOf(sheet, run, names);
    if (name === undefined) continue;
    claimYarn(sheet, run, 'yarn');
    return name;
  }
  return undefined;
}

const isYarnNext = (sheet: Sheet, { to }: Run): boolean => wordAt(sheet, to + 1) === 'yarn';

const claimYarn = (sheet: Sheet, run: Run, as: string): void =>
  claim(sheet, as, ...indexesBetween(run.from, isYarnNext(sheet, run) ? run.to + 1 : run.to));

/** Words that tell one yarn from another, side by side; any unknown words right before `yarn` too. */
function runsOf(sheet: Sheet, own: ReadonlySet<string>): Run[] {
  const runs: Run[] = [];
  for (let i = 0; i < sheet.tokens.length; i++) {
    if (!isFree(sheet, i)) continue;
    if (isYarnWord(sheet, i, own)) {
      const run = widened(sheet, { from: i, to: i }, own);
      runs.push(run);
      i = run.to;
    } else if (wordAt(sheet, i) === 'yarn' && isUnknown(sheet, i - 1))
      runs.push(widened(sheet, { from: i - 1, to: i - 1 }, own));
  }
  return runs;
}

const MOST_WORDS = 4;

/** With the words beside it that tell yarns apart; an unknown word before a name, or before a weight alone, is of it. */
function widened(sheet: Sheet, { from, to }: Run, own: ReadonlySet<string>): Run {
  let [first, last] = [from, to];
  while (last - first < MOST_WORDS && isYarnWord(sheet, last + 1, own)) last++;
  const isNamed = isYarnNext(sheet, { from, to: last }) || isIntroduced(sheet, first - 1);
  const isWeight = indexesBetween(first, last).every((i) => YARN_WEIGHTS.has(wordAt(sheet, i) ?? ''));
  const takesUnknown = isNamed || isWeight || isApart(sheet, { from: first - 1, to: last });
  const isOfIt = (i: number): boolean => isYarnWord(sheet, i, own) || (takesUnknown && isUnknown(sheet, i));
  while (last - first < MOST_WORDS - 1 && isOfIt(first - 1)) first--;
  return { from: first, to: last };
}

const isYarnWord = (sheet: Sheet, i: number, own: ReadonlySet<string>): boolean => {
  const word = wordAt(sheet, i) ?? '';
  return (
    isFree(sheet, i) && !isThickness(sheet, i) && [COLOURS, FIBRES, YARN_WEIGHTS, own].some((words) => words.has(word))
  );
};

/** `4 cm thick` is of no yarn. */
const isThickness = (sheet: Sheet, i: number): boolean => {
  const before = sheet.tokens[i - 1];
  return wordAt(sheet, i) === 'thick' && before?.is === 'quantity' && before.quantity.unit !== undefined;
};

const isUnknown = (sheet: Sheet, i: number): boolean => {
  const word = wordAt(sheet, i);
  return word !== undefined && isFree(sheet, i) && word !== 'waste' && !isKnownWord(word);
};

function nameOf(sheet: Sheet, run: Run, names: readonly string[]): string | undefined {
  const typed = saidBetween(sheet, run.from, run.to).toLowerCase();
  const words = typed.split(/[\s-]+/);
  if (names.includes(typed)) return typed;
  const having = names.filter((name) => words.every((word) => name.split(/[\s-]+/).includes(word)));
  const isPlain = words.every((word) => isKnownWord(word) || YARN_WEIGHTS.has(word));
  const isMeant = isYarnNext(sheet, run) || isIntroduced(sheet, run.from);
  const isListed = isMeant || isApart(sheet, run);
  if (having.length > 1 && isListed) claimYarn(sheet, run, WHICH + oneOf(having));
  if (having.length === 1 && (isMeant || !isPlain)) return having[0];
  const isLonger = names.some((name) => name.split(/[\s-]+/).every((word) => words.includes(word)));
  const isNew = isYarnNext(sheet, run) || isLonger || (isListed && tellsYarn(words));
  if (having.length === 0 && isNew) return typed;
  if (isListed && !words.includes('fine')) claimYarn(sheet, run, NO_YARN);
  return undefined;
}

const oneOf = (names: readonly string[]): string => `${names.slice(0, -1).join(', ')} or ${names.at(-1)}`;

/** A colour alone names no yarn, nor does `light`, which may be said of anything. */
const tellsYarn = (words: readonly string[]): boolean =>
  words.some((word) => FIBRES.has(word) || YARN_WEIGHTS.has(word)) &&
  (words.length > 1 || words.some((word) => !isKnownWord(word) && word !== 'medium'));

const ARTICLES = ['the', 'my', 'some', 'our', 'that', 'this', 'same', 'a'];

function isIntroduced(sheet: Sheet, from: number): boolean {
  const before = ARTICLES.includes(wordAt(sheet, from - 1) ?? '') ? from - 2 : from - 1;
  return (
    ['in', 'with', 'using', 'from'].includes(wordAt(sheet, before) ?? '') ||
    / in$/i.test(saidBetween(sheet, before, before))
  );
}

/** True for words between marks or the ends: `, oat medium`, `, grey medium on the 52`. */
const isApart = (sheet: Sheet, { from, to }: Run): boolean =>
  (from === 0 || ['comma', 'stop'].includes(markAt(sheet, from - 1) ?? '')) &&
  (endsClause(sheet, to + 1) || ['on', 'at'].includes(wordAt(sheet, to + 1) ?? ''));
