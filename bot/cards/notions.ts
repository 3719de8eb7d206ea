import { notionsFor, type Plan, type Printing, pieceById, printed } from '../../core/index.js';
import type { Card } from './card.js';
import { joined } from './names.js';

/** The notions of all the pieces together. */
const notionsText = ({ notions, pieces }: Plan, printing: Printing): string =>
  joined(notionsFor(notions, pieces).map(({ say }) => printed(say, printing)));

/** What is counted, where one piece is a pair. */
export const ofPairs = ({ piece }: Plan): string => (pieceById(piece)?.isPair ? ' pairs' : '');

const forAll = (plan: Plan): string => {
  const { pieces } = plan;
  return pieces === 1 ? '' : `, for ${pieces === 2 ? 'both' : `all ${pieces}`}${ofPairs(plan)}`;
};

/** How many an answer is for: `one pouch`, `12 of them`. */
export const howMany = (plan: Plan): string => {
  const { pieces, label } = plan;
  return pieces === 1 ? `one ${label.toLowerCase()}` : `${pieces}${ofPairs(plan)} of them`;
};

/** The notions first, for a maker who asked for them. */
export const notionsLead = (plan: Plan, printing: Printing): string =>
  plan.notions.length === 0
    ? `Nothing but yarn for ${howMany(plan)}`
    : `For ${howMany(plan)}: ${notionsText(plan, printing)}`;

/** The notions among the facts of a plan. */
export const notionsFact = (plan: Plan, printing: Printing): Card['facts'] =>
  plan.notions.length === 0 ? [] : [{ label: `Notions${forAll(plan)}`, text: `${notionsText(plan, printing)}.` }];

/** The notions above the steps. */
export const atHandLine = (plan: Plan, printing: Printing): string[] =>
  plan.notions.length === 0 ? [] : [`At hand${forAll(plan)}: ${notionsText(plan, printing)}.`];
