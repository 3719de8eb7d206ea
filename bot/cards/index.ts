import type { Printing, Units } from '../../core/index.js';
import { printed } from '../../core/index.js';
import { switchWords } from '../other-units.js';
import type { Reply, ReplyOf } from '../reply.js';
import { inBrief } from './also.js';
import { batchCard } from './batch.js';
import { buyCard } from './buy.js';
import { type Card, plainCard } from './card.js';
import { correctionCard } from './correction.js';
import { costCard, ratesCard } from './cost.js';
import { finishedCard } from './finished.js';
import { gaugeCard, gaugesCard } from './gauge.js';
import { helpsCard } from './helps.js';
import { hoursCard } from './hours.js';
import { LIMITS, shortened } from './limits.js';
import { machinesCard } from './machines.js';
import { piecesCard } from './pieces.js';
import { planCard, stepsCard } from './plan.js';
import { shelfCard, soldCard, stockedCard } from './shelf.js';
import { sizesCard } from './sizes.js';
import { answerCard, helpCard, problemCard, questionCard } from './talk.js';
import { loggedCard, timeCard } from './time.js';
import { countsCard, workCard } from './work.js';
import { yarnLeftCard } from './yarn-left.js';

export type { Card } from './card.js';

/** What a card says beside the replies: who reads it, what was mended or left over, and what was not run. */
export type Beside = {
  name: string;
  mended: readonly { from: string; to: string }[];
  leftover: readonly string[];
  /** Requests of the message that were not run because an earlier one failed. */
  skipped: number;
  /** The unit of the last requests in a row, where that is not the maker's. */
  switchTo?: Units | undefined;
  /** Set for a message that was edited: it was read again, or that failed and what it did before stands. */
  edit?: 'read' | 'refused' | undefined;
  /** True where more of the message waits for the answer to this question. */
  waits?: boolean;
};

type Maker = (reply: Reply, printing: Printing, beside: Beside & { stored: boolean }) => Card;
type Cards = {
  [K in Reply['kind']]: (reply: ReplyOf<K>, printing: Printing, beside: Beside & { stored: boolean }) => Card;
};

/** One card a kind of reply; a kind without its card does not compile. */
const cards: Cards = {
  plan: planCard,
  sizes: sizesCard,
  gauge: gaugeCard,
  gauges: gaugesCard,
  pieces: piecesCard,
  machines: machinesCard,
  helps: helpsCard,
  time: timeCard,
  logged: loggedCard,
  hours: hoursCard,
  work: workCard,
  counts: countsCard,
  correction: correctionCard,
  finished: finishedCard,
  batch: batchCard,
  stocked: stockedCard,
  shelf: shelfCard,
  sold: soldCard,
  buy: buyCard,
  yarn_left: yarnLeftCard,
  steps: stepsCard,
  rates: ratesCard,
  cost: costCard,
  question: questionCard,
  problem: (reply, printing, { stored }) => problemCard(reply, printing, stored),
  answer: answerCard,
  help: (reply, printing, beside) => helpCard(reply, beside, printing),
};

/** Answers to requests that leave everything as it was. */
const LOOKS: readonly Reply['kind'][] = [
  ...(['gauges', 'pieces', 'machines', 'helps', 'time', 'hours', 'shelf', 'yarn_left', 'steps'] as const),
  ...(['cost', 'buy', 'help', 'problem', 'question'] as const),
];

