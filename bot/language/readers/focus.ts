import type { PlanAsk } from '../../request.js';
import { isFree, type Sheet, wordAt } from '../sheet.js';

/** Words for what a maker wants told first. */
const FOCUS: Record<string, PlanAsk['focus'][number]> = {
  rows: 'rows',
  needles: 'needles',
  yarn: 'yarn',
  steps: 'steps',
  instructions: 'steps',
};

export function focusOf(sheet: Sheet): PlanAsk['focus'] {
  const words = sheet.tokens.flatMap((_, i) => (isFree(sheet, i) && FOCUS[wordAt(sheet, i) ?? '']) || []);
  return [...new Set(words)];
}
