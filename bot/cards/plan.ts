import {
  type Plan,
  type Printing,
  pieceById,
  printed,
  printedChance,
  printedLength,
  printedOthers,
  printedRange,
  type Units,
  type Window,
} from '../../core/index.js';
import { typedLimits, unitsTyped } from '../desk/typed.js';
import type { ReplyOf } from '../reply.js';
import type { Due, PlanAsk, Request, Value } from '../request.js';
import { type Card, plainCard } from './card.js';
import { capital, changedLine, counted, gaugeName, joined } from './names.js';
import { atHandLine, notionsFact, notionsLead } from './notions.js';
import { resize } from './resize.js';
import { scheduleLines, verdict } from './schedule.js';
import { sentenceFor } from './sentences.js';
import { formAsked, stepLines, timesLine } from './steps.js';
import { stripesChecklist, stripesFact } from './stripes.js';
import { timeFact, timeLead } from './time.js';
import { weekStrip } from './week-strip.js';
import { yarnFact, yarnFacts, yarnLead } from './yarn.js';

/** Words that post the answer to a command. */
const POSTS = 'post this here';

/** From here on a chance needs no remedy beside it. */
const LIKELY = 0.6;

/** The rows first, then the size in both units, the chance, the yarn, what was assumed; steps behind a button. */
export function planCard(reply: ReplyOf<'plan'>, printing: Printing): Card {
  const { plan, changed, ask, elsewhere, ball } = reply;
  const measureFirst = plan.landing.chance < LIKELY && plan.checkpoint !== undefined;
  const on = plan.needles === undefined ? '' : ` on ${counted(plan.needles, 'needle')}`;
  const at = measureFirst ? `, and measure at row ${plan.checkpoint?.row}` : '';
  const alike = plan.parts === 1 ? '' : `, ${plan.parts} alike`;
  const knit = `Knit ${counted(plan.rows, 'row')}${on}${alike}${at}`;
  const first = askedFirst(ask);
  const lead = timeAsked(reply) ?? (first && LEADS[first](plan, printing, ball));
  const form = formAsked(ask);
  return plainCard(lead ?? knit, {
    kept: true,
    body: [
      ...(reply.since === undefined ? [] : [printed(reply.since, printing)]),
      ...(lead === undefined ? [] : [`${knit}.`]),
      ...changedLine(changed, printing),
      ...(reply.standing === undefined ? [] : [printed(reply.standing, printing)]),
      ...plan.shortfalls.map((words) => printed(words, printing)),
      ...(elsewhere === undefined ? [] : [printed(elsewhere, printing)]),
      sizeLine(plan, printing),
      ...(reply.shared ?? []).map((words) => printed(words, printing)),
      ...(plan.because === undefined ? [] : [`${capital(printed(plan.because, printing))}.`]),
      ...(ask.due === undefined ? [] : dueLines(reply, ask.due, printing)),
      ...(form === undefined ? [] : timesLine(plan)),
    ],
    facts: [
      { label: 'Chance', text: chanceText(plan, ask.values, printing) },
      ...better(plan),
      ...(first === 'yarn' ? yarnFacts(plan, printing, ball) : yarnFact(plan, printing)),
      ...(reply.time === undefined ? [] : timeFact(reply.time)),
      ...(first === 'notions' ? [] : notionsFact(plan, printing)),
      ...stripesFact(reply.stripes, printing),
      { label: 'Assumed', text: assumedText(reply, printing) },
    ],
    offers: reply.offers,
    foot: [gaugeName(reply.gauge)],
    steps: form === undefined ? [] : stepLines(plan, form, printing),
    sayings: [
      'start',
      'steps',
      `why ${plan.rows}`,
      ...meeting(reply),
      ...(reply.offers.some(({ say }) => say === POSTS) ? [POSTS] : []),
      ...(reply.schedule === undefined ? [] : ['remind me']),
      ...onOther(reply),
      ...(changed.length === 0 ? [] : ['undo']),
      'my gauge',
      ...resize(plan, printing),
    ],
  });
}

/** How long it takes, where that was asked and not the rows. */
const timeAsked = ({ plan, ask, time }: ReplyOf<'plan'>): string | undefined =>
  time === undefined || ask.focus.includes('rows')
    ? undefined
    : timeLead(time, plan.label, pieceById(plan.piece)?.isPair === true);
