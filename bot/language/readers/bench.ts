import type { Bench } from '../../request.js';
import type { Context } from '../context.js';
import { claim, type Sheet, wordAt } from '../sheet.js';
import { readMachine } from './machines.js';
import { countsIn } from './tension.js';
import { readTensionSetting } from './tension-settings.js';
import { readYarn } from './yarns.js';

/** The machine, its needles, the yarn and the tension setting, in the maker's own names where they fit. */
export function readBench(sheet: Sheet, context: Context): Bench {
  const tension = readTensionSetting(sheet, context.machines);
  const machine = readMachine(sheet, context.machines);
  const yarn = readYarn(sheet, context.yarns);
  const counted = countsIn(sheet).find(({ noun }) => noun === 'needles');
  if (counted !== undefined) claim(sheet, 'needles', counted.index, counted.end);
  if (counted !== undefined && wordAt(sheet, counted.end + 1) === 'machine') claim(sheet, 'needles', counted.end + 1);
  const needles = counted?.count ?? (machine && /^\d+$/.test(machine) ? Number(machine) : undefined);
  return {
    ...(machine && { machine }),
    ...(needles !== undefined && { needles }),
    ...(yarn && { yarn }),
    ...(tension && { tension }),
  };
}
