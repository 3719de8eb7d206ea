import {
  type Printing,
  printed,
  printedBoth,
  printedChance,
  printedLength,
  printedMass,
  printedRange,
} from '../../core/index.js';
import { machineName } from '../desk/names.js';
import type { ReplyOf } from '../reply.js';
import { factOf } from './assumed.js';
import { type Card, plainCard } from './card.js';
import { counted } from './names.js';
import { learnedFact } from './yarn.js';

/** How the piece came out against its window, and what it does for the next. */
export function finishedCard(reply: ReplyOf<'finished'>, printing: Printing): Card {
  const { size, label, machine, rows, massG, paired, shelf, shared } = reply;
  const taught = size === undefined && massG === undefined ? ['Not measured, so it teaches nothing yet.'] : [];
  return plainCard(leadOf(reply, printing), {
    kept: true,
    body: [
      ...(size === undefined ? [] : [limitsLine(size, printing)]),
      ...taught,
      ...(paired ? ['Read on the way and now: a pair, so I know better how your fabric changes off the machine.'] : []),
      ...[...shelf, ...shared].map((words) => printed(words, printing)),
      ...(massG === undefined ? [] : [`${printedMass(massG)}, kept for the next yarn estimate.`]),
    ],
    facts: [
      ...nextFact(reply),
      ...(massG === undefined ? [] : learnedFact(reply.yarn.now?.loop, label, reply.yarn, printing)),
      ...assumed(reply, printing),
    ],
    offers: reply.offers,
    foot: [`${label} of ${counted(rows, 'row')} on ${machineName(machine)}.`],
    sayings: ['undo', 'my gauge', 'what would help'],
  });
}

function leadOf({ size, label, massG }: ReplyOf<'finished'>, { units }: Printing): string {
  if (size === undefined)
    return massG === undefined
      ? `Done: ${label.toLowerCase()}`
      : `Weighed: ${label.toLowerCase()}, ${printedMass(massG)}`;
  const { mm, landing, adjective } = size;
  const came = `${printedLength(mm, units)} ${adjective}`;
  if (mm >= landing.loMm && mm <= landing.hiMm) return `Done, and inside: ${came}`;
  const by = printedLength(mm < landing.loMm ? landing.loMm - mm : mm - landing.hiMm, units);
  return `Done: ${came}, ${by} too ${mm < landing.loMm ? 'small' : 'large'}`;
}

const limitsLine = ({ landing, mm }: NonNullable<ReplyOf<'finished'>['size']>, { units }: Printing): string =>
  `Asked for: ${printedRange(landing.loMm, landing.hiMm, units)}. It came out ${printedBoth(mm, units)}.`;

function nextFact({ next, was, label }: ReplyOf<'finished'>): Card['facts'] {
  if (next === undefined) return [];
  const before =
    was === undefined || was.chance === next.chance
      ? ''
      : `; it was ${counted(was.rows, 'row')}, ${printedChance(was.chance)}`;
  return [
    {
      label: 'Next time',
      text: `${counted(next.rows, 'row')} for such a ${label.toLowerCase()}, ${printedChance(next.chance)}${before}.`,
    },
  ];
}

function assumed(reply: ReplyOf<'finished'>, printing: Printing): Card['facts'] {
  const { rowsAssumed, stateAssumed, rows, size } = reply;
  const notes = [
    ...(stateAssumed && size !== undefined ? ['measured at rest'] : []),
    ...(rowsAssumed ? [`all ${rows} rows were knitted`] : []),
    ...reply.assumed.map((words) => printed(words, printing)),
  ];
  return factOf(notes);
}
