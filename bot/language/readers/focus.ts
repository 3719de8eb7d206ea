import type { PlanAsk } from '../../request.js';
import { claim, isFree, type Sheet, wordAt } from '../sheet.js';
import { TIME_ASKED } from './time-questions.js';

/** Words for what a maker wants told first. */
const FOCUS: Record<string, PlanAsk['focus'][number]> = {
  rows: 'rows',
  needles: 'needles',
  yarn: 'yarn',
  notions: 'notions',
  notion: 'notions',
  haberdashery: 'notions',
  steps: 'steps',
  instructions: 'steps',
  checklist: 'checklist',
};

/** Before the steps: the key words of each alone. */
const BRIEF = ['short', 'brief'];

export function focusOf(sheet: Sheet): PlanAsk['focus'] {
  const words = sheet.tokens.flatMap((_, i) => focusAt(sheet, i) ?? []);
  return [...new Set([...words, ...(sheet.uses.includes(TIME_ASKED) ? ['time' as const] : [])])];
}

/** The same, with the words for it claimed. */
export function readFocus(sheet: Sheet): PlanAsk['focus'] {
  const focus = focusOf(sheet);
  claim(sheet, 'told first', ...sheet.tokens.flatMap((_, i) => (focusAt(sheet, i) === undefined ? [] : [i])));
  return focus;
}

/** What the word at an index is for, where it is to be told first. */
export function focusAt(sheet: Sheet, i: number): PlanAsk['focus'][number] | undefined {
  const isWaste = wordAt(sheet, i - 1) === 'waste';
  const named = isFree(sheet, i) && !isWaste ? FOCUS[wordAt(sheet, i) ?? ''] : undefined;
  if (named === 'steps' && BRIEF.includes(wordAt(sheet, i - 1) ?? '')) return 'checklist';
  return named ?? (asksWhatElse(sheet, i) ? 'notions' : asksYarn(sheet, i) ? 'yarn' : undefined);
}

const YARN_UNITS = ['yards', 'yds', 'metres', 'meters'];

/** `in yards`: the yarn, told so. */
const asksYarn = (sheet: Sheet, index: number): boolean =>
  isFree(sheet, index) && wordAt(sheet, index - 1) === 'in' && YARN_UNITS.includes(wordAt(sheet, index) ?? '');

/** `What do I need`, `what else do we need to have`; but for `what do I need to knit`. */
function asksWhatElse(sheet: Sheet, index: number): boolean {
  const words = [0, 1, 2, 3, 4, 5, 6].map((k) => wordAt(sheet, index + k) ?? '');
  const asked = /^what (?:else )?(?:do|should|must|shall) (?:i|we) (?:need(?: to (\w+))?|buy)(?: |$)/.exec(
    words.join(' '),
  );
  return asked !== null && [undefined, 'have', 'buy'].includes(asked[1]);
}
