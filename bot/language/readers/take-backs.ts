import { sentenceAt } from '../clauses.js';
import type { Requested, RequestReader } from '../requested.js';
import { claim, indexesBetween, markAt, quantityAtIndex, type Sheet, saidBetween, wordAt } from '../sheet.js';
import { isLabelWord } from '../vocabulary.js';

const VERBS = ['drop', 'forget', 'delete', 'remove', 'discard', 'scratch'];
const ARTICLES = ['the', 'that', 'my', 'this'];
const OF_A_PIECE = ['zip', 'zipper', 'closure', 'ring', 'rings', 'zips', 'strap', 'needle', 'needles', 'machine'];

/** A measurement named by its figures: `drop the 6`, `forget the 60 rows`. The number alone of a machine names that. */
export const readTakeBacks: RequestReader = (sheet, { machines }) =>
  sheet.tokens
    .flatMap((_, i): Requested[] => {
      const isVerb =
        VERBS.includes(wordAt(sheet, i) ?? '') || (wordAt(sheet, i) === 'take' && wordAt(sheet, i + 1) === 'back');
      if (
        !isVerb ||
        (i > 0 &&
          sheet.tokens[i - 1]?.is !== 'mark' &&
          !['please', 'and', 'ok', 'no'].includes(wordAt(sheet, i - 1) ?? ''))
      )
        return [];
      const article = wordAt(sheet, i) === 'take' ? i + 2 : i + 1;
      const from = ARTICLES.includes(wordAt(sheet, article) ?? '') ? article + 1 : article;
      const quantity = quantityAtIndex(sheet, from);
      const to = endOf(sheet, from);
      const isOther = indexesBetween(from, to).some((k) => OF_A_PIECE.includes(wordAt(sheet, k) ?? ''));
      const isMachine = wordAt(sheet, i) === 'forget' && to === from && machines.includes(String(quantity?.lo));
      if (quantity === undefined || from === i + 1 || isOther || isMachine) return [];
      const rest = indexesBetween(to + 1, sentenceAt(sheet, i).to - 1);
      const isReason = rest.every((k) => sheet.tokens[k]?.is !== 'quantity');
      claim(sheet, 'taken back', ...indexesBetween(i, to), ...(isReason ? rest : []));
      return [{ at: i, meaning: { kind: 'take_back', said: saidBetween(sheet, from, to) } }];
    })
    .slice(0, 1);

/** Words up to the end of what is named: a full stop, or a comma that no figure follows. */
function endOf(sheet: Sheet, from: number): number {
  let to = from;
  for (let i = from + 1; i < sheet.tokens.length; i++) {
    const isFigure = sheet.tokens[i]?.is === 'quantity' || isLabelWord(wordAt(sheet, i) ?? '');
    const isJoint =
      ['in', 'one', 'by', 'over', 'to'].includes(wordAt(sheet, i) ?? '') ||
      ['by', 'comma'].includes(markAt(sheet, i) ?? '');
    if (isFigure) to = i;
    else if (!isJoint) break;
  }
  return to;
}
