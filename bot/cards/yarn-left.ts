import { type Printing, percentOf, printedChance, printedMass, printedRange, printedYarn } from '../../core/index.js';
import type { ReplyOf } from '../reply.js';
import { assumedFact } from './assumed.js';
import { type Card, plainCard } from './card.js';
import { capital, counted } from './names.js';

/** Whether yarn left lasts: the rows to count on, the chance, the row to join by, and what it still reaches. */
export function yarnLeftCard(reply: ReplyOf<'yarn_left'>, printing: Printing): Card {
  const { yarn, unit, at, stopAt, expected, promised, chance, joinBy, reach, plan, from, assumed, offers } = reply;
  const amount = (n: number): string => (unit === 'g' ? printedMass(n) : printedYarn(n, printing.units));
  const toGo = Math.max(0, stopAt - at);
  const how = reply.lasts ? 'lasts' : 'may not last';
  const one = plan.parts === 1 ? '' : ` of one of the ${plan.parts}`;
  const shelf = from === 'shelf' ? [`${amount(yarn.left)} on the shelf, for all rows from the first.`] : [];
  const rest = from === 'shelf' ? `; the whole piece has ${stopAt}` : `, ${toGo} to go`;
  if (yarn.left === 0) return noneLeft(reply, amount, printing);
  return plainCard(`${amount(yarn.left)} ${how}: count on ${counted(promised, 'row')}${rest}`, {
    body: [
      ...shelf,
      `Expect ${counted(expected, 'row')}; ${promised} will come 95 times in 100.`,
      `${plan.label}${one}: each row takes ${amount(yarn.perRow)}, give or take ${percentOf(yarn.cv)}; ${amount(yarn.toCome)} is kept back for grafting, seams and tails.`,
      ...(joinBy === undefined ? [] : [`Join a new ball by row ${joinBy}, at the latest.`]),
      ...(reach === undefined ? [] : [reachLine(reply, printing)]),
    ],
    facts: [
      { label: 'Chance', text: `${printedChance(chance)} that it lasts to row ${stopAt}.` },
      ...assumedFact(assumed, printing),
    ],
    offers,
    sayings: [...offers.flatMap(({ say }) => say ?? []), 'where am I'],
  });
}

/** What the rest still takes, where nothing is left. */
function noneLeft(
  { yarn, at, stopAt, plan, assumed }: ReplyOf<'yarn_left'>,
  amount: (n: number) => string,
  printing: Printing,
): Card {
  const toGo = Math.max(0, stopAt - at);
  const rows = at === 0 ? counted(toGo, 'row') : `${counted(toGo, 'row')} to go`;
  return plainCard(`${capital(rows)}: about ${amount(toGo * yarn.perRow + yarn.toCome)} of yarn more`, {
    body: [
      `${plan.label}: each row takes ${amount(yarn.perRow)}, give or take ${percentOf(yarn.cv)}; ${amount(yarn.toCome)} of it is for grafting, seams and tails.`,
      'Join a ball of the same dye lot; another may show.',
    ],
    facts: assumedFact(assumed, printing),
    sayings: ['how many more balls do I need', 'where am I'],
  });
}

function reachLine({ reach, plan }: ReplyOf<'yarn_left'>, { units }: Printing): string {
  const solved = plan.sizes.find(({ id }) => id === plan.landing.dimension);
  if (reach === undefined) return '';
  const size = `${printedRange(reach.loMm, reach.hiMm, units)} ${solved?.adjective ?? ''}`.trim();
  return `It still makes ${size}, with ${counted(reach.rows, 'row')}: ${printedChance(reach.chance)}.`;
}
