import { MM_PER, mmPer } from '../../../core/index.js';
import type { Edit, Stripes } from '../../request.js';
import { bareAt, endsClause } from '../clauses.js';
import type { Context } from '../context.js';
import {
  claim,
  indexesBetween,
  isFree,
  leftOutFor,
  markAt,
  phrasePlaces,
  quantityAtIndex,
  type Sheet,
  saidBetween,
  wordAt,
} from '../sheet.js';
import { COLOURS, COUNT_NOUNS, isKnownWord } from '../vocabulary.js';
import { piecePlaces } from './pieces.js';
import { isThing } from './things.js';

const STRIPED = ['stripe', 'stripes', 'striped', 'striping'];
const NONE = ['no stripes', 'without stripes', 'no more stripes', 'drop the stripes', 'remove the stripes'];
const MEET = ['make it meet', 'make them meet', 'make the stripes meet', 'stripes that meet'];
const JOINTS = [
  'and',
  'then',
  'plus',
  'of',
  'in',
  'with',
  'are',
  'is',
  'alternating',
  'each',
  'x',
  'high',
  'tall',
  'wide',
  'a',
];
const SHADES = ['light', 'bright', 'deep', 'off', 'hot'];
const MOST_WORDS = 3;
/** A stripe is measured in these; a longer unit tells of yarn. */
const MOST_UNIT_MM = MM_PER.ft;

type Stripe = Stripes['repeat'][number];
type Found = { repeat: Stripe[]; used: number[] };

/**
 * The stripes that a message asks for: `in stripes of 4 red 2 cream`, `2 cm stripes in red and white`, `even stripes of
 * 3 colours`, `no stripes`; with a plan in hand the list alone, `4 red, 2 cream`. Claims its words.
 * @returns undefined where it asks for none, null where it takes them away
 */
export function readStripes(sheet: Sheet, context: Context): Edit['stripes'] {
  if (!sheet.tokens.some((_, i) => mayTell(wordAt(sheet, i)))) return undefined;
  const draft: Sheet = { ...sheet, uses: [...sheet.uses] };
  for (const { from, to } of piecePlaces(sheet, context.pieces)) claim(draft, 'piece', ...indexesBetween(from, to));
  const isOfPlan = context.subjectPiece !== undefined || piecePlaces(sheet, context.pieces).length > 0;
  const stripes = stripesIn(draft, isOfPlan);
  claim(sheet, STRIPES, ...sheet.tokens.flatMap((_, i) => (draft.uses[i] === STRIPES ? [i] : [])));
  claim(sheet, UNTOLD, ...sheet.tokens.flatMap((_, i) => (draft.uses[i] === UNTOLD ? [i] : [])));
  return stripes;
}

const STRIPES = 'stripes';
/** Stripes wanted, and not said which. */
const UNTOLD = leftOutFor('say it as "stripes of 4 red 2 cream"');

/** True where stripes are wanted and not said which. */
export const isUntold = (sheet: Sheet): boolean => sheet.uses.includes(UNTOLD);

/** True for a word without which no stripes are told. */
const mayTell = (word = ''): boolean => STRIPED.includes(word) || word === 'meet' || COLOURS.has(word);

function stripesIn(sheet: Sheet, isOfPlan: boolean): Edit['stripes'] {
  const none = placeOf(sheet, NONE);
  if (none !== undefined) return taken(sheet, indexesBetween(none.from, none.to), null);
  const meet = isOfPlan ? placeOf(sheet, MEET) : undefined;
  if (meet !== undefined) return taken(sheet, indexesBetween(meet.from, meet.to), 'meet');
  const cues = sheet.tokens.flatMap((_, i) => (STRIPED.includes(wordAt(sheet, i) ?? '') ? [i] : []));
  const [cue] = cues;
  const found = cue !== undefined ? stripesBy(sheet, cue) : isOfPlan ? listAlone(sheet) : undefined;
  if (found === undefined) {
    claim(sheet, UNTOLD, ...cues);
    return undefined;
  }
  const at = [...found.used, ...cues].sort((a, b) => a - b);
  const said = saidBetween(sheet, at[0] ?? 0, at.at(-1) ?? 0);
  return taken(sheet, [...at, ...introduced(sheet, at[0] ?? 0)], { repeat: found.repeat, said });
}

