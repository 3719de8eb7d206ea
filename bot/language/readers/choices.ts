import type { Piece } from '../../../core/index.js';
import type { Value } from '../../request.js';
import { claim, indexesBetween, isFree, LEFT_OUT, phrasePlaces, type Sheet, saidBetween, wordAt } from '../sheet.js';

const REFUSALS = ['no', 'without', 'skip', 'lose', 'drop', 'remove', 'omit', 'minus'];

/**
 * Choices a piece leaves open (`cast off`, `full stitch`), and what is refused (`no rings`).
 * @param isNew true for a request that changes no plan: what can only be taken back, not refused, is then left out
 */
export function readChoices(sheet: Sheet, piece: Piece, isNew: boolean): Record<string, Value | null> {
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
      const refused = REFUSALS.includes(wordAt(sheet, i) ?? '') && ask.words.includes(wordAt(sheet, at) ?? '');
      if (!refused || !isFree(sheet, at)) return;
      const isTakenBack = ask.defaultMm === undefined;
      claim(sheet, isTakenBack && isNew ? LEFT_OUT : `no ${ask.label.toLowerCase()}`, ...indexesBetween(i, at));
      if (!isTakenBack) values[id] = { is: 'length', mm: 0, said: saidBetween(sheet, i, at) };
      else if (!isNew) values[id] = null;
    });
  }
  return values;
}
