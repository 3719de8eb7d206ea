import type { Piece } from '../../../core/index.js';
import { holdsAny, indexesBetween, phraseAt, type Sheet, saidBetween, wordAt } from '../sheet.js';
import { PLAN_WORDS } from '../vocabulary.js';
import { piecePlaces } from './pieces.js';
import { countsIn } from './tension.js';

/** Behind it these make it a word for yarn: `sock yarn`. */
const OF_YARN = ['yarn', 'yarns', 'weight', 'wool', 'gauge'];

/** Names of what no kind makes, the longest first, and the words that they begin with. */
type Names = { all: readonly string[][]; first: ReadonlySet<string | undefined> };

const registries = new WeakMap<readonly Piece[], Names>();

function namesOf(pieces: readonly Piece[]): Names {
  const known = registries.get(pieces);
  if (known !== undefined) return known;
  const all = pieces.flatMap(({ nearestTo = [] }) => nearestTo.flatMap(({ words }) => words.map((w) => w.split(' '))));
  const names = { all: all.sort((a, b) => b.length - a.length), first: new Set(all.map(([word]) => word)) };
  registries.set(pieces, names);
  return names;
}

/** So many tokens are a name and its size. */
const SHORT = 8;

/**
 * The first thing wanted that no kind makes and one comes near to, as it was typed: `socks`, but no `fingerless gloves`.
 * Rows of a swatch are measured of whatever it was.
 */
export function unmadeIn(sheet: Sheet, pieces: readonly Piece[]): string | undefined {
  const names = namesOf(pieces);
  if (!holdsAny(sheet, names.first)) return undefined;
  const isAsked = sheet.tokens.some((_, i) => PLAN_WORDS.includes(wordAt(sheet, i) ?? ''));
  if ((!isAsked && sheet.tokens.length > SHORT) || countsIn(sheet).length > 0) return undefined;
  const made = piecePlaces(sheet, pieces);
  for (const from of sheet.tokens.keys()) {
    const words = names.all.find((name) => phraseAt(sheet, from, name));
    if (words === undefined) continue;
    const to = from + words.length - 1;
    const isPart = made.some((one) => one.from <= from && one.to >= to);
    // `A hat and mittens` is the hat; a `tea cosy` is no cosy.
    const isBeside = made.some((one) => one.from < from || one.to > to);
    if (isPart || isBeside || OF_YARN.includes(wordAt(sheet, to + 1) ?? '')) continue;
    if (indexesBetween(from, to).some((i) => sheet.uses[i] !== undefined)) continue;
    return saidBetween(sheet, from, to);
  }
  return undefined;
}
