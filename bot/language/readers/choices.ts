import type { Piece } from '../../../core/index.js';
import type { Value } from '../../request.js';
import { claim, indexesBetween, isFree, phrasePlaces, type Sheet, saidBetween, wordAt } from '../sheet.js';

/** Choices a piece leaves open (`cast off`, `full stitch`), and what is refused (`no rings`). */
export function readChoices(sheet: Sheet, piece: Piece): Record<string, Value | null> {
  const values: Record<string, Value | null> = {};
  for (const [id, ask] of Object.entries(piece.asks)) {
    if (ask.is === 'choice') {
      for (const option of ask.options) {
        for (const { from, to } of option.words.flatMap((words) => phrasePlaces(sheet, words))) {
          claim(sheet, `${ask.label}: ${option.label}`, ...indexesBetween(from, to));
          values[id] = { is: 'choice', id: option.id, said: saidBetween(sheet, from, to) };
        }
      }
    }
    if (ask.is !== 'length') continue;
    sheet.tokens.forEach((_, i) => {
      const at = ['a', 'any', 'the'].includes(wordAt(sheet, i + 1) ?? '') ? i + 2 : i + 1;
      const refused = ['no', 'without'].includes(wordAt(sheet, i) ?? '') && ask.words.includes(wordAt(sheet, at) ?? '');
      if (!refused || !isFree(sheet, at)) return;
      claim(sheet, `no ${ask.label.toLowerCase()}`, i, at);
      values[id] = ask.defaultMm === undefined ? null : { is: 'length', mm: 0, said: saidBetween(sheet, i, at) };
    });
  }
  return values;
}
