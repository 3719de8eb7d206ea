import { mmPer, pieceById, type Quantity, quantityAt } from '../../../core/index.js';
import type { Meaning, Size, Value } from '../../request.js';
import type { Context } from '../context.js';
import { inFigures } from '../number-words.js';
import { personsAt } from '../persons.js';
import { claim, type Sheet, said, wordAt } from '../sheet.js';
import { nameOf, personOf } from '../spread.js';
import { fieldOf } from './fields.js';
import { focusOf } from './focus.js';

const STARTS = ['start', 'begin', 'starting'];
/** Words that may stand beside the name of a size. */
const BESIDE =
  'steps instructions rows yarn start begin starting knitting knit for the a an just only choose pick take plan make it use go with size one please ok okay show me do want i lets'.split(
    ' ',
  );
const ONE = ['single', 'one'];
const OF_ONE = ['just', 'only', 'size', 'single'];
/** Two lengths are the same when they differ by less than a ruler shows. */
const SAME_MM = 0.5;

/** One of the sizes in hand: `steps for 52`, `start the 3 months`, `just the 48 cm one`; or one, and not said which. */
export function sizeChosen(sheet: Sheet, { sizes, holes, subjectPiece }: Context): Meaning[] | undefined {
  const piece = pieceById(subjectPiece ?? '');
  if (sizes === undefined || holes.length > 0 || piece === undefined) return undefined;
  const words = sheet.tokens.map((_, i) => wordAt(sheet, i) ?? said(sheet, i).toLowerCase());
  const isBeside = (i: number): boolean =>
    BESIDE.includes(words[i] ?? '') || fieldOf(piece, words[i] ?? '') !== undefined;
  const at = words.findIndex((_, i) => !isBeside(i));
  if (words.every((word, i) => isBeside(i) || ONE.includes(word))) return whichOne(words, piece);
  const place = placeAt(sheet, at, sizes);
  if (place === undefined || !words.every((_, i) => (i >= at && i <= place.to) || isBeside(i))) return undefined;
  const focus = focusOf(sheet).filter((what) => what !== 'rows');
  claim(sheet, 'one of the sizes', ...sheet.tokens.keys());
  const chosen: Meaning = { kind: 'size', index: place.index, focus };
  return words.some((word) => STARTS.includes(word)) ? [chosen, { kind: 'start' }] : [chosen];
}

/** `make it single`, `just one size`; not where single is something that the piece can be. */
function whichOne(words: readonly string[], piece: NonNullable<ReturnType<typeof pieceById>>): Meaning[] | undefined {
  const isOfPiece = Object.values(piece.asks).some(
    (ask) => ask.is === 'choice' && ask.options.some((option) => option.words.includes('single')),
  );
  const isOne = words.some((word) => ONE.includes(word)) && words.some((word) => OF_ONE.includes(word));
  return isOne && !isOfPiece ? [{ kind: 'which_size' }] : undefined;
}

/** The size that is named at an index, by its number or by its persons. */
function placeAt(sheet: Sheet, at: number, sizes: readonly Size[]): { index: number; to: number } | undefined {
  const person = personsAt(sheet, at)?.persons;
  const who = person?.length === 1 && person[0] !== undefined ? personOf(person[0].told) : undefined;
  const byName = who === undefined ? -1 : sizes.findIndex((size) => size.label === nameOf(who));
  if (byName >= 0) return { index: byName, to: person?.[0]?.to ?? at };
  const token = sheet.tokens[at];
  if (token?.is !== 'quantity') return undefined;
  const index = sizes.findIndex(({ values }) => {
    const [value, ...others] = Object.values(values);
    return value !== undefined && others.length === 0 && isSame(token.quantity, value);
  });
  return index < 0 ? undefined : { index, to: at };
}

/** True for a number that says what a size says, in its own unit or without one. */
function isSame({ lo, hi, unit }: Quantity, value: Value): boolean {
  if (value.assumed === 'body') return false;
  const typed = quantityAt(inFigures(value.said ?? '').text, 0);
  if (unit === undefined) return typed?.lo === lo && typed.hi === hi;
  const mm = mmPer(unit) ?? Number.NaN;
  const [from, to] =
    value.is === 'length' ? [value.mm, value.mm] : value.is === 'window' ? [value.loMm, value.hiMm] : [];
  return Math.abs(lo * mm - (from ?? Number.NaN)) < SAME_MM && Math.abs(hi * mm - (to ?? Number.NaN)) < SAME_MM;
}
