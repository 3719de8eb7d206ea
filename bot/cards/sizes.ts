import { type Plan, type Printing, printed, type Words } from '../../core/index.js';
import type { ReplyOf } from '../reply.js';
import { type Card, plainCard } from './card.js';
import { LIMITS } from './limits.js';
import { merged } from './merged.js';
import { capital, changedLine, counted, gaugeName, joined } from './names.js';
import { askedFirst, dueLine } from './plan.js';
import { title } from './sizes-lead.js';
import { NEEDS_LEADS, notionsFact, yarnFact } from './sizes-needs.js';
import { isShared, plansOf, printedSides, sidesOf, sizesTable, told } from './sizes-table.js';
import { formAsked } from './steps.js';

type Reply = ReplyOf<'sizes'>;

/** Rows of up to so many sizes stand in the lead line each. */
const MOST_LED = 5;

/** Several sizes in one table: rows, finished size, chance and yarn of each, and what holds for all of them once. */
export function sizesCard(reply: Reply, printing: Printing): Card {
  const { ask, changed, gauge, offers, notes, sizes } = reply;
  const plans = plansOf(reply);
  const [first] = plans;
  if (first === undefined) throw new Error('sizes of which none can be made are a problem');
  const rows = rowsLine(plans, sizes.length - plans.length);
  const knit = `${title(reply, first, LIMITS.lead - rows.length)}${rows}`;
  const wanted = askedFirst(ask);
  const lead = wanted && NEEDS_LEADS[wanted](reply, printing);
  const say = (of: (plan: Plan) => readonly Words[]): string[] => merged(told(reply, of), printing);
  const assumed = [
    ...merged(
      told(reply, (plan) => plan.assumed),
      printing,
      true,
    ),
    ...reply.assumed.map((words) => printed(words, printing)),
  ];
  return plainCard(lead ?? knit, {
    kept: true,
    body: [
      ...(lead === undefined ? [] : [`${knit}.`]),
      ...changedLine(changed, printing),
      ...say((plan) => plan.shortfalls),
      ...commonLine(plans, printing),
      ...say(({ because }) => (because === undefined ? [] : [because])).map((text) => `${capital(text)}.`),
      ...(ask.due === undefined ? [] : [dueLine(ask.due)]),
      ...(formAsked(ask) ? ['Choose a size for its steps.'] : []),
      ...(plans.length < sizes.length ? ['Choose a size that cannot be made to see what would work for it.'] : []),
      ...notes.map((words) => printed(words, printing)),
    ],
    table: sizesTable(reply, printing),
    facts: [
      ...yarnFact(plans, printing),
      ...notionsFact(reply, printing),
      { label: 'Assumed', text: `${assumed.join('; ')}.` },
    ],
    offers,
    foot: [gaugeName(gauge)],
    sayings: [
      `steps for ${sizes.find(({ outcome }) => outcome.ok)?.name}`,
      'the second',
      ...(first.pieces === 1 ? ['two of each'] : []),
      'yarn for all',
      ...(changed.length === 0 ? [] : ['undo']),
      'my gauge',
    ],
  });
}

/** Sizes before the answer that leads: the rows of each. */
export function sizesInBrief(reply: Reply): string {
  const rows = reply.sizes.map(
    ({ name, outcome }) => `${name} ${outcome.ok ? counted(outcome.value.rows, 'row') : 'cannot be made'}`,
  );
  return `${reply.piece.label.toLowerCase()}, ${rows.join('; ')}.`;
}

function rowsLine(plans: readonly Plan[], cannot: number): string {
  const rows = plans.map((plan) => plan.rows);
  const [least, most] = [Math.min(...rows), Math.max(...rows)];
  const each = rows.length <= MOST_LED ? joined(rows.map(String)) : `${least} to ${most}`;
  return `: ${least === most ? least : each} rows${cannot === 0 ? '' : `; ${cannot} cannot be made`}`;
}

/** What all of them have: `All on 52 needles, each 19.5 cm tall (7 5/8 in). The graft adds one row to each.` */
function commonLine(plans: readonly Plan[], printing: Printing): string[] {
  const [first] = plans;
  if (first === undefined) return [];
  const { shared } = sidesOf(first, plans, printing);
  const on = first.needles !== undefined && isShared(plans, ({ needles }) => needles);
  const parts = [
    ...(on ? [`all on ${counted(first.needles ?? 0, 'needle')}`] : []),
    ...(first.parts > 1 && isShared(plans, (plan) => plan.parts) ? [`knit ${first.parts} alike for each`] : []),
    ...(shared.length === 0 ? [] : [`each about ${printedSides(shared, printing)}`]),
  ];
  const graft = plans.every(({ steps }) => steps.some(({ id }) => id === 'graft'));
  const line = [
    ...(parts.length === 0 ? [] : [`${capital(parts.join(', '))}.`]),
    ...(graft ? ['The graft adds one row to each.'] : []),
  ];
  return line.length === 0 ? [] : [line.join(' ')];
}
