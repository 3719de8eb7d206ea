import { aspects } from '../../../core/index.js';
import { claim, type Sheet, said, wordAt } from '../sheet.js';
import { COUNT_NOUNS } from '../vocabulary.js';

/** What a number before it counts. */
const THINGS: readonly string[] = [...aspects.ring, ...aspects.closure, 'end', 'side', 'edge', 'layer'];

/** `another one`, `the blue one`: no number, unless it counts rows, rings or `one of them`, or stands before a size. */
export function claimPronouns(sheet: Sheet): void {
  sheet.tokens.forEach((token, i) => {
    const one = token.is === 'quantity' && said(sheet, i).toLowerCase() === 'one';
    const next = wordAt(sheet, i + 1) ?? '';
    const counts = next === 'of' || COUNT_NOUNS[next] !== undefined || THINGS.includes(next);
    if (one && !counts && sheet.tokens[i + 1]?.is !== 'quantity') claim(sheet, 'pronoun', i);
  });
}
