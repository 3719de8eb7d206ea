import { mmPer, type Piece, type Quantity } from '../../../core/index.js';
import type { Value } from '../../request.js';
import type { Context } from '../context.js';
import { type BareUnit, sidesValue } from '../lengths.js';
import {
  claim,
  indexesBetween,
  isFree,
  LEFT_OUT,
  markAt,
  quantityAtIndex,
  type Sheet,
  saidBetween,
  wordAt,
} from '../sheet.js';
import { isKnownWord } from '../vocabulary.js';

/** Before a thing that a piece must take. */
const CUES = 'for take takes taking hold holds holding fit fits fitting carry carries carrying contain contains'.split(
  ' ',
);
const MOST_BEFORE = 8;
/** `what about a book 21 x 15 x 3 cm`. */
const ASKING = ['what', 'how'];
/** Behind its sides, without a name before them: `a 163 x 78 x 9 mm phone`. */
const MOST_BEHIND = 2;
const THICK = ['thick', 'deep'];

type Sides = readonly [Quantity, Quantity, Quantity];
/** A thing with its three sides: its words, its cue among them, and where its name begins. */
type Thing = { sides: Sides; cue: number | undefined; from: number; to: number };

/**
 * The thing that a piece must take, by three lengths joined by `x` or `by` behind a word such as `for` or `holds`:
 * `it must take a tablet 250 x 175 x 8 mm`. Where its sides are what was asked for no such word is needed.
 */
export function thingIn(sheet: Sheet, { holes, pieces }: Context): Thing | undefined {
  for (const first of sheet.tokens.keys()) {
    const sides = sidesAt(sheet, first);
    if (sides === undefined) continue;
    const cue = cueBefore(sheet, first);
    const isAsked = pieces.some(({ asks }) => holes.some((id) => asks[id]?.is === 'contents'));
    if (cue === undefined && !isAsked) continue;
    const from = cue === undefined ? first : cue + 1;
    const isNamed = indexesBetween(from, first - 1).some((i) => !isKnownWord(wordAt(sheet, i) ?? 'a'));
    return { sides: sides.all, cue, from, to: isNamed ? sides.to : nameBehind(sheet, sides.to) };
  }
  return undefined;
}

/** What goes in and is told by its sides; a size `for` anyone or anything else is that of the piece. */
const FLAT =
  'phone mobile smartphone tablet book notebook sketchbook laptop reader camera console calculator diary planner passport wallet'.split(
    ' ',
  );

/** A thing to go in of which two sides are told and not how thick it is: `pouch for a phone 6 x 3 in`. */
export function withoutThickness(sheet: Sheet, piece: Piece): string | undefined {
  if (!Object.values(piece.asks).some(({ is }) => is === 'contents')) return undefined;
  for (const first of sheet.tokens.keys()) {
    const isPair = markAt(sheet, first + 1) === 'by' && markAt(sheet, first + 3) !== 'by';
    if (!isPair || sideAt(sheet, first) === undefined || sideAt(sheet, first + 2) === undefined) continue;
    const cue = cueBefore(sheet, first);
    if (cue === undefined) continue;
    const isFlat = indexesBetween(cue + 1, first - 1).some((i) => FLAT.includes(wordAt(sheet, i) ?? ''));
    if (isFlat) return `${piece.label.toLowerCase()} for ${saidBetween(sheet, cue + 1, first + 2)}`;
  }
  return undefined;
}

/** What the piece must take, claimed; left out for a piece that is not sized by it. */
export function readContents(
  sheet: Sheet,
  piece: Piece,
  bare: BareUnit,
  thing: Thing | undefined,
): Record<string, Value> {
  if (thing === undefined) return {};
  const { sides, cue = thing.from, from, to } = thing;
  const [id, ask] = Object.entries(piece.asks).find(([, one]) => one.is === 'contents') ?? [];
  claim(sheet, ask?.label ?? LEFT_OUT, ...indexesBetween(ask === undefined ? from : cue, to));
  if (id === undefined || ask?.is !== 'contents') return {};
  return { [id]: sidesValue(sides, bare, saidBetween(sheet, from, to), ask) };
}

/** Three lengths from an index on: `21 x 15 x 3 cm`, `21 by 15 cm and 3 cm thick`. */
function sidesAt(sheet: Sheet, first: number): { all: Sides; to: number } | undefined {
  const [a, b] = [sideAt(sheet, first), sideAt(sheet, first + 2)];
  if (a === undefined || b === undefined || markAt(sheet, first + 1) !== 'by') return undefined;
  const joint = first + 3;
  const isBy = markAt(sheet, joint) === 'by';
  const isApart = markAt(sheet, joint) === 'comma' || wordAt(sheet, joint) === 'and';
  const at = isBy || isApart ? joint + 1 : joint;
  const c = sideAt(sheet, at);
  const isThick = THICK.includes(wordAt(sheet, at + 1) ?? '');
  // A fourth is one too many.
  if (c === undefined || !(isBy || isThick) || markAt(sheet, at + 1) === 'by') return undefined;
  return { all: [a, b, c], to: isThick ? at + 1 : at };
}

function sideAt(sheet: Sheet, i: number): Quantity | undefined {
  const quantity = quantityAtIndex(sheet, i);
  const isLength = quantity !== undefined && (quantity.unit === undefined || mmPer(quantity.unit) !== undefined);
  return isLength && quantity.lo === quantity.hi && quantity.halfWidth === undefined ? quantity : undefined;
}

/** The cue before a thing: over its name, free words and a comma, but over no other number. */
function cueBefore(sheet: Sheet, first: number): number | undefined {
  for (let i = first - 1; i >= Math.max(0, first - MOST_BEFORE) && isFree(sheet, i); i--) {
    if (CUES.includes(wordAt(sheet, i) ?? '')) return i;
    if (wordAt(sheet, i) === 'about' && ASKING.includes(wordAt(sheet, i - 1) ?? '')) return i;
    const mark = markAt(sheet, i);
    if (sheet.tokens[i]?.is === 'quantity' || (mark !== undefined && !['comma', 'equals'].includes(mark)))
      return undefined;
  }
  return undefined;
}

function nameBehind(sheet: Sheet, last: number): number {
  let to = last;
  while (to - last < MOST_BEHIND && isFree(sheet, to + 1) && !isKnownWord(wordAt(sheet, to + 1) ?? 'a')) to++;
  return to;
}
