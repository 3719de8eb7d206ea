import {
  notionsFor,
  type Plan,
  type Printing,
  printed,
  printedMass,
  printedYarn,
  type YarnNeed,
} from '../../core/index.js';
import type { ReplyOf } from '../reply.js';
import type { Card } from './card.js';
import { LIMITS } from './limits.js';
import { merged } from './merged.js';
import { capital, joined } from './names.js';
import { plansOf, told } from './sizes-table.js';
import { inGrams, sourceLine } from './yarn.js';

type Reply = ReplyOf<'sizes'>;

type YarnOfAll = { mainM: number; massG: number | undefined; cv: number; source: YarnNeed['source'] };

/** Yarn of all the pieces together, in metres and, where that is known, in grams; undefined while a stitch width is missing. */
function yarnOfAll(plans: readonly Plan[]): YarnOfAll | undefined {
  const needs = plans.flatMap(({ yarn, pieces }) => (yarn === undefined ? [] : [{ ...yarn, pieces }]));
  const [first] = needs;
  if (first === undefined || needs.length < plans.length) return undefined;
  const sum = (of: (need: YarnNeed) => number): number => needs.reduce((all, one) => all + one.pieces * of(one), 0);
  const massG = first.massG === undefined ? undefined : sum(({ massG = 0 }) => massG);
  return { mainM: sum(({ lengthM }) => lengthM), massG, cv: first.cv, source: first.source };
}

function allOf(plans: readonly Plan[]): string {
  const [first] = plans;
  if (first !== undefined && first.pieces > 1) return `${first.pieces} of each size`;
  return ['the one size that can be made', 'both sizes'][plans.length - 1] ?? `all ${plans.length} sizes`;
}

/** The yarn of all the sizes together; none where a plan lacks its own. */
export function yarnFact(plans: readonly Plan[], { units }: Printing): Card['facts'] {
  const all = yarnOfAll(plans);
  if (all === undefined) return [];
  const wasteM = Math.max(...plans.map(({ yarn }) => yarn?.wasteM ?? 0));
  const waste = wasteM === 0 ? '' : `, and ${printedYarn(wasteM, units)} of waste yarn to use again`;
  return [
    {
      label: 'Yarn',
      text: `for ${allOf(plans)} about ${printedYarn(all.mainM, units)}${all.massG === undefined ? '' : ` (${printedMass(all.massG)})`}${waste}. ${sourceLine(all)}`,
    },
  ];
}

const yarnLead = (reply: Reply, { units }: Printing): string | undefined => {
  const plans = plansOf(reply);
  const all = yarnOfAll(plans);
  const mass = all?.massG === undefined ? '' : `, ${inGrams(all.massG)}`;
  return all && `About ${printedYarn(all.mainM, units)} of yarn for ${allOf(plans)}${mass}`;
};

/** Notions that every size takes, added up over all the pieces, and after them those that the sizes differ in. */
function notionsText(reply: Reply, printing: Printing): string | undefined {
  const plans = plansOf(reply);
  const taken = plans.map(({ notions }) => notions.map((notion) => JSON.stringify(notion)));
  const isOfAll = (notion: Plan['notions'][number]): boolean =>
    taken.every((ofOne) => ofOne.includes(JSON.stringify(notion)));
  const pieces = plans.reduce((sum, plan) => sum + plan.pieces, 0);
  const shared = notionsFor((plans[0]?.notions ?? []).filter(isOfAll), pieces).map(({ say }) => printed(say, printing));
  const differing = ({ notions, pieces: ofEach }: Plan) =>
    notionsFor(
      notions.filter((notion) => !isOfAll(notion)),
      ofEach,
    ).map(({ say }) => say);
  const own = merged(told(reply, differing), printing);
  const parts = [
    ...(shared.length === 0 ? [] : [`for ${allOf(plans)}, ${joined(shared)}`]),
    ...(own.length === 0 ? [] : [`by size, ${joined(own)}`]),
  ];
  return parts.length === 0 ? undefined : parts.join('; ');
}

/** What to have at hand for all the sizes; none where nothing is. */
export function notionsFact(reply: Reply, printing: Printing): Card['facts'] {
  const text = notionsText(reply, printing);
  return text === undefined ? [] : [{ label: 'Notions', text: `${text}.` }];
}

/** The notions themselves where a phone shows them whole. */
function notionsLead(reply: Reply, printing: Printing): string {
  const text = notionsText(reply, printing);
  const whom = allOf(plansOf(reply));
  if (text === undefined) return `Nothing but yarn for ${whom}`;
  return text.length > LIMITS.lead ? `Notions for ${whom}` : capital(text);
}

/** What leads in place of the rows, for a maker who asked for it. */
export const NEEDS_LEADS = { yarn: yarnLead, notions: notionsLead };
