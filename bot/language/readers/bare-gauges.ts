import { endsClause } from '../clauses.js';
import { markAt, quantityAtIndex, type Sheet, saidBetween, wordAt } from '../sheet.js';

const BETWEEN = ['is', 'of', 'at', 'was'];
/** Behind a number these make it a rate of nothing named. */
const RATES = ['to', 'per', 'an'];

/** A gauge that says neither what is counted nor over how much: `gauge 5`, `my gauge is 5`. The words. */
export function bareGaugeIn(sheet: Sheet): string | undefined {
  for (const i of sheet.tokens.keys()) {
    let at = markAt(sheet, i - 1) === 'equals' ? i - 2 : i - 1;
    while (BETWEEN.includes(wordAt(sheet, at) ?? '')) at--;
    const isBare = endsClause(sheet, i + 1) || RATES.includes(wordAt(sheet, i + 1) ?? '');
    if (wordAt(sheet, at) === 'gauge' && isBare && quantityAtIndex(sheet, i) !== undefined)
      return saidBetween(sheet, at, i);
  }
  return undefined;
}
