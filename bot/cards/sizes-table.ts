import {
  otherUnits,
  type Plan,
  type Printing,
  type Problem,
  printedBoth,
  printedChance,
  printedLength,
  printedOthers,
  printedRange,
  printedYarn,
  type Words,
} from '../../core/index.js';
import { unitsTyped } from '../desk/typed.js';
import type { ReplyOf, SizePlanned } from '../reply.js';
import type { Value } from '../request.js';
import type { Card } from './card.js';
import { capital, counted, joined } from './names.js';
import { sentenceFor } from './sentences.js';

type Reply = ReplyOf<'sizes'>;
const NOTHING = '–';

/** The plans of the sizes that can be made. */
export const plansOf = ({ sizes }: Reply): Plan[] =>
  sizes.flatMap(({ outcome }) => (outcome.ok ? [outcome.value] : []));

/** What each size that can be made says, by its name. */
export const told = ({ sizes }: Reply, of: (plan: Plan) => readonly Words[]) =>
  sizes.flatMap(({ name, outcome }) => (outcome.ok ? [{ name, words: of(outcome.value) }] : []));

/** True where the figure is the same for every size that can be made. */
export const isShared = <T>(plans: readonly Plan[], of: (plan: Plan) => T): boolean => new Set(plans.map(of)).size < 2;

type Side = Plan['sizes'][number] & { expectedMm: number };

/** Finished sizes of one plan that are worked out; `shared` are those that all the sizes have. */
export function sidesOf(plan: Plan, plans: readonly Plan[], printing: Printing): { own: Side[]; shared: Side[] } {
  const known = plan.sizes.flatMap((side) =>
    side.expectedMm === undefined ? [] : [{ ...side, expectedMm: side.expectedMm }],
  );
  const isAlike = ({ id }: Side): boolean =>
    id !== plan.landing.dimension && isShared(plans, (one) => printedSide(one, id, printing));
  return { own: known.filter((side) => !isAlike(side)), shared: known.filter(isAlike) };
}

function printedSide({ sizes }: Plan, id: string, { units }: Printing): string | undefined {
  const mm = sizes.find((side) => side.id === id)?.expectedMm;
  return mm === undefined ? undefined : printedLength(mm, units);
}

/** Finished sizes in both units: `43 cm round (17 in)`. */
export const printedSides = (sides: readonly Side[], { units }: Printing): string =>
  `${joined(sides.map(({ expectedMm, adjective }) => `${printedLength(expectedMm, units)} ${adjective}`))} (${printedOthers(
    sides.map(({ expectedMm }) => expectedMm),
    units,
  )})`;

/** A row a size, in the order asked, and each as a sentence for plain text. */
export function sizesTable(reply: Reply, printing: Printing): NonNullable<Card['table']> {
  const plans = plansOf(reply);
  const rows = reply.sizes.map((size) => rowOf(size, plans, printing));
  return {
    columns: [columnOf(reply), 'Rows', 'Comes out', 'Chance', 'Yarn'],
    rows: rows.map(({ cells }) => cells),
    lines: rows.map(({ line }) => line),
    figures: true,
  };
}

/** What the sizes differ in, where it is one thing and no person's. */
function columnOf({ piece, sizes }: Reply): string {
  const [[id = '', value] = [], ...others] = Object.entries(sizes[0]?.size.values ?? {});
  return others.length > 0 || value?.body !== undefined ? 'Size' : (piece.asks[id]?.label ?? 'Size');
}

function rowOf({ name, size, outcome }: SizePlanned, plans: readonly Plan[], printing: Printing) {
  const [value, ...others] = Object.values(size.values);
  const shown = value === undefined || others.length > 0 ? capital(name) : inBoth(name, value, printing);
  if (!outcome.ok) {
    const why = whyNot(outcome.problems[0], printing);
    return { cells: [shown, NOTHING, why, NOTHING, NOTHING], line: `${shown}: ${why}` };
  }
  const { value: plan } = outcome;
  const on = isShared(plans, ({ needles }) => needles) ? '' : ` on ${counted(plan.needles ?? 0, 'needle')}`;
  const alike = plan.parts === 1 || isShared(plans, ({ parts }) => parts) ? '' : `, ${plan.parts} alike`;
  const sides = printedSides(sidesOf(plan, plans, printing).own, printing);
  const chance = printedChance(plan.landing.chance);
  const yarn = plan.yarn && printedYarn(plan.yarn.lengthM, printing.units);
  return {
    cells: [shown, `${plan.rows}${on}${alike}`, sides, capital(chance), yarn ?? NOTHING],
    line: `${shown}: knit ${counted(plan.rows, 'row')}${on}${alike}, about ${sides}, ${chance}${yarn === undefined ? '' : `, ${yarn} of yarn`}.`,
  };
}

/** A problem in short: what it is, and what is allowed. */
function whyNot(problem: Problem | undefined, printing: Printing): string {
  if (problem === undefined) throw new Error('a size that cannot be made has a problem');
  const { lead, body } = sentenceFor(problem, printing);
  const [allowed = ''] = (body[0] ?? '').split(/(?<=\.) /);
  return `${lead}. ${allowed}`.trim();
}

/** A size as it was typed, the other system in brackets; of a person the measure it stands for. */
function inBoth(name: string, value: Value, printing: Printing): string {
  if (value.body !== undefined && value.is === 'length')
    return `${capital(name)}, ${value.body.label} ${printedBoth(value.mm, printing.units)}`;
  const other = otherUnits(unitsTyped({ value }, 'value') ?? printing.units);
  if (value.is === 'length') return `${name} (${printedLength(value.mm, other)})`;
  return value.is === 'window' ? `${name} (${printedRange(value.loMm, value.hiMm, other)})` : name;
}
