import { quantityAt } from '../../../core/index.js';
import type { Meaning } from '../../request.js';
import { beginsClause, endsClause } from '../clauses.js';
import type { Context } from '../context.js';
import { type BareUnit, typedValue } from '../lengths.js';
import { claim, indexesBetween, isFree, type Sheet, said, wordAt } from '../sheet.js';

const USE = 'what may be allowed';
/** Before a size: so far it may be off. A tolerance without the size it belongs to was made a word. */
const OFF = /(?:±|\+\s?\/?\s?-|\b(?:plus or minus|give or take|allow(?:ing)?|tolerance(?: of)?))\s*$/i;
/** Without one of these nothing of it is said. */
const CUE = /±|\+\s?\/?\s?-|\b(?:plus or minus|give or take|allow|tolerance)/i;
/** As much as stands before a size for it. */
const MOST_BEFORE = 40;
const IS = ['is', 'are', 'would', 'will', 'be', 's'];
const FINE = ['fine', 'ok', 'okay', 'enough', 'good', 'alright'];
/** Why it is fine. */
const REASONS = [
  'stretches',
  'stretch',
  'stretchy',
  'gives',
  'it',
  'its',
  'they',
  'since',
  'because',
  'as',
  'anyway',
  'for',
  'me',
];

/**
 * How far off the size of the plan in hand may be: `give or take 1/2 in`, `allow 10 to 12 in`, `allow more`; right after
 * what would help, `2.5 is fine, it stretches`. Claims its words.
 */
export function readAllowances(sheet: Sheet, { subjectPiece, onHelp }: Context, bare: BareUnit): Meaning[] {
  if (subjectPiece === undefined || !(onHelp === true || CUE.test(sheet.text))) return [];
  for (const [i, { start }] of sheet.tokens.entries()) {
    const earlier = Math.max(0, start - MOST_BEFORE);
    const before = OFF.exec(sheet.text.slice(earlier, start));
    if (before !== null && wordAt(sheet, i) === 'more' && endsClause(sheet, i + 1)) {
      claim(sheet, USE, i - 1, i);
      return [{ kind: 'allow' }];
    }
    const quantity = isFree(sheet, i) ? quantityAt(said(sheet, i), 0) : undefined;
    if (quantity === undefined || quantity.unit === 'percent') continue;
    let end = i;
    if (before === null) {
      while (IS.includes(wordAt(sheet, end + 1) ?? '')) end++;
      if (onHelp !== true || !FINE.includes(wordAt(sheet, ++end) ?? '') || !beginsClause(sheet, i)) continue;
    }
    const from = sheet.tokens.findIndex((token) => token.start >= (before === null ? start : earlier + before.index));
    if (!endsClause(sheet, end + 1) || !beginsClause(sheet, from)) continue;
    const value = typedValue(quantity, bare, said(sheet, i));
    claim(sheet, USE, ...indexesBetween(from, end));
    claim(
      sheet,
      'why',
      ...sheet.tokens.flatMap((_, k) => (k > end && REASONS.includes(wordAt(sheet, k) ?? '') ? [k] : [])),
    );
    return [{ kind: 'allow', value }];
  }
  return [];
}
