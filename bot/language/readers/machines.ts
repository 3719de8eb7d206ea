import { claim, indexesBetween, LEFT_OUT, phrasePlaces, quantityAtIndex, type Sheet, said, wordAt } from '../sheet.js';
import { countsIn } from './tension.js';

export const MACHINE = 'machine';
const NOT_MEANT = 'another machine';
const NO_OTHER = `${LEFT_OUT}: no other machine`;
/** What the number of a machine is used as. */
export const MACHINE_USES = [MACHINE, NOT_MEANT, NO_OTHER];

type Named = { name: string; from: number; to: number };

/** `on the 48`, `the 48`, `a 48 machine`, `machine 48`, or a name the maker gave; with `not the 46` the only other one, if there is one. */
export function readMachine(sheet: Sheet, names: readonly string[]): string | undefined {
  const machines = machinesIn(sheet, names);
  const refused = machines.filter(({ from }) => refusalBefore(sheet, from) !== undefined);
  const meant = machines.find((machine) => !refused.includes(machine));
  const others = names.filter((name) => refused.every((machine) => machine.name !== name));
  const name = meant?.name ?? (refused.length > 0 && others.length === 1 ? others[0] : undefined);
  for (const { from, to } of refused) {
    const words = indexesBetween(refusalBefore(sheet, from) ?? from, to);
    claim(sheet, name === undefined ? NO_OTHER : NOT_MEANT, ...words);
  }
  if (meant !== undefined) claim(sheet, MACHINE, ...indexesBetween(meant.from, meant.to));
  return name;
}

/** Machines by name, then by number. */
export function machinesIn(sheet: Sheet, names: readonly string[]): Named[] {
  const byName = names
    .filter((name) => !/^\d+$/.test(name))
    .flatMap((name) => phrasePlaces(sheet, name).map((place) => ({ name, ...place })));
  return [...byName, ...sheet.tokens.flatMap((_, i) => numbered(sheet, names, i) ?? [])];
}

function numbered(sheet: Sheet, names: readonly string[], i: number): Named | undefined {
  const quantity = quantityAtIndex(sheet, i);
  if (quantity === undefined || !Number.isInteger(quantity.lo) || quantity.lo !== quantity.hi || quantity.lo < 1)
    return undefined;
  const before = wordAt(sheet, i - 1);
  const isMachineAfter = wordAt(sheet, i + 1) === 'machine';
  const isTheOne = before === 'the' || before === 'my';
  const isOnIt =
    ['on', 'machine'].includes(before ?? '') ||
    (isTheOne && ['on', 'in', 'with', 'using'].includes(wordAt(sheet, i - 2) ?? ''));
  // "on the 48 in grey": nothing is knitted on a length.
  if (quantity.unit !== undefined && !(isOnIt && isTheOne && / in$/i.test(said(sheet, i)))) return undefined;
  const isRefused = isTheOne && refusalBefore(sheet, i) !== undefined;
  if (!isMachineAfter && !isOnIt && !isRefused && !(isTheOne && names.includes(String(quantity.lo)))) return undefined;
  if (countsIn(sheet).some(({ index }) => index === i)) return undefined;
  return { name: String(quantity.lo), from: i, to: isMachineAfter ? i + 1 : i };
}

const REFUSALS = ['not', 'forget', 'without', 'except', 'dont', 'never', 'avoid', 'skip'];
const BETWEEN = ['the', 'my', 'on', 'use', 'using', 'with'];

/** Where the words begin that refuse what stands at an index: `not on the`, `forget the`. */
function refusalBefore(sheet: Sheet, index: number): number | undefined {
  let at = index - 1;
  while (BETWEEN.includes(wordAt(sheet, at) ?? '')) at--;
  return REFUSALS.includes(wordAt(sheet, at) ?? '') ? at : undefined;
}
