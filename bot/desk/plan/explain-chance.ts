import {
  CHANCE_WORDS,
  type ChanceWord,
  edgesOf,
  type Plan,
  printedChance,
  range,
  say,
  type Words,
} from '../../../core/index.js';
import type { Desk } from '../desk.js';
import { capital } from '../names.js';
import { planMeant } from './plan-meant.js';

/** A word for a chance → how often that is, and what it means for the plan in hand. Nothing is stored. */
export const explainChanceDesk: Desk<'explain_chance'> = async ({ word }, at) => {
  const meant = await planMeant(at);
  const asked = CHANCE_WORDS.find((one) => one.word === word);
  if ('reply' in meant && asked === undefined) return meant;
  const plan = 'reply' in meant ? undefined : meant.plan;
  const own = plan && CHANCE_WORDS.find((one) => printedChance(plan.landing.chance).startsWith(`${one.word} (`));
  const told = asked ?? own;
  if (told === undefined) throw new Error('every chance has its word');
  return {
    reply: {
      kind: 'answer',
      lead: say`${capital(told.word)}: ${oftenOf(told)}`,
      lines: plan === undefined ? [EVERY_PLAN] : ownLines(plan, told !== own),
      examples: plan === undefined ? [] : ['what would help', `why ${plan.rows}`],
      isOwn: true,
      offers: [],
    },
    talk: at.talk,
  };
};

const EVERY_PLAN = say`Every count of rows comes with such a chance: how often a piece like it would end inside the size asked for.`;

/** `as often as not, 40 to 59 times in 100`. */
function oftenOf({ fromPercent, toPercent }: ChanceWord): string {
  if (toPercent === 100) return `${fromPercent} times in 100 or more`;
  if (fromPercent === 0) return `fewer than ${toPercent + 1} times in 100`;
  const isEven = fromPercent < 50 && toPercent > 50;
  return `${isEven ? 'as often as not, ' : ''}${fromPercent} to ${toPercent} times in 100`;
}

function ownLines(plan: Plan, isOther: boolean): Words[] {
  const { label, rows, landing } = plan;
  const percent = Math.round(100 * landing.chance);
  const many = percent > 95 ? 'more than 95' : percent < 1 ? 'fewer than 1' : `about ${percent}`;
  return [
    ...(isOther ? [say`Your ${label.toLowerCase()} of ${rows} rows is ${printedChance(landing.chance)}.`] : []),
    say`Of 100 made like your ${label.toLowerCase()}, with ${rows} rows, I would expect ${many} to come to ${range(landing.loMm, landing.hiMm)}, the others a little over or under.`,
    say`At the edges, ${edgesOf(plan)}`,
  ];
}
