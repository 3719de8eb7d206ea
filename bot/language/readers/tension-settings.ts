import { bareAt, endsClause } from '../clauses.js';
import { claim, freeQuantities, indexesBetween, markAt, type Sheet, wordAt } from '../sheet.js';
import { COUNT_NOUNS } from '../vocabulary.js';

const SETTINGS = ['tension', 'dial', 'setting'];
const BETWEEN = ['at', 'is', 'on', 'to', 'set', 'of', 'was', 'dial', 'setting'];
/** Behind a number these make it a rate. */
const RATES = ['to', 'per', 'an', 'a', 'in', 'over'];
/** A bare number after `on` is a setting up to here; machines have more needles. From memory. */
const MOST_BARE = 11;
const QUARTERS = ['', '¼', '½', '¾'];

/**
 * The tension setting, one spelling for each: `tension 5`, `dial at 4 1/2`, `on 6`. A rate behind the word is none.
 * @param machines the maker's own, of which a number may be the name
 */
export function readTensionSetting(sheet: Sheet, machines: readonly string[]): string | undefined {
  for (const i of freeQuantities(sheet)) {
    const value = bareAt(sheet, i);
    const next = wordAt(sheet, i + 1) ?? '';
    if (value === undefined || value < 0 || COUNT_NOUNS[next] !== undefined) continue;
    let at = markAt(sheet, i - 1) === 'equals' ? i - 2 : i - 1;
    while (BETWEEN.includes(wordAt(sheet, at) ?? '') && !SETTINGS.includes(wordAt(sheet, at) ?? '')) at--;
    const isSetting =
      SETTINGS.includes(wordAt(sheet, at) ?? '') &&
      (!RATES.includes(next) || next === 'in') &&
      markAt(sheet, i + 1) !== 'slash';
    const isOn =
      wordAt(sheet, i - 1) === 'on' &&
      value <= MOST_BARE &&
      !machines.includes(String(value)) &&
      (endsClause(sheet, i + 1) || ['in', 'with'].includes(next));
    if (!isSetting && !isOn) continue;
    claim(sheet, 'tension setting', ...indexesBetween(isSetting ? at : i - 1, i));
    return settingOf(value);
  }
  return undefined;
}

function settingOf(value: number): string {
  const quarter = QUARTERS[(value % 1) * 4];
  const whole = Math.floor(value);
  return quarter === undefined ? String(value) : `${whole === 0 && quarter !== '' ? '' : whole}${quarter}`;
}
