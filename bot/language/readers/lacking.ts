import { beginsClause, endsClause } from '../clauses.js';
import type { Context } from '../context.js';
import { personsAt } from '../persons.js';
import { phrasePlaces, type Sheet, said, wordAt } from '../sheet.js';
import { COUNT_NOUNS } from '../vocabulary.js';
import { COPIES } from './copies.js';
import { stateWithin } from './states.js';

/** Each compares with a size that is known. */
const COMPARED = new Set(
  `wider narrower taller deeper higher longer shorter bigger larger smaller broader roomier slimmer`.split(/\s+/),
);
/** Each asks for a plan once more, in another way. */
const AGAIN = ['what if', 'what about', 'how about', 'make it', 'make them', 'same again', 'same but', 'and for'];
const OF_PLAN = ['of it', 'of them', 'of those', 'of these', 'of that', 'like that', 'like this', 'instead'];
/** These ask for nothing by themselves. */
const ASKED = ['what about', 'how about', 'and for'];

/** What words that could not be used need before they can be: a plan to change, or work to count; undefined for neither. */
export function lacking(sheet: Sheet, { subjectPiece, inHand }: Context): 'no_plan' | 'no_work' | undefined {
  if (inHand === undefined && (countsOn(sheet) || hangs(sheet))) return 'no_work';
  return subjectPiece === undefined && changes(sheet) ? 'no_plan' : undefined;
}

/** `25 more`, `another 10 rows`. */
const countsOn = (sheet: Sheet): boolean =>
  sheet.tokens.some((_, i) => {
    const token = sheet.tokens[i];
    if (token?.is !== 'quantity' || token.quantity.unit !== undefined) return false;
    const [next, behind] = [wordAt(sheet, i + 1) ?? '', wordAt(sheet, i + 2)];
    const isRows = COUNT_NOUNS[next] === 'rows';
    const isMore = next === 'more' && (endsClause(sheet, i + 2) || COUNT_NOUNS[behind ?? ''] === 'rows');
    const isAnother =
      wordAt(sheet, i - 1) === 'another' && said(sheet, i) !== 'one' && (isRows || endsClause(sheet, i + 1));
    return isAnother ? beginsClause(sheet, i - 1) : isMore && beginsClause(sheet, i);
  });

/** `6 1/4 long hanging`: a length, and that it hangs. */
const hangs = (sheet: Sheet): boolean =>
  sheet.tokens.filter(({ is }) => is === 'quantity').length === 1 &&
  stateWithin(sheet, 0, sheet.tokens.length) === 'hanging';

const isCompared = (sheet: Sheet): boolean => sheet.tokens.some((_, i) => COMPARED.has(wordAt(sheet, i) ?? ''));

/** `bit wider`, `can you do three of those`, `what if I only have 90 g`, `and for a toddler?`. */
function changes(sheet: Sheet): boolean {
  const says = (phrases: readonly string[]): boolean =>
    phrases.some((phrase) => phrasePlaces(sheet, phrase).length > 0);
  const isSized =
    sheet.tokens.some(({ is }) => is === 'quantity') ||
    sheet.tokens.some((_, i) => personsAt(sheet, i)?.isSure === true);
  if (isCompared(sheet) || sheet.uses.includes(COPIES)) return true;
  return says(OF_PLAN) ? isSized || says(AGAIN) : says(AGAIN) && (isSized || !says(ASKED));
}
