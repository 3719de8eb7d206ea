import { notionsFor, type Plan, type Printing, percentOf, printed, printedYarn } from '../../core/index.js';
import type { ReplyOf } from '../reply.js';
import type { Card } from './card.js';
import { merged } from './merged.js';
import { plansOf } from './sizes-table.js';

type Reply = ReplyOf<'sizes'>;

/** Yarn of all the pieces together, in metres; undefined while a stitch width is missing. */
function yarnOfAll(plans: readonly Plan[]): { mainM: number; cv: number } | undefined {
  const needs = plans.flatMap(({ yarn, pieces }) => (yarn === undefined ? [] : [{ ...yarn, pieces }]));
  const [first] = needs;
  if (first === undefined || needs.length < plans.length) return undefined;
  return { mainM: needs.reduce((all, { pieces, lengthM }) => all + pieces * lengthM, 0), cv: first.cv };
}

const allOf = (plans: readonly Plan[]): string => {
  const [first] = plans;
  const sizes = ['the one size that can be made', 'both sizes'][plans.length - 1] ?? `all ${plans.length} sizes`;
  return first === undefined || first.pieces === 1 ? sizes : `${first.pieces} of each, ${sizes},`;
};

export function yarnFact(plans: readonly Plan[], { units }: Printing): Card['facts'] {
  const all = yarnOfAll(plans);
  if (all === undefined) return [];
  const wasteM = Math.max(...plans.map(({ yarn }) => yarn?.wasteM ?? 0));
  const waste = wasteM === 0 ? '' : `, and ${printedYarn(wasteM, units)} of waste yarn to use again`;
  return [
    {
      label: 'Yarn',
      text: `for ${allOf(plans)} about ${printedYarn(all.mainM, units)}${waste}. Worked out from gauge alone, give or take ${percentOf(all.cv)}.`,
    },
  ];
}

const yarnLead = (reply: Reply, { units }: Printing): string | undefined => {
  const plans = plansOf(reply);
  const all = yarnOfAll(plans);
  return all && `About ${printedYarn(all.mainM, units)} of yarn for ${allOf(plans)}`;
};

/** Notions that every size takes, added up over all the pieces, and after them those of each size. */
function notionsOfAll(reply: Reply, printing: Printing): string[] {
  const plans = plansOf(reply);
  const frames = plans.map(({ notions }) => notions.map((notion) => JSON.stringify(notion)));
  const isOfAll = (notion: Plan['notions'][number]): boolean =>
    frames.every((ofOne) => ofOne.includes(JSON.stringify(notion)));
  const pieces = plans.reduce((sum, plan) => sum + plan.pieces, 0);
  const own = reply.sizes.flatMap(({ name, outcome }) => {
    if (!outcome.ok) return [];
    const { notions, pieces: ofEach } = outcome.value;
    const all = notionsFor(
      notions.filter((notion) => !isOfAll(notion)),
      ofEach,
    );
    return [{ name, words: all.map(({ say }) => say) }];
  });
  return [
    ...notionsFor((plans[0]?.notions ?? []).filter(isOfAll), pieces).map(({ say }) => printed(say, printing)),
    ...merged(own, printing).map((text) => `size by size, ${text}`),
  ];
}

export function notionsFact(reply: Reply, printing: Printing): Card['facts'] {
  const all = notionsOfAll(reply, printing);
  return all.length === 0 ? [] : [{ label: 'Notions', text: `for ${allOf(plansOf(reply))} ${all.join('; ')}.` }];
}

function notionsLead(reply: Reply, printing: Printing): string {
  const all = notionsOfAll(reply, printing);
  const whom = allOf(plansOf(reply)).replace(/,$/, '');
  return all.length === 0 ? `Nothing but yarn for ${whom}` : `For ${whom}: ${all.join('; ')}`;
}

/** What leads in place of the rows, for a maker who asked for it. */
export const NEEDS_LEADS = { yarn: yarnLead, notions: notionsLead };
