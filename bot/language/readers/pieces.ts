import { mmPer, type Piece } from '../../../core/index.js';
import type { Context } from '../context.js';
import { claim, indexesBetween, markAt, phraseAt, quantityAtIndex, type Sheet, wordAt } from '../sheet.js';

/** Where a kind of piece is named. */
export type Place = { piece: Piece; from: number; to: number };

type Name = { piece: Piece; words: readonly string[]; isSizedOnly: boolean };

const registries = new WeakMap<readonly Piece[], Map<string, Name[]>>();

/** The names of pieces by their first word, gathered once for a registry. */
function namesOf(pieces: readonly Piece[]): Map<string, Name[]> {
  const known = registries.get(pieces);
  if (known !== undefined) return known;
  const names = new Map<string, Name[]>();
  const add = (piece: Piece, name: string, isSizedOnly: boolean): void => {
    const words = name.split(' ');
    const [first = ''] = words;
    names.set(first, [...(names.get(first) ?? []), { piece, words, isSizedOnly }]);
  };
  for (const piece of pieces) {
    for (const name of piece.words) add(piece, name, false);
    for (const name of piece.sizedWords ?? []) add(piece, name, true);
  }
  registries.set(pieces, names);
  return names;
}

/** Every place where a piece is named, left to right, longer names before shorter ones at the same place. */
export function piecePlaces(sheet: Sheet, pieces: readonly Piece[]): Place[] {
  const names = namesOf(pieces);
  return sheet.tokens.flatMap((_, from) => {
    const named = names.get(wordAt(sheet, from) ?? '');
    if (named === undefined) return [];
    const places = named.flatMap(({ piece, words, isSizedOnly }) => {
      const to = from + words.length - 1;
      const isThere = phraseAt(sheet, from, words) && (!isSizedOnly || isSized(sheet, from, to));
      return isThere ? [{ piece, from, to }] : [];
    });
    return places.sort((a, b) => b.to - a.to);
  });
}

/** `ball 10 cm across`, `a 4 in ball`, `balls, 10 cm`. */
const isSized = (sheet: Sheet, from: number, to: number): boolean =>
  wordAt(sheet, to + 1) !== 'of' &&
  [from - 1, to + 1, markAt(sheet, to + 1) === 'comma' ? to + 2 : to + 1].some((i) => isLength(sheet, i));

const isLength = (sheet: Sheet, i: number): boolean => mmPer(quantityAtIndex(sheet, i)?.unit) !== undefined;

/** The kind of piece that is named first. */
export function readPiece(sheet: Sheet, pieces: readonly Piece[]): Piece | undefined {
  const places = piecePlaces(sheet, pieces);
  const first = places[0]?.piece;
  for (const { from, to } of places.filter(({ piece }) => piece === first)) {
    claim(sheet, 'piece', ...indexesBetween(from, to));
  }
  return first;
}

/** True where several of the piece are named: `hats`. */
export const isPlural = (sheet: Sheet): boolean =>
  sheet.uses.some((use, i) => use === 'piece' && wordAt(sheet, i)?.endsWith('s') === true);

const THE_ONE = ['the', 'this', 'that'];

/** True for the kind of the plan in hand while no question is open. */
export const isOfHand = ({ id }: Piece, { subjectPiece, holes }: Pick<Context, 'subjectPiece' | 'holes'>): boolean =>
  id === subjectPiece && holes.length === 0;

/** `make the pouch 12 wide`: the plan in hand, by the name of its piece. */
export const isNamedAgain = (sheet: Sheet, piece: Piece, context: Pick<Context, 'subjectPiece' | 'holes'>): boolean =>
  isOfHand(piece, context) && THE_ONE.includes(wordAt(sheet, sheet.uses.indexOf('piece') - 1) ?? '');

/** True for a piece that is asked for by needles of its own. */
export const takesNeedles = (piece: Piece): boolean =>
  Object.values(piece.asks).some((ask) => ask.is === 'count' && ask.words.includes('needles'));
