import { notionsFor, type Plan, type Printing, printed } from '../../core/index.js';
import type { Card } from './card.js';
import { joined } from './names.js';

/** The notions of all the pieces together. */
const notionsText = ({ notions, pieces }: Plan, printing: Printing): string =>
  joined(notionsFor(notions, pieces).map(({ say }) => printed(say, printing)));

const forAll = ({ pieces }: Plan): string => (pieces === 1 ? '' : `, for ${pieces === 2 ? 'both' : `all ${pieces}`}`);

/** How many an answer is for: `one pouch`, `12 of them`. */
export const howMany = ({ pieces, label }: Plan): string =>
  pieces === 1 ? `one ${label.toLowerCase()}` : `${pieces} of them`;

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
