import type { Bench } from '../../request.js';
import type { Context } from '../context.js';
import { claim, type Sheet, wordAt } from '../sheet.js';
import { readMachine } from './machines.js';
import { countsIn } from './tension.js';
import { readTensionSetting } from './tension-settings.js';
import { readYarn } from './yarns.js';

/** The machine, its needles, the yarn and the tension setting, in the maker's own names where they fit. */
export const readBench = (sheet: Sheet, context: Context): Bench => withNeedles(sheet, readNames(sheet, context));

/** The same without the needles, which a piece may have the first claim on. */
export function readNames(sheet: Sheet, context: Context): Bench {
  const tension = readTensionSetting(sheet, context.machines);
  const machine = readMachine(sheet, context.machines);
  const yarn = readYarn(sheet, context.yarns);
  return { ...(machine && { machine }), ...(yarn && { yarn }), ...(tension && { tension }) };
}

/** With the needles counted, else those that the machine is named after. */
export function withNeedles(sheet: Sheet, names: Bench): Bench {
  const counted = countsIn(sheet).find(({ noun }) => noun === 'needles');
  if (counted !== undefined) claim(sheet, 'needles', counted.index, counted.end);
  if (counted !== undefined && wordAt(sheet, counted.end + 1) === 'machine') claim(sheet, 'needles', counted.end + 1);
  const needles = counted?.count ?? (/^\d+$/.test(names.machine ?? '') ? Number(names.machine) : undefined);
  return { ...names, ...(needles !== undefined && { needles }) };
}