/** Words that hold the rows to the stripes. */
const meeting = ({ stripes, offers }: ReplyOf<'plan'>): string[] =>
  stripes?.met === undefined ? [] : offers.flatMap(({ request, say }) => (isMeeting(request) && say ? [say] : []));

const isMeeting = (request: Request): boolean => request.kind === 'plan' && request.ask.stripes?.meets === true;

/** Words that plan it on the other machine that fits. */
const onOther = ({ elsewhere, offers }: ReplyOf<'plan'>): string[] =>
  elsewhere === undefined
    ? []
    : offers.flatMap(({ request, say }) => (request.kind === 'plan' && !isMeeting(request) && say ? [say] : []));

const assumedText = ({ plan, assumed, schedule }: ReplyOf<'plan'>, printing: Printing): string =>
  `${[...plan.assumed, ...assumed, ...(schedule?.assumed ?? [])].map((words) => printed(words, printing)).join('; ')}.`;

/** A plan before the answer that leads: its rows, size and chance, what was asked of it, and what was taken for granted. */
export function planInBrief(reply: ReplyOf<'plan'>, printing: Printing): string {
  const { plan, ask } = reply;
  const on = plan.needles === undefined ? '' : ` on ${counted(plan.needles, 'needle')}`;
  const chance = capital(chanceText(plan, ask.values, printing));
  const asked = [
    ...(ask.focus.includes('yarn') ? yarnFact(plan, printing) : []),
    ...(ask.focus.includes('notions') ? notionsFact(plan, printing) : []),
    ...(reply.time === undefined ? [] : timeFact(reply.time)),
    ...stripesFact(reply.stripes, printing),
  ].map(({ label, text }) => `${label}: ${text}`);
  return [
    `knit ${counted(plan.rows, 'row')}${on}.`,
    ...changedLine(reply.changed, printing),
    ...plan.shortfalls.map((words) => printed(words, printing)),
    sizeLine(plan, printing),
    chance,
    ...(ask.due === undefined ? [] : dueLines(reply, ask.due, printing)),
    ...asked,
    `Assumed: ${assumedText(reply, printing)}`,
  ].join(' ');
}

/** What a maker asked for who did not ask for rows. */
export const askedFirst = ({ focus }: PlanAsk): 'yarn' | 'notions' | undefined =>
  focus.includes('rows') ? undefined : focus.find((what) => what === 'yarn' || what === 'notions');

/** What leads in place of the rows. */
const LEADS = { yarn: yarnLead, notions: notionsLead };

/** The finished size in both systems, and which sides wait for needles. */
export function sizeLine(plan: Plan, printing: Printing): string {
  const known = plan.sizes.flatMap((size) =>
    size.expectedMm === undefined ? [] : [{ ...size, expectedMm: size.expectedMm }],
  );
  const own = joined(
    known.map(({ expectedMm, adjective }) => `${printedLength(expectedMm, printing.units)} ${adjective}`),
  );
  const others = printedOthers(
    known.map(({ expectedMm }) => expectedMm),
    printing.units,
  );
  const waiting = plan.sizes
    .filter(({ expectedMm }) => expectedMm === undefined)
    .map(({ label }) => label.toLowerCase());
  const graft = plan.steps.some(({ id }) => id === 'graft') ? ` The graft makes row ${plan.rows + 1}.` : '';
  const wait =
    waiting.length === 0
      ? ''
      : ` The ${joined(waiting)} will follow once you tell me ${plan.needles === undefined ? 'its needles and ' : ''}how wide your tube lies flat.`;
  return `${plan.label}: about ${own} (${others}).${graft}${wait}`;
}

function chanceText(plan: Plan, values: PlanAsk['values'], { units }: Printing): string {
  const { dimension } = plan.landing;
  const solved = plan.sizes.find(({ id }) => id === dimension);
  const window = between(plan.landing, values[dimension], units);
  const rows = `${printedChance(plan.landing.chance)} to end between ${window} ${solved?.adjective ?? ''}`.trim();
  const across = plan.sizes.flatMap(({ id, label, across: set }) => {
    const asked = set?.asked;
    if (set === undefined) return [];
    if (asked === undefined) {
      const { loMm, hiMm } = set.likelyMm;
      if (set.needed !== undefined) return [neededText(label, set.needed, units)];
      return [` ${label}: most likely ${printedRange(loMm, hiMm, units)}; the needles set it, not the rows.`];
    }
    const limits = between(asked.window, values[id], units);
    return [` ${label} between ${limits}: ${printedChance(asked.chance)}; the needles set it, not the rows.`];
  });
  return `${rows}.${across.join('')}`;
}

