import { claim, indexesBetween, isFree, LEFT_OUT, phrasePlaces, type Sheet, saidBetween, wordAt } from '../sheet.js';
import { COLOURS, FIBRES, isKnownWord, YARN_WEIGHTS } from '../vocabulary.js';

type Run = { from: number; to: number };

/**
 * The yarn: by a name the maker has given, whole or so much of it as only one name has; else a new name of up to three
 * words before `yarn`, or of a weight or fibre behind `in` or `with`. A name typed longer than a known one is another.
 */
export function readYarn(sheet: Sheet, names: readonly string[]): string | undefined {
  const longestFirst = [...names].sort((a, b) => b.length - a.length);
  const whole = longestFirst.flatMap((name) => phrasePlaces(sheet, name).slice(0, 1))[0];
  const runs = whole === undefined ? runsOf(sheet) : [widened(sheet, whole)];
  for (const run of runs) {
    const name = nameOf(sheet, run, names);
    if (name === undefined) continue;
    claim(sheet, 'yarn', ...indexesBetween(run.from, run.to));
    if (wordAt(sheet, run.to + 1) === 'yarn') claim(sheet, 'yarn', run.to + 1);
    return name;
  }
  return undefined;
}

/** Words that tell one yarn from another, side by side; any unknown words right before `yarn` too. */
function runsOf(sheet: Sheet): Run[] {
  const runs: Run[] = [];
  for (let i = 0; i < sheet.tokens.length; i++) {
    if (!isFree(sheet, i)) continue;
    if (isYarnWord(sheet, i)) {
      const run = widened(sheet, { from: i, to: i });
      runs.push(run);
      i = run.to;
    } else if (wordAt(sheet, i) === 'yarn' && isUnknown(sheet, i - 1))
      runs.push(widened(sheet, { from: i - 1, to: i - 1 }));
  }
  return runs;
}

const MOST_WORDS = 4;

function widened(sheet: Sheet, { from, to }: Run): Run {
  let [first, last] = [from, to];
  while (last - first < MOST_WORDS && isYarnWord(sheet, last + 1)) last++;
  const isNamed = wordAt(sheet, last + 1) === 'yarn' || isIntroduced(sheet, { from: first - 1, to: last });
  while (last - first < MOST_WORDS - 1 && (isYarnWord(sheet, first - 1) || (isNamed && isUnknown(sheet, first - 1))))
    first--;
  return { from: first, to: last };
}

const isYarnWord = (sheet: Sheet, i: number): boolean => {
  const word = wordAt(sheet, i) ?? '';
  return isFree(sheet, i) && (COLOURS.has(word) || FIBRES.has(word) || YARN_WEIGHTS.has(word));
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
  const isMeant = wordAt(sheet, run.to + 1) === 'yarn' || isIntroduced(sheet, run);
  if (having.length > 0) {
    if (having.length === 1) return isMeant || !isPlain ? having[0] : undefined;
    if (isMeant) claim(sheet, LEFT_OUT, ...indexesBetween(run.from, run.to));
    return undefined;
  }
  const isLonger = names.some((name) => name.split(/[\s-]+/).every((word) => words.includes(word)));
  const isNew = wordAt(sheet, run.to + 1) === 'yarn' || isLonger || (isMeant && tellsYarn(words));
  return isNew ? typed : undefined;
}

/** A colour alone names no yarn, nor does `light`, which may be said of anything. */
const tellsYarn = (words: readonly string[]): boolean =>
  words.some((word) => FIBRES.has(word) || YARN_WEIGHTS.has(word)) &&
  (words.length > 1 || words.some((word) => !isKnownWord(word) && word !== 'medium'));

const ARTICLES = ['the', 'my', 'some', 'our', 'that', 'this', 'same', 'a'];

function isIntroduced(sheet: Sheet, { from }: Run): boolean {
  const before = ARTICLES.includes(wordAt(sheet, from - 1) ?? '') ? from - 2 : from - 1;
  return (
    ['in', 'with', 'using', 'from'].includes(wordAt(sheet, before) ?? '') ||
    / in$/i.test(saidBetween(sheet, before, before))
  );
}
