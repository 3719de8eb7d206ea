import type { Piece } from '../../../core/index.js';
import { claim, indexesBetween, phrasePlaces, type Sheet } from '../sheet.js';

/** The kind of piece that is named first, longer names before shorter ones at the same place. */
export function readPiece(sheet: Sheet, pieces: readonly Piece[]): { piece: Piece; at: number } | undefined {
  const places = pieces
    .flatMap((piece) =>
      piece.words.flatMap((words) => phrasePlaces(sheet, words).map((place) => ({ piece, ...place }))),
    )
    .sort((a, b) => a.from - b.from || b.to - a.to);
  const first = places[0];
  if (first === undefined) return undefined;
  for (const place of places.filter(({ piece }) => piece === first.piece)) {
    claim(sheet, 'piece', ...indexesBetween(place.from, place.to));
  }
  return { piece: first.piece, at: first.from };
}
