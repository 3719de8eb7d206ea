import type { Meaning } from '../../request.js';
import type { Context } from '../context.js';
import { claim, freeQuantities, indexesBetween, isLeftOver, quantityAtIndex, type Sheet, wordAt } from '../sheet.js';
import { MACHINE, machinesIn } from './machines.js';
import { countsIn } from './tension.js';

/** Before a machine that is not known yet: `which machine`, `any of my machines`, `compare the two machines`. */
const WHICH = ['which', 'what', 'best', 'better', 'right', 'each', 'every', 'any', 'all', 'compare'];
/** These ask in a question, or where nothing is counted on it: `another machine, 48 needles` tells of one. */
const ANOTHER = ['another', 'other', 'different'];
const ASKING = ['can', 'could', 'would', 'will', 'should', 'does', 'do', 'how', 'what', 'which', 'is', 'compare'];
/** What was done on a machine is no question for one. */
const PAST = ['did', 'was', 'were', 'had', 'have', 'has', 'used', 'measured', 'knitted', 'got'];
const OR = ['or', 'vs', 'versus', 'against', 'than', 'compared'];
const BETWEEN = ['the', 'my', 'on', 'with', 'to'];

/**
 * True where a message asks which machine makes a piece best. Machines set against each other, `the 46 or the 48`, are
 * then none to plan it on: they are claimed.
 */
export function asksMachine(sheet: Sheet, { machines }: Context): boolean {
  const words = sheet.tokens.map((_, i) => wordAt(sheet, i) ?? '');
  const says = (some: readonly string[]): boolean => words.some((word) => some.includes(word));
  const rivals = says(OR) ? rivalsIn(sheet, machines) : [];
  claim(sheet, MACHINE, ...rivals);
  if (rivals.length > 0) return true;
  return (
    !says(PAST) &&
    words.some((word, i) => /^machines?$/.test(word) && isAsked(sheet, i, says(ASKING) || countsIn(sheet).length === 0))
  );
}

function isAsked(sheet: Sheet, machine: number, mayBeAnother: boolean): boolean {
  let at = machine - 1;
  while (['of', 'my', 'the'].includes(wordAt(sheet, at) ?? '') || quantityAtIndex(sheet, at) !== undefined) at--;
  const word = wordAt(sheet, at) ?? '';
  const asked = WHICH.includes(word) || (mayBeAnother && ANOTHER.includes(word));
  // `which of my two machines`: how many there are is no size.
  if (asked) claim(sheet, MACHINE, ...freeQuantities(sheet).filter((i) => i > at && i < machine));
  return asked;
}

function rivalsIn(sheet: Sheet, names: readonly string[]): number[] {
  const named = machinesIn(sheet, names);
  return named.flatMap((first) => {
    const second = named.find(({ from }) => from > first.to && isSetAgainst(sheet, first.to + 1, from - 1));
    return second === undefined ? [] : indexesBetween(first.from, second.to);
  });
}

const isSetAgainst = (sheet: Sheet, from: number, to: number): boolean =>
  OR.includes(wordAt(sheet, from) ?? '') &&
  indexesBetween(from + 1, to).every((i) => BETWEEN.includes(wordAt(sheet, i) ?? ''));

/** The meanings of a message that asks for a machine: its pieces are to be compared, not planned. */
export function machineAsked(meanings: readonly Meaning[], sheet: Sheet): Meaning[] {
  if (meanings.some(({ kind }) => kind === 'unread') && namesOther(sheet)) return [...meanings];
  const kept = meanings.flatMap((one): Meaning[] => {
    if (one.kind === 'plan') return [{ kind: 'which_machine', ask: one.ask }];
    return one.kind === 'unread' || (one.kind === 'change' && isEmpty(one.edit)) ? [] : [one];
  });
  return kept.some(({ kind }) => kind === 'which_machine') ? kept : [...kept, { kind: 'which_machine' }];
}

/** True where a size or a piece that nobody knows is named, `for a poncho`: it is not the plan in hand. */
const namesOther = (sheet: Sheet): boolean =>
  sheet.tokens.some(({ is }, i) =>
    is === 'quantity'
      ? sheet.uses[i] !== MACHINE
      : isLeftOver(sheet, i) && ['a', 'an'].includes(wordAt(sheet, i - 1) ?? ''),
  );

/** True for a change of nothing but the machine. */
const isEmpty = ({ values, on, copies, due }: (Meaning & { kind: 'change' })['edit']): boolean =>
  Object.keys(values).length === 0 && on.yarn === undefined && copies === undefined && due === undefined;
