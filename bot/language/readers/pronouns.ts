import { claim, type Sheet, said, wordAt } from '../sheet.js';
import { COUNT_NOUNS } from '../vocabulary.js';

/** `another one`, `the blue one`: no number, unless it counts rows or `one of them`. */
export function claimPronouns(sheet: Sheet): void {
  sheet.tokens.forEach((token, i) => {
    const one = token.is === 'quantity' && said(sheet, i).toLowerCase() === 'one';
    const next = wordAt(sheet, i + 1) ?? '';
    if (one && next !== 'of' && COUNT_NOUNS[next] === undefined) claim(sheet, 'pronoun', i);
  });
}
