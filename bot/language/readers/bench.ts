import type { Bench } from '../../request.js';
import type { Context } from '../context.js';
import {
  claim,
  indexesBetween,
  isFree,
  phrasePlaces,
  quantityAtIndex,
  type Sheet,
  said,
  saidBetween,
  wordAt,
} from '../sheet.js';
import { isKnownWord } from '../vocabulary.js';
import { countsIn } from './tension.js';

const YARN_KINDS = ['lace', 'fine', 'light', 'medium', 'bulky', 'thick', 'thin', 'heavy', 'small'];

/** The machine, its needles and the yarn, in the maker's own names where they fit. */
export function readBench(sheet: Sheet, context: Context): Bench {
  const yarn = readYarn(sheet, context.yarns);
  const machine = readMachine(sheet, context.machines);
  const counted = countsIn(sheet).find(({ noun }) => noun === 'needles');
  if (counted !== undefined) claim(sheet, 'needles', counted.index, counted.end);
  if (counted !== undefined && wordAt(sheet, counted.end + 1) === 'machine') claim(sheet, 'needles', counted.end + 1);
  const needles = counted?.count ?? (machine && /^\d+$/.test(machine) ? Number(machine) : undefined);
  return { ...(machine && { machine }), ...(needles !== undefined && { needles }), ...(yarn && { yarn }) };
}

/** `on the 48`, `the 48`, `a 48 machine`, or a name the maker gave. */
function readMachine(sheet: Sheet, names: readonly string[]): string | undefined {
  for (const name of names.filter((n) => !/^\d+$/.test(n))) {
    const place = phrasePlaces(sheet, name)[0];
    if (place === undefined) continue;
    claim(sheet, 'machine', ...indexesBetween(place.from, place.to));
    return name;
  }
  for (const [i] of sheet.tokens.entries()) {
    const quantity = quantityAtIndex(sheet, i);
    if (quantity === undefined || !Number.isInteger(quantity.lo) || quantity.lo !== quantity.hi || quantity.lo < 1)
      continue;
    const before = wordAt(sheet, i - 1);
    const machineAfter = wordAt(sheet, i + 1) === 'machine';
    const theOne = before === 'the' || before === 'my';
    const onIt = before === 'on' || (theOne && ['on', 'in', 'with', 'using'].includes(wordAt(sheet, i - 2) ?? ''));
    // "on the 48 in grey": nothing is knitted on a length.
    if (quantity.unit !== undefined && !(onIt && theOne && / in$/i.test(said(sheet, i)))) continue;
    if (!machineAfter && !onIt && !(theOne && names.includes(String(quantity.lo)))) continue;
    if (countsIn(sheet).some(({ index }) => index === i)) continue;
    claim(sheet, 'machine', i, ...(machineAfter ? [i + 1] : []));
    return String(quantity.lo);
  }
  return undefined;
}

/** A yarn the maker has named before, or up to three words before `yarn`: `the grey medium yarn`. */
function readYarn(sheet: Sheet, names: readonly string[]): string | undefined {
  for (const name of names) {
    const place = phrasePlaces(sheet, name)[0];
    if (place === undefined) continue;
    claim(sheet, 'yarn', ...indexesBetween(place.from, place.to));
    if (wordAt(sheet, place.to + 1) === 'yarn') claim(sheet, 'yarn', place.to + 1);
    return name;
  }
  const at = sheet.tokens.findIndex((_, i) => wordAt(sheet, i) === 'yarn' && isFree(sheet, i));
  let from = at;
  while (at > 0 && at - from < 3 && namesYarn(sheet, from - 1)) from--;
  if (at < 0 || from === at) return undefined;
  claim(sheet, 'yarn', ...indexesBetween(from, at));
  return saidBetween(sheet, from, at - 1).toLowerCase();
}

function namesYarn(sheet: Sheet, index: number): boolean {
  const word = wordAt(sheet, index);
  return (
    word !== undefined && isFree(sheet, index) && word !== 'waste' && (YARN_KINDS.includes(word) || !isKnownWord(word))
  );
}
