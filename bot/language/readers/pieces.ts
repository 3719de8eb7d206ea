import type { Piece } from '../../../core/index.js';
import { claim, indexesBetween, phrasePlaces, type Sheet, wordAt } from '../sheet.js';

/** Where a kind of piece is named. */
export type Place = { piece: Piece; from: number; to: number };

/** Every place where a piece is named, left to right, longer names before shorter ones at the same place. */
export const piecePlaces = (sheet: Sheet, pieces: readonly Piece[]): Place[] =>
  pieces
    .flatMap((piece) =>
      piece.words.flatMap((words) => phrasePlaces(sheet, words).map((place) => ({ piece, ...place }))),
    )
    .sort((a, b) => a.from - b.from || b.to - a.to);

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