/** One message, one card: the last reply leads, answers before it follow in brief, records as "Recorded on the way". */
export function card(replies: readonly Reply[], printing: Printing, beside: Beside): Card {
  const last = replies.at(-1);
  if (last === undefined) throw new Error('a turn has at least one reply');
  const records = replies.slice(0, -1).filter((reply) => reply.kind === 'gauge' || reply.kind === 'stocked');
  const notes = records.flatMap((reply) => (reply.kind === 'stocked' ? reply.notes : []));
  const recorded = records.map((reply) => printed(reply.kind === 'gauge' ? reply.recorded : reply.lead, printing));
  const assumed = records.flatMap((reply) => reply.assumed.map((words) => printed(words, printing)));
  const stored = replies.slice(0, -1).some(({ kind }) => !LOOKS.includes(kind));
  const of = (reply: Reply): Card => (cards[reply.kind] as Maker)(reply, printing, { ...beside, stored });
  const others = replies.slice(0, -1).filter(({ kind }) => kind !== 'gauge' && kind !== 'stocked');
  const also = others.map((reply) => inBrief(reply, () => of(reply), printing));
  const made = of(last);
  const left = isUnread(last) ? beside.leftover.filter((word) => HINTED.test(word)) : beside.leftover;
  const steps = [made, ...others.map(of)].map((one) => one.steps).find(({ length }) => length > 0) ?? [];
  return {
    ...made,
    steps,
    sayings:
      beside.switchTo === undefined ? made.sayings : [...new Set([...made.sayings, switchWords(beside.switchTo)])],
    lead: shortened(made.lead, LIMITS.lead),
    body: [
      ...(made.lead.length > LIMITS.lead ? [made.lead] : []),
      ...(beside.edit === undefined ? [] : [EDITED[beside.edit]]),
      ...made.body,
      ...notes.map((words) => printed(words, printing)),
      ...beside.mended.map(({ from, to }) => `Read ${from} as ${to}.`),
      ...(beside.switchTo === undefined ? [] : [switchLine(beside.switchTo)]),
      ...(beside.waits ? ['Once that is told I go on with the rest.'] : []),
      ...(beside.skipped > 0 ? ['The rest of the message was not done.'] : []),
    ],
    facts: [
      ...withAssumed(made.facts, assumed),
      ...also.map((text) => ({ label: 'Also', text })),
      ...(recorded.length === 0 ? [] : [{ label: 'Recorded on the way', text: `${recorded.join('; ')}.` }]),
      ...(left.length === 0 ? [] : [{ label: 'Left out', text: `I could not use ${quoted(left)}.` }]),
    ],
  };
}

const switchLine = (units: Units): string =>
  `You typed ${units === 'cm' ? 'centimetres' : 'inches'} three times running. Shall I read your bare numbers so? Say "${switchWords(units)}".`;

const EDITED = {
  read: 'Read again after your edit.',
  refused: 'Read again after your edit, which changes nothing: what your message did before still stands.',
} as const;

/** True for a refusal that quotes what it did not understand. */
const isUnread = (reply: Reply): boolean =>
  reply.kind === 'problem' && reply.problems.some(({ code }) => code === 'unread' || code === 'not_made');

/** What records on the way took for granted joins what the answer did. */
function withAssumed(facts: Card['facts'], more: readonly string[]): Card['facts'] {
  if (more.length > 0 && facts.every(({ label }) => label !== 'Assumed'))
    return [...facts, { label: 'Assumed', text: `${[...new Set(more)].join('; ')}.` }];
  return facts.map(({ label, text }) => {
    if (label !== 'Assumed') return { label, text };
    const own = text.replace(/\.$/, '').split('; ');
    return { label, text: `${[...new Set([...own, ...more])].join('; ')}.` };
  });
}

const MOST_QUOTED = 6;
/** What was left out with a hint, which quotes what to say: that stands outside the quotes of what was typed. */
const HINTED = /^([^"]*?): (.*".*)$/;

const quoted = (words: readonly string[]): string => {
  const shown = words.slice(0, MOST_QUOTED).map((word) => {
    const [, typed, hint] = HINTED.exec(word) ?? [];
    return hint === undefined ? `"${word.slice(0, 60)}"` : `"${typed}": ${hint}`;
  });
  return words.length > MOST_QUOTED ? `${shown.join(', ')} and ${words.length - MOST_QUOTED} more` : shown.join(', ');
};

/** For a fault of ours: short, with a reference for whoever runs the bot. */
export const apology = (reference: string): Card =>
  plainCard('That went wrong on my side; nothing was stored', {
    body: [`Say it again, or quote ${reference} to whoever runs me.`],
  });