function taken(sheet: Sheet, at: readonly number[], stripes: Edit['stripes']): Edit['stripes'] {
  claim(sheet, STRIPES, ...at);
  return stripes;
}

const placeOf = (sheet: Sheet, phrases: readonly string[]) =>
  phrases.flatMap((phrase) => phrasePlaces(sheet, phrase))[0];

/** Words that lead to the stripes: `in`, `knit it in`. */
const introduced = (sheet: Sheet, first: number): number[] =>
  ['in', 'with'].includes(wordAt(sheet, first - 1) ?? '') ? [first - 1] : [];

/** What the words about `stripes` tell, behind it or before it. */
function stripesBy(sheet: Sheet, cue: number): Found | undefined {
  const even = evenBy(sheet, cue);
  if (even !== undefined) return even;
  const each = heightBefore(sheet, cue) ?? heightAt(sheet, pastJoints(sheet, cue + 1));
  if (each !== undefined) {
    const colours = coloursFrom(sheet, Math.max(cue, each.to) + 1);
    if (colours.names.length > 1)
      return {
        repeat: colours.names.map((colour) => ({ colour, ...each.height })),
        used: [...indexesBetween(each.from, each.to), ...colours.used],
      };
  }
  const behind = listFrom(sheet, cue + 1);
  if (behind.repeat.length > 1) return behind;
  return sheet.tokens.map((_, i) => listFrom(sheet, i)).find(({ repeat }) => repeat.length > 1);
}

/** `even stripes of 3 colours`, `3 colours in even stripes`, `even stripes in red, white and blue`. */
function evenBy(sheet: Sheet, cue: number): Found | undefined {
  if (!['even', 'equal'].includes(wordAt(sheet, cue - 1) ?? '')) return undefined;
  const counted = sheet.tokens.findIndex(
    (_, i) => bareAt(sheet, i) !== undefined && /^colou?rs?$/.test(wordAt(sheet, i + 1) ?? ''),
  );
  const count = bareAt(sheet, counted);
  if (count !== undefined && Number.isInteger(count) && count > 1) {
    const repeat = Array.from({ length: Math.min(count, MOST_COUNTED) }, (_, i) => ({ colour: `colour ${i + 1}` }));
    return { repeat, used: [cue - 1, counted, counted + 1] };
  }
  const { names, used } = coloursFrom(sheet, cue + 1);
  const isPlain = heightAt(sheet, pastJoints(sheet, cue + 1)) === undefined;
  return isPlain && names.length > 1
    ? { repeat: names.map((colour) => ({ colour })), used: [cue - 1, ...used] }
    : undefined;
}

/** Enough for core to say that these are too many. */
const MOST_COUNTED = 100;

/** A list of stripes without the word: a clause of its own, all its colours well known, or the message, one of them so. */
function listAlone(sheet: Sheet): Found | undefined {
  return sheet.tokens
    .flatMap((_, i) =>
      i === 0 || sheet.tokens[i - 1]?.is === 'mark' || wordAt(sheet, i - 1) === 'in' ? [listFrom(sheet, i)] : [],
    )
    .find(({ repeat, used }) => {
      if (repeat.length < 2 || !endsClause(sheet, (used.at(-1) ?? 0) + 1)) return false;
      const known = repeat.filter(({ colour }) => colour.split(/\s+/).some((word) => COLOURS.has(word)));
      const isAll = pastJoints(sheet, 0) === used[0] && (used.at(-1) ?? 0) >= sheet.tokens.length - 2;
      return known.length === repeat.length || (isAll && known.length > 0);
    });
}