/** The chance of a size across the needles that has room for what must go in. */
const neededText = (label: string, { leastMm, chance }: { leastMm: number; chance: number }, units: Units): string =>
  ` ${label} at least the ${printedLength(leastMm, units)} that what goes in needs: ${printedChance(chance)}; the needles set it, not the rows.`;

/** The limits of a size as they were typed; those worked out from it in the unit of what was typed. */
export function between(window: Window, value: Value | undefined, units: Units): string {
  const { loMm, hiMm } = window;
  const asTyped = value?.is === 'window' && value.loMm === loMm && value.hiMm === hiMm ? typedLimits(value) : undefined;
  const own = value === undefined ? undefined : unitsTyped({ value }, 'value');
  return asTyped ?? printedRange(loMm, hiMm, own ?? units).replace(' to ', ' and ');
}

/** What would raise the chance, best first. */
function better({ checkpoint, checkpointAtRest, landing }: Plan) {
  const ways = [
    ...(checkpointAtRest === undefined
      ? []
      : [{ chance: checkpointAtRest.chance, text: `laid flat off the machine at row ${checkpointAtRest.row}` }]),
    ...(checkpoint === undefined
      ? []
      : [{ chance: checkpoint.chance, text: `measured at row ${checkpoint.row} as it hangs` }]),
  ].filter(({ chance }) => chance > landing.chance);
  if (ways.length === 0) return [];
  const list = ways.sort((a, b) => b.chance - a.chance).map(({ chance, text }) => `${text}, ${printedChance(chance)}`);
  const usual =
    landing.chance < LIKELY ? ' Such a chance is usual with few measured pieces; each one you record raises it.' : '';
  return [{ label: 'Better', text: `${list.join('; ')}.${usual}` }];
}

/** When it must be ready, whether it will be, and the last days; or why that cannot be told. */
function dueLines({ schedule, unscheduled = [] }: ReplyOf<'plan'>, due: Due, printing: Printing): string[] {
  const why = unscheduled.flatMap((problem) => {
    const { lead, body } = sentenceFor(problem, printing);
    return [`${lead}. ${body.join(' ')}`];
  });
  if (schedule === undefined) return [dueLine(due), ...why];
  return [dueLine(due), `${verdict(schedule)}.`, ...scheduleLines(schedule), ...weekStrip(schedule)];
}

/** When it must be ready; for an event, the day before it. */
export function dueLine({ day, event, said }: Due): string {
  const before = event === undefined ? '' : `, the day before ${dayInWords(event)}`;
  return `Ready by ${dayInWords(day)} ${day.slice(0, 4)}${before} (you said "${said}").`;
}

/** An ISO day as people say it: `Friday 4 December`. */
function dayInWords(iso: string): string {
  const inWords = (parts: Intl.DateTimeFormatOptions): string =>
    new Intl.DateTimeFormat('en-GB', { ...parts, timeZone: 'UTC' }).format(new Date(iso));
  return `${inWords({ weekday: 'long' })} ${inWords({ day: 'numeric', month: 'long' })}`;
}

/** The steps of a plan, numbered, with what to have at hand and the cautions that go with it. */
export function stepsCard({ plan, form, rowsBefore, stripes, offers }: ReplyOf<'steps'>, printing: Printing): Card {
  const moved =
    rowsBefore === undefined ? [] : [`Your gauge has moved on since: it was ${counted(rowsBefore, 'row')} then.`];
  const on = plan.needles === undefined ? '' : ` on ${counted(plan.needles, 'needle')}`;
  const what = form === 'long' ? 'Steps' : 'Checklist';
  return plainCard(`${what} for the ${plan.label.toLowerCase()}, ${counted(plan.rows, 'row')}${on}`, {
    kept: true,
    body: [...moved, ...atHandLine(plan, printing), ...timesLine(plan)],
    steps: stepLines(plan, form, printing),
    facts: stripesChecklist(stripes, printing),
    offers,
    foot: plan.cautions.map((words) => printed(words, printing)),
    sayings: [form === 'long' ? 'short steps' : 'long steps', 'my gauge', ...resize(plan, printing)],
  });
}