/** `4 red, 2 cream`, `1 in rust, 2 in oat`, `4 rows of red and 2 of cream`, `red 4, cream 2`. */
function listFrom(sheet: Sheet, from: number): Found {
  const found: Found = { repeat: [], used: [] };
  for (let i = pastJoints(sheet, from); i < sheet.tokens.length; ) {
    const height = heightAt(sheet, i);
    const colour = colourAt(sheet, height === undefined ? i : pastJoints(sheet, height.to + 1));
    const behind = height === undefined && colour !== undefined ? rowsAt(sheet, colour.to + 1) : undefined;
    const tall = height ?? behind;
    if (tall === undefined || colour === undefined) break;
    const to = Math.max(tall.to, colour.to);
    found.repeat.push({ colour: colour.name, ...tall.height });
    found.used.push(...indexesBetween(found.used.length === 0 ? i : (found.used.at(-1) ?? i) + 1, to));
    i = pastJoints(sheet, to + 1);
  }
  return found;
}

function coloursFrom(sheet: Sheet, from: number): { names: string[]; used: number[] } {
  const names: string[] = [];
  let last = from - 1;
  for (let i = pastJoints(sheet, from); ; ) {
    const colour = colourAt(sheet, i);
    if (colour === undefined) return { names, used: names.length === 0 ? [] : indexesBetween(from, last) };
    names.push(colour.name);
    last = colour.to;
    i = pastJoints(sheet, last + 1);
  }
}

function pastJoints(sheet: Sheet, from: number): number {
  let i = from;
  while (
    ['comma', 'equals', 'slash'].includes(markAt(sheet, i) ?? '') ||
    (isFree(sheet, i) && JOINTS.includes(wordAt(sheet, i) ?? ''))
  )
    i++;
  return i;
}

type Height = { from: number; to: number; height: Pick<Stripe, 'rows' | 'heightMm'> };

function rowsAt(sheet: Sheet, i: number): Height | undefined {
  const found = heightAt(sheet, i);
  return found?.height.rows === undefined ? undefined : found;
}

/** Rows, or a length, at an index: `4`, `4 rows`, `2 cm`. */
function heightAt(sheet: Sheet, i: number): Height | undefined {
  const rows = bareAt(sheet, i);
  const isCounted = COUNT_NOUNS[wordAt(sheet, i + 1) ?? ''] === 'rows';
  if (rows !== undefined) return { from: i, to: isCounted ? i + 1 : i, height: { rows } };
  const quantity = quantityAtIndex(sheet, i);
  const per = mmPer(quantity?.unit);
  if (quantity === undefined || per === undefined || per > MOST_UNIT_MM || quantity.lo !== quantity.hi)
    return undefined;
  return { from: i, to: i, height: { heightMm: quantity.lo * per } };
}

/** `2 cm stripes`, `4 row stripes`. */
function heightBefore(sheet: Sheet, cue: number): Height | undefined {
  const at = COUNT_NOUNS[wordAt(sheet, cue - 1) ?? ''] === 'rows' ? cue - 2 : cue - 1;
  return heightAt(sheet, at);
}

/** Up to three words that may name a colour; any that nobody knows may. */
function colourAt(sheet: Sheet, from: number): { name: string; to: number } | undefined {
  let to = from;
  while (to - from < MOST_WORDS && isColourWord(sheet, to)) to++;
  if (to === from) return undefined;
  return { name: saidBetween(sheet, from, to - 1).toLowerCase(), to: to - 1 };
}

function isColourWord(sheet: Sheet, i: number): boolean {
  const word = wordAt(sheet, i);
  if (word === undefined || !isFree(sheet, i) || isThing(word) || STRIPED.includes(word) || COUNT_NOUNS[word])
    return false;
  if (COLOURS.has(word)) return true;
  if (SHADES.includes(word)) return isColourWord(sheet, i + 1);
  return !isKnownWord(word) && !/\d/.test(word) && !JOINTS.includes(word);
}
